using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a temperature.</summary>
public static class Temperature
{
    /// <summary>In degrees Celsius.</summary>
    /// <param name="value">The number.</param>
    public static TemperatureQuantity DegreesCelsius(double value) => new() { Value = value, Unit = TemperatureQuantity_unit.DegC };

    /// <summary>In degrees Fahrenheit.</summary>
    /// <param name="value">The number.</param>
    public static TemperatureQuantity DegreesFahrenheit(double value) => new() { Value = value, Unit = TemperatureQuantity_unit.DegF };
}
