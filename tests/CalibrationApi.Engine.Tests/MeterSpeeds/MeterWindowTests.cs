using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.MeterSpeeds;

/// <summary>Speed window for a rate, rate window for a speed.</summary>
public sealed class MeterWindowTests
{
    private static readonly ElementResult Result = Assert.Single(
        MeterSpeedEvaluation.Evaluate(Asked.Question([60, 120], [6, 12])).Elements
    );

    // v = n k / (R W).
    [Fact]
    public void SpeedWindows_EachRate_EndWhereTheMeterMeetsItsLimits()
    {
        foreach (var window in Result.SpeedWindows)
        {
            var perMetre = window.Rate.KilogramsPerSquareMetre * 9;
            NearlyEqual.Assert(4.0 / 60 * 0.342 / perMetre, window.Minimum!.Value.MetresPerSecond);
            NearlyEqual.Assert(90.0 / 60 * 0.342 / perMetre, window.Maximum!.Value.MetresPerSecond);
        }
    }

    // R = n k / (W v).
    [Fact]
    public void RateWindows_EachGroundSpeed_EndWhereTheMeterMeetsItsLimits()
    {
        foreach (var window in Result.RateWindows)
        {
            NearlyEqual.Assert(4.0 / 60 * 0.342 / (9 * window.GroundSpeed.MetresPerSecond), window.Minimum!.Value.KilogramsPerSquareMetre);
            NearlyEqual.Assert(90.0 / 60 * 0.342 / (9 * window.GroundSpeed.MetresPerSecond), window.Maximum!.Value.KilogramsPerSquareMetre);
        }
    }

    // The two windows are one statement: at the fastest speed for a rate, the highest rate is that rate.
    [Fact]
    public void RateWindows_AtTheEndOfASpeedWindow_EndAtItsRate()
    {
        var fastest = Result.SpeedWindows[0].Maximum!.Value;
        var back = MeterSpeedEvaluation.Evaluate(Asked.Question([60], []) with { GroundSpeeds = [fastest] }).Elements[0].RateWindows[0];

        NearlyEqual.Assert(60.0 / 10_000, back.Maximum!.Value.KilogramsPerSquareMetre);
    }

    [Fact]
    public void Windows_MeterWithoutLimits_AreOpen()
    {
        var question = Asked.Question([90], [9]) with { Elements = [Asked.Element("roller", 0.342, MeterSpeedLimits.None)] };
        var result = Assert.Single(MeterSpeedEvaluation.Evaluate(question).Elements);

        Assert.Null(result.SpeedWindows[0].Minimum);
        Assert.Null(result.SpeedWindows[0].Maximum);
        Assert.Null(result.RateWindows[0].Minimum);
        Assert.Null(result.RateWindows[0].Maximum);
    }

    [Fact]
    public void SpeedWindows_InsideAndOutside_AgreeWithTheCorners()
    {
        var window = Result.SpeedWindows[0];
        foreach (var (factor, within) in ((double, bool)[])[(0.99, true), (1.01, false)])
        {
            var question = Asked.Question([60], []) with { GroundSpeeds = [new Speed(window.Maximum!.Value.MetresPerSecond * factor)] };
            Assert.Equal(within, MeterSpeedEvaluation.Evaluate(question).Elements[0].Corners[0].Within);
        }
    }
}
