using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>What a released contract promises beyond the shapes that the comparison tool looks at.</summary>
internal static partial class KeptPromises
{
    /// <summary>Every promise of a released contract that another one breaks.</summary>
    public static IEnumerable<string> Broken(ContractDocument released, ContractDocument now) =>
        released
            .Operations.SelectMany(operation =>
                now.Operations.FirstOrDefault(one => one.OperationId == operation.OperationId) is { } same
                    ? Broken(released, operation, now, same)
                    : []
            )
            .Concat(
                Schemas(released).SelectMany(schema => Schemas(now)[schema.Key] is { } same ? Broken(schema.Key, schema.Value!, same) : [])
            );

    private static IEnumerable<string> Broken(
        ContractDocument released,
        ContractOperation operation,
        ContractDocument now,
        ContractOperation same
    )
    {
        if (operation.Path != same.Path || operation.Method != same.Method)
            yield return $"{operation} moved from {operation.Path} to {same.Path}. Names of parameters in a path are names in generated clients.";
        if (operation.Json["tags"]?.ToJsonString() != same.Json["tags"]?.ToJsonString())
            yield return $"{operation} changed its tag. Generated clients group by it.";
        foreach (var (name, header) in Promised(released, operation).Where(header => !Promised(now, same).ContainsKey(header.Key)))
            yield return $"{operation} no longer promises the header {header} with status {name.Split(' ')[0]}.";
        foreach (var (name, usual) in Defaults(released, operation))
        {
            if (Defaults(now, same).GetValueOrDefault(name) is var changed && changed != usual)
                yield return $"{operation} takes another value for {name} when it is left out: {changed ?? "none"}, not {usual}.";
        }
    }

    private static IEnumerable<string> Broken(string name, JsonNode schema, JsonNode same)
    {
        if (schema["additionalProperties"]?.ToJsonString() != "false" && same["additionalProperties"]?.ToJsonString() == "false")
            yield return $"{name} was open for new members and is closed now.";
        foreach (var (member, value) in schema["properties"]?.AsObject() ?? [])
        {
            if (same["properties"]?[member] is not { } now)
                continue;
            foreach (var word in Words(value!).Except(Words(now)))
                yield return $"{name}.{member} no longer knows the word {word}.";
            var (range, rangeNow) = (Range.Of(value!), Range.Of(now));
            if (range is not null && rangeNow is not null && !rangeNow.Holds(range))
                yield return $"{name}.{member} takes less than before: '{rangeNow.Text}', not '{range.Text}'.";
            var (usual, usualNow) = (Default(value!), Default(now));
            if (usual is not null && usual != usualNow)
                yield return $"{name}.{member} uses another value when it is left out: '{usualNow}', not '{usual}'. The same question would get another answer.";
        }
    }

    private static JsonObject Schemas(ContractDocument contract) => contract.Json["components"]!["schemas"]!.AsObject();

    private static Dictionary<string, string> Promised(ContractDocument contract, ContractOperation operation) =>
        operation.Json["responses"]!
            .AsObject()
            .SelectMany(response =>
                (contract.Resolve(response.Value!)["headers"]?.AsObject() ?? [])
                    .Where(header => contract.Resolve(header.Value!)["required"]?.GetValue<bool>() == true)
                    .Select(header => (response.Key, Header: header.Key))
            )
            .ToDictionary(header => $"{header.Key} {header.Header}", header => header.Header);

    private static Dictionary<string, string> Defaults(ContractDocument contract, ContractOperation operation) =>
        (operation.Json["parameters"]?.AsArray() ?? [])
            .Select(parameter => contract.Resolve(parameter!))
            .Where(parameter => parameter["schema"]?["default"] is not null)
            .ToDictionary(parameter => parameter["name"]!.GetValue<string>(), parameter => parameter["schema"]!["default"]!.ToJsonString());

    // Words of an answer stand as examples, because their list is open; those that are sent stand in closed lists. Codes of a list
    // of findings stand beside it.
    private static string[] Words(JsonNode member) =>
        [
            .. ((member["items"] ?? member)["examples"]?.AsArray() ?? [])
                .Concat(member["x-codes"]?.AsArray() ?? [])
                .Select(word => word!.ToString()),
        ];

    private static string? Default(JsonNode member) =>
        DefaultWords().Match(member["description"]?.GetValue<string>() ?? "") is { Success: true } found ? found.Value : null;

    // Up to the origin, which may be told better.
    [GeneratedRegex(@"\b[Dd]efault(s? to)?:? [-\d.]+( [^\s:,;.]+)?")]
    private static partial Regex DefaultWords();

    private sealed partial record Range(string Text, double Least, bool ExcludesLeast, double Most, string Unit)
    {
        public static Range? Of(JsonNode member)
        {
            var range = Words().Match(member["description"]?.GetValue<string>() ?? "");
            return range.Success
                ? new(range.Value, Number("least"), range.Groups["above"].Success, Number("most"), range.Groups["unit"].Value)
                : null;

            double Number(string name) => double.Parse(range.Groups[name].ValueSpan, CultureInfo.InvariantCulture);
        }

        public bool Holds(Range other) =>
            Unit == other.Unit
            && Most >= other.Most
            && (Least < other.Least || (Least == other.Least && (!ExcludesLeast || other.ExcludesLeast)));

        [GeneratedRegex(@"Range: (?<above>above )?(?<least>-?[\d.]+) (?:and up )?to (?<most>[\d.]+)(?: (?<unit>\S+))?\.$")]
        private static partial Regex Words();
    }
}
