using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Weighing;

/// <summary>Evaluates a check of a scale against known masses.</summary>
public static class ScaleCheckEvaluation
{
    /// <summary>The span error of the scale and whether it is inside its limits.</summary>
    /// <param name="question">The scale and its readings.</param>
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
    public static ScaleCheckResult Evaluate(ScaleCheckQuestion question)
    {
        var (scale, readings) = question;
        if (readings.Count == 0)
            throw new ArgumentException("At least one reading is needed.", nameof(question));
        if (readings.Any(reading => reading.Known.Kilograms <= 0))
            throw new ArgumentException("Known masses are above 0.", nameof(question));
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
        var verdict = Math.Abs(deviation) <= limit.Kilograms * (1 + 1e-9) ? ScaleVerdict.Passed : ScaleVerdict.Failed;
        return new ScaleCheckResult(error, Math.Sqrt(random + shared * shared), worst.Known, new Mass(deviation), limit, origin, verdict);
    }

    // To a nanogram: no scale under a seeder shows less, and the binary rest of two decimal readings is not a deviation.
    private static double Deviation(KnownMassReading reading) => Math.Round(reading.Indicated.Kilograms - reading.Known.Kilograms, 12);
}
