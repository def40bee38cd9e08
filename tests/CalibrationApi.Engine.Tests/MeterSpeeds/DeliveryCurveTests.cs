using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.MeterSpeeds;

/// <summary>Mass per revolution as it depends on meter speed: n k(n) = R W v has one answer.</summary>
public sealed class DeliveryCurveTests
{
    // 0.36 kg/rev at 20 rpm falling to 0.33 at 80 rpm.
    private static readonly DeliveryCurve Falling = Through((20, 0.36), (50, 0.35), (80, 0.33))!;

    [Fact]
    public void At_MeasuredPoint_IsItsValue() => NearlyEqual.Assert(0.35, Falling.At(50.0 / 60));

    [Fact]
    public void At_BetweenPoints_IsOnTheStraightLine() => NearlyEqual.Assert(0.355, Falling.At(35.0 / 60));

    [Theory]
    [InlineData(1, 0.36)]
    [InlineData(200, 0.33)]
    public void At_OutsideTheMeasuredSpeeds_KeepsTheNearestValue(double rpm, double expected) =>
        NearlyEqual.Assert(expected, Falling.At(rpm / 60));

    [Theory]
    [InlineData(1)]
    [InlineData(20)]
    [InlineData(33)]
    [InlineData(50)]
    [InlineData(79.9)]
    [InlineData(80)]
    [InlineData(150)]
    public void SpeedFor_FlowOfASpeed_GivesTheSpeedBack(double rpm) =>
        NearlyEqual.Assert(rpm / 60, Falling.SpeedFor(Falling.FlowAt(rpm / 60)), 1e-12);

    [Fact]
    public void SpeedFor_NearlyConstantCurve_DoesNotLoseDigits()
    {
        var curve = Through((20, 0.36), (80, 0.36 * (1 + 1e-14)))!;

        NearlyEqual.Assert(50.0 / 60, curve.SpeedFor(curve.FlowAt(50.0 / 60)), 1e-13);
    }

    [Fact]
    public void SpeedFor_Constant_IsTheFlowOverTheValue()
    {
        var curve = DeliveryCurve.Constant(new MassPerRevolution(0.342));

        NearlyEqual.Assert(0.2025 / 0.342, curve.SpeedFor(0.2025));
        Assert.Null(curve.SlowestMeasured);
        Assert.Null(curve.FastestMeasured);
    }

    [Fact]
    public void SpeedFor_MoreFlow_AlwaysTakesAFasterMeter()
    {
        var speeds = Enumerable.Range(1, 300).Select(i => Falling.SpeedFor(i * 0.003)).ToArray();

        Assert.All(speeds.Zip(speeds.Skip(1)), pair => Assert.True(pair.First < pair.Second));
    }

    [Fact]
    public void Through_PointsInAnyOrder_AreSorted()
    {
        var curve = Through((80, 0.33), (20, 0.36), (50, 0.35))!;

        NearlyEqual.Assert(20.0 / 60, curve.SlowestMeasured!.Value);
        NearlyEqual.Assert(80.0 / 60, curve.FastestMeasured!.Value);
        NearlyEqual.Assert(Falling.At(35.0 / 60), curve.At(35.0 / 60));
    }

    // A faster meter that delivers less mass per time has two speeds for one rate: no answer is better than either.
    [Fact]
    public void Through_FlowThatFallsWithSpeed_IsNoCurve() => Assert.Null(Through((20, 0.36), (80, 0.05)));

    [Fact]
    public void Through_PointsThatCannotBe_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => Through());
        Assert.Throws<ArgumentException>(() => Through((0, 0.36)));
        Assert.Throws<ArgumentException>(() => Through((20, 0)));
        Assert.Throws<ArgumentException>(() => Through((20, 0.36), (20, 0.35)));
        Assert.Throws<ArgumentOutOfRangeException>(() => DeliveryCurve.Constant(new MassPerRevolution(0)));
    }

    [Fact]
    public void Evaluate_CurveInsteadOfAConstant_TurnsAtTheSpeedThatDeliversTheRate()
    {
        var question = Asked.Question([90], [9]) with { Elements = [new("roller", Falling, MeterSpeedLimits.None)] };
        var corner = MeterSpeedEvaluation.Evaluate(question).Elements[0].Corners[0];

        var n = corner.MeterSpeed.RevolutionsPerSecond;
        NearlyEqual.Assert(0.009 * 9 * 2.5, n * Falling.At(n), 1e-12);
    }

    [Fact]
    public void Evaluate_SpeedsOutsideTheMeasuredOnes_AreNoted()
    {
        var question = Asked.Question([90, 300], [9]) with { Elements = [new("roller", Falling, MeterSpeedLimits.None)] };

        Assert.Single(MeterSpeedEvaluation.Evaluate(question).Findings, finding => finding.Code == MeterSpeedCodes.OutsideMeasuredSpeeds);
        Assert.DoesNotContain(MeterSpeedEvaluation.Evaluate(question with { Rates = [new MassPerArea(0.009)] }).Findings, finding =>
            finding.Code == MeterSpeedCodes.OutsideMeasuredSpeeds
        );
    }

    private static DeliveryCurve? Through(params (double Rpm, double Value)[] points) =>
        DeliveryCurve.Through(points.Select(point => (Planned.Rpm(point.Rpm), new MassPerRevolution(point.Value))));
}
