using CalibrationApi.Engine.MeterSpeeds;

namespace CalibrationApi.Engine.Tests.MeterSpeeds;

/// <summary>Ground spacing of discharge pulses, v / (n pockets).</summary>
public sealed class DischargeSpacingTests
{
    [Fact]
    public void DischargeSpacing_PocketsKnown_IsTheGroundBetweenTwoDischarges()
    {
        var question = Asked.Question([90], [9]) with { Elements = [Asked.Element("roller", 0.342) with { Pockets = 8 }] };
        var corner = MeterSpeedEvaluation.Evaluate(question).Elements[0].Corners[0];

        NearlyEqual.Assert(2.5 / (corner.MeterSpeed.RevolutionsPerSecond * 8), corner.DischargeSpacing!.Value.Metres);
    }

    // v cancels: k / (R W pockets).
    [Theory]
    [InlineData(3)]
    [InlineData(9)]
    [InlineData(15)]
    public void DischargeSpacing_AnyGroundSpeed_IsTheSame(double speed)
    {
        var question = Asked.Question([90], [speed]) with { Elements = [Asked.Element("roller", 0.342) with { Pockets = 8 }] };

        NearlyEqual.Assert(
            0.342 / (0.009 * 9 * 8),
            MeterSpeedEvaluation.Evaluate(question).Elements[0].Corners[0].DischargeSpacing!.Value.Metres
        );
    }

    [Fact]
    public void DischargeSpacing_PocketsUnknown_IsNotSaid() =>
        Assert.Null(MeterSpeedEvaluation.Evaluate(Asked.Question([90], [9])).Elements[0].Corners[0].DischargeSpacing);
}
