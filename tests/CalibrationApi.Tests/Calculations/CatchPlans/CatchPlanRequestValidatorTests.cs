namespace CalibrationApi.Tests.Calculations.CatchPlans;

/// <summary>Every way in which a catch plan can be readable and wrong.</summary>
public sealed class CatchPlanRequestValidatorTests
{
    private const string AnotherMeter = """
        { "meter": "NAME", "product": "oats", "coveredWidth": { "value": 9, "unit": "m" }, "targetRate": { "value": 60, "unit": "kg/ha" },
          "bulkDensity": { "value": 50, "unit": "kg/hL" }, "valueInForce": { "value": 0.3, "unit": "kg/rev" } }
        """;

    [Theory]
    [InlineData("/groundSpeed/value", "0", "#/groundSpeed")]
    [InlineData("/groundSpeed/value", "-9", "#/groundSpeed")]
    [InlineData("/groundSpeed/value", "101", "#/groundSpeed")]
    [InlineData("/groundSpeed/value", "1e309", "#/groundSpeed")]
    [InlineData("/groundSpeed/value", "1e-300", "#/groundSpeed")]
    [InlineData("/maximumRunTime/value", "0", "#/maximumRunTime")]
    [InlineData("/maximumRunTime", """{ "value": 25, "unit": "h" }""", "#/maximumRunTime")]
    [InlineData("/minimumRunTime", """{ "value": 0, "unit": "s" }""", "#/minimumRunTime")]
    [InlineData("/containersAtHand", "0", "#/containersAtHand")]
    [InlineData("/liftLimit", """{ "value": -1, "unit": "kg" }""", "#/liftLimit")]
    [InlineData("/wantedPrecision/value", "0", "#/wantedPrecision")]
    [InlineData("/coverageProbability", "1", "#/coverageProbability")]
    [InlineData("/scale/capacity/value", "0", "#/scale/capacity")]
    [InlineData("/container/volume/value", "0", "#/container/volume")]
    [InlineData("/container/tare/value", "-1", "#/container/tare")]
    [InlineData("/container/fill", """{ "value": 101, "unit": "%" }""", "#/container/fill")]
    [InlineData("/meters/0/coveredWidth/value", "0", "#/meters/0/coveredWidth")]
    [InlineData("/meters/0/coveredWidth/value", "201", "#/meters/0/coveredWidth")]
    [InlineData("/meters/1/targetRate/value", "0", "#/meters/1/targetRate")]
    [InlineData("/meters/1/bulkDensity/value", "9999", "#/meters/1/bulkDensity")]
    [InlineData("/meters/2/valueInForce/value", "0", "#/meters/2/valueInForce")]
    [InlineData("/meters/2/speedLimits/maximum/value", "0", "#/meters/2/speedLimits/maximum")]
    [InlineData("/meters/2/pocketsPerRevolution", "0", "#/meters/2/pocketsPerRevolution")]
    public async Task Number_OutOfRange_IsRefused(string pointer, string json, string at)
    {
        using var response = await Question.Of(Question.CatchPlan).With(pointer, json).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == "number-out-of-range");
    }

    [Theory]
    [InlineData("/container/volume/unit", "\"bu\"", "#/container/volume", "unit-ambiguous")]
    [InlineData("/meters/0/bulkDensity/unit", "\"lb/bu\"", "#/meters/0/bulkDensity", "unit-ambiguous")]
    [InlineData("/groundSpeed/unit", "\"kph\"", "#/groundSpeed", "unit-unknown")]
    [InlineData("/groundSpeed/unit", "\"lbs\"", "#/groundSpeed", "unit-wrong-dimension")]
    [InlineData("/groundSpeed/unit", "\"bu\"", "#/groundSpeed", "unit-wrong-dimension")]
    [InlineData("/groundSpeed/unit", "\"rpm\"", "#/groundSpeed", "unit-wrong-dimension")]
    [InlineData("/meters/0/targetRate/unit", "null", "#/meters/0/targetRate", "unit-missing")]
    [InlineData("/minimumRunTime", """{ "value": 6, "unit": "min" }""", "#/minimumRunTime", "settings-at-odds")]
    [InlineData("/drive", "\"SharedShaft\"", "#/drive", "word-unknown")]
    [InlineData("/meters/0/material", "\"seed\"", "#/meters/0/material", "word-unknown")]
    [InlineData("/meters/1/meter", "\"front\"", "#/meters/1/meter", "settings-at-odds")]
    [InlineData("/meters/0/startValue", """{ "value": 0.3, "unit": "kg/rev" }""", "#/meters/0/startValue", "settings-at-odds")]
    [InlineData("/meters/0/speedLimits/minimum/value", "90", "#/meters/0/speedLimits/minimum", "settings-at-odds")]
    [InlineData("/meters/0/product", "\"\"", "#/meters/0/product", "text-wrong")]
    [InlineData("/meters", "[]", "#/meters", "too-few")]
    public async Task Member_ThatBreaksARule_IsRefusedAtItsPlace(string pointer, string json, string at, string code)
    {
        using var response = await Question.Of(Question.CatchPlan).With(pointer, json).AskAsync();

        var fault = (await ProblemBody.ReadAsync(response, 422)).Only();
        Assert.Equal((at, code), (fault.Pointer, fault.Code));
    }

    [Fact]
    public async Task WorkingSpeeds_Swapped_AreAtOdds()
    {
        var question = Question
            .Of(Question.CatchPlan)
            .With("/workingSpeeds", """{ "minimum": { "value": 12, "unit": "km/h" }, "maximum": { "value": 6, "unit": "mi/h" } }""");

        using var response = await question.AskAsync();

        Assert.Equal(("#/workingSpeeds/minimum", "settings-at-odds"), Place(await ProblemBody.ReadAsync(response, 422)));
    }

    [Fact]
    public async Task BulkDensity_MissingUnderAContainerOfKnownVolume_IsAskedFor()
    {
        using var response = await Question.Of(Question.CatchPlan).Without("/meters/1/bulkDensity").AskAsync();

        Assert.Equal(("#/meters/1/bulkDensity", "density-missing"), Place(await ProblemBody.ReadAsync(response, 422)));
    }

    [Fact]
    public async Task BulkDensity_MissingUnderAContainerOfUnknownVolume_IsNotNeeded()
    {
        var answer = await Question.Of(Question.CatchPlan).Without("/meters/1/bulkDensity").Without("/container/volume").AnswerAsync();

        Assert.False(answer.Has("/meters/1/containerFill"));
    }

    [Fact]
    public async Task Meters_SixtyFive_AreTooMany()
    {
        using var response = await WithMeters(65).AskAsync();

        Assert.Equal(("#/meters", "too-many"), Place(await ProblemBody.ReadAsync(response, 422)));
    }

    [Fact]
    public async Task Meters_SixtyFour_AreTaken()
    {
        Assert.Equal(64, (await WithMeters(64).AnswerAsync()).List("/meters").Count);
    }

    [Theory]
    [InlineData("/liftLimit", """{ "value": 1.5, "unit": "kg" }""")]
    [InlineData("/scale/capacity", """{ "value": 1, "unit": "kg" }""")]
    [InlineData("/maximumRunTime", """{ "value": 0.1, "unit": "s" }""")]
    [InlineData("/container/volume", """{ "value": 0.01, "unit": "L" }""")]
    public async Task Bounds_ThatAllowNoRevolution_RefuseEachMeter(string pointer, string json)
    {
        using var response = await Question.Of(Question.CatchPlan).With(pointer, json).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Equal(["#/meters/0", "#/meters/1", "#/meters/2"], problem.Faults.Select(fault => fault.Pointer));
        Assert.All(problem.Faults, fault => Assert.Equal("settings-at-odds", fault.Code));
    }

    [Fact]
    public async Task Question_WithManyFaults_IsToldAllOfThem()
    {
        var question = Question
            .Of(Question.CatchPlan)
            .With("/groundSpeed/unit", "\"knots\"")
            .With("/drive", "\"chain\"")
            .With("/maximumRunTime/value", "-1")
            .With("/scale/division/value", "0")
            .With("/container/volume/unit", "\"bu\"")
            .Without("/meters/0/product")
            .With("/meters/0/targetRate/value", "1e309")
            .With("/meters/1/meter", "\"front\"")
            .Without("/meters/1/bulkDensity")
            .Without("/meters/2/valueInForce")
            .With("/meters/2/speedLimits/minimum/value", "95")
            .With("/restorePoints/0/name", "\"\"");

        using var response = await question.AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Equal(12, problem.Faults.Count);
        Assert.Equal(12, problem.Faults.Select(fault => fault.Pointer).Distinct().Count());
    }

    private static (string?, string) Place(ProblemBody problem) => (problem.Only().Pointer, problem.Only().Code);

    private static Question WithMeters(int count)
    {
        var question = Question.Of(Question.CatchPlan);
        for (var i = 3; i < count; i++)
            question.Add("/meters", AnotherMeter.Replace("NAME", $"meter {i}", StringComparison.Ordinal));
        return question;
    }
}
