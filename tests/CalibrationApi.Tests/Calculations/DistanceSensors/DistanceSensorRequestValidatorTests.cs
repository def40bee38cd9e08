using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Tests.Calculations.DistanceSensors;

/// <summary>Every way in which a question about a distance sensor can be readable and wrong.</summary>
public sealed class DistanceSensorRequestValidatorTests
{
    [Theory]
    [InlineData("/runs", "[]", "#/runs", ErrorCode.TooFew)]
    [InlineData("/runs/0", "null", "#/runs/0", ErrorCode.MemberMissing)]
    [InlineData("/runs/0", """{ "pulses": 1274 }""", "#/runs/0/distance", ErrorCode.MemberMissing)]
    [InlineData("/runs/0", """{ "distance": { "value": 100, "unit": "m" } }""", "#/runs/0/pulses", ErrorCode.MemberMissing)]
    [InlineData("/runs/0/turns", """{ "value": 32, "unit": "rev" }""", "#/runs/0/turns", ErrorCode.SettingsAtOdds)]
    [InlineData(
        "/runs/1",
        """{ "distance": { "value": 100, "unit": "m" }, "turns": { "value": 32, "unit": "rev" } }""",
        "#/runs/1",
        ErrorCode.SettingsAtOdds
    )]
    [InlineData(
        "/referenceRuns/0",
        """{ "distance": { "value": 100, "unit": "m" }, "turns": { "value": 32, "unit": "rev" } }""",
        "#/referenceRuns/0",
        ErrorCode.SettingsAtOdds
    )]
    [InlineData("/runs/0/pulses", "0", "#/runs/0/pulses", ErrorCode.NumberOutOfRange)]
    [InlineData("/runs/0/pulses", "-1274", "#/runs/0/pulses", ErrorCode.NumberOutOfRange)]
    [InlineData("/runs/0/pulses", "1e309", "#/runs/0/pulses", ErrorCode.NumberOutOfRange)]
    [InlineData("/runs/0/distance/value", "0", "#/runs/0/distance", ErrorCode.NumberOutOfRange)]
    [InlineData("/runs/0/distance/unit", "\"yd\"", "#/runs/0/distance", ErrorCode.UnitUnknown)]
    [InlineData("/runs/0/direction", "\"uphill\"", "#/runs/0/direction", ErrorCode.WordUnknown)]
    [InlineData("/runs/0/time/value", "0", "#/runs/0/time", ErrorCode.NumberOutOfRange)]
    [InlineData("/tapeLimit/value", "-1", "#/tapeLimit", ErrorCode.NumberOutOfRange)]
    [InlineData("/valueInForce", "{}", "#/valueInForce/pulsesPerDistance", ErrorCode.MemberMissing)]
    [InlineData("/valueInForce/distancePerPulse", """{ "value": 7.6, "unit": "cm" }""", "#/valueInForce", ErrorCode.SettingsAtOdds)]
    [InlineData("/valueInForce/pulsesPerDistance/value", "0", "#/valueInForce/pulsesPerDistance", ErrorCode.NumberOutOfRange)]
    [InlineData("/valueInForce", """{ "pulses": 1310 }""", "#/valueInForce/distance", ErrorCode.MemberMissing)]
    [InlineData("/valueInForce/distance", """{ "value": 100, "unit": "m" }""", "#/valueInForce/distance", ErrorCode.SettingsAtOdds)]
    [InlineData("/controllerEntry/form", "\"pulses\"", "#/controllerEntry/form", ErrorCode.WordUnknown)]
    [InlineData("/controllerEntry/form", "\"distance-per-pulse\"", "#/controllerEntry/unit", ErrorCode.MemberMissing)]
    [InlineData("/controllerEntry/form", "\"wheel-circumference\"", "#/controllerEntry/distance", ErrorCode.SettingsAtOdds)]
    [InlineData("/controllerEntry/unit", "\"m\"", "#/controllerEntry/unit", ErrorCode.SettingsAtOdds)]
    [InlineData("/controllerEntry/decimals", "10", "#/controllerEntry/decimals", ErrorCode.NumberOutOfRange)]
    [InlineData("/width/openers", "0", "#/width/openers", ErrorCode.NumberOutOfRange)]
    [InlineData("/width/spacing/unit", "\"m\"", "#/width/passToPass", ErrorCode.SettingsAtOdds)]
    [InlineData("/width/inForce/value", "30", "#/width/inForce", ErrorCode.SettingsAtOdds)]
    [InlineData("/meterDrive", "\"wheel\"", "#/meterDrive", ErrorCode.WordUnknown)]
    [InlineData("/price/value", "-420", "#/price/value", ErrorCode.NumberOutOfRange)]
    [InlineData("/tolerance", """{ "value": 0.5, "unit": "%" }""", "#/wantedPrecision", ErrorCode.SettingsAtOdds)]
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
        Assert.Contains(problem.Faults, fault => fault.Pointer == "#/pulsesPerTurn" && fault.Code == ErrorCode.MemberMissing);
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
