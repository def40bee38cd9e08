using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Weighing;

/// <summary>One reading of a known mass.</summary>
/// <param name="Known">The mass, kg, above 0.</param>
/// <param name="Indicated">What the scale showed, kg.</param>
/// <param name="KnownUncertainty">Standard uncertainty of the known mass, kg; 0 when negligible.</param>
public sealed record KnownMassReading(Mass Known, Mass Indicated, Mass KnownUncertainty);

/// <summary>The outcome of a check of a scale.</summary>
/// <param name="Error">Span error: indicated minus true over true.</param>
/// <param name="StandardUncertainty">Its standard uncertainty, relative.</param>
/// <param name="WorstAt">The known mass whose reading comes nearest to its limit or exceeds it most, kg.</param>
/// <param name="LargestDeviation">How far that reading is off, kg, with its sign.</param>
/// <param name="Limit">Limit of the scale at that load.</param>
/// <param name="LimitOrigin">Where the limit comes from.</param>
/// <param name="Passed">Every reading is inside the limit at its load.</param>
public sealed record ScaleCheckResult(
    double Error,
    double StandardUncertainty,
    Mass WorstAt,
    Mass LargestDeviation,
    Mass Limit,
    string LimitOrigin,
    bool Passed
);

/// <summary>Evaluates a check of a scale against known masses.</summary>
public static class ScaleCheckEvaluation
{
    /// <summary>The span error of the scale and whether it is inside its limits.</summary>
    /// <param name="scale">The scale, without a known error.</param>
    /// <param name="readings">At least one.</param>
    /// <remarks>
    /// <para>Formula: least squares through the origin: eps = sum(m (i - m)) / sum(m^2). The rounding of each indication (d / sqrt(12)) and
    /// the scatter of the residuals, whichever is larger, give its random part; the known masses, which are usually one set and so share
    /// their error, the other: sum(m u) / sum(m^2). Passed: |i - m| at most <see cref="Scale.LimitAt"/> at each load, with 1e-9 of it for
    /// the binary value of decimal readings.</para>
    /// <para>Range: known masses m above 0, indications i of any size, kg; one reading has its rounding only.</para>
    /// <para>Source: line through the origin, textbook, as in SOURCES.md, key NIST-STRD; rounding as JCGM 100:2008, F.2.2.1 (key GUM); the
    /// larger of rounding and scatter is judgement.</para>
    /// <para>Accuracy: slope and its standard deviation within 1e-13 of the certified ones (ScaleCheckReferenceTests); each part by hand
    /// (ScaleCheckTests).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">No reading, or a known mass that is not above 0.</exception>
    public static ScaleCheckResult Evaluate(Scale scale, IReadOnlyList<KnownMassReading> readings)
    {
        if (readings.Count == 0)
            throw new ArgumentException("At least one reading is needed.", nameof(readings));
        if (readings.Any(reading => reading.Known.Kilograms <= 0))
            throw new ArgumentException("Known masses are above 0.", nameof(readings));
        double mm = 0,
            md = 0,
            mu = 0;
        foreach (var reading in readings)
        {
            var known = reading.Known.Kilograms;
            mm += known * known;
            md += known * Deviation(reading);
            mu += known * reading.KnownUncertainty.Kilograms;
        }

        var error = md / mm;
        var rounding = scale.Division.Kilograms * scale.Division.Kilograms / 12;
        var residuals = readings.Sum(reading => Math.Pow(reading.Indicated.Kilograms - reading.Known.Kilograms * (1 + error), 2));
        var random = Math.Max(rounding, readings.Count > 1 ? residuals / (readings.Count - 1) : 0) / mm;
        var shared = mu / mm;

        var worst = readings.MaxBy(reading => Math.Abs(Deviation(reading)) / scale.LimitAt(reading.Known).Limit.Kilograms)!;
        var deviation = Deviation(worst);
        var (limit, origin) = scale.LimitAt(worst.Known);
        // A reading that lies on the limit passes; the allowance is for the binary value of decimal readings.
        var passed = Math.Abs(deviation) <= limit.Kilograms * (1 + 1e-9);
        return new ScaleCheckResult(error, Math.Sqrt(random + shared * shared), worst.Known, new Mass(deviation), limit, origin, passed);
    }

    // To a nanogram: no scale under a seeder shows less, and the binary rest of two decimal readings is not a deviation.
    private static double Deviation(KnownMassReading reading) => Math.Round(reading.Indicated.Kilograms - reading.Known.Kilograms, 12);
}
