using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace CalibrationApi.Testing;

/// <summary>Bodies as large as a service takes, that hold much of something, for each operation that takes JSON.</summary>
/// <param name="contract">The contract.</param>
/// <param name="bytes">How large.</param>
public sealed class FullBodies(ContractDocument contract, int bytes)
{
    /// <summary>Those for an operation, each with what it holds.</summary>
    public IEnumerable<(string What, byte[] Body)> For(ContractOperation operation)
    {
        foreach (var list in SentList.Of(contract, operation))
        {
            foreach (var item in (string[])["{}", "null", "0", "\"\"", "[]", "true", "{\"value\":1}"])
                yield return ($"{list.Pointer} full of {item}", list.Filled(item, bytes));
        }

        var schema = contract.Resolve(operation.RequestSchema!);
        yield return ("all lists as long as the contract takes, of empty items", Cut(Empty(schema).ToJsonString()));
        if (operation.RequestExample is { } example)
            yield return ("the example with all lists as long as the contract takes", Cut(Lengthened(example.DeepClone(), schema)));
        foreach (var (name, value) in schema["properties"]!.AsObject())
        {
            if (contract.Resolve(value!)["type"]?.ToString() != "string")
                continue;
            yield return ($"a long {name}", Encoding.UTF8.GetBytes($"{{\"{name}\":\"{new string('x', bytes - name.Length - 8)}\"}}"));
        }

        var first = schema["properties"]!.AsObject().First().Key;
        yield return ("a long name", Encoding.UTF8.GetBytes($"{{\"{new string('_', bytes - 8)}\":1}}"));
        yield return ("a long number", Encoding.UTF8.GetBytes($"{{\"{first}\":{new string('9', bytes - first.Length - 6)}}}"));
        yield return ("members that nobody knows", Repeated(i => $"\"x{i}\":1"));
        yield return ("one member again and again", Repeated(_ => $"\"{first}\":null"));
        yield return ("lists in lists", Encoding.UTF8.GetBytes(new string('[', bytes)));
        yield return (
            "objects in objects",
            Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat($"{{\"{first}\":", bytes / (first.Length + 4))))
        );
        yield return ("blanks", Encoding.UTF8.GetBytes("{" + new string(' ', bytes - 2) + "}"));
        yield return (
            "escapes",
            Encoding.UTF8.GetBytes($"{{\"{first}\":\"{string.Concat(Enumerable.Repeat("\\u0078", (bytes - first.Length - 8) / 6))}\"}}")
        );
    }

    private byte[] Repeated(Func<int, string> member)
    {
        var text = new StringBuilder("{");
        for (var i = 0; text.Length < bytes - 40; i++)
            text.Append(i == 0 ? "" : ",").Append(member(i));
        return Encoding.UTF8.GetBytes(text.Append('}').ToString());
    }

    private byte[] Cut(string text)
    {
        var body = Encoding.UTF8.GetBytes(text);
        return body.Length > bytes ? body[..bytes] : body;
    }

    // Objects have the lists they can have and nothing else; no more of them than fit.
    private JsonNode Empty(JsonObject schema)
    {
        var left = bytes / 3;
        return Of(schema)!;

        JsonNode? Of(JsonObject here)
        {
            left--;
            if (here["items"] is { } items)
            {
                var list = new JsonArray();
                for (var i = 0; i < (here["maxItems"]?.GetValue<int>() ?? 1) && left > 0; i++)
                    list.Add(Of(contract.Resolve(items)));
                return list;
            }

            var made = new JsonObject();
            foreach (var (name, value) in here["properties"]?.AsObject() ?? [])
            {
                var member = contract.Resolve(value!);
                left -= name.Length / 3;
                if (member["items"] is not null || member["properties"] is not null)
                    made[name] = Of(member);
            }

            return made;
        }
    }

    // As long as the contract and the body take, so that as many as possible are in order and are computed.
    private string Lengthened(JsonNode body, JsonObject schema)
    {
        var left = bytes - 1024;
        Lengthen(body, schema, ref left);
        return body.ToJsonString();
    }

    private void Lengthen(JsonNode body, JsonObject schema, ref int left)
    {
        foreach (var (name, value) in schema["properties"]?.AsObject() ?? [])
        {
            var member = contract.Resolve(value!);
            if (body[name] is JsonObject inner)
                Lengthen(inner, member, ref left);
            if (body[name] is not JsonArray { Count: > 0 } list)
                continue;
            var items = contract.Resolve(member["items"]!);
            foreach (var item in list.OfType<JsonObject>())
                Lengthen(item, items, ref left);
            for (var i = 0; list.Count < (member["maxItems"]?.GetValue<int>() ?? 0); i++)
            {
                var further = Renamed(list[i]!.DeepClone(), list.Count);
                left -= further.ToJsonString().Length + 1;
                if (left < 0)
                    break;
                list.Add(further);
            }
        }
    }

    // Many lists take each name once.
    private static JsonNode Renamed(JsonNode item, int number)
    {
        if (item is JsonObject members && members["name"]?.GetValueKind() == JsonValueKind.String)
            members["name"] = $"{members["name"]} {number}";
        return item;
    }
}
