using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.MeterSpeeds;

/// <summary>Time for an area, area of a day, and the field efficiency that stops leave.</summary>
public sealed class FieldCapacityTests
{
    private static readonly Length Nine = new(9);
    private static readonly Speed TwoAndAHalf = new(2.5);

    [Fact]
    public void TimeFor_AreaOfAnHour_IsAnHour() =>
        NearlyEqual.Assert(3600, FieldCapacity.TimeFor(FieldCapacity.PerHour(Nine, TwoAndAHalf, 0.7), Nine, TwoAndAHalf, 0.7).Seconds);

    [Fact]
    public void During_TenHours_IsTenTimesTheAreaOfOne() =>
        NearlyEqual.Assert(
            10 * FieldCapacity.PerHour(Nine, TwoAndAHalf, 0.7).SquareMetres,
            FieldCapacity.During(Nine, TwoAndAHalf, 0.7, new Duration(36_000)).SquareMetres
        );

    // Runs of 500 m at 2.5 m/s take 200 s; a turn of 50 s after each leaves four fifths.
    [Fact]
    public void EfficiencyWith_Turns_IsTheShareOfTheTimeInTheRun() =>
        NearlyEqual.Assert(0.8, FieldCapacity.EfficiencyWith(Nine, TwoAndAHalf, new(new Duration(50), new Length(500), null, null)));

    // 9 m x 2.5 m/s take 4000 s for 9 ha; a refill of 1000 s after that leaves four fifths.
    [Fact]
    public void EfficiencyWith_Refills_IsTheShareOfTheTimeBetweenThem() =>
        NearlyEqual.Assert(0.8, FieldCapacity.EfficiencyWith(Nine, TwoAndAHalf, new(null, null, new Duration(1000), new Area(90_000))));

    // Counted by hand over one fill of 9 ha: 4000 s of work in 20 runs, 20 turns of 50 s, one refill of 1000 s.
    [Fact]
    public void EfficiencyWith_TurnsAndRefills_CountsBoth() =>
        NearlyEqual.Assert(
            4000.0 / (4000 + 20 * 50 + 1000),
            FieldCapacity.EfficiencyWith(Nine, TwoAndAHalf, new(new Duration(50), new Length(500), new Duration(1000), new Area(90_000)))
        );

    [Fact]
    public void Capacity_Stops_LeaveLessOfAFasterMachine()
    {
        var question = Asked.Question([90], [6, 12]) with { Stops = new(new Duration(30), new Length(500), null, null) };

        var result = MeterSpeedEvaluation.Evaluate(question);

        Assert.True(result.Capacity[0].FieldEfficiency > result.Capacity[1].FieldEfficiency);
        Assert.True(result.Capacity[0].AreaPerHour.SquareMetres < result.Capacity[1].AreaPerHour.SquareMetres);
        Assert.Empty(result.Assumptions);
    }

    [Fact]
    public void Capacity_AreaAndDay_AreToldOnlyWhenAsked()
    {
        var asked = MeterSpeedEvaluation
            .Evaluate(Asked.Question([90], [9]) with { FieldEfficiency = 0.8, Area = new Area(480_000), TimePerDay = new Duration(36_000) })
            .Capacity[0];
        var plain = MeterSpeedEvaluation.Evaluate(Asked.Question([90], [9])).Capacity[0];

        NearlyEqual.Assert(480_000 / (9 * 2.5 * 0.8), asked.TimeForArea!.Value.Seconds);
        NearlyEqual.Assert(9 * 2.5 * 0.8 * 36_000, asked.AreaPerDay!.Value.SquareMetres);
        Assert.Null(plain.TimeForArea);
        Assert.Null(plain.AreaPerDay);
    }

    [Theory]
    [InlineData(0.25, true)]
    [InlineData(0.30, false)]
    [InlineData(0.70, false)]
    [InlineData(0.8593, false)]
    [InlineData(0.95, true)]
    public void Findings_FieldEfficiencyOutsideWhatWasMeasured_IsNoted(double efficiency, bool expected) =>
        Assert.Equal(
            expected,
            MeterSpeedEvaluation
                .Evaluate(Asked.Question([90], [9]) with { FieldEfficiency = efficiency })
                .Findings.Any(finding => finding.Code == MeterSpeedCodes.UnusualFieldEfficiency)
        );
}
