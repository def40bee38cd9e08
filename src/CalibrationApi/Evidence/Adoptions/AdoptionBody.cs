using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Evidence.CatchTests;
using CalibrationApi.Evidence.Superseding;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Storing;
using CalibrationApi.Records.Describing;
using CalibrationApi.Records.Lots;
using CalibrationApi.Records.Machines;
using CalibrationApi.Records.Products;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.Records;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Evidence.Adoptions;

/// <summary>The representations of an adoption: as a record, and as the value in force.</summary>
internal static class AdoptionBody
{
    public static byte[] Write(SqliteConnection connection, Workspace workspace, AdoptionRecord adoption, string timeZone, string? units)
    {
        var answerUnits = Units(adoption, units);
        var superseded = SupersessionStore.Find(connection, workspace, AdoptValue.Kind, adoption.Id);
        var entered = Entered(adoption);
        var answer = new AdoptionAnswer
        {
            Id = adoption.Id,
            OccurredAt = EnteredInstant.Write(adoption.OccurredAt),
            LocalDate = LocalDate.Of(adoption.OccurredAt, timeZone),
            ReceivedAt = EnteredInstant.Write(adoption.ReceivedAt),
            MassPerRevolution = answerUnits.MassPerRevolution(new MassPerRevolution(adoption.Value)),
            Entered = entered,
            Findings = answerUnits.Findings([
                .. FindingsOf(
                    new RecordsReadOnce(connection, workspace),
                    adoption,
                    entered,
                    TestBehind.Of(connection, workspace, adoption)
                ),
            ]),
            SupersededBy = superseded is null ? null : new Supersedes { Record = superseded.Replacement, Reason = superseded.Reason },
        };
        var node = JsonNode.Parse(JsonSerializer.Serialize(answer, JsonSettings.Contract.GetTypeInfo(typeof(AdoptionAnswer))))!;
        node["entered"] = EnteredBody.Node(adoption.Body);
        return Encoding.UTF8.GetBytes(node.ToJsonString(JsonSettings.Writing));
    }

