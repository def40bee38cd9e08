using System.Diagnostics.Metrics;

namespace CalibrationApi.Observability;

/// <summary>Counts what the engine was asked and what came of it.</summary>
internal static class Evaluations
{
    public const string Meter = "CalibrationApi";

    /// <summary>The outcome of a question that the engine refused to answer.</summary>
    public const string Refused = "refused";

    /// <summary>The outcome of an answer without a verdict.</summary>
    public const string Answered = "answered";

    public const string CatchTest = "catch-test";
    public const string CatchPlan = "catch-plan";
    public const string MeterSpeed = "meter-speed";
    public const string BulkDensity = "bulk-density";
    public const string VolumeCheck = "volume-check";
    public const string DistanceSensor = "distance-sensor";
    public const string DriveWheelTurns = "drive-wheel-turns";
    public const string SeedRowLimit = "seed-row-limit";
    public const string ProductRate = "product-rate";
    public const string SeedingRate = "seeding-rate";
    public const string NewLot = "new-lot";
    public const string StandCount = "stand-count";
    public const string StandRisk = "stand-risk";

    private static readonly Meter OfHost = new(Meter);
    private static readonly Counter<long> Counted = OfHost.CreateCounter<long>("calibration.evaluations", "{evaluation}", "Questions that the engine answered or refused, by kind and verdict.");

    /// <param name="kind">Kind of the question.</param>
    /// <param name="outcome">The verdict, where an answer has one.</param>
    public static void Count(string kind, string outcome) =>
        Counted.Add(1, new KeyValuePair<string, object?>("calibration.kind", kind), new KeyValuePair<string, object?>("calibration.outcome", outcome));
}
