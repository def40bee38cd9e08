using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a volume.</summary>
public static class Volume
{
    /// <summary>In litres.</summary>
    /// <param name="value">The number.</param>
    public static VolumeQuantity Litres(double value) => new() { Value = value, Unit = VolumeQuantity_unit.L };

    /// <summary>In cubic metres.</summary>
    /// <param name="value">The number.</param>
    public static VolumeQuantity CubicMetres(double value) => new() { Value = value, Unit = VolumeQuantity_unit.M3 };

    /// <summary>In US bushels.</summary>
    /// <param name="value">The number.</param>
    public static VolumeQuantity UsBushels(double value) => new() { Value = value, Unit = VolumeQuantity_unit.BuUs };

    /// <summary>In imperial bushels.</summary>
    /// <param name="value">The number.</param>
    public static VolumeQuantity ImperialBushels(double value) => new() { Value = value, Unit = VolumeQuantity_unit.BuImp };

    /// <summary>In cubic feet.</summary>
    /// <param name="value">The number.</param>
    public static VolumeQuantity CubicFeet(double value) => new() { Value = value, Unit = VolumeQuantity_unit.Ft3 };
}
