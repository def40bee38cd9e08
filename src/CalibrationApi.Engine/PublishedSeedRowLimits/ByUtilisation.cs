using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>
/// The source makes its limit a function of seedbed utilisation: it prints a number for several openers, and geometries of
/// the same utilisation have the same number.
/// </summary>
/// <remarks>
/// A printed utilisation is taken when the opener has it within <see cref="LimitGeometry.SameWidth"/>. Between two, the
/// stricter of both is taken and both are named; above the highest, that one. Below the lowest there is no number: less of
/// the seedbed stands less fertilizer.
/// </remarks>
/// <param name="Cells">Printed cells of one kind of soil.</param>
/// <param name="IsWhole">False when only a part of the printed cells was read; then there is no number above the highest.</param>
public sealed record ByUtilisation(IReadOnlyList<UtilisationCell> Cells, bool IsWhole = true) : LimitGeometry
{
    // The stricter one of cells with the same utilisation, should a source ever let them differ.
    private readonly UtilisationCell[] steps =
    [
        .. Cells.GroupBy(cell => cell.Percent).OrderBy(group => group.Key).Select(group => group.MinBy(cell => cell.Rate.Value)!),
    ];

    /// <inheritdoc/>
    public override GeometryMatch Find(Length spread, Length rowSpacing)
    {
        var utilisation = SeedbedUtilisation.Of(spread, rowSpacing);
        if (steps.FirstOrDefault(step => IsSame(utilisation, step.Utilisation)) is { } same)
            return GeometryMatch.Printed(same.Printed);
        var above = Array.FindIndex(steps, step => step.Utilisation > utilisation);
        if (above == 0)
            return GeometryMatch.None($"Its lowest seedbed utilisation is {steps[0].Percent} %; yours is lower and stands less.");
        if (above > 0)
        {
            var (lower, upper) = (steps[above - 1], steps[above]);
            var stricter = lower.Rate.Value <= upper.Rate.Value ? lower : upper;
            return new GeometryMatch(stricter.Rate, LimitBasis.StricterOfTwoCells, [lower.Printed, upper.Printed], null);
        }

        return IsWhole
            ? new GeometryMatch(steps[^1].Rate, LimitBasis.WidestCell, [steps[^1].Printed], null)
            : GeometryMatch.None($"Its numbers above a seedbed utilisation of {steps[^1].Percent} % are not held here.");
    }
}

/// <summary>A printed number for a spread and a row spacing.</summary>
/// <param name="Spread">Spread, inches.</param>
/// <param name="Row">Row spacing, inches.</param>
/// <param name="Rate">The number.</param>
/// <remarks>
/// <para>Formula: utilisation = spread / row, inches; per cents rounded to whole ones, as printed.</para>
/// <para>Range: both above 0.</para>
/// <para>Source: Manitoba Agriculture (SOURCES.md, key MB-SBU), which prints the per cents.</para>
/// <para>Accuracy: the printed per cents exactly (SeedbedUtilisationTests).</para>
/// </remarks>
public sealed record UtilisationCell(double Spread, double Row, PrintedRate Rate)
{
    /// <summary>Seedbed utilisation, a fraction.</summary>
    public double Utilisation => Spread / Row;

    /// <summary>Seedbed utilisation in whole per cents, as printed.</summary>
    public int Percent => (int)Math.Round(Utilisation * 100);

    internal PrintedCell Printed =>
        new(FormattableString.Invariant($"seedbed utilisation of {Percent} % ({Spread} in spread, rows of {Row} in)"), Rate);
}
