using System.Globalization;
using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Evidence.CatchTests;
using CalibrationApi.Records.Machines;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage.Adoptions;

namespace CalibrationApi.Evidence.Adoptions;

/// <summary>What is noticed about an adopted value when it is read.</summary>
internal static class AdoptionFindings
{
    public static JudgedValue ValueOf(WorkspaceReader reader, AdoptionRecord adoption, AdoptionRequest entered, TestBehind? basis) =>
        new(new MassPerRevolution(adoption.Value), [.. Of(reader, adoption, entered, basis)]);

    // The number in the controller stays what it is until somebody types another; what it rests on may turn out wrong.
    public static IEnumerable<Finding> Of(WorkspaceReader reader, AdoptionRecord adoption, AdoptionRequest entered, TestBehind? basis)
    {
        foreach (var despite in entered.Despite ?? [])
            yield return TypedValueCheck.Despite(TypedValueCheck.Codes.Single(code => code.Word == despite!.Code), despite!.Reason!);
        if (PhysicalFinding(reader, adoption) is { } physical)
            yield return physical;
        foreach (var finding in ByHand(reader, adoption, entered, basis))
            yield return finding;
        if (basis is null)
            yield break;
        if (basis.SupersededBy is { } superseded)
        {
            var isOfSameSeries = reader.TestBehind(superseded.Record!)!.Series == adoption.Series;
            yield return AdoptedAgainstTest.Superseded(superseded.Reason!, isOfSameSeries);
        }

        foreach (var finding in AgainstItsTest(reader, adoption, basis).Findings())
            yield return finding;
    }

    private static AdoptedAgainstTest AgainstItsTest(WorkspaceReader reader, AdoptionRecord adoption, TestBehind basis)
    {
        var against = new AdoptedAgainstTest(new MassPerRevolution(adoption.Value), InWords(adoption), basis.Value)
        {
            OtherVerdict = basis.Test.Verdict is "investigate" or "repeat" ? basis.Test.Verdict : null,
            ErrorOfFailedCheck = reader.FailedLater(basis.Test.Scale, basis.Test.OccurredAt)?.Error,
        };
        if (basis.Enter is not { } enter)
            return against;
        var (value, unit) = (enter["value"]!.GetValue<double>(), enter["unit"]!.GetValue<string>());
        return against with
        {
            GivenInWords = InWords(value, unit),
            IsNumberGiven = unit == adoption.EnteredUnit ? value == adoption.EnteredValue : null,
        };
    }

    private static string InWords(AdoptionRecord adoption) => InWords(adoption.EnteredValue, adoption.EnteredUnit);

    private static string InWords(double value, string unit) => string.Create(CultureInfo.InvariantCulture, $"{value} {unit}");

    // A number that its test explains was looked at with the test; any other is compared with what was known when it was typed in.
    private static IReadOnlyList<Finding> ByHand(
        WorkspaceReader reader,
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
                        InWords = InWords(adoption),
                        Test = basis?.Value,
                    },
                    reader,
                    adoption.Series,
                    adoption.Lot,
                    adoption.OccurredAt,
                    adoption.Id
                )
            );

    // Displacement and density may have become known, or been corrected, after the value was adopted.
    private static Finding? PhysicalFinding(WorkspaceReader reader, AdoptionRecord adoption)
    {
        var element = reader
            .Machine(adoption.Series.Machine)
            ?.Meters!.FirstOrDefault(meter => meter!.Position == adoption.Series.Meter)
            ?.Elements!.FirstOrDefault(one => one!.Name == adoption.Series.Element);
        if (element?.DisplacementPerRevolution is null)
            return null;
        var density = reader.DensityOf(adoption.Series.Product, adoption.Lot);
        return ElementOfMachine.Content(element, density)?.FindingOf("The value adopted", new MassPerRevolution(adoption.Value), 0);
    }
}
