using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes the pulses that a sensor gives per revolution.</summary>
public static class PulsesPerRevolution
{
    /// <summary>In pulses per revolution.</summary>
    /// <param name="value">The number.</param>
    public static PulsesPerRevolutionQuantity Pulses(double value) =>
        new() { Value = value, Unit = PulsesPerRevolutionQuantity_unit.PulsesRev };
}
