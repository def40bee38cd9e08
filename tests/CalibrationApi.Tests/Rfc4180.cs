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
    /// What the cells of a record have to be: one column for each value, the unit of a quantity in the header or in a column beside it,
    /// several of the same in one cell.
    /// </summary>
    public static Dictionary<string, string> CellsOf(JsonNode record, bool unitsInHeader)
    {
        var cells = new Dictionary<string, string>();
        Collect("", record, "; ", cells);
        return cells;

        void Collect(string path, JsonNode? node, string between, Dictionary<string, string> into)
        {
            switch (node)
            {
                case JsonObject quantity when quantity["value"] is not null && quantity["unit"] is { } unit:
                    var suffix = unitsInHeader ? $" [{unit}]" : "";
                    foreach (var (name, member) in quantity)
                    {
                        if (name == "value")
                            into.Add(path + suffix, Plain(member!));
                        else if (name == "unit" && !unitsInHeader)
                            into.Add($"{path} unit", Plain(member!));
                        else if (name == "expandedUncertainty")
                            into.Add($"{path}.{name}{suffix}", Plain(member!));
                        else if (name != "unit")
                            Collect($"{path}.{name}", member, between, into);
                    }

                    break;
                case JsonObject members:
                    foreach (var (name, member) in members)
                        Collect(path.Length == 0 ? name : $"{path}.{name}", member, between, into);
                    break;
                case JsonArray items:
                    var each = new List<Dictionary<string, string>>();
                    foreach (var item in items)
                    {
                        each.Add([]);
                        Collect(path, item, " | ", each[^1]);
                    }

                    foreach (var column in each.SelectMany(one => one.Keys).Distinct())
                        into.Add(column, string.Join(between, each.Select(one => one.GetValueOrDefault(column, ""))));
                    break;
                default:
                    into.Add(path, Plain(node!));
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
