using System.Globalization;
using System.Text.Json;

namespace CalibrationApi.Testing;

/// <summary>
/// Holds the codes of an answer to the list of codes: each is listed, and comes with a status or severity that the list tells.
/// </summary>
internal sealed class CodeUse(ContractDocument contract)
{
    private const string Advice = "Declare it in the class of codes of its capability and refresh the contract.";

    private readonly Dictionary<string, (HashSet<string> Statuses, HashSet<string> Severities)>? listed = contract
        .Operations.FirstOrDefault(operation => operation.OperationId == "listCodes")
        ?.AnswerExample?["codes"]?.AsArray()
        .ToDictionary(code => code!["code"]!.GetValue<string>(), code => (Words(code!["statuses"]), Words(code!["severities"])));

    /// <summary>What is wrong with the codes below an element.</summary>
    public IEnumerable<string> Faults(JsonElement here, int status)
    {
        if (listed is null)
            return [];
        return here.ValueKind switch
        {
            JsonValueKind.Object => OfObject(here, status)
                .Concat(here.EnumerateObject().SelectMany(member => Faults(member.Value, StatusOf(here, status)))),
            JsonValueKind.Array => here.EnumerateArray().SelectMany(item => Faults(item, status)),
            _ => [],
        };
    }

    private IEnumerable<string> OfObject(JsonElement here, int status)
    {
        // What has a code and a sentence is an error, a finding, a reason or a caution.
        if (!here.TryGetProperty("code", out var member) || !here.TryGetProperty("detail", out _) || member.GetString() is not { } code)
            yield break;
        if (!listed!.TryGetValue(code, out var known))
            yield return $"The code {code} is not in the list of codes. {Advice}";
        else if (known.Statuses.Count > 0 && !known.Statuses.Contains(status.ToString(CultureInfo.InvariantCulture)))
            yield return $"The code {code} came with status {status}, which the list of codes does not tell. Add it to its declaration.";
        else if (here.TryGetProperty("severity", out var severity) && !known.Severities.Contains(severity.GetString()!))
            yield return $"The code {code} came with severity {severity.GetString()}, which the list of codes does not tell. Its type tells which it may have.";
    }

    // A problem tells its status itself; on a line of a batch it is not that of the answer.
    private static int StatusOf(JsonElement here, int status) =>
        here.TryGetProperty("errors", out _) && here.TryGetProperty("status", out var own) && own.TryGetInt32(out var told) ? told : status;

    private static HashSet<string> Words(System.Text.Json.Nodes.JsonNode? list) =>
        [.. list?.AsArray().Select(word => word!.ToString()) ?? []];
}
