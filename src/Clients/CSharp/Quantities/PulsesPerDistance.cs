using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a number of sensor pulses per distance.</summary>
public static class PulsesPerDistance
{
    /// <summary>In pulses per hundred metres.</summary>
    /// <param name="value">The number.</param>
    public static PulsesPerDistanceQuantity PerHundredMetres(double value) =>
        new() { Value = value, Unit = PulsesPerDistanceQuantity_unit.Pulses100m };
}
