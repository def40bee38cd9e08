using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.DistanceSensors;

/// <summary>The forms in which controllers take the value of a distance sensor.</summary>
public enum SensorForm
{
    /// <summary>Pulses over a stated distance, often 100 m.</summary>
    PulsesPerDistance,

    /// <summary>Distance driven from one pulse to the next.</summary>
    DistancePerPulse,

    /// <summary>Rolling circumference of the wheel.</summary>
    WheelCircumference,
}

/// <summary>A number as a controller holds it.</summary>
/// <param name="Form">Its form.</param>
/// <param name="Canonical">Pulses per metre, metres per pulse or metres per turn; above 0.</param>
/// <remarks>
/// <para>Formula: K = pulses / L, in pulses per metre.</para>
/// <para>Range: pulses and distance above 0.</para>
/// <para>Source: common practice, no published source.</para>
/// <para>Accuracy: a quotient of two doubles, rounded once (SensorEntryTests).</para>
/// </remarks>
public readonly record struct SensorValue(SensorForm Form, double Canonical)
{
    /// <summary>Pulses over a distance.</summary>
    /// <param name="pulses">Pulses, above 0.</param>
    /// <param name="distance">The distance, above 0.</param>
    public static SensorValue PulsesOver(double pulses, Length distance) => new(SensorForm.PulsesPerDistance, pulses / distance.Metres);
}

/// <summary>How counts relate to pulses and to turns of the wheel.</summary>
/// <param name="IsPulses">A count is a pulse; otherwise a turn of a wheel whose pulses are unknown.</param>
/// <param name="CountsPerTurn">Counts in one turn of the wheel; null when unknown.</param>
/// <remarks>
/// <para>Formula: K pulses per metre, 1 / K metres per pulse, p / K metres per turn, with p counts per turn.</para>
/// <para>Range: values above 0; p known for a circumference.</para>
/// <para>Source: our own derivation.</para>
/// <para>Accuracy: there and back within 1e-15 relative (SensorEntryTests).</para>
/// </remarks>
public readonly record struct SensorCounts(bool IsPulses, double? CountsPerTurn)
{
    /// <summary>The counts of runs: turns become pulses where the pulses of a turn are known.</summary>
    public static SensorCounts Of(CountedThing counted, PulsesPerRevolution? perTurn) =>
        counted == CountedThing.Pulses ? new(true, perTurn?.Count) : new(perTurn is not null, perTurn?.Count ?? 1);

    /// <summary>A form can be told from these counts.</summary>
    public bool CanTell(SensorForm form) => form == SensorForm.WheelCircumference ? CountsPerTurn is not null : IsPulses;

    /// <summary>
    /// The value in a form of so many counts per metre; applied to a value in that form, the counts per metre, because each of K, 1 / K and
    /// p / K is its own inverse.
    /// </summary>
    /// <param name="form">The form.</param>
    /// <param name="value">Counts per metre, or a value in that form; above 0.</param>
    /// <exception cref="ArgumentException">The form cannot be told from these counts.</exception>
    public double Convert(SensorForm form, double value)
    {
        if (!CanTell(form))
            throw new ArgumentException($"{form} cannot be told from these counts.", nameof(form));
        return form switch
        {
            SensorForm.PulsesPerDistance => value,
            SensorForm.DistancePerPulse => 1 / value,
            _ => CountsPerTurn!.Value / value,
        };
    }
}
