using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>The number to type in: near changes shrink towards an old number that has evidence, far ones are taken whole.</summary>
public sealed class ValueToUseTests
{
    private static readonly CatchTestQuestion OneCatch = Given.Test(Given.Net(17.08, 47)) with
    {
        ControllerEntry = ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), 5),
    };

    [Fact]
    public void ToUse_OldNumberWithEvidence_LiesBetweenBoth()
    {
        var result = OneCatch.InForce(0.35, 0.01).Evaluated();

        Assert.Equal(Verdict.Adopt, result.Decision.Verdict);
        var measured = result.Estimate.Value.Value;
        var change = Math.Log(measured / 0.35);
        var uncertainty = Math.Sqrt(result.Estimate.RelativeVariance + 0.0001);
        NearlyEqual.Assert(
            0.35 * Math.Exp(StudentTShrinkage.Estimate(change, uncertainty, 0.015)),
            result.ToUse!.Value.KilogramsPerRevolution,
            1e-12
        );
        Assert.InRange(result.ToUse.Value.KilogramsPerRevolution, 0.351, measured - 0.001);
        Assert.Equal(Math.Round(result.ToUse.Value.KilogramsPerRevolution, 5), result.Enter!.Typed);
        Assert.Contains(
            "This test alone found 0.3634",
            Assert.Single(result.Findings, each => each.Code == CatchTestCodes.DrawnTowardsOldNumber).Detail.InMetric(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void ToUse_MoreCatches_DrawLess()
    {
        var one = OneCatch.InForce(0.345, 0.01).Evaluated().ToUse!;
        var five = (OneCatch with { Catches = [.. Enumerable.Repeat(OneCatch.Catches[0], 5)] }).InForce(0.345, 0.01).Evaluated().ToUse!;

        Assert.True(one.Drawn < five.Drawn);
        Assert.True(five.Drawn < 0);
    }

    [Theory]
    [InlineData(null)]
    [InlineData(0.2)]
    public void ToUse_OldNumberWithoutEvidence_IsHardlyDrawn(double? uncertainty) =>
        Assert.InRange(OneCatch.InForce(0.345, uncertainty).Evaluated().ToUse!.Drawn, -0.001, 0);

    [Fact]
    public void ToUse_NewLot_IsTheMeasuredValue() =>
        Assert.Equal(0, (OneCatch.InForce(0.345, 0.01) with { Context = new() { NewLot = true } }).Evaluated().ToUse!.Drawn);

    [Fact]
    public void ToUse_AnotherVerdict_IsAbsent() => Assert.Null(OneCatch.InForce(0.3627, 0.01).Evaluated().ToUse);
}
