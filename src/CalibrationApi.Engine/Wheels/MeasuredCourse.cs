using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Wheels;

/// <summary>A course measured out on the ground: its length for an area, the speed over it.</summary>
/// <remarks>
/// <para>Range: widths and times above 0.</para>
/// <para>Accuracy: published courses and speeds as printed, or the table of cases says why not (DistanceTradeTests,
/// CatchDistanceTradeTests).</para>
/// </remarks>
public static class MeasuredCourse
{
    /// <summary>Length of a course on which a width covers an area: A / W.</summary>
    /// <param name="area">Area A.</param>
    /// <param name="width">Width covered W, above 0; that of one outlet for the area of one outlet.</param>
    /// <remarks>
    /// <para>Formula: L = A / W, m.</para>
    /// <para>Source: SOURCES.md, keys SEFP and UGA-FA.</para>
    /// </remarks>
    public static Length For(Area area, Length width) => new(area.SquareMetres / width.Metres);

    /// <summary>Ground speed over a course: L / t. In miles per hour that is 60 / seconds over 88 ft, exactly.</summary>
    /// <param name="length">Length L of the course.</param>
    /// <param name="time">Time t taken for it, above 0.</param>
    /// <remarks>
    /// <para>Formula: v = L / t, m/s.</para>
    /// <para>Source: SOURCES.md, key UKY-73.</para>
    /// </remarks>
    public static Speed GroundSpeed(Length length, Duration time) => new(length.Metres / time.Seconds);
}
