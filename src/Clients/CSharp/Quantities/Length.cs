using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a length.</summary>
public static class Length
{
    /// <summary>In metres.</summary>
    /// <param name="value">The number.</param>
    public static LengthQuantity Metres(double value) => new() { Value = value, Unit = LengthQuantity_unit.M };

    /// <summary>In centimetres.</summary>
    /// <param name="value">The number.</param>
    public static LengthQuantity Centimetres(double value) => new() { Value = value, Unit = LengthQuantity_unit.Cm };

    /// <summary>In millimetres.</summary>
    /// <param name="value">The number.</param>
    public static LengthQuantity Millimetres(double value) => new() { Value = value, Unit = LengthQuantity_unit.Mm };

    /// <summary>In international feet.</summary>
    /// <param name="value">The number.</param>
    public static LengthQuantity Feet(double value) => new() { Value = value, Unit = LengthQuantity_unit.Ft };

    /// <summary>In inches.</summary>
    /// <param name="value">The number.</param>
    public static LengthQuantity Inches(double value) => new() { Value = value, Unit = LengthQuantity_unit.In };
}
