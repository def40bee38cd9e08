using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.SeedingRates;

/// <summary>
/// The trade's shortcut for pounds per acre: plants per square foot times grams per thousand kernels over survival over 10.
/// </summary>
/// <remarks>
/// <para>Formula: exact units divide by 10.4130 = 1000 x 453.59237 / 43 560, so the shortcut reads 4.13 % high whatever the crop.</para>
/// <para>Range: rates above 0, in whatever unit they are written.</para>
/// <para>Source: SOURCES.md, key SKAG-PULSE, which prints it; half a per cent for rounding is judgement.</para>
/// <para>Accuracy: the divisor within 1e-12 of the units by hand (SeedingRateTradeTests); corrected rates within 1e-12
/// (SeedingRateTests).</para>
/// </remarks>
public static class DivideByTen
{
    // A rate is written to two or three digits; a half of the last one is at most this much. Judgement.
    private const double Rounding = 0.005;

    /// <summary>The divisor of exact units: 10.4130.</summary>
    public static double ExactDivisor { get; } =
        UnitTable.Get("lb/ac").Canonical(1) / (UnitTable.Get("/ft2").Canonical(1) * UnitTable.Get("g/1000").Canonical(1));

    /// <summary>The shortcut over the exact rate: 1.0413.</summary>
    public static double Factor { get; } = ExactDivisor / 10;

    /// <summary>The exact rate behind a rate made with the shortcut.</summary>
    /// <param name="shortcut">A rate made with the shortcut, above 0.</param>
    public static MassPerArea Corrected(MassPerArea shortcut) => new(shortcut.KilogramsPerSquareMetre / Factor);

    /// <summary>True when a stated rate stands to the exact one as the shortcut does, up to rounding of half a per cent.</summary>
    /// <param name="ratio">Stated rate over exact rate.</param>
    public static bool Explains(double ratio) => Math.Abs(ratio / Factor - 1) <= Rounding;
}
