using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Http;
using CalibrationApi.Quantities;
using CalibrationApi.Records;
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
            ["entered"] = JsonNode.Parse(test.Entered),
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
    public static IReadOnlyList<Finding> SinceThen(SqliteConnection connection, CatchTestRecord test) =>
        FailedLater(connection, test) is { } failed
            ? [Finding.Warning(FindingCode.ScaleCheckFailedLater, $"The scale failed its first check after this test: it was {new Ratio(failed.Error):F2} off. The masses of this test may be off by as much; test again with a good scale.")]
            : [];

    /// <summary>The first check of its scale after a test, when it failed: then nobody knows whether the scale was good during the test.</summary>
    public static ScaleCheckRecord? FailedLater(SqliteConnection connection, CatchTestRecord test) =>
        ScaleCheckStore.FirstAfter(connection, Workspace.Local, test.Scale, test.OccurredAt) is { Passed: false } failed ? failed : null;

    public static string Context(CatchTestResolution resolution, AnswerUnits units)
    {
        var context = new JsonObject
        {
            ["usedHistory"] = JsonNode.Parse(JsonSerializer.Serialize(resolution.Used, JsonSettings.Contract.GetTypeInfo(typeof(UsedHistory)))),
            ["findings"] = new JsonArray([.. resolution.Findings.Select(finding => Node(finding, units.Display))]),
        };
        return context.ToJsonString(JsonSettings.Writing);
    }

    private static JsonObject Node(Finding finding) => Node(finding, DisplayUnits.Metric);

    private static JsonObject Node(Finding finding, DisplayUnits units) => new JsonObject
    {
        ["code"] = finding.Code,
        ["severity"] = Words.Of(finding.Severity),
        ["detail"] = units.Write(finding.Detail),
    };
}
