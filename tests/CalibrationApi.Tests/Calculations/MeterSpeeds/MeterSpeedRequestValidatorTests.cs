namespace CalibrationApi.Tests.Calculations.MeterSpeeds;

/// <summary>Every way in which a question about meter speeds can be readable and wrong.</summary>
public sealed class MeterSpeedRequestValidatorTests
{
    [Theory]
    [InlineData("/coveredWidth/value", "0", "#/coveredWidth", "number-out-of-range")]
    [InlineData("/coveredWidth/value", "1e309", "#/coveredWidth", "number-out-of-range")]
    [InlineData("/coveredWidth/value", "1e-12", "#/coveredWidth", "number-out-of-range")]
    [InlineData("/workingWidth", """{ "value": 1e-12, "unit": "m" }""", "#/workingWidth", "number-out-of-range")]
    [InlineData("/coveredWidth/value", "1e-300", "#/coveredWidth", "number-out-of-range")]
    [InlineData("/coveredWidth/unit", "\"yd\"", "#/coveredWidth", "unit-unknown")]
    [InlineData("/coveredWidth/unit", "\"m2\"", "#/coveredWidth", "unit-wrong-dimension")]
    [InlineData("/rates/0/value", "-4", "#/rates/0", "number-out-of-range")]
    [InlineData("/rates/0/value", "4e-306", "#/rates/0", "number-out-of-range")]
    [InlineData("/rates", "[]", "#/rates", "too-few")]
    [InlineData("/rates", """[{ "value": 0, "unit": "kg/ha" }]""", "#/rates", "number-out-of-range")]
    [InlineData("/groundSpeeds", "[]", "#/groundSpeeds", "too-few")]
    [InlineData("/groundSpeeds/1/value", "0", "#/groundSpeeds/1", "number-out-of-range")]
    [InlineData("/groundSpeeds/1/value", "1e-12", "#/groundSpeeds/1", "number-out-of-range")]
    [InlineData("/speedLimits/minimum/value", "91", "#/speedLimits/minimum", "settings-at-odds")]
    [InlineData("/speedLimits/maximum/value", "1e-300", "#/speedLimits/maximum", "number-out-of-range")]
    [InlineData("/fieldEfficiency/value", "0", "#/fieldEfficiency", "number-out-of-range")]
    [InlineData("/elements", "[]", "#/elements", "too-few")]
    [InlineData("/elements/0/massPerRevolution/value", "0", "#/elements/0/massPerRevolution", "number-out-of-range")]
    [InlineData("/elements/0/massPerRevolution/unit", "\"bu\"", "#/elements/0/massPerRevolution", "unit-wrong-dimension")]
    [InlineData("/elements/1/measuredAt", "[]", "#/elements/1/measuredAt", "too-few")]
    [InlineData("/elements/1/measuredAt/0/meterSpeed/value", "60", "#/elements/1/measuredAt", "settings-at-odds")]
    [InlineData("/elements/1/measuredAt/1/massPerRevolution/value", "0.01", "#/elements/1/measuredAt", "settings-at-odds")]
    [InlineData("/elements/1/massPerRevolution", """{ "value": 0.3, "unit": "kg/rev" }""", "#/elements/1/measuredAt", "settings-at-odds")]
    [InlineData("/elements/0/pocketsPerRevolution", "10001", "#/elements/0/pocketsPerRevolution", "number-out-of-range")]
    [InlineData("/elements/0/name", "\" \"", "#/elements/0/name", "text-wrong")]
    public async Task Member_ThatBreaksARule_IsRefusedAtItsPlace(string pointer, string json, string at, string code)
    {
        using var response = await Question.Of(Question.MeterSpeed).With(pointer, json).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == code);
    }

    [Fact]
    public async Task Lists_LongerThanAllowed_AreTooMany()
    {
        var question = Question.Of(Question.MeterSpeed);
        for (var i = 0; i < 101; i++)
        {
            question.Add("/rates", """{ "value": 5, "unit": "kg/ha" }""");
            question.Add("/groundSpeeds", """{ "value": 8, "unit": "km/h" }""");
            question.Add("/elements", """{ "name": "spare", "massPerRevolution": { "value": 0.05, "unit": "kg/rev" } }""");
        }

        using var response = await question.AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Equal(
            ["#/elements", "#/groundSpeeds", "#/rates"],
            problem.Faults.Select(fault => fault.Pointer!).Order(StringComparer.Ordinal)
        );
        Assert.All(problem.Faults, fault => Assert.Equal("too-many", fault.Code));
    }

    [Fact]
    public async Task Question_WithManyFaults_IsToldAllOfThem()
    {
        var question = Question
            .Of(Question.MeterSpeed)
            .Without("/coveredWidth/value")
            .With("/rates/0/unit", "\"kg\"")
            .With("/rates/1", "null")
            .With("/groundSpeeds/0/value", "1e309")
            .With("/groundSpeeds/1/unit", "\"\"")
            .With("/speedLimits/minimum/value", "100")
            .Without("/elements/0/name")
            .Without("/elements/0/massPerRevolution")
            .With("/elements/1/name", "\"\"")
            .With("/elements/1/measuredAt/0/meterSpeed/unit", "\"Hz\"")
            .With("/fieldEfficiency/value", "700");

        using var response = await question.AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Equal(11, problem.Faults.Select(fault => fault.Pointer).Distinct().Count());
    }
}
