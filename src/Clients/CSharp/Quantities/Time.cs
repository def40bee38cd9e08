using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a time span.</summary>
public static class Time
{
    /// <summary>In seconds.</summary>
    /// <param name="value">The number.</param>
    public static TimeQuantity Seconds(double value) => new() { Value = value, Unit = TimeQuantity_unit.S };

    /// <summary>In minutes.</summary>
    /// <param name="value">The number.</param>
    public static TimeQuantity Minutes(double value) => new() { Value = value, Unit = TimeQuantity_unit.Min };

    /// <summary>In hours.</summary>
    /// <param name="value">The number.</param>
    public static TimeQuantity Hours(double value) => new() { Value = value, Unit = TimeQuantity_unit.H };
}
