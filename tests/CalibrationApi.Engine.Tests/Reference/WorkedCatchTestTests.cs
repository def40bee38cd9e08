using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>Our own worked example of a whole catch test, NOT published: catch-test-worked-example.csv.</summary>
[Trait("Category", "Reference")]
public sealed class WorkedCatchTestTests
{
    private static readonly ReferenceTable Printed = ReferenceTable.Read("catch-test-worked-example.csv");

    private static readonly CatchTestResult Result = (
        Given.Test(Given.Weighed(18.70, 1.62, 47.0), Given.Weighed(18.56, 1.62, 46.8)).InForce(0.342) with
        {
            Limits = Given.OnePercent,
            ControllerEntry = ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), 3),
            TargetRate = new MassPerArea(0.009),
            Area = new Area(480_000),
            PricePerKilogram = 0.42,
        }
    ).Evaluated();

    private static readonly Dictionary<string, double> Computed = new(StringComparer.Ordinal)
    {
        ["net 1 / kg"] = Result.Catches[0].Net.Kilograms,
        ["net 2 / kg"] = Result.Catches[1].Net.Kilograms,
        ["mass per revolution 1 / (kg/rev)"] = Result.Catches[0].MassPerRevolution.KilogramsPerRevolution,
        ["mass per revolution 2 / (kg/rev)"] = Result.Catches[1].MassPerRevolution.KilogramsPerRevolution,
        ["value / (kg/rev)"] = Result.Estimate.Value.Value,
        ["expanded uncertainty / (kg/rev)"] = Result.Estimate.Value.ExpandedUncertainty,
        ["coverage factor"] = Result.Estimate.Value.CoverageFactor,
        ["degrees of freedom"] = Result.Estimate.Value.DegreesOfFreedom,
        ["total mass over total revolutions / (kg/rev)"] = Result.TotalMassOverTotalRevolutions.KilogramsPerRevolution,
        ["mean of ratios / (kg/rev)"] = Result.MeanOfRatios.KilogramsPerRevolution,
        ["catches part / %"] = 100 * Result.Estimate.Catches,
        ["scale part / %"] = 100 * Result.Estimate.Span,
        ["spread / %"] = 100 * Result.Agreement.Spread,
        ["Q"] = Result.Agreement.Q,
        ["Q probability"] = Result.Agreement.QProbability,
        ["change / %"] = 100 * Result.Change!.Delta.Value,
        ["expanded uncertainty of the change / %"] = 100 * Result.Change.Delta.ExpandedUncertainty,
        ["coverage factor of the change"] = Result.Change.Delta.CoverageFactor,
        ["probability within tolerance"] = Result.Change.ProbabilityWithinTolerance,
        ["number to enter"] = Result.Enter!.Typed,
        ["rounding error / %"] = 100 * Result.Enter.RoundingError,
        ["applied rate / (kg/ha)"] = 10_000 * Result.EffectIfValueInForceStays!.AppliedRate.KilogramsPerSquareMetre,
        ["mass over the area / kg"] = Result.EffectIfValueInForceStays.MassOverArea!.Value.Kilograms,
        ["cost / EUR"] = Result.EffectIfValueInForceStays.Cost!.Value,
    };

    public static TheoryData<string> Quantities => [.. Printed.Rows.Select(row => row["quantity"])];

    [Theory]
    [MemberData(nameof(Quantities))]
    public void Evaluate_WorkedExample_RoundsToThePrintedFigure(string quantity) =>
        Printed.Only("quantity", quantity).Printed("printed").AssertReproducedBy(Computed[quantity], what: quantity);

    [Fact]
    public void Evaluate_WorkedExample_ChecksEveryFigureThatWasComputed() =>
        Assert.Equal(
            Computed.Keys.Order(StringComparer.Ordinal),
            Printed.Rows.Select(row => row["quantity"]).Order(StringComparer.Ordinal)
        );

    [Fact]
    public void Evaluate_WorkedExample_SaysWhatToDoAndWhy()
    {
        Assert.Equal(Verdict.Adopt, Result.Decision.Verdict);
        Assert.Equal(
            "The meter delivers 6.0 % more per revolution than the value in force says. Adopt 0.363 kg/rev.",
            Result.Headline.InMetric()
        );
        Assert.Equal(
            "The value in force is within 5 % of the truth with a probability of only 21 %; the two catches agree.",
            Assert.Single(Result.Reasons).Detail.InMetric()
        );
        Assert.True(Result.Agreement.Agree);
    }
}
