using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Tests.Calculations.DriveWheelTurns;

/// <summary>Every way in which a question about turns of a drive wheel can be readable and wrong.</summary>
public sealed class DriveWheelTurnsRequestValidatorTests
{
    [Theory]
    [InlineData("/wheel", "{}", "#/wheel/circumference", ErrorCode.MemberMissing)]
    [InlineData("/wheel/diameter", """{ "value": 74, "unit": "cm" }""", "#/wheel", ErrorCode.SettingsAtOdds)]
    [InlineData("/wheel/measuredRun/turns/value", "0", "#/wheel/measuredRun/turns", ErrorCode.NumberOutOfRange)]
    [InlineData("/wheel/measuredRun/turns/value", "2000", "#/wheel/measuredRun", ErrorCode.SettingsAtOdds)]
    [InlineData("/wheel/measuredRun/distance/unit", "\"yd\"", "#/wheel/measuredRun/distance", ErrorCode.UnitUnknown)]
    [InlineData("/workingWidth/value", "0", "#/workingWidth", ErrorCode.NumberOutOfRange)]
    [InlineData("/outlets", "0", "#/outlets", ErrorCode.NumberOutOfRange)]
    [InlineData("/outlets", "4", "#/outlets", ErrorCode.SettingsAtOdds)]
    [InlineData("/outletsCaught", "21", "#/outletsCaught", ErrorCode.SettingsAtOdds)]
    [InlineData("/outletsCaught", "6", "#/turnTests/0", ErrorCode.SettingsAtOdds)]
    [InlineData("/skid", """{ "value": 100, "unit": "%" }""", "#/skid", ErrorCode.NumberOutOfRange)]
    [InlineData("/areas/0/value", "0", "#/areas/0", ErrorCode.NumberOutOfRange)]
    [InlineData("/areas/0/unit", "\"m\"", "#/areas/0", ErrorCode.UnitWrongDimension)]
    [InlineData("/targetRate/value", "0", "#/targetRate", ErrorCode.NumberOutOfRange)]
    [InlineData("/turnTests/0/turns/value", "-58", "#/turnTests/0/turns", ErrorCode.NumberOutOfRange)]
    [InlineData("/turnTests/0/caught", """{ "value": 1738, "unit": "g" }""", "#/turnTests/0/perOutlet", ErrorCode.SettingsAtOdds)]
    [InlineData("/turnTests/0", """{ "turns": { "value": 58, "unit": "rev" } }""", "#/turnTests/0/caught", ErrorCode.MemberMissing)]
    [InlineData(
        "/turnTests/1",
        """{ "turns": { "value": 58, "unit": "rev" }, "caught": { "value": 1738, "unit": "g" } }""",
        "#/turnTests/1",
        ErrorCode.SettingsAtOdds
    )]
    [InlineData(
        "/turnTests/0/perOutlet",
        """[{ "value": 0, "unit": "g" }, { "value": 0, "unit": "g" }, { "value": 0, "unit": "g" }, { "value": 0, "unit": "g" }, { "value": 0, "unit": "g" }]""",
        "#/turnTests/0/perOutlet",
        ErrorCode.NumberOutOfRange
    )]
    [InlineData("/turnTests/0/perOutlet", """[{ "value": 353, "unit": "g" }]""", "#/turnTests/1", ErrorCode.SettingsAtOdds)]
    [InlineData("/setting", "0", "#/setting", ErrorCode.NumberOutOfRange)]
    [InlineData("/scale/division/value", "0", "#/scale/division", ErrorCode.NumberOutOfRange)]
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
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == ErrorCode.MemberMissing);
    }

    [Fact]
    public async Task Question_ThatAsksNothing_IsTold()
    {
        using var response = await Question.Of(Question.DriveWheelTurns).Without("/areas").Without("/turnTests").AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == "#/areas" && fault.Code == ErrorCode.MemberMissing);
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
        Assert.Contains(problem.Faults, fault => fault.Pointer == "#/meterRevolutionsPerTurn" && fault.Code == ErrorCode.MemberMissing);
    }
}
