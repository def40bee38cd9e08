using System.Text;
using System.Text.Json.Nodes;

namespace CalibrationApi.Testing;

/// <summary>A list somewhere in what is sent to an operation, and bodies that fill it.</summary>
public sealed class SentList
{
    private readonly string before;
    private readonly string after;

    private SentList(ContractOperation operation, string pointer, string before, string after, JsonObject schema, bool takesObjects)
    {
        (Operation, Pointer, this.before, this.after, TakesObjects) = (operation, pointer, before, after, takesObjects);
        MostItems = schema["maxItems"]?.GetValue<int>() ?? int.MaxValue;
    }

    /// <summary>The operation.</summary>
    public ContractOperation Operation { get; }

    /// <summary>Where the list stands, as a JSON pointer; lists above it have one item.</summary>
    public string Pointer { get; }

    /// <summary>Most items, as the contract says.</summary>
    public int MostItems { get; }

    /// <summary>Its items are objects, not words.</summary>
    public bool TakesObjects { get; }

    /// <summary>Every list of every JSON body, however deep.</summary>
    public static IReadOnlyList<SentList> Of(ContractDocument contract) =>
        [.. contract.Operations.SelectMany(operation => Of(contract, operation))];

    /// <summary>Every list of the JSON body of an operation.</summary>
    public static IEnumerable<SentList> Of(ContractDocument contract, ContractOperation operation) =>
        operation.RequestSchema is { } schema ? Below(contract, operation, contract.Resolve(schema), "", "", "") : [];

    /// <summary>A body of about so many bytes, full of one item.</summary>
    public byte[] Filled(string item, int bytes) => Body(item, Math.Max(1, (bytes - before.Length - after.Length) / (item.Length + 1)));

    /// <summary>A body with so many of one item.</summary>
    public byte[] Body(string item, int count)
    {
        var text = new StringBuilder(before, before.Length + after.Length + count * (item.Length + 1));
        for (var i = 0; i < count; i++)
            text.Append(i == 0 ? "" : ",").Append(item);
        return Encoding.UTF8.GetBytes(text.Append(after).ToString());
    }

    /// <inheritdoc/>
    public override string ToString() => $"{Operation.OperationId} {Pointer}";

    private static IEnumerable<SentList> Below(
        ContractDocument contract,
        ContractOperation operation,
        JsonObject schema,
        string pointer,
        string before,
        string after
    )
    {
        if (schema["additionalProperties"] is JsonObject)
            throw new NotSupportedException(
                $"{operation.OperationId} takes members of any name at '{pointer}', which is not looked through."
            );
        foreach (var (name, value) in schema["properties"]?.AsObject() ?? [])
        {
            var member = contract.Resolve(value!);
            var (here, open, close) = ($"{pointer}/{name}", $"{before}{{\"{name}\":", "}" + after);
            if (member["items"] is { } items)
            {
                var item = contract.Resolve(items);
                yield return new SentList(operation, here, open + "[", "]" + close, member, item["properties"] is not null);
                foreach (var inner in Below(contract, operation, item, here + "/0", open + "[", "]" + close))
                    yield return inner;
            }
            else
            {
                foreach (var inner in Below(contract, operation, member, here, open, close))
                    yield return inner;
            }
        }
    }
}
