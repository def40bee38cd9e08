namespace CalibrationApi.Tests.Calculations.DistanceSensors;

/// <summary>Every way in which a question about a distance sensor can be readable and wrong.</summary>
public sealed class DistanceSensorRequestValidatorTests
{
    [Theory]
    [InlineData("/runs", "[]", "#/runs", "too-few")]
    [InlineData("/runs/0", "null", "#/runs/0", "member-missing")]
    [InlineData("/runs/0", """{ "pulses": 1274 }""", "#/runs/0/distance", "member-missing")]
    [InlineData("/runs/0", """{ "distance": { "value": 100, "unit": "m" } }""", "#/runs/0/pulses", "member-missing")]
    [InlineData("/runs/0/turns", """{ "value": 32, "unit": "rev" }""", "#/runs/0/turns", "settings-at-odds")]
    [InlineData(
        "/runs/1",
        """{ "distance": { "value": 100, "unit": "m" }, "turns": { "value": 32, "unit": "rev" } }""",
        "#/runs/1",
        "settings-at-odds"
    )]
    [InlineData(
        "/referenceRuns/0",
        """{ "distance": { "value": 100, "unit": "m" }, "turns": { "value": 32, "unit": "rev" } }""",
        "#/referenceRuns/0",
        "settings-at-odds"
    )]
    [InlineData("/runs/0/pulses", "0", "#/runs/0/pulses", "number-out-of-range")]
    [InlineData("/runs/0/pulses", "-1274", "#/runs/0/pulses", "number-out-of-range")]
    [InlineData("/runs/0/pulses", "1e309", "#/runs/0/pulses", "number-out-of-range")]
    [InlineData("/runs/0/distance/value", "0", "#/runs/0/distance", "number-out-of-range")]
    [InlineData("/runs/0/distance/unit", "\"yd\"", "#/runs/0/distance", "unit-unknown")]
    [InlineData("/runs/0/direction", "\"uphill\"", "#/runs/0/direction", "word-unknown")]
    [InlineData("/runs/0/time/value", "0", "#/runs/0/time", "number-out-of-range")]
    [InlineData("/tapeLimit/value", "-1", "#/tapeLimit", "number-out-of-range")]
    [InlineData("/valueInForce", "{}", "#/valueInForce/pulsesPerDistance", "member-missing")]
    [InlineData("/valueInForce/distancePerPulse", """{ "value": 7.6, "unit": "cm" }""", "#/valueInForce", "settings-at-odds")]
    [InlineData("/valueInForce/pulsesPerDistance/value", "0", "#/valueInForce/pulsesPerDistance", "number-out-of-range")]
    [InlineData("/valueInForce", """{ "pulses": 1310 }""", "#/valueInForce/distance", "member-missing")]
    [InlineData("/valueInForce/distance", """{ "value": 100, "unit": "m" }""", "#/valueInForce/distance", "settings-at-odds")]
    [InlineData("/controllerEntry/form", "\"pulses\"", "#/controllerEntry/form", "word-unknown")]
    [InlineData("/controllerEntry/form", "\"distance-per-pulse\"", "#/controllerEntry/unit", "member-missing")]
    [InlineData("/controllerEntry/form", "\"wheel-circumference\"", "#/controllerEntry/distance", "settings-at-odds")]
    [InlineData("/controllerEntry/unit", "\"m\"", "#/controllerEntry/unit", "settings-at-odds")]
    [InlineData("/controllerEntry/decimals", "10", "#/controllerEntry/decimals", "number-out-of-range")]
    [InlineData("/width/openers", "0", "#/width/openers", "number-out-of-range")]
    [InlineData("/width/spacing/unit", "\"m\"", "#/width/passToPass", "settings-at-odds")]
    [InlineData("/width/inForce/value", "30", "#/width/inForce", "settings-at-odds")]
    [InlineData("/meterDrive", "\"wheel\"", "#/meterDrive", "word-unknown")]
    [InlineData("/price/value", "-420", "#/price/value", "number-out-of-range")]
    [InlineData("/tolerance", """{ "value": 0.5, "unit": "%" }""", "#/wantedPrecision", "settings-at-odds")]
    public async Task Member_ThatBreaksARule_IsRefusedAtItsPlace(string pointer, string json, string at, string code)
    {
        using var response = await Question.Of(Question.DistanceSensor).With(pointer, json).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == code);
    }

    [Fact]
    public async Task Circumference_OfRunsInPulses_AsksForThePulsesOfATurn()
    {
        using var response = await Question
            .Of(Question.DistanceSensor)
            .Without("/pulsesPerTurn")
            .With("/valueInForce", """{ "wheelCircumference": { "value": 3, "unit": "m" } }""")
            .AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == "#/pulsesPerTurn" && fault.Code == "member-missing");
    }

    [Fact]
    public async Task Question_WithManyFaults_IsToldAllOfThem()
    {
        using var response = await Question
            .Of(Question.DistanceSensor)
            .Without("/runs/0/pulses")
            .With("/runs/1/distance/unit", "\"kg\"")
            .With("/runs/2/pulses", "0")
            .Without("/width/openers")
            .With("/price/currency", "\"euro\"")
            .With("/targetRate/value", "-1")
            .With("/area/unit", "\"\"")
            .AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Equal(7, problem.Faults.Select(fault => fault.Pointer).Distinct().Count());
    }
}
