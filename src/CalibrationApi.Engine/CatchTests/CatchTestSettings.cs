using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>The limits in use once defaults are filled in, with what had to be assumed.</summary>
public sealed record CatchTestSettings
{
    /// <inheritdoc cref="CatchTestLimits.Tolerance"/>
    public required double Tolerance { get; init; }

    /// <inheritdoc cref="CatchTestLimits.WantedPrecision"/>
    public required double WantedPrecision { get; init; }

    /// <inheritdoc cref="CatchTestLimits.PrecisionProbability"/>
    public required double PrecisionProbability { get; init; }

    /// <inheritdoc cref="CatchTestLimits.SecondTestChange"/>
    public required double SecondTestChange { get; init; }

    /// <inheritdoc cref="CatchTestLimits.DayToDay"/>
    public required double DayToDay { get; init; }

    /// <inheritdoc cref="CatchTestLimits.CoverageProbability"/>
    public required double CoverageProbability { get; init; }

    /// <summary>Repeatability of one catch.</summary>
    public required RepeatabilityPrior Repeatability { get; init; }

    /// <summary>Everything the caller did not state.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>Fills in the defaults.</summary>
    internal static CatchTestSettings From(CatchTestLimits limits, RepeatabilityPrior repeatability, bool compares)
    {
        var assumptions = new List<Assumption>(8);
        if (repeatability.Assumed(limits.Repeatability, limits.RepeatabilityDegreesOfFreedom) is { } assumed)
            assumptions.Add(assumed);
        var settings = new CatchTestSettings
        {
            Repeatability = repeatability,
            DayToDay = limits.DayToDay ?? CatchTestLimits.DefaultDayToDay,
            Tolerance = limits.Tolerance ?? CatchTestLimits.DefaultTolerance,
            WantedPrecision = limits.WantedPrecision ?? CatchTestLimits.DefaultWantedPrecision,
            PrecisionProbability = limits.PrecisionProbability ?? CatchTestLimits.DefaultPrecisionProbability,
            SecondTestChange = limits.SecondTestChange
                ?? CatchTestLimits.SecondTestTolerances * (limits.Tolerance ?? CatchTestLimits.DefaultTolerance),
            CoverageProbability = limits.CoverageProbability ?? CatchTestLimits.DefaultCoverage,
            Assumptions = assumptions,
        };
        if (compares)
        {
            AddIfMissing(assumptions, limits.DayToDay, "dayToDay", CatchTestDefaults.DayToDay);
            AddIfMissing(
                assumptions,
                limits.SecondTestChange,
                "secondTestChange",
                CatchTestDefaults.SecondTestChange with
                {
                    Value = new Ratio(settings.SecondTestChange),
                }
            );
        }

        AddIfMissing(assumptions, limits.Tolerance, "tolerance", CatchTestDefaults.Tolerance);
        AddIfMissing(assumptions, limits.WantedPrecision, "wantedPrecision", CatchTestDefaults.WantedPrecision);
        return settings;
    }

    /// <summary>
    /// Tolerance and wanted precision cannot both be met: a test that just reaches the wanted precision and finds no change at all would
    /// still not show that the value in force is within tolerance.
    /// </summary>
    /// <remarks>
    /// Best case: normal distribution, change zero, standard uncertainty wanted / z together with the day-to-day component.
    /// </remarks>
    internal Refusal? AtOdds()
    {
        var z = StudentT.CoverageFactor(CoverageProbability, double.PositiveInfinity);
        var precision = WantedPrecision / z;
        var needed =
            StudentT.CoverageFactor(CatchTestVerdict.KeepProbability, double.PositiveInfinity)
            * Math.Sqrt(precision * precision + DayToDay * DayToDay);
        return !Threshold.IsAbove(needed, Tolerance)
            ? null
            : new Refusal(
                SharedCodes.SettingsAtOdds,
                "wantedPrecision",
                $"A tolerance of {new Ratio(Tolerance)} cannot be shown by a test that is only wanted to {new Ratio(WantedPrecision)} (with {new Ratio(DayToDay)} from day to day it takes a tolerance of at least {new Ratio(needed)}). Widen the tolerance or ask for a smaller wantedPrecision."
            );
    }

    /// <summary>
    /// The largest day-to-day component, relative, with which a test can still show its tolerance; 0 when even none would be too much.
    /// </summary>
    /// <param name="limits">Tolerance, wanted precision and coverage; the day-to-day component in it is not read.</param>
    /// <remarks>
    /// <para>Formula: the best case of a test that just reaches the wanted precision, solved for d: tolerance = z sqrt((U / z_c)^2 + d^2).
    /// What a history says beyond it cannot be counted, or no further test of the series could be judged.</para>
    /// <para>Range: tolerance and precision above 0, coverage strictly between 0 and 1.</para>
    /// <para>Source: our own derivation.</para>
    /// <para>Accuracy: 1e-9 relative, and a test with it is just not at odds (SettingsAtOddsTests).</para>
    /// </remarks>
    public static double LargestDayToDay(CatchTestLimits limits)
    {
        var precision =
            (limits.WantedPrecision ?? CatchTestLimits.DefaultWantedPrecision)
            / StudentT.CoverageFactor(limits.CoverageProbability ?? CatchTestLimits.DefaultCoverage, double.PositiveInfinity);
        var allowed =
            (limits.Tolerance ?? CatchTestLimits.DefaultTolerance)
            / StudentT.CoverageFactor(CatchTestVerdict.KeepProbability, double.PositiveInfinity);
        return Math.Sqrt(Math.Max(0, allowed * allowed - precision * precision));
    }

    private static void AddIfMissing(List<Assumption> assumptions, double? stated, string name, DefaultValue used)
    {
        if (stated is null)
            assumptions.Add(used.Assumed(name));
    }
}
