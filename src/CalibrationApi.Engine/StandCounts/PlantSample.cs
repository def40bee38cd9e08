using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.StandCounts;

/// <summary>The plants counted at one spot.</summary>
/// <param name="Plants">Plants counted, at least 0.</param>
/// <param name="Area">Ground on which they stand, above 0.</param>
/// <remarks>
/// <para>Range: lengths above 0, at least one row.</para>
/// <para>Accuracy: 1e-12 relative (PlantDensityTests); published hoops and row lengths as printed, or the table of cases says why not
/// (StandsTradeTests).</para>
/// </remarks>
public sealed record PlantSample(int Plants, Area Area)
{
    /// <summary>The area that the counter took it for, where it is called something else.</summary>
    public Area? CalledArea { get; init; }

    /// <summary>Inside diameter, where it was counted in a hoop.</summary>
    public Length? HoopDiameter { get; init; }

    /// <summary>The row or opener where it was counted, as the counter calls it.</summary>
    public string? Row { get; init; }

    /// <summary>Plants along rows.</summary>
    /// <param name="plants">Plants counted on all the rows together.</param>
    /// <param name="length">Length counted along each row, above 0.</param>
    /// <param name="rowSpacing">Distance from row to row, above 0.</param>
    /// <param name="rows">Rows counted side by side, at least 1.</param>
    /// <remarks>
    /// <para>Formula: ground = L a r, m2: length L, row spacing a, r rows counted side by side.</para>
    /// <para>Source: University of Tennessee, row length for a thousandth of an acre (SOURCES.md, key UTC-CORN).</para>
    /// </remarks>
    public static PlantSample AlongRows(int plants, Length length, Length rowSpacing, int rows = 1) =>
        new(plants, new Area(length.Metres * rowSpacing.Metres * rows));

    /// <summary>Plants inside a hoop.</summary>
    /// <param name="plants">Plants counted.</param>
    /// <param name="diameter">Inside diameter d, above 0.</param>
    /// <remarks>
    /// <para>Formula: ground = pi d^2 / 4, m2.</para>
    /// <para>Source: North Dakota State University, the hoop method (SOURCES.md, key NDSU-HOOP).</para>
    /// </remarks>
    public static PlantSample InHoop(int plants, Length diameter) =>
        new(plants, new Area(Math.PI * diameter.Metres * diameter.Metres / 4)) { HoopDiameter = diameter };

    /// <summary>Plants inside a rectangle.</summary>
    /// <param name="plants">Plants counted.</param>
    /// <param name="length">One side, above 0.</param>
    /// <param name="width">The other side, above 0.</param>
    /// <remarks>
    /// <para>Formula: ground = length times width, m2.</para>
    /// <para>Source: common practice, no published source.</para>
    /// </remarks>
    public static PlantSample InRectangle(int plants, Length length, Length width) => new(plants, new Area(length.Metres * width.Metres));
}
