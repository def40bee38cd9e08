using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a flow of air.</summary>
public static class VolumePerTime
{
    /// <summary>In cubic metres per hour.</summary>
    /// <param name="value">The number.</param>
    public static VolumePerTimeQuantity CubicMetresPerHour(double value) => new() { Value = value, Unit = VolumePerTimeQuantity_unit.M3H };

    /// <summary>In cubic metres per minute.</summary>
    /// <param name="value">The number.</param>
    public static VolumePerTimeQuantity CubicMetresPerMinute(double value) =>
        new() { Value = value, Unit = VolumePerTimeQuantity_unit.M3Min };

    /// <summary>In litres per second.</summary>
    /// <param name="value">The number.</param>
    public static VolumePerTimeQuantity LitresPerSecond(double value) => new() { Value = value, Unit = VolumePerTimeQuantity_unit.LS };

    /// <summary>In cubic feet per minute.</summary>
    /// <param name="value">The number.</param>
    public static VolumePerTimeQuantity CubicFeetPerMinute(double value) =>
        new() { Value = value, Unit = VolumePerTimeQuantity_unit.Ft3Min };
}
