using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Catches;

/// <summary>Revolutions of a meter during one catch, however they were counted, with the resolution of that count.</summary>
/// <param name="Count">Revolutions, above 0.</param>
/// <param name="Resolution">Smallest step of the count, in revolutions, &gt;= 0.</param>
/// <remarks>
/// <para>Formula: N = pulses / pulses per revolution, indicated mass / value typed in, turns times gearing, or time times speed; its
/// resolution r goes by the same factor.</para>
/// <para>Range: counts, masses and times above 0, resolutions at least 0.</para>
/// <para>Source: common practice, no published source.</para>
/// <para>Accuracy: 1e-12 relative (CountedRevolutionsTests).</para>
/// </remarks>
public readonly record struct CountedRevolutions(double Count, double Resolution)
{
    /// <summary>A revolution counter.</summary>
    public static CountedRevolutions FromCounter(Revolutions shown, Revolutions resolution) => new(shown.Count, resolution.Count);

    /// <summary>Sensor pulses: N = pulses / pulses per revolution; the resolution is one pulse.</summary>
    /// <param name="pulses">Pulses counted, above 0.</param>
    /// <param name="perRevolution">Pulses in one revolution, above 0.</param>
    public static CountedRevolutions FromPulses(double pulses, PulsesPerRevolution perRevolution) =>
        new(pulses / perRevolution.Count, 1 / perRevolution.Count);

    /// <summary>
    /// A machine that shows only the mass it believes to have metered: N = m_ind / k_set, with the value that was typed in, which is exact.
    /// </summary>
    /// <param name="indicated">Mass that the machine shows, above 0.</param>
    /// <param name="typedIn">Value typed into the controller, above 0.</param>
    /// <param name="resolution">Smallest step of the mass shown.</param>
    public static CountedRevolutions FromIndicatedMass(Mass indicated, MassPerRevolution typedIn, Mass resolution) =>
        new(indicated.Kilograms / typedIn.KilogramsPerRevolution, resolution.Kilograms / typedIn.KilogramsPerRevolution);

    /// <summary>Turns of a crank or a wheel: N = turns times meter revolutions per turn.</summary>
    /// <param name="turns">Turns counted, above 0.</param>
    /// <param name="meterRevolutionsPerTurn">Revolutions of the meter in one turn, above 0.</param>
    /// <param name="resolutionInTurns">Smallest step of the count.</param>
    public static CountedRevolutions FromTurns(double turns, double meterRevolutionsPerTurn, double resolutionInTurns) =>
        new(turns * meterRevolutionsPerTurn, resolutionInTurns * meterRevolutionsPerTurn);

    /// <summary>Run time at a steady meter speed: N = t n.</summary>
    /// <param name="run">Run time, above 0.</param>
    /// <param name="speed">Steady meter speed, above 0.</param>
    /// <param name="resolution">Smallest step of the time.</param>
    public static CountedRevolutions FromTime(Duration run, RotationalSpeed speed, Duration resolution) =>
        new(run.Seconds * speed.RevolutionsPerSecond, resolution.Seconds * speed.RevolutionsPerSecond);
}
