using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace CalibrationApi.Tests;

/// <summary>
/// Reads CSV by the letter of RFC 4180, section 2: lines end in CRLF, quotes only where allowed, every row as long as the header.
/// </summary>
internal static class Rfc4180
{
    /// <summary>The rows as cells by column.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Read(string text)
    {
        var rows = Rows(text);
        var header = rows[0];
        Assert.Distinct(header);
        return
        [
            .. rows.Skip(1)
                .Select(row =>
                {
                    Assert.Equal(header.Count, row.Count);
                    return header.Zip(row).ToDictionary(cell => cell.First, cell => cell.Second);
                }),
        ];
    }

    /// <summary>
    /// What the cells of a record have to be: one column for each value, units in the header, nothing for what is absent.
    /// </summary>
    public static Dictionary<string, string> CellsOf(JsonNode record)
    {
        var cells = new Dictionary<string, string>();
        Collect("", record);
        return cells;

        void Collect(string path, JsonNode? node)
        {
            switch (node)
            {
                case JsonObject quantity when quantity["value"] is not null && quantity["unit"] is { } unit:
                    foreach (var (name, member) in quantity.Where(member => member.Key != "unit"))
                    {
                        if (name is "value" or "expandedUncertainty")
                            cells.Add(name == "value" ? $"{path} [{unit}]" : $"{path}.{name} [{unit}]", Plain(member!));
                        else
                            Collect($"{path}.{name}", member);
                    }

                    break;
                case JsonObject members:
                    foreach (var (name, member) in members)
                        Collect(path.Length == 0 ? name : $"{path}.{name}", member);
                    break;
                case JsonArray items:
                    for (var i = 0; i < items.Count; i++)
                        Collect(string.Create(CultureInfo.InvariantCulture, $"{path}.{i}"), items[i]);
                    break;
                default:
                    cells.Add(path, Plain(node!));
                    break;
            }
        }
    }

    private static string Plain(JsonNode value) =>
        value.GetValueKind() == JsonValueKind.String ? value.GetValue<string>() : value.ToJsonString();

    private static List<List<string>> Rows(string text)
    {
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        var rows = new List<List<string>> { new() };
        for (var at = 0; at < text.Length; )
        {
            rows[^1].Add(Cell(text, ref at));
            if (text[at] == ',')
            {
                at++;
                continue;
            }

            Assert.Equal("\r\n", text.Substring(at, 2));
            at += 2;
            if (at < text.Length)
                rows.Add([]);
        }

        return rows;
    }

    private static string Cell(string text, ref int at)
    {
        var cell = new StringBuilder();
        if (text[at] != '"')
        {
            for (; text[at] is not (',' or '\r'); at++)
            {
                Assert.True(text[at] is not ('"' or '\n'), $"A bare quote or line feed outside quotes, at {at}.");
                cell.Append(text[at]);
            }

            return cell.ToString();
        }

        for (at++; ; at++)
        {
            if (text[at] != '"')
                cell.Append(text[at]);
            else if (text[at + 1] == '"')
                cell.Append(text[++at]);
            else
                break;
        }

        at++;
        Assert.True(text[at] is ',' or '\r', $"Something follows a closing quote, at {at}.");
        return cell.ToString();
    }
}
