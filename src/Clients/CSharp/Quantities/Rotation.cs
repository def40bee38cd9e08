using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a speed of rotation.</summary>
public static class Rotation
{
    /// <summary>In revolutions per minute.</summary>
    /// <param name="value">The number.</param>
    public static RotationQuantity PerMinute(double value) => new() { Value = value, Unit = RotationQuantity_unit.Rpm };

    /// <summary>In revolutions per second.</summary>
    /// <param name="value">The number.</param>
    public static RotationQuantity PerSecond(double value) => new() { Value = value, Unit = RotationQuantity_unit.RevS };
}
