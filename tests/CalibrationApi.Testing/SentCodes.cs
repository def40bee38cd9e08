using System.Text.Json;
using System.Text.Json.Nodes;

namespace CalibrationApi.Testing;

/// <summary>
/// Holds the codes of an answer to the place where they come: a list of an answer carries no code but those that the contract names
/// there, and what is refused comes with a code of every problem or with one named at the operation.
/// </summary>
internal sealed class SentCodes(ContractDocument contract)
{
    private const string Extension = "x-codes";
    private const string Advice = "Add it to the list in the class of codes of that answer and refresh the contract.";

    private readonly HashSet<string>? ofEveryProblem = Words(
        contract.Json["components"]!["schemas"]!["ProblemError"]?["properties"]?["code"]?["examples"]
    );

    /// <summary>What is wrong with the codes in the lists of an answer.</summary>
    public IEnumerable<string> Faults(JsonNode schema, JsonElement here)
    {
        var described = contract.Resolve(schema);
        foreach (var part in Parts(described))
        {
            foreach (var fault in Faults(part, here))
                yield return fault;
        }

        var inside = here.ValueKind switch
        {
            JsonValueKind.Object => here.EnumerateObject().Select(member => (Schema: described["properties"]?[member.Name], member.Value)),
            JsonValueKind.Array => OfItems(described, here),
            _ => [],
        };
        foreach (var fault in inside.Where(one => one.Schema is not null).SelectMany(one => Faults(one.Schema!, one.Value)))
            yield return fault;
        if (Words(described[Extension]) is not { } named || here.ValueKind != JsonValueKind.Array)
            yield break;
        foreach (var item in here.EnumerateArray())
        {
            if (item.GetProperty("code").GetString() is { } code && !named.Contains(code))
                yield return $"The code {code} is not among those that the contract names for its list. {Advice}";
        }
    }

    /// <summary>What is wrong with the codes of a problem.</summary>
    /// <param name="response">What the contract says of the status.</param>
    /// <param name="problem">The problem.</param>
    public IEnumerable<string> OfProblem(JsonObject response, JsonElement problem)
    {
        if (ofEveryProblem is null || !problem.TryGetProperty("errors", out var errors))
            yield break;
        var named = Words(response[Extension]);
        foreach (var error in errors.EnumerateArray())
        {
            if (error.GetProperty("code").GetString() is { } code && !ofEveryProblem.Contains(code) && named?.Contains(code) != true)
                yield return $"The code {code} is neither one of every problem nor one that this operation refuses with. Declare it there.";
        }
    }

    private static IEnumerable<(JsonNode? Schema, JsonElement Value)> OfItems(JsonObject described, JsonElement here) =>
        here.EnumerateArray().Select(item => (described["items"], item));

    private static IEnumerable<JsonNode> Parts(JsonObject schema) =>
        ((string[])["allOf", "oneOf", "anyOf"]).SelectMany(word => schema[word]?.AsArray() ?? []).OfType<JsonNode>();

    private static HashSet<string>? Words(JsonNode? list) =>
        list is null ? null : [.. list.AsArray().Select(word => word!.GetValue<string>())];
}
