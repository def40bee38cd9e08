using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.MeterSpeeds;

/// <summary>Area worked per time, and time per area.</summary>
/// <remarks>
/// <para>Formula: area per time = W v e, width m, speed m/s, field efficiency e a fraction; a time is the area over that.</para>
/// <para>Range: width, speed and efficiency above 0, efficiency at most 1.</para>
/// <para>Source: University of Kentucky AEN-73 and Iowa State PM 696 and A3-24 (SOURCES.md, keys UKY-73, ISU-696 and ISU-A3-24), the
/// formula of each.</para>
/// <para>Accuracy: published capacities to every printed digit (FieldCapacityReferenceTests), others as printed, or the table of cases says
/// why not (FieldCapacityTradeTests); there and back within 1e-12 (FieldCapacityTests).</para>
/// </remarks>
public static class FieldCapacity
{
    /// <summary>Lowest field efficiency that was read for drills and planters: 30 %, a seeder (SOURCES.md, key JAM).</summary>
    public const double LowestPublished = 0.30;

    /// <summary>Highest field efficiency that was read for drills and planters: 85.93 %, a wheat drill (SOURCES.md, key ETH).</summary>
    public const double HighestPublished = 0.8593;

    /// <summary>Area worked in one hour: W v times field efficiency times one hour.</summary>
    /// <param name="workingWidth">Width worked W, above 0.</param>
    /// <param name="groundSpeed">Ground speed v, above 0.</param>
    /// <param name="fieldEfficiency">Share of the time spent working at that width and speed, above 0, at most 1; 1 gives the theoretical
    /// capacity.</param>
    public static Area PerHour(Length workingWidth, Speed groundSpeed, double fieldEfficiency = 1) =>
        During(workingWidth, groundSpeed, fieldEfficiency, new Duration(3600));

    /// <summary>Area worked in a time in the field: W v times field efficiency times the time.</summary>
    /// <param name="workingWidth">Width worked W, above 0.</param>
    /// <param name="groundSpeed">Ground speed v, above 0.</param>
    /// <param name="fieldEfficiency">Share of the time spent working at that width and speed, above 0, at most 1.</param>
    /// <param name="time">Time in the field.</param>
    public static Area During(Length workingWidth, Speed groundSpeed, double fieldEfficiency, Duration time) =>
        new(workingWidth.Metres * groundSpeed.MetresPerSecond * fieldEfficiency * time.Seconds);

    /// <summary>Time in the field for an area: the area over W v times field efficiency.</summary>
    /// <param name="area">Area to be worked.</param>
    /// <param name="workingWidth">Width worked W, above 0.</param>
    /// <param name="groundSpeed">Ground speed v, above 0.</param>
    /// <param name="fieldEfficiency">Share of the time spent working at that width and speed, above 0, at most 1.</param>
    public static Duration TimeFor(Area area, Length workingWidth, Speed groundSpeed, double fieldEfficiency) =>
        new(area.SquareMetres / (workingWidth.Metres * groundSpeed.MetresPerSecond * fieldEfficiency));

    /// <summary>Field efficiency that stops leave: time worked over time worked and stopped, per area.</summary>
    /// <param name="workingWidth">Width worked W, above 0.</param>
    /// <param name="groundSpeed">Ground speed v, above 0.</param>
    /// <param name="stops">The stops.</param>
    /// <remarks>
    /// <para>Formula: 1 / (1 + W v (t_turn / (W L) + t_fill / A_fill)): every run of length L ends in a turn, every area A_fill in a
    /// refill. The faster the machine, the lower the efficiency, because stops take as long as before. Overlap is not in it.</para>
    /// <para>Range: lengths, areas and speeds above 0, times at least 0; a pair that is not stated costs nothing.</para>
    /// <para>Source: our own derivation.</para>
    /// <para>Accuracy: 1e-12 relative against times by hand (FieldCapacityTests).</para>
    /// </remarks>
    public static double EfficiencyWith(Length workingWidth, Speed groundSpeed, FieldStops stops)
    {
        var perRun = stops is { Turn: { } turn, RunLength: { } run } ? turn.Seconds / (workingWidth.Metres * run.Metres) : 0;
        var perFill = stops is { Refill: { } refill, AreaPerFill: { } area } ? refill.Seconds / area.SquareMetres : 0;
        return 1 / (1 + workingWidth.Metres * groundSpeed.MetresPerSecond * (perRun + perFill));
    }

    internal static Finding? Unusual(double fieldEfficiency) =>
        Threshold.IsBelow(fieldEfficiency, LowestPublished) || Threshold.IsAbove(fieldEfficiency, HighestPublished)
            ? Finding.Note(
                MeterSpeedCodes.UnusualFieldEfficiency,
                $"A field efficiency of {new Ratio(fieldEfficiency):0.#} is outside what was measured on seeders, {new Ratio(LowestPublished):0.#} to {new Ratio(HighestPublished):0.#}."
            )
            : null;
}

/// <summary>What keeps a machine from working: turns and refills. A pair of members goes together.</summary>
/// <param name="Turn">Time of one turn at the end of a run.</param>
/// <param name="RunLength">Length of a run.</param>
/// <param name="Refill">Time of one refill.</param>
/// <param name="AreaPerFill">Area that a fill covers.</param>
public sealed record FieldStops(Duration? Turn, Length? RunLength, Duration? Refill, Area? AreaPerFill);

/// <summary>Field capacity at one ground speed.</summary>
/// <param name="GroundSpeed">The ground speed.</param>
/// <param name="FieldEfficiency">Share of the time spent working.</param>
/// <param name="AreaPerHour">Area worked in one hour in the field.</param>
/// <param name="AreaPerDay">Area worked in a day of the stated hours; null without.</param>
/// <param name="TimeForArea">Time in the field for the stated area; null without.</param>
public sealed record CapacityAt(Speed GroundSpeed, double FieldEfficiency, Area AreaPerHour, Area? AreaPerDay, Duration? TimeForArea);
