namespace CalibrationApi.Tests.Calculations.DriveWheelTurns;

/// <summary>Every way in which a question about turns of a drive wheel can be readable and wrong.</summary>
public sealed class DriveWheelTurnsRequestValidatorTests
{
    [Theory]
    [InlineData("/wheel", "{}", "#/wheel/circumference", "member-missing")]
    [InlineData("/wheel/diameter", """{ "value": 74, "unit": "cm" }""", "#/wheel", "settings-at-odds")]
    [InlineData("/wheel/measuredRun/turns/value", "0", "#/wheel/measuredRun/turns", "number-out-of-range")]
    [InlineData("/wheel/measuredRun/turns/value", "2000", "#/wheel/measuredRun", "settings-at-odds")]
    [InlineData("/wheel/measuredRun/distance/unit", "\"yd\"", "#/wheel/measuredRun/distance", "unit-unknown")]
    [InlineData("/workingWidth/value", "0", "#/workingWidth", "number-out-of-range")]
    [InlineData("/outlets", "0", "#/outlets", "number-out-of-range")]
    [InlineData("/outlets", "4", "#/outlets", "settings-at-odds")]
    [InlineData("/outletsCaught", "21", "#/outletsCaught", "settings-at-odds")]
    [InlineData("/outletsCaught", "6", "#/turnTests/0", "settings-at-odds")]
    [InlineData("/skid", """{ "value": 100, "unit": "%" }""", "#/skid", "number-out-of-range")]
    [InlineData("/areas/0/value", "0", "#/areas/0", "number-out-of-range")]
    [InlineData("/areas/0/unit", "\"m\"", "#/areas/0", "unit-wrong-dimension")]
    [InlineData("/targetRate/value", "0", "#/targetRate", "number-out-of-range")]
    [InlineData("/turnTests/0/turns/value", "-58", "#/turnTests/0/turns", "number-out-of-range")]
    [InlineData("/turnTests/0/caught", """{ "value": 1738, "unit": "g" }""", "#/turnTests/0/perOutlet", "settings-at-odds")]
    [InlineData("/turnTests/0", """{ "turns": { "value": 58, "unit": "rev" } }""", "#/turnTests/0/caught", "member-missing")]
    [InlineData(
        "/turnTests/1",
        """{ "turns": { "value": 58, "unit": "rev" }, "caught": { "value": 1738, "unit": "g" } }""",
        "#/turnTests/1",
        "settings-at-odds"
    )]
    [InlineData(
        "/turnTests/0/perOutlet",
        """[{ "value": 0, "unit": "g" }, { "value": 0, "unit": "g" }, { "value": 0, "unit": "g" }, { "value": 0, "unit": "g" }, { "value": 0, "unit": "g" }]""",
        "#/turnTests/0/perOutlet",
        "number-out-of-range"
    )]
    [InlineData("/turnTests/0/perOutlet", """[{ "value": 353, "unit": "g" }]""", "#/turnTests/1", "settings-at-odds")]
    [InlineData("/setting", "0", "#/setting", "number-out-of-range")]
    [InlineData("/scale/division/value", "0", "#/scale/division", "number-out-of-range")]
    public async Task Member_ThatBreaksARule_IsRefusedAtItsPlace(string pointer, string json, string at, string code)
    {
        using var response = await Question.Of(Question.DriveWheelTurns).With(pointer, json).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == code);
    }

    [Theory]
    [InlineData("/outlets", "#/outlets")]
    [InlineData("/wheel", "#/wheel")]
    [InlineData("/workingWidth", "#/workingWidth")]
    public async Task Member_ThatIsNeeded_IsMissed(string pointer, string at)
    {
        using var response = await Question.Of(Question.DriveWheelTurns).Without(pointer).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == "member-missing");
    }

    [Fact]
    public async Task Question_ThatAsksNothing_IsTold()
    {
        using var response = await Question.Of(Question.DriveWheelTurns).Without("/areas").Without("/turnTests").AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == "#/areas" && fault.Code == "member-missing");
    }

    [Fact]
    public async Task MassPerRevolution_WithoutGearingAndTarget_MissesTheGearing()
    {
        using var response = await Question
            .Of(Question.DriveWheelTurns)
            .Without("/meterRevolutionsPerTurn")
            .Without("/targetRate")
            .With("/massPerRevolution", """{ "value": 200, "unit": "g/rev" }""")
            .AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == "#/meterRevolutionsPerTurn" && fault.Code == "member-missing");
    }
}
