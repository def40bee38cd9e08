using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;

namespace CalibrationApi.Engine.Tests;

/// <summary>Catch plans to start from: the invented three-tank scenario of the worked example.</summary>
internal static class Planned
{
    public static Container ThirtyLitres { get; } = new(new Volume(0.030), new Mass(1.62));

    public static PlannedMeter Front { get; } = Meter("front", "malting barley", 90, 620, 0.342);

    public static PlannedMeter Middle { get; } = Meter("middle", "granular phosphate", 55, 960, 0.710);

    public static PlannedMeter Rear { get; } = Meter("rear", "clover", 6, 780, 0.031);

    /// <summary>9 km/h, 50 kg scale of class III with divisions of 20 g, 30 L container, separate drives.</summary>
    public static CatchPlanQuestion Plan(params PlannedMeter[] meters) =>
        new()
        {
            GroundSpeed = new Speed(2.5),
            Scale = Given.Platform with { Capacity = new Mass(50) },
            CounterResolution = new Revolutions(0.1),
            Container = ThirtyLitres,
            LongestRun = new Duration(300),
            WantedPrecision = 0.03,
            Meters = meters,
        };

    public static PlannedMeter Meter(string name, string product, double kilogramsPerHectare, double density, double perRevolution) =>
        new()
        {
            Name = name,
            Product = product,
            CoveredWidth = new Length(9),
            TargetRate = new MassPerArea(kilogramsPerHectare / 10_000),
            BulkDensity = new BulkDensity(density),
            Value = new ReferenceValue(new MassPerRevolution(perRevolution), ReferenceKind.ValueInForce, 0.012),
            SpeedLimits = new MeterSpeedLimits(Rpm(4), Rpm(90)),
        };

    public static RotationalSpeed Rpm(double value) => new(UnitTable.Get("rpm").Canonical(value));

    public static double Rpm(this RotationalSpeed speed) => UnitTable.Get("rpm").FromCanonical(speed.RevolutionsPerSecond);

    public static CatchPlanResult Evaluated(this CatchPlanQuestion plan)
    {
        var outcome = CatchPlanEvaluation.Evaluate(plan);
        Assert.True(outcome.IsAnswered, string.Join(' ', outcome.Refusals.Select(refusal => refusal.Detail.InMetric())));
        return outcome.Result;
    }
}
