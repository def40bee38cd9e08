using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a ratio.</summary>
public static class Ratio
{
    /// <summary>In per cent.</summary>
    /// <param name="value">The number.</param>
    public static RatioQuantity Percent(double value) => new() { Value = value, Unit = RatioQuantity_unit.Percent };

    /// <summary>In a fraction of one.</summary>
    /// <param name="value">The number.</param>
    public static RatioQuantity Fraction(double value) => new() { Value = value, Unit = RatioQuantity_unit.One };

    /// <summary>In parts per million.</summary>
    /// <param name="value">The number.</param>
    public static RatioQuantity PartsPerMillion(double value) => new() { Value = value, Unit = RatioQuantity_unit.Ppm };
}
