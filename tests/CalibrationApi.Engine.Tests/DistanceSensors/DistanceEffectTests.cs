using CalibrationApi.Engine.DistanceSensors;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Wheels;

namespace CalibrationApi.Engine.Tests.DistanceSensors;

/// <summary>Which way a wrong number goes, checked against a machine that is driven step by step.</summary>
public sealed class DistanceEffectTests
{
    [Fact]
    public void RateFactor_MorePulsesInForceThanTheSensorGives_IsTooLittle() => Assert.True(DistanceEffect.RateFactor(12.7, 13.1) < 1);

    [Fact]
    public void RateFactor_FewerPulsesInForceThanTheSensorGives_IsTooMuch() => Assert.True(DistanceEffect.RateFactor(13.1, 12.7) > 1);

    // The controller divides the pulses it sees by the number in force and meters for that distance times its width;
    // what it meters lies on the ground that was driven and covered.
    [Theory]
    [InlineData(12.7, 13.1, 9.0, 9.0)]
    [InlineData(13.1, 12.7, 9.0, 8.6)]
    [InlineData(12.7, 12.7, 8.8, 9.1)]
    public void RateFactor_OfAMachineDriven_IsMassOverGround(double gives, double inForce, double typed, double covered)
    {
        const double Rate = 0.017,
            Driven = 1234;
        var indicatedDistance = gives * Driven / inForce;
        var metered = Rate * typed * indicatedDistance;
        var applied = metered / (covered * Driven);

        NearlyEqual.Assert(
            applied / Rate,
            DistanceEffect.RateFactor(gives, inForce, new WorkingWidth(new Length(9), new Length(covered), new Length(typed)))
        );
    }

    // A wheel turns the meters: what is typed in moves neither, and each pass puts the rate of the whole machine on what it covers.
    [Theory]
    [InlineData(12.7, 13.1, 9.0, 9.0, 1)]
    [InlineData(13.1, 12.7, 9.3, 9.0, 1)]
    [InlineData(13.1, 12.7, 8.7, 8.7, 9 / 8.7)]
    public void RateFactor_OfGroundDrivenMeters_FollowsTheGround(
        double gives,
        double inForce,
        double typed,
        double covered,
        double expected
    )
    {
        var width = new WorkingWidth(new Length(9), new Length(covered), new Length(typed));

        NearlyEqual.Assert(expected, DistanceEffect.RateFactor(gives, inForce, width, MeterDrive.GroundDriven));
        NearlyEqual.Assert(gives / inForce * typed / covered, DistanceEffect.AreaCounted(gives, inForce, width));
    }

    [Fact]
    public void Effect_OnGroundDrivenMeters_IsOnTheCountOfTheAreaOnly()
    {
        var result = (
            Driven.Pure(1260, 1260).InForce(1300e6) with
            {
                MeterDrive = MeterDrive.GroundDriven,
                TargetRate = new MassPerArea(0.017),
                Area = new Area(480_000),
            }
        ).Evaluated();

        Assert.Equal(0, result.Effect!.RateChange.Value);
        Assert.Equal(0, result.Effect.RateChange.ExpandedUncertainty);
        Assert.Equal(0, result.Effect.Application!.MassOverArea!.Value.Kilograms);
        NearlyEqual.Assert(1260 / 1300.0, result.Effect.AreaFactor, 1e-9);
        Assert.Contains("the rate does not follow it", result.Headline.InMetric(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(8.7, "3.4 % too much")]
    [InlineData(9.3, "3.2 % too little")]
    public void Width_OfGroundDrivenPasses_IsAgainstThatOfTheMachine(double passToPass, string which)
    {
        var result = (
            Driven.Runs(1300) with
            {
                MeterDrive = MeterDrive.GroundDriven,
                Width = new WorkingWidth(new Length(9), new Length(passToPass), new Length(passToPass)),
            }
        ).Evaluated();

        Assert.Contains(
            which,
            Assert.Single(result.Findings, finding => finding.Code == DistanceSensorCodes.WidthDiffers).Detail.InMetric(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Effect_OnAnArea_IsMassAndMoney()
    {
        var question = Driven.Pure(1274, 1274).InForce(1300e6) with
        {
            TargetRate = new MassPerArea(0.017),
            Area = new Area(480_000),
            PricePerKilogram = 0.42,
        };
        var effect = question.Evaluated().Effect!;

        NearlyEqual.Assert(-0.02, effect.RateChange.Value, 1e-9);
        NearlyEqual.Assert(0.98, effect.DistanceFactor!.Value, 1e-9);
        NearlyEqual.Assert(0.017 * 0.98, effect.Application!.AppliedRate.KilogramsPerSquareMetre, 1e-9);
        NearlyEqual.Assert(-0.02 * 0.017 * 480_000, effect.Application.MassOverArea!.Value.Kilograms, 1e-9);
        NearlyEqual.Assert(-0.02 * 0.017 * 480_000 * 0.42, effect.Application.Cost!.Value, 1e-9);
    }

    [Fact]
    public void Effect_OfAWidthAlone_IsKnownWithoutDoubtOfTheRuns()
    {
        var effect = (Driven.Runs(1300) with { Width = new WorkingWidth(new Length(9), new Length(8.7)) }).Evaluated().Effect!;

        Assert.Null(effect.DistanceFactor);
        NearlyEqual.Assert(9 / 8.7 - 1, effect.RateChange.Value);
        Assert.Equal(0, effect.RateChange.ExpandedUncertainty);
    }

    [Fact]
    public void Effect_WithoutNumbersOfTheController_IsNotTold() => Assert.Null(Driven.Runs(1300).Evaluated().Effect);

    // 2 % too little distance and 3 % too much width: the headline must not say that too little is applied.
    [Fact]
    public void Headline_OfTwoErrorsThatGoOppositeWays_TellsWhatTheFieldGets()
    {
        var question = Driven.Runs(1260, 1261).InForce(1300) with { Width = new WorkingWidth(new Length(9), new Length(8.5)) };
        var headline = question.Evaluated().Headline.InMetric();

        Assert.Contains(
            "counts too little distance; with the width that is off too, the field gets 2.7 % too much",
            headline,
            StringComparison.Ordinal
        );
    }
}
