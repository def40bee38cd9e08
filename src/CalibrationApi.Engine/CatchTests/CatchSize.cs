using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>What makes a catch large enough to be worth its trouble.</summary>
/// <remarks>
/// <para>Formula: m = d max(500, 20 / (sqrt(6) P)), with the division d and the wanted precision P; d / sqrt(6) is the standard uncertainty
/// of a net mass by the rounding of two readings.</para>
/// <para>Range: divisions and precisions above 0.</para>
/// <para>Source: our own derivation; the 500 divisions are the first step of class III in OIML R 76 (SOURCES.md, key OIML-R76) taken as a
/// yardstick, the tenth of the precision judgement.</para>
/// <para>Accuracy: exact (CatchSizeTests).</para>
/// </remarks>
public static class CatchSize
{
    /// <summary>Revolutions from which start and stop hardly matter; judgement, no published source.</summary>
    public const double UsualRevolutions = 20;

    /// <summary>Scale divisions from which rounding hardly matters.</summary>
    public const double FineDivisions = 500;

    /// <summary>Where a least catch comes from, in words.</summary>
    public const string Origin =
        "500 divisions of the scale, or as many as keep its rounding under a tenth of the wanted precision; judgement, no published source";

    // Twice the rounding of two readings may take a tenth of the wanted precision.
    private static readonly double DivisionsAtFullPrecision = 10 * 2 / Math.Sqrt(6);

    /// <summary>The least catch that the rounding of the scale hardly blurs.</summary>
    /// <param name="division">Division of the scale, kg, above 0.</param>
    /// <param name="wantedPrecision">Wanted precision of the result, relative, above 0.</param>
    public static Mass Least(Mass division, double wantedPrecision) =>
        new(division.Kilograms * Math.Max(FineDivisions, DivisionsAtFullPrecision / wantedPrecision));
}
