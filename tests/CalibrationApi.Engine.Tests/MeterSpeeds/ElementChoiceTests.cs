using CalibrationApi.Engine.MeterSpeeds;

namespace CalibrationApi.Engine.Tests.MeterSpeeds;

/// <summary>The choice among the elements a machine has, ranked by the room to their nearer limit.</summary>
public sealed class ElementChoiceTests
{
    // min(ln(n_low / n_min), ln(n_max / n_high)) with n = 35.53 rpm between 4 and 90 rpm.
    [Fact]
    public void Margin_OneSpeed_IsTheLogarithmOfTheRoomToTheNearerLimit() =>
        NearlyEqual.Assert(
            Math.Log(90 / (0.009 * 9 * 2.5 / 0.342 * 60)),
            MeterSpeedEvaluation.Evaluate(Asked.Question([90], [9])).Elements[0].Margin,
            1e-9
        );

    [Theory]
    [InlineData(10, 20, 4, 90, 0.9162907318741551)]
    [InlineData(40, 60, 4, 90, 0.4054651081081644)]
    [InlineData(3, 20, 4, 90, -0.2876820724517809)]
    [InlineData(10, 120, 4, 90, -0.2876820724517809)]
    public void Margin_RangeOfSpeeds_TakesTheNearerEnd(double lowest, double highest, double minimum, double maximum, double expected) =>
        NearlyEqual.Assert(expected, new MeterSpeedLimits(new(minimum), new(maximum)).Margin(lowest, highest), 1e-12);

    [Fact]
    public void Margin_NoLimits_IsInfinite()
    {
        Assert.Equal(double.PositiveInfinity, MeterSpeedLimits.None.Margin(1, 2));
        Assert.Equal(double.PositiveInfinity, new MeterSpeedLimits(new(0), null).Margin(1, 2));
    }

    [Fact]
    public void Elements_Several_AreRankedByTheirRoom()
    {
        var question = Asked.Question([60, 120], [6, 12]) with
        {
            Elements = [Asked.Element("fine", 0.05), Asked.Element("medium", 0.60), Asked.Element("coarse", 2.5)],
        };

        var result = MeterSpeedEvaluation.Evaluate(question);

        Assert.Equal("medium", result.Elements[0].Element.Name);
        Assert.Equal(result.Elements.OrderByDescending(element => element.Margin), result.Elements);
        Assert.StartsWith("Use medium", result.Headline.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void Headline_NothingFits_NamesTheNearestAndWhatWouldHelp()
    {
        var question = Asked.Question([60], [9]) with { Elements = [Asked.Element("coarse", 10), Asked.Element("coarser", 20)] };

        var headline = MeterSpeedEvaluation.Evaluate(question).Headline.InMetric();

        Assert.Contains("The nearest is coarse:", headline, StringComparison.Ordinal);
        Assert.Contains("needs at least 44.4 km/h", headline, StringComparison.Ordinal);
    }

    [Fact]
    public void Headline_NoLimitsKnown_SaysSo() =>
        Assert.StartsWith(
            "No limits of the meter speed are known.",
            MeterSpeedEvaluation
                .Evaluate(Asked.Question([90], [9]) with { Elements = [Asked.Element("roller", 0.342, MeterSpeedLimits.None)] })
                .Headline.InMetric(),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(45, 2)]
    [InlineData(60, 1.5)]
    [InlineData(100, 0.9)]
    public void Room_OfAnElement_IsTheFactorToTheNearerLimitLessOne(double rpm, double factor)
    {
        // So fast a machine that the meter turns at so many revolutions, with 90 the most.
        var speed = rpm / 60 * 0.342 / (0.009 * 9);

        NearlyEqual.Assert(factor - 1, MeterSpeedEvaluation.Evaluate(Asked.Question([90], [speed * 3.6])).Elements[0].Room, 1e-12);
    }
}
