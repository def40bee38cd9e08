using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a ground speed.</summary>
public static class Speed
{
    /// <summary>In kilometres per hour.</summary>
    /// <param name="value">The number.</param>
    public static SpeedQuantity KilometresPerHour(double value) => new() { Value = value, Unit = SpeedQuantity_unit.KmH };

    /// <summary>In metres per second.</summary>
    /// <param name="value">The number.</param>
    public static SpeedQuantity MetresPerSecond(double value) => new() { Value = value, Unit = SpeedQuantity_unit.MS };

    /// <summary>In miles per hour.</summary>
    /// <param name="value">The number.</param>
    public static SpeedQuantity MilesPerHour(double value) => new() { Value = value, Unit = SpeedQuantity_unit.MiH };
}
