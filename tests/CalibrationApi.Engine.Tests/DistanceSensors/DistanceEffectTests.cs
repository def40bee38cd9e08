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
        const double Rate = 0.017, Driven = 1234;
        var indicatedDistance = gives * Driven / inForce;
        var metered = Rate * typed * indicatedDistance;
        var applied = metered / (covered * Driven);

        NearlyEqual.Assert(applied / Rate, DistanceEffect.RateFactor(gives, inForce, new WorkingWidth(new Length(9), new Length(covered), new Length(typed))));
    }

    [Fact]
    public void Effect_OnAnArea_IsMassAndMoney()
    {
        var question = Driven.Pure(1274, 1274).InForce(1300e6) with { TargetRate = new MassPerArea(0.017), Area = new Area(480_000), PricePerKilogram = 0.42 };
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

        Assert.Contains("counts too little distance; with the width that is off too, the field gets 2.7 % too much", headline, StringComparison.Ordinal);
    }
}