    public static ValueInForceAnswer InForce(RecordsReadOnce records, AdoptionRecord adoption, string timeZone, string? units)
    {
        var answerUnits = Units(adoption, units);
        var entered = Entered(adoption);
        var basis = TestBehind.Of(records.Connection, records.Workspace, adoption);
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
            Treatment = adoption.Lot is { } lot ? records.Find<LotRequest>(RecordKind.Lots, lot)?.Treatment : null,
            Test = adoption.Test,
            Measured = basis?.MeasuredIn(units),
            Conditions = basis?.Conditions,
            BasisSupersededBy = basis?.SupersededBy,
            Findings = answerUnits.Findings([.. FindingsOf(records, adoption, entered, basis)]),
        };
    }

    // The number in the controller stays what it is until somebody types another; what it rests on may turn out wrong.
    private static IEnumerable<Finding> FindingsOf(
        RecordsReadOnce records,
        AdoptionRecord adoption,
        AdoptionRequest entered,
        TestBehind? basis
    )
    {
        foreach (var despite in entered.Despite ?? [])
            yield return TypedValueCheck.Despite(despite!.Code!, despite.Reason!);
        if (PhysicalFinding(records, adoption) is { } physical)
            yield return physical;
        foreach (var finding in ByHand(records, adoption, entered, basis))
            yield return finding;
        if (basis is null)
            yield break;
        if (basis.SupersededBy is { } superseded)
        {
            var isSameSeries =
                CatchTestStore.FindBasis(records.Connection, records.Workspace, superseded.Record!)!.Series == adoption.Series;
            var remedy = isSameSeries
                ? "adopt the value of the test in its place"
                : "test again, because the test in its place is of another meter, element, setting or product";
            yield return Finding.Stop(
                FindingCode.BasisSuperseded,
                $"The test behind this value was wrong ({superseded.Reason}) and has been superseded. The controller still uses this number: {remedy}."
            );
        }

        if (Otherwise(adoption, basis) is { } otherwise)
            yield return Finding.Warning(FindingCode.AdoptedOtherwise, otherwise);
        if (CatchTestRecordBody.FailedLater(records.Connection, records.Workspace, basis.Test.Scale, basis.Test.OccurredAt) is { } failed)
            yield return Finding.Warning(
                FindingCode.ScaleCheckFailedLater,
                $"The scale behind this value failed its first check after the test: it was {new Ratio(failed.Error):F2} off. The value may be off by as much; test again with a good scale."
            );
        if (basis.Test.Verdict is "investigate" or "repeat")
            yield return Finding.Warning(
                FindingCode.AdoptedOtherwise,
                $"The test behind this value said '{basis.Test.Verdict}', not adopt."
            );
    }

    // Null when the number typed in is the one that the test gave or, where the controller's form is not known, lies within what it
    // measured.
    private static FormattableString? Otherwise(AdoptionRecord adoption, TestBehind basis)
    {
        if (basis.Enter is { } enter)
        {
            var (value, unit) = (enter["value"]!.GetValue<double>(), enter["unit"]!.GetValue<string>());
            var isSame =
                unit == adoption.EnteredUnit
                    ? value == adoption.EnteredValue
                    : Math.Abs(adoption.Value - TypedValueGuard.Canonical(enter["resultingMassPerRevolution"]!, "value"))
                        <= 1e-9 * adoption.Value;
            return isSame
                ? null
                : (FormattableString)
                    $"The number typed in, {adoption.EnteredValue} {adoption.EnteredUnit}, is not the {value} {unit} that the test gave.";
        }

        var measured = basis.Measured;
        return
            Math.Abs(adoption.Value - TypedValueGuard.Canonical(measured, "value"))
            <= TypedValueGuard.Canonical(measured, "expandedUncertainty")
            ? null
            : (FormattableString)
                $"The number typed in, {adoption.EnteredValue} {adoption.EnteredUnit}, lies outside what the test measured, {new MassPerRevolution(TypedValueGuard.Canonical(measured, "value"))}.";
    }

    // A number that its test explains was looked at with the test; any other is compared with what was known when it was typed in.
    private static IReadOnlyList<Finding> ByHand(
        RecordsReadOnce records,
        AdoptionRecord adoption,
        AdoptionRequest entered,
        TestBehind? basis
    ) =>
        basis is not null && entered.Despite is null
            ? []
            : TypedValueAgainstProducts.FindingsOf(
                TypedValueRecords.Surround(
                    new TypedValue
                    {
                        Value = new MassPerRevolution(adoption.Value),
                        InWords = string.Create(CultureInfo.InvariantCulture, $"{adoption.EnteredValue} {adoption.EnteredUnit}"),
                        Test = basis is null
                            ? null
                            : new TestBehindValue(
                                new MassPerRevolution(TypedValueGuard.Canonical(basis.Measured, "value")),
                                TypedValueGuard.Canonical(basis.Measured, "expandedUncertainty"),
                                basis.Enter is { } enter
                                    ? new MassPerRevolution(TypedValueGuard.Canonical(enter["resultingMassPerRevolution"]!, "value"))
                                    : null
                            ),
                    },
                    records,
                    adoption.Series,
                    adoption.Lot,
                    adoption.OccurredAt,
                    adoption.Id
                )
            );

    // Displacement and density may have become known, or been corrected, after the value was adopted.
    private static Finding? PhysicalFinding(RecordsReadOnce records, AdoptionRecord adoption)
    {
        var element = records
            .Find<MachineRequest>(RecordKind.Machines, adoption.Series.Machine)
            ?.Meters!.FirstOrDefault(meter => meter!.Position == adoption.Series.Meter)
            ?.Elements!.FirstOrDefault(one => one!.Name == adoption.Series.Element);
        if (element?.DisplacementPerRevolution is null)
            return null;
        var density = (adoption.Lot is { } lot ? records.Find<LotRequest>(RecordKind.Lots, lot)?.BulkDensity : null)
            ?? records.Find<ProductRequest>(RecordKind.Products, adoption.Series.Product)?.BulkDensity;
        return ElementOfMachine.Content(element, density)?.FindingOf("The value adopted", new MassPerRevolution(adoption.Value), 0);
    }

    private static AnswerUnits Units(AdoptionRecord adoption, string? units) =>
        AnswerUnits.For(
            units,
            UnitTable.Find(adoption.EnteredUnit) is { Dimension: Dimension.MassPerRevolution } unit ? unit : UnitTable.Get("kg/rev")
        );

    private static AdoptionRequest Entered(AdoptionRecord adoption) =>
        (AdoptionRequest)JsonSerializer.Deserialize(adoption.Body, JsonSettings.Contract.GetTypeInfo(typeof(AdoptionRequest)))!;
}
