using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>The share of the seedbed over which seed and fertilizer are spread.</summary>
public static class SeedbedUtilisation
{
    /// <summary>Seedbed utilisation: the share of the ground that seed and fertilizer lie on.</summary>
    /// <param name="spread">Width of seed and fertilizer at the opener, above 0, at most the row spacing.</param>
    /// <param name="rowSpacing">Distance between rows, above 0.</param>
    /// <returns>Above 0, at most 1. Spread in depth is not counted.</returns>
    /// <remarks>
    /// <para>Formula: spread / row spacing, both m.</para>
    /// <para>Range: spread above 0 and not wider than the row spacing but for rounding, which gives 1.</para>
    /// <para>Source: Manitoba Agriculture (SOURCES.md, key MB-SBU), which prints whole per cents.</para>
    /// <para>Accuracy: 1e-12 (SeedbedUtilisationTests); the printed per cents (SeedRowTradeTests).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A width is not above 0, or the spread is wider than the row spacing.</exception>
    public static double Of(Length spread, Length rowSpacing)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(spread.Metres);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rowSpacing.Metres);
        if (IsWiderThanRow(spread, rowSpacing))
            throw new ArgumentOutOfRangeException(nameof(spread), spread.Metres, "Seed cannot be spread wider than the rows are apart.");
        return Math.Min(spread.Metres / rowSpacing.Metres, 1);
    }

    /// <summary>True when a spread is wider than the row spacing by more than rounding, which cannot be.</summary>
    public static bool IsWiderThanRow(Length spread, Length rowSpacing) => Threshold.IsAbove(spread.Metres, rowSpacing.Metres);
}
