using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Http;
using CalibrationApi.Quantities;
using CalibrationApi.Records;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.ScaleChecks;
using CalibrationApi.Storing;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.CatchTests;

/// <summary>The representation of a stored catch test: what was entered, what was asked, what was answered, and what came to light since.</summary>
internal static class CatchTestRecordBody
{
    public static byte[] Write(CatchTestRecord test, string timeZone, Supersession? supersededBy, IReadOnlyList<Finding> sinceThen, DisplayUnits? units)
    {
        var body = new JsonObject
        {
            ["id"] = test.Id,
            ["occurredAt"] = EnteredInstant.Write(test.OccurredAt),
            ["localDate"] = LocalDate.Of(test.OccurredAt, timeZone),
            ["receivedAt"] = EnteredInstant.Write(test.ReceivedAt),
            ["engineVersion"] = test.EngineVersion,
            ["entered"] = EnteredBody.Node(test.Entered),
            ["resolved"] = JsonNode.Parse(test.Resolved),
            ["evaluation"] = JsonNode.Parse(test.Answer),
        };
        foreach (var (name, value) in JsonNode.Parse(test.Context)!.AsObject())
            body[name] = value?.DeepClone();
        if (sinceThen.Count > 0)
            body["sinceThen"] = new JsonArray([.. sinceThen.Select(Node)]);
        if (supersededBy is not null)
            body["supersededBy"] = new JsonObject { ["record"] = supersededBy.Replacement, ["reason"] = supersededBy.Reason };
        if (units is not null)
        {
            QuantityConversion.Apply(body["resolved"], units);
            QuantityConversion.Apply(body["evaluation"], units);
        }

        return Encoding.UTF8.GetBytes(body.ToJsonString(JsonSettings.Writing));
    }

    /// <summary>What other records say about a test by now.</summary>
    public static IReadOnlyList<Finding> SinceThen(SqliteConnection connection, Workspace workspace, CatchTestRecord test) => [.. FindingsSinceThen(connection, workspace, test)];

    /// <summary>The first check of its scale after a test, when it failed: then nobody knows whether the scale was good during the test.</summary>
    public static ScaleCheckRecord? FailedLater(SqliteConnection connection, Workspace workspace, CatchTestRecord test) =>
        ScaleCheckStore.FirstAfter(connection, workspace, test.Scale, test.OccurredAt) is { Passed: false } failed ? failed : null;

    public static string Context(CatchTestResolution resolution, DisplayUnits units)
    {
        var context = new JsonObject
        {
            ["usedHistory"] = JsonNode.Parse(JsonSerializer.Serialize(resolution.Used, JsonSettings.Contract.GetTypeInfo(typeof(UsedHistory)))),
            ["findings"] = new JsonArray([.. resolution.Findings.Select(finding => Node(finding, units))]),
        };
        return context.ToJsonString(JsonSettings.Writing);
    }

    private static IEnumerable<Finding> FindingsSinceThen(SqliteConnection connection, Workspace workspace, CatchTestRecord test)
    {
        if (FailedLater(connection, workspace, test) is { } failed)
            yield return Finding.Warning(FindingCode.ScaleCheckFailedLater, $"The scale failed its first check after this test: it was {new Ratio(failed.Error):F2} off. The masses of this test may be off by as much; test again with a good scale.");
        var context = JsonNode.Parse(test.Context)!;
        var used = (UsedHistory)context["usedHistory"].Deserialize(JsonSettings.Contract.GetTypeInfo(typeof(UsedHistory)))!;
        if (ScaleCheckStore.LastBefore(connection, workspace, test.Scale, test.OccurredAt)?.Id != used.ScaleCheck?.Check)
            yield return Finding.Warning(FindingCode.ScaleCheckChanged, $"A check of the scale from before this test was entered or corrected after it. Enter this test once more, superseding this record, to have its masses corrected by that check.");
        if (used.ValueInForce is not { } compared)
            yield break;
        var inForce = AdoptionStore.InForce(connection, workspace, test.Series, test.OccurredAt);
        if (inForce?.Id != compared.Adoption && inForce?.Test != test.Id)
            yield return Finding.Warning(FindingCode.ValueInForceChanged, $"The value in force at the time of this test was entered or corrected after it: the change that this test found is from another number. Enter this test once more, superseding this record, to have it compared anew.");
        var known = context["findings"]!.AsArray().Any(finding => finding!["code"]!.GetValue<string>() == FindingCode.BasisSuperseded);
        if (!known && inForce?.Id == compared.Adoption && inForce.Test is { } basis && SupersessionStore.Find(connection, workspace, RecordCatchTest.Kind, basis) is not null)
            yield return Finding.Warning(FindingCode.BasisSuperseded, $"The value in force that this test was compared with rests on a test that has since been superseded.");
    }

    private static JsonObject Node(Finding finding) => Node(finding, DisplayUnits.Metric);

    private static JsonObject Node(Finding finding, DisplayUnits units) => new JsonObject
    {
        ["code"] = finding.Code,
        ["severity"] = Words.Of(finding.Severity),
        ["detail"] = units.Write(finding.Detail),
    };
}
