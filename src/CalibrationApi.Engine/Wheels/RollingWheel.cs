using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Wheels;

/// <summary>A wheel on the ground: how far it rolls in a turn.</summary>
/// <remarks>
/// <para>Slip and skid are one quantity with two signs: skid, used here throughout, is the share of the turns due that a wheel lacks. It is
/// above 0 for a wheel that turns less often than the distance asks for, as a towed one does that drives a meter, so that a meter skidding
/// by s puts down s too little; below 0 for a driven wheel that spins. From a slip s, a share of the turns made, it is
/// 1 - 1 / (1 - s).</para>
/// <para>Source: SOURCES.md, keys GATE-SLIP (slip) and NIRALA-2011 (skid); how one follows from the other is our own derivation.</para>
/// <para>Range: distances and diameters above 0, turns above 0.</para>
/// <para>Accuracy: 1e-12 against counts of turns by hand (RollingWheelTests); published figures as printed, or the table of cases says why
/// not (DistanceTradeTests).</para>
/// </remarks>
public static class RollingWheel
{
    /// <summary>Rolling circumference: distance driven over turns counted, L / N.</summary>
    /// <param name="distance">Distance driven L.</param>
    /// <param name="turns">Turns counted N, above 0.</param>
    /// <remarks>
    /// <para>Under the load and on the ground of the run: what the wheel sinks, slips and skids there is in it.</para>
    /// <para>Formula: C = L / N, m.</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">No turns.</exception>
    public static Length Circumference(Length distance, double turns)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(turns);
        return new(distance.Metres / turns);
    }

    /// <summary>Shortest distance in a turn that can be that of a wheel, m; judgement, no published source.</summary>
    public const double LeastCircumference = 0.1;

    /// <summary>Longest distance in a turn that can be that of a wheel, m; judgement, no published source.</summary>
    public const double MostCircumference = 30;

    /// <summary>What is said of a run that no wheel rolls.</summary>
    public const string NoWheel =
        "By these two numbers the wheel rolls less than 10 cm or more than 30 m in a turn. Check both and their units.";

    /// <summary>No wheel rolls that far in that many turns: one of the numbers, or its unit, is wrong.</summary>
    /// <param name="metres">Distance driven L, m.</param>
    /// <param name="turns">Turns counted N.</param>
    /// <remarks>Formula: L / N below 0.1 m or above 30 m.</remarks>
    public static bool IsNoWheel(double metres, double turns) => metres / turns is < LeastCircumference or > MostCircumference;

    /// <summary>Circumference of a round wheel without load: pi D. A loaded tyre rolls shorter.</summary>
    /// <param name="diameter">Diameter D of the wheel.</param>
    /// <remarks>Formula: C = pi D, m.</remarks>
    public static Length OfDiameter(Length diameter) => new(Math.PI * diameter.Metres);
}
