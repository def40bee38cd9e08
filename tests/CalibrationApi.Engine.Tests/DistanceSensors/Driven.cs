using CalibrationApi.Engine.DistanceSensors;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.DistanceSensors;

/// <summary>Runs to start from. The scenario is invented: a sensor near 1300 pulses in 100 m.</summary>
internal static class Driven
{
    public static MeasuredRun Run(double pulses, double metres = 100, RunDirection? direction = null) =>
        new(new Length(metres), pulses) { Direction = direction };

    public static DistanceSensorQuestion Runs(params double[] pulses) => new() { Runs = [.. pulses.Select(count => Run(count))] };

    /// <summary>Runs of which nothing but their own scatter is uncertain.</summary>
    public static DistanceSensorQuestion Pure(params double[] pulses) =>
        Runs([.. pulses.Select(count => count * 1e6)]) with
        {
            DistanceResolution = new Length(0),
            TapeLimit = 0,
        };

    public static DistanceSensorQuestion InForce(this DistanceSensorQuestion question, double per100Metres) =>
        question with
        {
            ValueInForce = new SensorValue(SensorForm.PulsesPerDistance, per100Metres / 100),
        };

    public static DistanceSensorResult Evaluated(this DistanceSensorQuestion question)
    {
        var outcome = DistanceSensorEvaluation.Evaluate(question);
        Assert.True(outcome.IsAnswered, string.Join(' ', outcome.Refusals.Select(refusal => DisplayUnits.Metric.Write(refusal.Detail))));
        return outcome.Result;
    }
}
