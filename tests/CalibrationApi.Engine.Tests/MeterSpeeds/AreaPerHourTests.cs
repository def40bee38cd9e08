using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.MeterSpeeds;

/// <summary>Area per hour, W v times field efficiency.</summary>
public sealed class AreaPerHourTests
{
    [Fact]
    public void Capacity_EachGroundSpeed_IsInTheOrderGiven()
    {
        var question = Asked.Question([90], [12, 6]) with { FieldEfficiency = 0.8 };

        var capacity = MeterSpeedEvaluation.Evaluate(question).Capacity;

        Assert.Equal([12, 6], capacity.Select(each => Math.Round(DisplayUnits.Metric.Value(each.GroundSpeed))));
        NearlyEqual.Assert(9 * 12 / 10.0 * 0.8, DisplayUnits.Metric.Value(capacity[0].AreaPerHour));
        NearlyEqual.Assert(9 * 6 / 10.0 * 0.8, DisplayUnits.Metric.Value(capacity[1].AreaPerHour));
    }

    [Fact]
    public void Capacity_WorkingWidthStated_TakesItInPlaceOfTheCoveredOne()
    {
        var question = Asked.Question([90], [9]) with { FieldEfficiency = 1, WorkingWidth = new Length(18) };

        NearlyEqual.Assert(18 * 9 / 10.0, DisplayUnits.Metric.Value(MeterSpeedEvaluation.Evaluate(question).Capacity[0].AreaPerHour));
    }

    [Fact]
    public void Assumptions_FieldEfficiencyNotStated_IsListedAsFromMemory()
    {
        var assumption = Assert.Single(MeterSpeedEvaluation.Evaluate(Asked.Question([90], [9])).Assumptions);

        Assert.Equal("fieldEfficiency", assumption.Name);
        Assert.Equal(new Ratio(0.70), assumption.Value);
        Assert.Contains("from memory", assumption.Origin, StringComparison.Ordinal);
    }

    [Fact]
    public void Assumptions_FieldEfficiencyStated_AreNone() =>
        Assert.Empty(MeterSpeedEvaluation.Evaluate(Asked.Question([90], [9]) with { FieldEfficiency = 0.75 }).Assumptions);
}
