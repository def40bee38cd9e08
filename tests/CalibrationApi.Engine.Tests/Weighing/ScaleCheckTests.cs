using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.Weighing;

/// <summary>A scale checked against known masses.</summary>
public sealed class ScaleCheckTests
{
    private static readonly Scale Platform = Given.Platform;

    [Fact]
    public void Evaluate_ScaleThatShowsOnePercentTooMuch_FindsItsSpanError()
    {
        var check = Check([Reading(5, 5.05), Reading(10, 10.10), Reading(20, 20.20)]);

        Assert.Equal(0.01, check.Error, 1e-12);
        Assert.Equal(ScaleVerdict.Failed, check.Verdict);
    }

    // Least squares through the origin by hand: (5 x 0.02 + 20 x 0.04) / (25 + 400).
    [Fact]
    public void Error_UnequalReadings_IsTheSlopeThroughTheOrigin() =>
        NearlyEqual.Assert((5 * 0.02 + 20 * 0.04) / 425, Check([Reading(5, 5.02), Reading(20, 20.04)]).Error, 1e-10);

    [Fact]
    public void StandardUncertainty_OneReading_IsItsRounding() =>
        NearlyEqual.Assert(0.02 / Math.Sqrt(12) / 20, Check([Reading(20, 20.02)]).StandardUncertainty);

    // Residuals of +-0.06 kg about a slope of zero outweigh the rounding of 20 g.
    [Fact]
    public void StandardUncertainty_ReadingsThatScatter_IsThatOfTheirResiduals() =>
        NearlyEqual.Assert(Math.Sqrt(2 * 0.06 * 0.06 / 1 / 800), Check([Reading(20, 20.06), Reading(20, 19.94)]).StandardUncertainty, 1e-9);

    // Known masses are one set and share their error: it does not shrink with their number.
    [Fact]
    public void StandardUncertainty_KnownMasses_AreCommonToAllReadings()
    {
        var one = Check([Reading(20, 20, 0.02)]).StandardUncertainty;
        var many = Check([.. Enumerable.Repeat(Reading(20, 20, 0.02), 100)]).StandardUncertainty;

        Assert.True(one > 0.001);
        Assert.InRange(many, 0.001, one);
    }

    // Limits of class III in service: 0.02 kg to 500 e (10 kg), 0.04 kg to 2000 e (40 kg).
    [Theory]
    [InlineData(5, 5.02, true)]
    [InlineData(5, 5.04, false)]
    [InlineData(20, 20.04, true)]
    [InlineData(20, 19.96, true)]
    [InlineData(20, 20.06, false)]
    public void Passed_ReadingOnOrBeyondItsLimit_IsJudgedAtItsLoad(double known, double indicated, bool passed) =>
        Assert.Equal(passed ? ScaleVerdict.Passed : ScaleVerdict.Failed, Check([Reading(known, indicated)]).Verdict);

    [Fact]
    public void LargestDeviation_SeveralReadings_IsTheOneNearestToOrFarthestBeyondItsLimit()
    {
        var check = Check([Reading(5, 4.98), Reading(20, 20.02)]);

        Assert.Equal(-0.02, check.LargestDeviation.Kilograms, 1e-12);
        Assert.Equal(0.02, check.Limit.Kilograms, 1e-12);
        Assert.Contains("OIML R 76", check.LimitOrigin, StringComparison.Ordinal);
    }

    [Fact]
    public void Evaluate_OutcomeAsKnownError_CorrectsACatch()
    {
        var check = Check([Reading(10, 10.1), Reading(20, 20.2)]);
        var scale = Platform with { KnownError = new KnownScaleError(check.Error, check.StandardUncertainty) };

        var result = (Given.Test(Given.Net(17.17, 47)) with { Scale = scale }).Evaluated();

        NearlyEqual.Assert(17, result.Catches[0].Metered.Kilograms, 1e-12);
    }

    [Fact]
    public void Evaluate_NoReading_IsRefusedAsACodingMistake() =>
        Assert.Throws<ArgumentException>(() => ScaleCheckEvaluation.Evaluate(new(Platform, [])));

    // Where what it shows would be told as 0.00 %, nothing is said of it.
    [Theory]
    [InlineData(20, 20, "The scale is inside its limits and shows what it should.")]
    [InlineData(1000, 1000.04, "The scale is inside its limits and shows what it should.")]
    [InlineData(20, 20.02, "The scale is inside its limits; it shows 0.10 % too much, which is corrected from now on.")]
    [InlineData(20, 19.98, "The scale is inside its limits; it shows 0.10 % too little, which is corrected from now on.")]
    [InlineData(
        20,
        20.06,
        "The scale failed: at 20 kg it is 0.06 kg off, where 0.04 kg is allowed. Do not weigh with it before it is repaired."
    )]
    public void Headline_EachOutcome_SaysWhatToDo(double known, double indicated, string headline) =>
        Assert.Equal(headline, Check([Reading(known, indicated)]).Headline.InMetric());

    // One reading of 20 g on a display of 20 g: its rounding alone is 29 % of it.
    [Theory]
    [InlineData(0.02, false)]
    [InlineData(0.1, true)]
    public void IsKnowledge_LightMass_DependsOnWhatItsRoundingLeaves(double known, bool isKnowledge) =>
        Assert.Equal(isKnowledge, Check([Reading(known, known)]).IsKnowledge);

    // Pounds written down as kilograms are 120 % beside the mass, kilograms as pounds 55 %.
    [Theory]
    [InlineData(20, 24, false)]
    [InlineData(20, 24.02, true)]
    [InlineData(20, 16, false)]
    [InlineData(20, 15.98, true)]
    [InlineData(0, 20, false)]
    public void IsMisread_ReadingBesideItsMass_BeginsBeyondAFifth(double known, double indicated, bool isMisread) =>
        Assert.Equal(isMisread, KnownMassReading.IsMisread(known, indicated));

    [Fact]
    public void Sentences_OfTheLimits_NameThem()
    {
        Assert.StartsWith("The scale shows more than 20 % beside", KnownMassReading.Misread.InMetric(), StringComparison.Ordinal);
        Assert.Contains("uncertain by more than 20 %.", ScaleCheckResult.NoKnowledge.InMetric(), StringComparison.Ordinal);
    }

    private static ScaleCheckResult Check(IReadOnlyList<KnownMassReading> readings) =>
        ScaleCheckEvaluation.Evaluate(new(Platform, readings));

    private static KnownMassReading Reading(double known, double indicated, double uncertainty = 0) =>
        new(new Mass(known), new Mass(indicated), new Mass(uncertainty));
}
