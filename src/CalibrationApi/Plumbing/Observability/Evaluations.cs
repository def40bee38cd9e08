using System.Diagnostics.Metrics;

namespace CalibrationApi.Plumbing.Observability;

/// <summary>Counts what the engine was asked and what came of it.</summary>
internal static class Evaluations
{
    public const string Meter = "CalibrationApi";

    /// <summary>The outcome of a question that the engine refused to answer.</summary>
    public const string Refused = "refused";

    private static readonly Meter OfHost = new(Meter);
    private static readonly Counter<long> Counted = OfHost.CreateCounter<long>(
        "calibration.evaluations",
        "{evaluation}",
        "Questions that the engine answered or refused, by kind and verdict."
    );

    /// <param name="kind">Kind of the question.</param>
    /// <param name="outcome">The verdict of the answer, or that there is none.</param>
    public static void Count(string kind, string outcome) =>
        Counted.Add(
            1,
            new KeyValuePair<string, object?>("calibration.kind", kind),
            new KeyValuePair<string, object?>("calibration.outcome", outcome)
        );
}
