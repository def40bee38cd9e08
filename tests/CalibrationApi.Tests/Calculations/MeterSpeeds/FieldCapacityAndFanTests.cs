namespace CalibrationApi.Tests.Calculations.MeterSpeeds;

/// <summary>Field capacity and the fan, as a question about meter speeds is answered.</summary>
public sealed class FieldCapacityAndFanTests
{
    private const string Stops =
        """{ "turnTime": { "value": 30, "unit": "s" }, "runLength": { "value": 500, "unit": "m" }, "refillTime": { "value": 20, "unit": "min" }, "areaPerFill": { "value": 12, "unit": "ha" } }""";

    [Fact]
    public async Task Capacity_AreaAndDay_AreTold()
    {
        var answer = await Question.Of(Question.MeterSpeed).AnswerAsync();

        Assert.Equal(
            (48 / (9 * 7 * 0.7 / 10), "h"),
            (answer.Number("/capacity/0/timeForArea/value"), answer.Word("/capacity/0/timeForArea/unit")),
            Nearly
        );
        Assert.Equal(10 * 9 * 11 * 0.7 / 10, answer.Number("/capacity/1/areaPerDay/value"), 1e-9);
        Assert.Equal((70, "%"), answer.Quantity("/capacity/0/fieldEfficiency"));
    }

    // Per hectare: 0.158730 h at 9 m and 7 km/h; 1/9 km of runs in 500 m each takes 2.2222 turns of 30 s; 1/12 of 20 min.
    [Fact]
    public async Task Capacity_Stops_MakeTheFieldEfficiency()
    {
        var answer = await Question.Of(Question.MeterSpeed).Without("/fieldEfficiency").With("/stops", Stops).AnswerAsync();

        const double Work = 10.0 / (9 * 7),
            Turns = 10_000.0 / 9 / 500 * 30 / 3600,
            Refill = 20.0 / 60 / 12;
        Assert.Equal(100 * Work / (Work + Turns + Refill), answer.Number("/capacity/0/fieldEfficiency/value"), 1e-9);
        Assert.Empty(answer.List("/assumptions"));
    }

    [Fact]
    public async Task Fan_DemoQuestion_HasTheWindowThatBothProductsAllow()
    {
        var answer = await Question.Of(Question.MeterSpeed).AnswerAsync();

        Assert.True(answer.Flag("/fan/fanSpeeds/exists"));
        Assert.Equal((3400, "rpm"), answer.Quantity("/fan/fanSpeeds/minimum"));
        Assert.Equal("granular phosphate", answer.Word("/fan/fanSpeeds/minimumOf"));
        Assert.Equal((3800, "rpm"), answer.Quantity("/fan/fanSpeeds/maximum"));
        Assert.Equal("Keep the fan at 3400 rpm to 3800 rpm.", answer.Word("/fan/headline"));
        Assert.Contains("near-fan-limit", answer.Codes("/findings"));
        Assert.Contains("stored-pressure", answer.Codes("/cautions"));
    }

    // 6 kg/ha and 55 kg/ha over 9 m at 11 km/h in 30 m3/min.
    [Fact]
    public async Task Fan_Loads_AreMassFlowOverAirFlow()
    {
        var answer = await Question.Of(Question.MeterSpeed).AnswerAsync();

        Assert.Equal("highest", answer.Word("/fan/loads/3/rates"));
        Assert.Equal("kg/m3", answer.Word("/fan/loads/3/massPerAir/unit"));
        Assert.Equal((6.0 + 55) * 9 * 11 / 600 / 30, answer.Number("/fan/loads/3/massPerAir/value"), 1e-12);
        Assert.Equal(6.0 * 9 * 11 / 600 / 30, answer.Number("/fan/loads/3/products/0/massPerAir/value"), 1e-12);
    }

    [Fact]
    public async Task Fan_UnitsUs_AreCubicFeetAndPounds()
    {
        var answer = await Question
            .Of(Question.MeterSpeed)
            .With("/fan/products/0/airFlowLimits", """{ "minimum": { "value": 35, "unit": "m3/min" } }""")
            .AnswerAsync("?units=us");

        Assert.Equal("ft3/min", answer.Word("/fan/airFlows/minimum/unit"));
        Assert.Equal("lb/ft3", answer.Word("/fan/loads/0/massPerAir/unit"));
        Assert.Contains("outside-fan-window", answer.Codes("/findings"));
    }

    [Fact]
    public async Task Fan_ProductsThatDoNotMeet_AreSaid()
    {
        var answer = await Question.Of(Question.MeterSpeed).With("/fan/products/0/fanSpeedLimits/maximum/value", "3000").AnswerAsync();

        Assert.False(answer.Flag("/fan/fanSpeeds/exists"));
        Assert.Contains("no-common-fan-window", answer.Codes("/findings"));
    }

    [Fact]
    public async Task Question_WithoutAFan_IsAnsweredAsBefore()
    {
        var answer = await Question.Of(Question.MeterSpeed).Without("/fan").AnswerAsync();

        Assert.False(answer.Has("/fan"));
        Assert.Empty(answer.List("/cautions"));
    }

    [Theory]
    [InlineData("/stops", Stops, "#/stops", "settings-at-odds")]
    [InlineData("/stops", "{}", "#/stops/turnTime", "member-missing")]
    [InlineData("/stops", """{ "turnTime": { "value": 30, "unit": "s" } }""", "#/stops/runLength", "member-missing")]
    [InlineData(
        "/stops",
        """{ "areaPerFill": { "value": 12, "unit": "ha" }, "turnTime": { "value": 30, "unit": "s" }, "runLength": { "value": 500, "unit": "m" } }""",
        "#/stops/refillTime",
        "member-missing"
    )]
    [InlineData("/area/value", "0", "#/area", "number-out-of-range")]
    [InlineData("/timePerDay/value", "25", "#/timePerDay", "number-out-of-range")]
    [InlineData("/fan/products", "[]", "#/fan/products", "too-few")]
    [InlineData("/fan/products/0/name", "null", "#/fan/products/0/name", "member-missing")]
    [InlineData("/fan/products/1/rates/0/value", "0", "#/fan/products/1/rates", "number-out-of-range")]
    [InlineData("/fan/products/0/fanSpeedLimits/minimum/value", "4000", "#/fan/products/0/fanSpeedLimits/minimum", "settings-at-odds")]
    [InlineData(
        "/fan/products/0/airFlowLimits",
        """{ "minimum": { "value": 40, "unit": "m3/min" }, "maximum": { "value": 30, "unit": "m3/min" } }""",
        "#/fan/products/0/airFlowLimits/minimum",
        "settings-at-odds"
    )]
    [InlineData("/fan/airFlow/unit", "\"L\"", "#/fan/airFlow", "unit-wrong-dimension")]
    public async Task Member_ThatBreaksARule_IsRefusedAtItsPlace(string pointer, string json, string at, string code)
    {
        using var response = await Question.Of(Question.MeterSpeed).With(pointer, json).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == code);
    }

    private static bool Nearly((double Value, string Unit) expected, (double Value, string Unit) actual) =>
        expected.Unit == actual.Unit && Math.Abs(actual.Value / expected.Value - 1) < 1e-12;
}
