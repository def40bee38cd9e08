using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.CatchTests;

public sealed class TareRoundingTests
{
    private const double Division = 0.02;

    // The same container is rounded the same way each time, so that its rounding does not shrink with more catches.
    [Fact]
    public void TareRounding_EqualReadings_AreWorthOneForAllCatches()
    {
        var test = Given.Test(Given.Weighed(18.70, 1.62, 47), Given.Weighed(18.56, 1.62, 46.8));

        Assert.Equal(TareReading.Shared, test.TareRounding);
        Assert.Equal(Division / Math.Sqrt(12) / 17.01, test.Evaluated().Estimate.SharedTare, 1e-7);
    }

    [Fact]
    public void TareRounding_ReadingsThatDiffer_AreRoundedEachOnItsOwn()
    {
        var test = Given.Test(Given.Weighed(18.70, 1.62, 47), Given.Weighed(18.60, 1.66, 46.8));

        Assert.Equal(TareReading.Each, test.TareRounding);
        Assert.Equal(0, test.Evaluated().Estimate.SharedTare);
    }

    [Fact]
    public void TareRounding_NetMassesAlone_CountAsTheSameContainer() =>
        Assert.Equal(TareReading.Shared, Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8)).TareRounding);

    [Fact]
    public void TareRounding_OneCatch_HasNothingToShare() =>
        Assert.Equal(TareReading.Each, Given.Test(Given.Weighed(18.70, 1.62, 47)).TareRounding);

    [Fact]
    public void TareRounding_CatchThatIsLeftOut_DoesNotDecide() =>
        Assert.Equal(
            TareReading.Shared,
            Given
                .Test(
                    Given.Weighed(18.70, 1.62, 47),
                    Given.Weighed(18.60, 1.66, 46.8, excludedBecause: "spilled"),
                    Given.Weighed(18.56, 1.62, 46.8)
                )
                .TareRounding
        );

    [Fact]
    public void TareRounding_ScaleSetToZero_StaysAsStated() =>
        Assert.Equal(
            TareReading.Zeroed,
            (Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8)) with { TareReading = TareReading.Zeroed }).TareRounding
        );

    // One catch: gross and tare are two roundings, whichever part they are counted to.
    [Fact]
    public void Evaluate_OneCatch_HasTheSameUncertaintyHoweverTheTareIsCounted()
    {
        var each = Given.Test(Given.Net(17.08, 47)).Evaluated().Estimate.Value;
        var shared = (Given.Test(Given.Net(17.08, 47)) with { TareReading = TareReading.Shared }).Evaluated().Estimate.Value;

        NearlyEqual.Assert(each.ExpandedUncertainty, shared.ExpandedUncertainty, 1e-12);
    }

    [Fact]
    public void Assumptions_EqualTareReadings_AreSaid()
    {
        string[] Names(params double[] tares) =>
            [.. Given.Test([.. tares.Select(tare => Given.Weighed(17 + tare, tare, 47))]).Evaluated().Assumptions.Select(one => one.Name)];

        Assert.Contains("sharedTare", Names(1.62, 1.62));
        Assert.DoesNotContain("sharedTare", Names(1.62, 1.64));
        Assert.DoesNotContain("sharedTare", Names(1.62));
    }
}
