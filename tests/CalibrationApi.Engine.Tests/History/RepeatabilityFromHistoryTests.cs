using CalibrationApi.Engine.History;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Tests.Statistics;

namespace CalibrationApi.Engine.Tests.History;

/// <summary>Repeatability from the scatter of catches within past tests.</summary>
public sealed class RepeatabilityFromHistoryTests
{
    [Fact]
    public void Of_NoKnownVariance_IsThePooledStandardDeviation()
    {
        // By hand: sums of squares 8e-4 and 2e-4 over 2 + 2 degrees of freedom.
        var prior = RepeatabilityFromHistory.Of([Test(0.98, 1.00, 1.02), Test(0.99, 1.00, 1.01)]);

        NearlyEqual.Assert(Math.Sqrt((8e-4 + 2e-4) / 4), prior!.Relative, 1e-9);
        Assert.Equal(4, prior.DegreesOfFreedom);
        Assert.Contains("6 catches of 2 earlier tests", prior.Origin, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_KnownVariances_AreTakenOff()
    {
        var test = Test(0.98, 1.00, 1.02, 0.97, 1.03);
        var plain = RepeatabilityFromHistory.Of([test])!.Relative;
        var reduced = RepeatabilityFromHistory.Of([test with { Variances = [1e-4, 1e-4, 1e-4, 1e-4, 1e-4] }])!.Relative;

        // With equal known variances the root is the plain one less v.
        NearlyEqual.Assert(plain * plain - 1e-4, reduced * reduced, 1e-9);
    }

    [Fact]
    public void Of_DifferentLevels_DoNotCountAsScatter()
    {
        var same = RepeatabilityFromHistory.Of([Test(0.98, 1.00, 1.02), Test(0.98, 1.00, 1.02)])!.Relative;
        var scaled = RepeatabilityFromHistory.Of([Test(0.98, 1.00, 1.02), Test(0.49, 0.50, 0.51)])!.Relative;

        NearlyEqual.Assert(same, scaled, 1e-9);
    }

    [Fact]
    public void Of_UnderFourDegreesOfFreedom_SaysNothing()
    {
        Assert.Null(RepeatabilityFromHistory.Of([]));
        Assert.Null(RepeatabilityFromHistory.Of([Test(0.98, 1.02), Test(0.99, 1.01), Test(1, 1.01)]));
        Assert.NotNull(RepeatabilityFromHistory.Of([Test(0.98, 1.02), Test(0.99, 1.01), Test(1, 1.01), Test(1, 1.02)]));
    }

    [Fact]
    public void Of_SingleCatches_CountForNothing() => Assert.Null(RepeatabilityFromHistory.Of([.. Enumerable.Repeat(Test(1.0), 20)]));

    [Fact]
    public void Of_LongHistory_IsWorthFifteenDegreesOfFreedomAtMost() =>
        Assert.Equal(15, RepeatabilityFromHistory.Of([.. Enumerable.Repeat(Test(0.98, 1.00, 1.02), 40)])!.DegreesOfFreedom);

    [Fact]
    public void Of_CatchesThatScatterBeyondAllMeasure_AreBelievedUpToTheMost() =>
        Assert.Equal(RepeatabilityPrior.Most, RepeatabilityFromHistory.Of([Test(0.2, 1.0, 1.8), Test(0.2, 1.0, 1.8)])!.Relative);

    [Fact]
    public void Of_CatchesThatNeverDiffer_ProveNoMoreThanTheFloor() =>
        Assert.Equal(RepeatabilityFromHistory.Floor, RepeatabilityFromHistory.Of([.. Enumerable.Repeat(Test(1.0, 1.0, 1.0), 5)])!.Relative);

    // Weighing and counting explain all of the scatter.
    [Fact]
    public void Of_KnownVariancesExplainEverything_IsTheFloor() =>
        Assert.Equal(
            RepeatabilityFromHistory.Floor,
            RepeatabilityFromHistory.Of([Test(0.98, 1.00, 1.02, 1.01, 0.99) with { Variances = [0.01, 0.01, 0.01, 0.01, 0.01] }])!.Relative
        );

    [Fact]
    public void Of_History_IsBelievedByThePooling()
    {
        var prior = RepeatabilityFromHistory.Of([Test(0.98, 1.00, 1.02), Test(0.99, 1.00, 1.01)])!;

        Assert.Equal(prior.DegreesOfFreedom + 1, Pooled.Of([1, 1.01], [0, 0], prior).DegreesOfFreedom);
    }

    private static PastTest Test(params double[] values) => new(values.Average(), 0.005, "lot", values, new double[values.Length]);
}
