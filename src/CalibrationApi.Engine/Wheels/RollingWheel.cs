using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Wheels;

/// <summary>A wheel on the ground: how far it rolls in a turn, and by how much it slips or skids.</summary>
/// <remarks>
/// Slip and skid are told apart, because a sensor wheel may be driven or towed and published formulas use both signs.
/// Slip is that of a driven wheel, which spins: it turns more often than the distance asks for. Skid is that of a towed wheel
/// that drives something, a meter for example: it turns less often, so that a meter skidding by s puts down s too little.
/// Source: SOURCES.md, keys GATE-SLIP (slip) and NIRALA-2011 (skid).
/// </remarks>
public static class RollingWheel
{
    /// <summary>Rolling circumference: distance driven over turns counted, L / N.</summary>
    /// <param name="distance">Distance driven L.</param>
    /// <param name="turns">Turns counted N, above 0.</param>
    /// <remarks>Under the load and on the ground of the run: what the wheel sinks, slips and skids there is in it.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">No turns.</exception>
    public static Length Circumference(Length distance, double turns)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(turns);
        return new(distance.Metres / turns);
    }

    /// <summary>Circumference of a round wheel without load: pi D. A loaded tyre rolls shorter.</summary>
    /// <param name="diameter">Diameter D of the wheel.</param>
    public static Length OfDiameter(Length diameter) => new(Math.PI * diameter.Metres);

    /// <summary>Turns of a wheel over a distance: L / C.</summary>
    /// <param name="distance">Distance L.</param>
    /// <param name="circumference">Rolling circumference C, above 0.</param>
    public static double Turns(Length distance, Length circumference) => distance.Metres / circumference.Metres;

    /// <summary>Slip of a driven wheel: 1 - L / (N C). Positive when it turns more often than the distance asks for.</summary>
    /// <param name="distance">Distance driven L.</param>
    /// <param name="turns">Turns counted N, above 0.</param>
    /// <param name="free">Rolling circumference C without slip.</param>
    public static double Slip(Length distance, double turns, Length free) => 1 - distance.Metres / (turns * free.Metres);

    /// <summary>The skid behind a slip below 0: 1 - 1 / (1 - slip), because slip is a share of the turns made and skid one of the turns due.</summary>
    /// <param name="slip">Slip, below 1.</param>
    public static double SkidOf(double slip) => 1 - 1 / (1 - slip);

    /// <summary>Skid of a towed wheel: 1 - N C / L. Positive when it turns less often than the distance asks for.</summary>
    /// <param name="distance">Distance driven L, above 0.</param>
    /// <param name="turns">Turns counted N.</param>
    /// <param name="free">Rolling circumference C without skid.</param>
    public static double Skid(Length distance, double turns, Length free) => 1 - turns * free.Metres / distance.Metres;
}
