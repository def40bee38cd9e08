using System.Globalization;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>For which row spacings and spreads a source prints numbers, and which.</summary>
public abstract record LimitGeometry
{
    /// <summary>
    /// How far a width may be from a printed one to count as the same: an inch taken as 25 mm is 1.6 % short, and rows are
    /// often told in whole centimetres. Judgement.
    /// </summary>
    public const double SameWidth = 0.025;

    /// <summary>Looks up the limit for an opener.</summary>
    /// <param name="spread">Width of seed and fertilizer.</param>
    /// <param name="rowSpacing">Distance between rows, at least the spread.</param>
    public abstract GeometryMatch Find(Length spread, Length rowSpacing);

    private protected static double Inches(Length width) => UnitTable.Get("in").FromCanonical(width.Metres);

    private protected static bool IsSame(double value, double printed) => Math.Abs(value / printed - 1) <= SameWidth;

    private protected static string Text(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}

/// <summary>What a source prints for a geometry.</summary>
/// <param name="Limit">The limit; null when it prints none.</param>
/// <param name="Basis">How it was found; null without a limit.</param>
/// <param name="Cells">The printed numbers it rests on.</param>
/// <param name="Reason">Why there is no limit; null with one.</param>
public sealed record GeometryMatch(PrintedRate? Limit, LimitBasis? Basis, IReadOnlyList<PrintedCell> Cells, string? Reason)
{
    internal static GeometryMatch Printed(PrintedCell cell) => new(cell.Rate, LimitBasis.PublishedCell, [cell], null);

    internal static GeometryMatch None(string reason) => new(null, null, [], reason);
}

/// <summary>The source prints one number for every opener.</summary>
/// <param name="Rate">The number.</param>
/// <param name="Geometry">How answers tell it.</param>
public sealed record AnyOpener(PrintedRate Rate, string Geometry = "row spacing and spread not stated") : LimitGeometry
{
    /// <inheritdoc/>
    public override GeometryMatch Find(Length spread, Length rowSpacing) => GeometryMatch.Printed(new PrintedCell(Geometry, Rate));
}

/// <summary>The source prints a number for one spread and some row spacings.</summary>
/// <param name="Spread">Spread, inches.</param>
/// <param name="FromRow">Narrowest row spacing, inches.</param>
/// <param name="ToRow">Widest row spacing, inches.</param>
/// <param name="Rate">The number.</param>
public sealed record OneOpener(double Spread, double FromRow, double ToRow, PrintedRate Rate) : LimitGeometry
{
    private string Geometry =>
        FromRow == ToRow
            ? $"{Text(Spread)} in spread, rows of {Text(FromRow)} in"
            : $"{Text(Spread)} in spread, rows of {Text(FromRow)} to {Text(ToRow)} in";

    /// <inheritdoc/>
    public override GeometryMatch Find(Length spread, Length rowSpacing)
    {
        var row = Inches(rowSpacing);
        return IsSame(Inches(spread), Spread) && row >= FromRow * (1 - SameWidth) && row <= ToRow * (1 + SameWidth)
            ? GeometryMatch.Printed(new PrintedCell(Geometry, Rate))
            : GeometryMatch.None($"It is for {Geometry} only.");
    }
}

/// <summary>The source prints a number for some row spacings and says nothing of the spread.</summary>
/// <param name="Rows">Row spacings in inches, narrowest first, each with its number.</param>
public sealed record ByRowSpacing(params IReadOnlyList<RowsLimit> Rows) : LimitGeometry
{
    /// <inheritdoc/>
    public override GeometryMatch Find(Length spread, Length rowSpacing)
    {
        var row = Inches(rowSpacing);
        var found = Rows.FirstOrDefault(rows => rows.Holds(row));
        return found is null
            ? GeometryMatch.None(
                $"It has numbers for {string.Join(", ", Rows.Select(rows => rows.Geometry))} only, and does not say that other row spacings lie between."
            )
            : GeometryMatch.Printed(new PrintedCell(found.Geometry, found.Rate));
    }
}

/// <summary>The number of a source for some row spacings.</summary>
/// <param name="From">Narrowest row spacing, inches; 0 without a bound.</param>
/// <param name="To">Widest row spacing, inches; infinity for all that are wider than <paramref name="From"/>.</param>
/// <param name="Rate">The number.</param>
public sealed record RowsLimit(double From, double To, PrintedRate Rate)
{
    internal string Geometry =>
        (From, To) switch
        {
            (0, _) => FormattableString.Invariant($"rows up to {To} in"),
            (_, double.PositiveInfinity) => FormattableString.Invariant($"rows wider than {From} in"),
            _ when From == To => FormattableString.Invariant($"rows of {From} in"),
            _ => FormattableString.Invariant($"rows of {From} to {To} in"),
        };

    internal bool Holds(double row) =>
        double.IsPositiveInfinity(To)
            ? row > From * (1 + LimitGeometry.SameWidth)
            : row >= From * (1 - LimitGeometry.SameWidth) && row <= To * (1 + LimitGeometry.SameWidth);
}

/// <summary>The source prints one number above a seedbed utilisation and, maybe, another one up to it.</summary>
/// <param name="Utilisation">The utilisation, a fraction.</param>
/// <param name="IncludesIt">The upper number holds at that utilisation too.</param>
/// <param name="Above">The number above it.</param>
/// <param name="UpTo">The number up to it; null when there is none.</param>
public sealed record AboveUtilisation(double Utilisation, bool IncludesIt, PrintedRate Above, PrintedRate? UpTo) : LimitGeometry
{
    /// <inheritdoc/>
    public override GeometryMatch Find(Length spread, Length rowSpacing)
    {
        var utilisation = SeedbedUtilisation.Of(spread, rowSpacing);
        var percent = Text(Utilisation * 100);
        if (IncludesIt ? !Threshold.IsBelow(utilisation, Utilisation) : Threshold.IsAbove(utilisation, Utilisation))
            return GeometryMatch.Printed(
                new PrintedCell(
                    IncludesIt ? $"seedbed utilisation of {percent} % or more" : $"seedbed utilisation above {percent} %",
                    Above
                )
            );
        return UpTo is { } limit
            ? GeometryMatch.Printed(new PrintedCell($"seedbed utilisation up to {percent} %", limit))
            : GeometryMatch.None($"It is for a seedbed utilisation of {percent} % or more.");
    }
}
