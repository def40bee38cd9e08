using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.CatchTests;
using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Http;
using CalibrationApi.Lots;
using CalibrationApi.Machines;
using CalibrationApi.Products;
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
    public static byte[] Write(SqliteConnection connection, Workspace workspace, AdoptionRecord adoption, string timeZone, string? units)
    {
        var answerUnits = Units(adoption, units);
        var superseded = SupersessionStore.Find(connection, workspace, AdoptValue.Kind, adoption.Id);
        var answer = new AdoptionAnswer
        {
            Id = adoption.Id,
            OccurredAt = EnteredInstant.Write(adoption.OccurredAt),
            LocalDate = LocalDate.Of(adoption.OccurredAt, timeZone),
            ReceivedAt = EnteredInstant.Write(adoption.ReceivedAt),
            MassPerRevolution = answerUnits.MassPerRevolution(new MassPerRevolution(adoption.Value)),
            Entered = Entered(adoption),
            Findings = answerUnits.Findings(Findings(connection, workspace, adoption, Basis(connection, workspace, adoption))),
            SupersededBy = superseded is null ? null : new Supersedes { Record = superseded.Replacement, Reason = superseded.Reason },
        };
        var node = JsonNode.Parse(JsonSerializer.Serialize(answer, JsonSettings.Contract.GetTypeInfo(typeof(AdoptionAnswer))))!;
        node["entered"] = EnteredBody.Node(adoption.Body);
        return Encoding.UTF8.GetBytes(node.ToJsonString(JsonSettings.Writing));
    }

    public static ValueInForceAnswer InForce(SqliteConnection connection, Workspace workspace, AdoptionRecord adoption, string timeZone, string? units)
    {
        var answerUnits = Units(adoption, units);
        var entered = Entered(adoption);
        var basis = Basis(connection, workspace, adoption);
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
            Despite = entered.Despite,
            Lot = adoption.Lot,
            Treatment = adoption.Lot is { } lot ? Treatment(connection, workspace, lot) : null,
            Test = adoption.Test,
            Measured = basis is null ? null : Measured(basis, units),
            Conditions = basis is null ? null : ((RecordCatchTestRequest)JsonSerializer.Deserialize(basis.Entered, JsonSettings.Contract.GetTypeInfo(typeof(RecordCatchTestRequest)))!).Conditions,
            BasisSupersededBy = basis is null ? null : SupersededBy(connection, workspace, basis.Id),
            Findings = answerUnits.Findings(Findings(connection, workspace, adoption, basis)),
        };
    }

    // The number in the controller stays what it is until somebody types another; what it rests on may turn out wrong.
    private static IEnumerable<Finding> FindingsOf(SqliteConnection connection, Workspace workspace, AdoptionRecord adoption, CatchTestRecord? basis)
    {
        if (Entered(adoption).Despite is { } despite)
            yield return TypedValueCheck.Despite(despite.Code!, despite.Reason!);
        if (PhysicalFinding(connection, workspace, adoption) is { } physical)
            yield return physical;
        if (basis is null)
            yield break;
        if (SupersededBy(connection, workspace, basis.Id) is { } superseded)
        {
            var isSameSeries = CatchTestStore.Find(connection, workspace, superseded.Record!)!.Series == adoption.Series;
            yield return Finding.Stop(FindingCode.BasisSuperseded, $"The test behind this value was wrong ({superseded.Reason}) and has been superseded. The controller still uses this number: {(isSameSeries ? "adopt the value of the test in its place" : "test again, because the test in its place is of another meter, element, setting or product")}.");
        }

        if (Otherwise(adoption, JsonNode.Parse(basis.Answer)!) is { } otherwise)
            yield return Finding.Warning(FindingCode.AdoptedOtherwise, otherwise);
        if (CatchTestRecordBody.FailedLater(connection, workspace, basis) is { } failed)
            yield return Finding.Warning(FindingCode.ScaleCheckFailedLater, $"The scale behind this value failed its first check after the test: it was {new Ratio(failed.Error):F2} off. The value may be off by as much; test again with a good scale.");
        if (basis.Verdict is "investigate" or "repeat")
            yield return Finding.Warning(FindingCode.AdoptedOtherwise, $"The test behind this value said '{basis.Verdict}', not adopt.");
    }

    // Null when the number typed in is the one that the test gave or, where the controller's form is not known, lies within what it measured.
    private static FormattableString? Otherwise(AdoptionRecord adoption, JsonNode answer)
    {
        if (answer["enter"] is { } enter)
        {
            var (value, unit) = (enter["value"]!.GetValue<double>(), enter["unit"]!.GetValue<string>());
            var isSame = unit == adoption.EnteredUnit
                ? value == adoption.EnteredValue
                : Math.Abs(adoption.Value - TypedValueGuard.Canonical(enter["resultingMassPerRevolution"]!, "value")) <= 1e-9 * adoption.Value;
            return isSame ? null : (FormattableString)$"The number typed in, {adoption.EnteredValue} {adoption.EnteredUnit}, is not the {value} {unit} that the test gave.";
        }

        var measured = answer["massPerRevolution"]!;
        return Math.Abs(adoption.Value - TypedValueGuard.Canonical(measured, "value")) <= TypedValueGuard.Canonical(measured, "expandedUncertainty")
            ? null
            : (FormattableString)$"The number typed in, {adoption.EnteredValue} {adoption.EnteredUnit}, lies outside what the test measured, {new MassPerRevolution(TypedValueGuard.Canonical(measured, "value"))}.";
    }

    // Displacement and density may have become known, or been corrected, after the value was adopted.
    private static Finding? PhysicalFinding(SqliteConnection connection, Workspace workspace, AdoptionRecord adoption)
    {
        var element = Described<MachineRequest>(connection, workspace, RecordKind.Machines, adoption.Series.Machine)?
            .Meters!.FirstOrDefault(meter => meter!.Position == adoption.Series.Meter)?
            .Elements!.FirstOrDefault(one => one!.Name == adoption.Series.Element);
        if (element?.DisplacementPerRevolution is null)
            return null;
        var density = (adoption.Lot is { } lot ? Described<LotRequest>(connection, workspace, RecordKind.Lots, lot)?.BulkDensity : null)
            ?? Described<ProductRequest>(connection, workspace, RecordKind.Products, adoption.Series.Product)?.BulkDensity;
        return ElementOfMachine.Content(element, density)?.FindingOf("The value adopted", new MassPerRevolution(adoption.Value), 0);
    }

    private static T? Described<T>(SqliteConnection connection, Workspace workspace, RecordKind kind, string id)
        where T : DescribedRequest =>
        new DescribedRecordStore(kind).Find(connection, workspace, id) is { } record
            ? (T)JsonSerializer.Deserialize(record.Body, JsonSettings.Contract.GetTypeInfo(typeof(T)))!
            : null;

    // Only a test that stands can be adopted, so the end of a chain is named, with what was wrong at its beginning.
    private static Supersedes? SupersededBy(SqliteConnection connection, Workspace workspace, string test)
    {
        if (SupersessionStore.Find(connection, workspace, RecordCatchTest.Kind, test) is not { } first)
            return null;
        var standing = first.Replacement;
        while (SupersessionStore.Find(connection, workspace, RecordCatchTest.Kind, standing) is { } next)
            standing = next.Replacement;
        return new Supersedes { Record = standing, Reason = first.Reason };
    }

    private static Finding[] Findings(SqliteConnection connection, Workspace workspace, AdoptionRecord adoption, CatchTestRecord? basis) => [.. FindingsOf(connection, workspace, adoption, basis)];

    private static AnswerUnits Units(AdoptionRecord adoption, string? units) =>
        AnswerUnits.For(units, UnitTable.Find(adoption.EnteredUnit) is { Dimension: Dimension.MassPerRevolution } unit ? unit : UnitTable.Get("kg/rev"));

    private static AdoptionRequest Entered(AdoptionRecord adoption) =>
        (AdoptionRequest)JsonSerializer.Deserialize(adoption.Body, JsonSettings.Contract.GetTypeInfo(typeof(AdoptionRequest)))!;

    private static CatchTestRecord? Basis(SqliteConnection connection, Workspace workspace, AdoptionRecord adoption) =>
        adoption.Test is { } test ? CatchTestStore.Find(connection, workspace, test) : null;

    private static string? Treatment(SqliteConnection connection, Workspace workspace, string lot) =>
        Described<LotRequest>(connection, workspace, RecordKind.Lots, lot)?.Treatment;

    private static MeasuredMassPerRevolution Measured(CatchTestRecord basis, string? units)
    {
        var measured = JsonNode.Parse(basis.Answer)!["massPerRevolution"]!;
        if (QuantityConversion.For(units) is { } display)
            QuantityConversion.Apply(measured, display);
        return (MeasuredMassPerRevolution)measured.Deserialize(JsonSettings.Contract.GetTypeInfo(typeof(MeasuredMassPerRevolution)))!;
    }
}
