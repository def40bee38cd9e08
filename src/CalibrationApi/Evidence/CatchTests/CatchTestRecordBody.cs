using System.Buffers;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Storing;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.ScaleChecks;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>
/// The representation of a stored catch test: what was entered, what was asked, what was answered, and what came to light since.
/// </summary>
internal static class CatchTestRecordBody
{
    private const int UsualLength = 8192;

    /// <remarks>What is kept as JSON is written as it is, and only taken apart where its units are to change.</remarks>
    public static byte[] Write(
        CatchTestRecord test,
        string timeZone,
        Supersession? supersededBy,
        IReadOnlyList<Finding> sinceThen,
        DisplayUnits? units
    )
    {
        var body = new ArrayBufferWriter<byte>(UsualLength);
        using (var json = new Utf8JsonWriter(body, JsonAnswer.Writing))
        {
            json.WriteStartObject();
            json.WriteString("id", test.Id);
            json.WriteString("occurredAt", EnteredInstant.Write(test.OccurredAt));
            json.WriteString("localDate", LocalDate.Of(test.OccurredAt, timeZone));
            json.WriteString("receivedAt", EnteredInstant.Write(test.ReceivedAt));
            json.WriteString("engineVersion", test.EngineVersion);
            json.WritePropertyName("entered");
            EnteredBody.Node(test.Entered).WriteTo(json);
            WriteKept(json, "resolved", test.Resolved, units);
            WriteKept(json, "evaluation", test.Answer, units);
            using (var context = JsonDocument.Parse(test.Context))
            {
                foreach (var member in context.RootElement.EnumerateObject())
                    member.WriteTo(json);
            }

            if (sinceThen.Count > 0)
                WriteFindings(json, "sinceThen", sinceThen, DisplayUnits.Metric);
            if (supersededBy is not null)
            {
                json.WriteStartObject("supersededBy");
                json.WriteString("record", supersededBy.Replacement);
                json.WriteString("reason", supersededBy.Reason);
                json.WriteEndObject();
            }

            json.WriteEndObject();
        }

        return body.WrittenSpan.ToArray();
    }

    /// <summary>What other records say about a test by now.</summary>
    public static IReadOnlyList<Finding> SinceThen(SqliteConnection connection, Workspace workspace, CatchTestRecord test)
    {
        using var context = JsonDocument.Parse(test.Context);
        var used = context
            .RootElement.GetProperty("usedHistory")
            .Deserialize((JsonTypeInfo<UsedHistory>)JsonSettings.Contract.GetTypeInfo(typeof(UsedHistory)))!;
        var isBasisKnown = context
            .RootElement.GetProperty("findings")
            .EnumerateArray()
            .Any(finding => finding.GetProperty("code").ValueEquals(FindingCode.BasisSuperseded));
        return SinceThen(connection, workspace, test, used, isBasisKnown);
    }

    /// <summary>
    /// The same for a test of which it is at hand what it used, and whether it was told that the basis of the value in force is superseded.
    /// </summary>
    public static IReadOnlyList<Finding> SinceThen(
        SqliteConnection connection,
        Workspace workspace,
        CatchTestRecord test,
        UsedHistory used,
        bool isBasisKnown
    ) => [.. FindingsSinceThen(connection, workspace, test, used, isBasisKnown)];

    /// <summary>
    /// The first check of its scale after a test, when it failed: then nobody knows whether the scale was good during the test.
    /// </summary>
    public static ScaleCheckRecord? FailedLater(SqliteConnection connection, Workspace workspace, string scale, DateTimeOffset testedAt) =>
        ScaleCheckStore.FirstAfter(connection, workspace, scale, testedAt) is { Passed: false } failed ? failed : null;

    public static string Context(CatchTestResolution resolution, DisplayUnits units) =>
        KeptJson.Write(json =>
        {
            json.WriteStartObject();
            json.WritePropertyName("usedHistory");
            KeptJson.Write(json, resolution.Used);
            WriteFindings(json, "findings", resolution.Findings, units);
            json.WriteEndObject();
        });

    private static IEnumerable<Finding> FindingsSinceThen(
        SqliteConnection connection,
        Workspace workspace,
        CatchTestRecord test,
        UsedHistory used,
        bool isBasisKnown
    )
    {
        if (FailedLater(connection, workspace, test.Scale, test.OccurredAt) is { } failed)
            yield return Finding.Warning(
                FindingCode.ScaleCheckFailedLater,
                $"The scale failed its first check after this test: it was {new Ratio(failed.Error):F2} off. The masses of this test may be off by as much; test again with a good scale."
            );
        if (ScaleCheckStore.LastBefore(connection, workspace, test.Scale, test.OccurredAt)?.Id != used.ScaleCheck?.Check)
            yield return Finding.Warning(
                FindingCode.ScaleCheckChanged,
                $"A check of the scale from before this test was entered or corrected after it. Enter this test once more, superseding this record, to have its masses corrected by that check."
            );
        if (
            used.EarlierTest is { } earlier
            && SupersessionStore.Find(connection, workspace, RecordCatchTest.Kind, earlier.Test) is not null
        )
            yield return Finding.Warning(
                FindingCode.BasisSuperseded,
                $"The earlier test that was put beside this one has since been superseded. Enter this test once more, superseding this record, to have it judged anew."
            );
        if (used.StartValue is { } start && SupersessionStore.Find(connection, workspace, RecordCatchTest.Kind, start.Test) is not null)
            yield return Finding.Warning(
                FindingCode.BasisSuperseded,
                $"The last test, which this one was compared with, has since been superseded. Enter this test once more, superseding this record, to have it judged anew."
            );
        if (used is { ValueInForce: null, StartValue: null })
            yield break;
        var inForce = AdoptionStore.InForce(connection, workspace, test.Series, test.OccurredAt);
        if (used.ValueInForce is not { } compared)
        {
            if (inForce is not null && inForce.Test != test.Id)
                yield return Finding.Warning(
                    FindingCode.ValueInForceChanged,
                    $"A value in force at the time of this test was entered after it: the change that this test found is from another number. Enter this test once more, superseding this record, to have it compared anew."
                );
            yield break;
        }

        if (inForce?.Id != compared.Adoption && inForce?.Test != test.Id)
            yield return Finding.Warning(
                FindingCode.ValueInForceChanged,
                $"The value in force at the time of this test was entered or corrected after it: the change that this test found is from another number. Enter this test once more, superseding this record, to have it compared anew."
            );
        if (
            !isBasisKnown
            && inForce?.Id == compared.Adoption
            && inForce.Test is { } basis
            && SupersessionStore.Find(connection, workspace, RecordCatchTest.Kind, basis) is not null
        )
            yield return Finding.Warning(
                FindingCode.BasisSuperseded,
                $"The value in force that this test was compared with rests on a test that has since been superseded."
            );
    }

    private static void WriteKept(Utf8JsonWriter json, string name, string kept, DisplayUnits? units)
    {
        json.WritePropertyName(name);
        if (units is null)
        {
            json.WriteRawValue(kept, skipInputValidation: true);
            return;
        }

        var converted = JsonNode.Parse(kept);
        QuantityConversion.Apply(converted, units);
        converted!.WriteTo(json);
    }

    private static void WriteFindings(Utf8JsonWriter json, string name, IReadOnlyList<Finding> findings, DisplayUnits units)
    {
        json.WriteStartArray(name);
        foreach (var finding in findings)
        {
            json.WriteStartObject();
            json.WriteString("code", finding.Code);
            json.WriteString("severity", Words.Of(finding.Severity));
            json.WriteString("detail", units.Write(finding.Detail));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
