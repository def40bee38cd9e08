using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.CatchTests;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Http;
using CalibrationApi.Lots;
using CalibrationApi.Quantities;
using CalibrationApi.Records;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.Records;
using CalibrationApi.Storing;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Adoptions;

/// <summary>The representations of an adoption: as a record, and as the value in force.</summary>
internal static class AdoptionBody
{
    public static byte[] Write(SqliteConnection connection, AdoptionRecord adoption, string timeZone, string? units)
    {
        var answerUnits = Units(adoption, units);
        var superseded = SupersessionStore.Find(connection, Workspace.Local, AdoptValue.Kind, adoption.Id);
        var answer = new AdoptionAnswer
        {
            Id = adoption.Id,
            OccurredAt = EnteredInstant.Write(adoption.OccurredAt),
            LocalDate = LocalDate.Of(adoption.OccurredAt, timeZone),
            ReceivedAt = EnteredInstant.Write(adoption.ReceivedAt),
            MassPerRevolution = answerUnits.MassPerRevolution(new MassPerRevolution(adoption.Value)),
            Entered = Entered(adoption),
            Findings = answerUnits.Findings(Findings(connection, adoption, Basis(connection, adoption))),
            SupersededBy = superseded is null ? null : new Supersedes { Record = superseded.Replacement, Reason = superseded.Reason },
        };
        var node = JsonNode.Parse(JsonSerializer.Serialize(answer, JsonSettings.Contract.GetTypeInfo(typeof(AdoptionAnswer))))!;
        node["entered"] = JsonNode.Parse(adoption.Body);
        return Encoding.UTF8.GetBytes(node.ToJsonString(JsonSettings.Writing));
    }

    public static ValueInForceAnswer InForce(SqliteConnection connection, AdoptionRecord adoption, string timeZone, string? units)
    {
        var answerUnits = Units(adoption, units);
        var entered = Entered(adoption);
        var basis = Basis(connection, adoption);
        var superseded = basis is null ? null : SupersessionStore.Find(connection, Workspace.Local, RecordCatchTest.Kind, basis.Id);
        return new ValueInForceAnswer
        {
            Machine = adoption.Series.Machine,
            Meter = adoption.Series.Meter,
            Element = adoption.Series.Element,
            Setting = adoption.Series.Setting.Length == 0 ? null : adoption.Series.Setting,
            Product = adoption.Series.Product,
            MassPerRevolution = answerUnits.MassPerRevolution(new MassPerRevolution(adoption.Value)),
            TypedIn = new AnyQuantity { Value = adoption.EnteredValue, Unit = adoption.EnteredUnit },
            Adoption = adoption.Id,
            Since = EnteredInstant.Write(adoption.OccurredAt),
            SinceLocalDate = LocalDate.Of(adoption.OccurredAt, timeZone),
            RecordedBy = entered.RecordedBy!,
            Why = entered.Why!,
            Lot = adoption.Lot,
            Treatment = adoption.Lot is { } lot ? Treatment(connection, lot) : null,
            Test = adoption.Test,
            Measured = basis is null ? null : Measured(basis, units),
            Conditions = basis is null ? null : ((RecordCatchTestRequest)JsonSerializer.Deserialize(basis.Entered, JsonSettings.Contract.GetTypeInfo(typeof(RecordCatchTestRequest)))!).Conditions,
            BasisSupersededBy = superseded is null ? null : new Supersedes { Record = superseded.Replacement, Reason = superseded.Reason },
            Findings = answerUnits.Findings(Findings(connection, adoption, basis)),
        };
    }

    // The number in the controller stays what it is until somebody types another; what it rests on may turn out wrong.
    private static IEnumerable<Finding> FindingsOf(SqliteConnection connection, AdoptionRecord adoption, CatchTestRecord? basis)
    {
        if (basis is null)
            yield break;
        if (SupersessionStore.Find(connection, Workspace.Local, RecordCatchTest.Kind, basis.Id) is { } superseded)
            yield return Finding.Stop(FindingCode.BasisSuperseded, $"The test behind this value was wrong ({superseded.Reason}) and has been superseded. The controller still uses this number: adopt the value of the test in its place.");
        var answer = JsonNode.Parse(basis.Answer)!;
        if (answer["enter"]?["value"] is JsonValue enter && answer["enter"]!["unit"]!.GetValue<string>() == adoption.EnteredUnit && enter.GetValue<double>() != adoption.EnteredValue)
            yield return Finding.Warning(FindingCode.AdoptedOtherwise, $"The number typed in, {adoption.EnteredValue} {adoption.EnteredUnit}, is not the {enter.GetValue<double>()} {adoption.EnteredUnit} that the test gave.");
        if (CatchTestRecordBody.FailedLater(connection, basis) is { } failed)
            yield return Finding.Warning(FindingCode.ScaleCheckFailedLater, $"The scale behind this value failed its first check after the test: it was {new Ratio(failed.Error):F2} off. The value may be off by as much; test again with a good scale.");
        if (basis.Verdict is "investigate" or "repeat")
            yield return Finding.Warning(FindingCode.AdoptedOtherwise, $"The test behind this value said '{basis.Verdict}', not adopt.");
    }

    private static Finding[] Findings(SqliteConnection connection, AdoptionRecord adoption, CatchTestRecord? basis) => [.. FindingsOf(connection, adoption, basis)];

    private static AnswerUnits Units(AdoptionRecord adoption, string? units) =>
        AnswerUnits.For(units, UnitTable.Find(adoption.EnteredUnit) is { Dimension: Dimension.MassPerRevolution } unit ? unit : UnitTable.Get("kg/rev"));

    private static AdoptionRequest Entered(AdoptionRecord adoption) =>
        (AdoptionRequest)JsonSerializer.Deserialize(adoption.Body, JsonSettings.Contract.GetTypeInfo(typeof(AdoptionRequest)))!;

    private static CatchTestRecord? Basis(SqliteConnection connection, AdoptionRecord adoption) =>
        adoption.Test is { } test ? CatchTestStore.Find(connection, Workspace.Local, test) : null;

    private static string? Treatment(SqliteConnection connection, string lot) =>
        new DescribedRecordStore(RecordKind.Lots).Find(connection, Workspace.Local, lot) is { } record
            ? ((LotRequest)JsonSerializer.Deserialize(record.Body, JsonSettings.Contract.GetTypeInfo(typeof(LotRequest)))!).Treatment
            : null;

    private static MeasuredMassPerRevolution Measured(CatchTestRecord basis, string? units)
    {
        var measured = JsonNode.Parse(basis.Answer)!["massPerRevolution"]!;
        if (QuantityConversion.For(units) is { } display)
            QuantityConversion.Apply(measured, display);
        return (MeasuredMassPerRevolution)measured.Deserialize(JsonSettings.Contract.GetTypeInfo(typeof(MeasuredMassPerRevolution)))!;
    }
}
