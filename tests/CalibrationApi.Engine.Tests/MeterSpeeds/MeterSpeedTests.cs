using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.MeterSpeeds;

/// <summary>n = R W v / k for a rate and a ground speed, and the corners of a range of both.</summary>
public sealed class MeterSpeedTests
{
    // 90 kg/ha over 9 m at 9 km/h with 0.342 kg/rev.
    [Fact]
    public void MeterSpeed_OneRateAndSpeed_IsTheFlowOverTheMassPerRevolution()
    {
        var corner = Assert.Single(Only(Asked.Question([90], [9])).Corners);

        NearlyEqual.Assert(0.009 * 9 * 2.5 / 0.342, corner.MeterSpeed.RevolutionsPerSecond);
        Assert.True(corner.Within);
    }

    [Fact]
    public void Corners_RangeOfRatesAndSpeeds_AreTheirFourExtremes()
    {
        var corners = Only(Asked.Question([60, 120, 90], [12, 6, 9])).Corners;

        Assert.Equal(4, corners.Count);
        Assert.Equal(
            [(60, 6), (60, 12), (120, 6), (120, 12)],
            corners.Select(corner => (Whole(corner.Rate), Whole(corner.GroundSpeed))).Order()
        );

        static int Whole(IQuantity quantity) => (int)Math.Round(DisplayUnits.Metric.Value(quantity));
    }

    // Zero in a variable-rate map means off, not a meter that turns infinitely slowly.
    [Fact]
    public void Corners_ZeroRate_IsNoCorner()
    {
        var with = Only(Asked.Question([0, 60, 120], [9]));
        var without = Only(Asked.Question([60, 120], [9]));

        Assert.Equal(without.Corners, with.Corners);
        Assert.Equal(without.Margin, with.Margin);
        Assert.Equal(2, with.SpeedWindows.Count);
    }

    [Fact]
    public void Corners_SameRateTwice_CountsOnce() => Assert.Single(Only(Asked.Question([90, 90], [9, 9])).Corners);

    // A ground speed read from the window and asked again stands on the limit, and a limit belongs to the window.
    [Theory]
    [InlineData(7)]
    [InlineData(23.7)]
    [InlineData(61.3)]
    [InlineData(90)]
    [InlineData(133.33)]
    public void SpeedWindows_EndsAskedAgain_AreInside(double rate)
    {
        var window = Assert.Single(Only(Asked.Question([rate], [9])).SpeedWindows);
        foreach (var end in new[] { window.Minimum!.Value, window.Maximum!.Value })
        {
            var again = MeterSpeedEvaluation.Evaluate(Asked.Question([rate], [9]) with { GroundSpeeds = [end] });

            Assert.True(again.Elements[0].Fits);
            Assert.DoesNotContain(again.Findings, each => each.Code == SharedCodes.OutsideMeterWindow);
        }
    }

    [Theory]
    [InlineData(6, "under the least")]
    [InlineData(300, "above the highest")]
    public void Findings_CornerOutsideTheLimits_AreWarnedOfWithTheRemedy(double rate, string expected)
    {
        var result = MeterSpeedEvaluation.Evaluate(Asked.Question([rate], [9]));

        Assert.False(result.Elements[0].Fits);
        var finding = Assert.Single(result.Findings, each => each.Code == SharedCodes.OutsideMeterWindow);
        Assert.Contains(expected, finding.Detail.InMetric(), StringComparison.Ordinal);
        Assert.StartsWith("No element serves all rates at all ground speeds.", result.Headline.InMetric(), StringComparison.Ordinal);
    }

    // Four corners, two of them too slow and one too fast: one sentence for each side, of the worst.
    [Fact]
    public void Findings_ManyCornersOutside_AreToldOnceForEachSide()
    {
        string[] details =
        [
            .. MeterSpeedEvaluation
                .Evaluate(Asked.Question([3, 300], [5, 9]))
                .Findings.Where(each => each.Code == SharedCodes.OutsideMeterWindow)
                .Select(each => each.Detail.InMetric()),
        ];

        Assert.Equal(2, details.Length);
        Assert.Contains("3 kg/ha at 5 km/h", details[0], StringComparison.Ordinal);
        Assert.Contains("the worst of two such combinations", details[0], StringComparison.Ordinal);
        Assert.Contains("300 kg/ha at 9 km/h", details[1], StringComparison.Ordinal);
        Assert.DoesNotContain("worst of", details[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_ElementThatDoesNotServeBesideOneThatDoes_IsNoWarning()
    {
        var result = MeterSpeedEvaluation.Evaluate(
            Asked.Question([6], [9]) with
            {
                Elements = [Asked.Element("coarse", 0.342), Asked.Element("fine", 0.03)],
            }
        );

        Assert.Equal("fine", result.Elements[0].Element.Name);
        Assert.Equal(Severity.Note, Assert.Single(result.Findings, each => each.Code == SharedCodes.OutsideMeterWindow).Severity);
    }

    [Fact]
    public void Findings_LessThanTenPercentOfRoom_AreNoted()
    {
        // The fastest corner turns 85.3 rpm of 90.
        var result = MeterSpeedEvaluation.Evaluate(Asked.Question([90, 216], [9]));

        Assert.True(result.Elements[0].Fits);
        Assert.Single(result.Findings, each => each.Code == MeterSpeedCodes.NearMeterLimit);
    }

    [Fact]
    public void Evaluate_NothingToAnswer_IsRefusedAsACodingMistake()
    {
        Assert.Throws<ArgumentException>(() => MeterSpeedEvaluation.Evaluate(Asked.Question([0], [9])));
        Assert.Throws<ArgumentException>(() => MeterSpeedEvaluation.Evaluate(Asked.Question([90], [])));
        Assert.Throws<ArgumentException>(() => MeterSpeedEvaluation.Evaluate(Asked.Question([90], [9]) with { Elements = [] }));
    }

    private static ElementResult Only(MeterSpeedQuestion question) => Assert.Single(MeterSpeedEvaluation.Evaluate(question).Elements);
}
