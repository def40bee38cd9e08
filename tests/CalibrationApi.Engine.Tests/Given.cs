using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests;

/// <summary>
/// Catch tests to start from. The scenario is invented (a cereal meter near 0.36 kg per revolution); nothing here is published.
/// </summary>
internal static class Given
{
    /// <summary>A verified platform scale with divisions of 20 g.</summary>
    public static Scale Platform { get; } = new() { Division = new Mass(0.02), AccuracyClass = AccuracyClass.III };

    /// <summary>A scale so good that only the catches themselves scatter.</summary>
    public static Scale Perfect { get; } = new() { Division = new Mass(1e-9), StatedAccuracy = new Mass(1e-9) };

    /// <summary>A counter without resolution, for tests in which counting must not matter.</summary>
    public const double NoResolution = 0;

    public static MassPerRevolution PerRevolution(double kilograms) => new(kilograms);

    public static CountedRevolutions Turns(double revolutions, double resolution = 0.1) => new(revolutions, resolution);

    public static Catch Weighed(double gross, double tare, double revolutions, double resolution = 0.1, string? excludedBecause = null) =>
        Catch.Weighed(new Mass(gross), new Mass(tare), Turns(revolutions, resolution), excludedBecause);

    public static Catch Net(double kilograms, double revolutions, double resolution = 0.1, string? excludedBecause = null) =>
        Catch.Net(new Mass(kilograms), Turns(revolutions, resolution), excludedBecause);

    /// <summary>A catch of the given mass per revolution over the given revolutions.</summary>
    public static Catch Delivering(
        double perRevolution,
        double revolutions = 47,
        double resolution = 0.1,
        string? excludedBecause = null
    ) => Net(perRevolution * revolutions, revolutions, resolution, excludedBecause);

    public static CatchTestQuestion Test(params Catch[] catches) => new() { Catches = catches, Scale = Platform };

    /// <summary>Catches whose only scatter is their own: perfect scale, counter without resolution.</summary>
    public static CatchTestQuestion PureTest(params double[] perRevolution) =>
        new()
        {
            Catches = [.. perRevolution.Select(value => Delivering(value, 50, NoResolution))],
            Scale = Perfect,
            Limits = OnePercent,
        };

    /// <summary>A repeatability of 1 %, with the degrees of freedom of the default.</summary>
    public static CatchTestLimits OnePercent { get; } = new() { Repeatability = 0.01, RepeatabilityDegreesOfFreedom = 4 };

    public static CatchTestQuestion InForce(
        this CatchTestQuestion test,
        double perRevolution,
        double? relativeUncertainty = null,
        bool? fromAnotherScale = false
    ) =>
        test with
        {
            Reference = new ReferenceValue(
                new MassPerRevolution(perRevolution),
                ReferenceKind.ValueInForce,
                relativeUncertainty,
                fromAnotherScale
            ),
        };

    public static CatchTestQuestion StartingFrom(this CatchTestQuestion test, double perRevolution) =>
        test with
        {
            Reference = new ReferenceValue(new MassPerRevolution(perRevolution), ReferenceKind.StartValue),
        };

    /// <summary>The same with an earlier test of two catches whose scatter was that of the default repeatability.</summary>
    public static CatchTestQuestion After(this CatchTestQuestion test, double perRevolution, bool? fromAnotherScale = false) =>
        test with
        {
            Earlier = new EarlierTest
            {
                Value = new MassPerRevolution(perRevolution),
                Catches = 2,
                FromAnotherScale = fromAnotherScale,
            },
        };

    public static CatchTestResult Evaluated(this CatchTestQuestion test)
    {
        var outcome = CatchTestEvaluation.Evaluate(test);
        Assert.True(outcome.IsAnswered, string.Join(' ', outcome.Refusals.Select(refusal => DisplayUnits.Metric.Write(refusal.Detail))));
        return outcome.Result;
    }

    public static string InMetric(this Sentence sentence) => DisplayUnits.Metric.Write(sentence);
}
