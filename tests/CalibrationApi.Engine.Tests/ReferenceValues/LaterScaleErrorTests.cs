using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.ReferenceValues;

namespace CalibrationApi.Engine.Tests.ReferenceValues;

public sealed class LaterScaleErrorTests
{
    // The old scale showed 7 % too much, so that a meter that has not changed delivers 1 / 1.07 of the value in force.
    // What showed 1 % too much and was corrected for it, and shows 3.02 % too much now, is 2 % beyond what was corrected.
    [Theory]
    [InlineData(0.0302, 0.01, 0.02)]
    [InlineData(0.02, 0, 0.02)]
    [InlineData(0.01, 0.01, 0)]
    public void Beyond_WhatWasCorrected_IsTheRestOfTheError(double found, double corrected, double beyond) =>
        Assert.Equal(beyond, LaterScaleError.Beyond(found, corrected), 1e-12);

    // Half a load more than there was is beyond all that is counted.
    [Theory]
    [InlineData(0.0302, 0.002, 0.01, 0.02, 0.002)]
    [InlineData(0.5, 0.3, 0, 0.2, 0.2)]
    [InlineData(-0.5, 0.3, 0, -0.2, 0.2)]
    public void Counted_AnErrorFoundLater_IsHeldInsideWhatAQuestionMayState(
        double found,
        double uncertainty,
        double corrected,
        double error,
        double standardUncertainty
    )
    {
        var counted = LaterScaleError.Counted(found, uncertainty, corrected);

        Assert.Equal(error, counted.Error, 1e-12);
        Assert.Equal(standardUncertainty, counted.StandardUncertainty);
    }

    [Fact]
    public void Evaluate_OldScaleErrorExplainsTheChange_SaysSoFirstWithBothNumbers()
    {
        var result = Compared(1 / 1.07, 0.07).Evaluated();

        Assert.StartsWith(
            "The scale behind the value in force showed 7.0 % too much, as was found later. That alone makes 6.5 % less per revolution; this test shows 6.5 % less. ",
            result.Headline.InMetric(),
            StringComparison.Ordinal
        );
        Assert.Equal(CatchTestCodes.OldScaleExplainsChange, result.Reasons[0].Code);
        Assert.Equal(2, result.Reasons.Count);
    }

    [Theory]
    [InlineData(1 / 1.07, -0.07)]
    [InlineData(1.07, 0.07)]
    [InlineData(0.85, 0.07)]
    [InlineData(1.0, 0.07)]
    [InlineData(0.935, 0.005)]
    public void Evaluate_ErrorOfOtherSizeOrSign_ExplainsNothing(double ratio, double error)
    {
        var result = Compared(ratio, error).Evaluated();

        Assert.DoesNotContain(result.Reasons, each => each.Code == CatchTestCodes.OldScaleExplainsChange);
        Assert.DoesNotContain("found later", result.Headline.InMetric(), StringComparison.Ordinal);
    }

    private static CatchTestQuestion Compared(double ratio, double error)
    {
        var test = Given
            .Test(Given.Delivering(0.36 * ratio), Given.Delivering(0.3605 * ratio), Given.Delivering(0.3595 * ratio))
            .InForce(0.36);
        return test with { Reference = test.Reference! with { ScaleErrorFoundLater = new LaterScaleError(error, 0.002) } };
    }

    [Theory]
    [InlineData(0.07)]
    [InlineData(-0.02)]
    public void ChangeItMakes_OfAnError_IsThatOfAnUnchangedMeter(double error) =>
        NearlyEqual.Assert(0.36 / (0.36 * (1 + error)) - 1, new LaterScaleError(error, 0.002).ChangeItMakes, 1e-12);

    [Theory]
    [InlineData(1 / 1.07, 0.07, true)]
    [InlineData(1 / 1.07, -0.07, false)]
    [InlineData(0.85, 0.07, false)]
    [InlineData(1.0, 0.07, false)]
    public void Explains_AChange_OnlyOfItsSizeAndSign(double ratio, double error, bool explains) =>
        Assert.Equal(
            explains,
            ScaleErrorBehindChange.Explains(new LaterScaleError(error, 0.002), Compared(ratio, error).Evaluated().Change!)
        );
}
