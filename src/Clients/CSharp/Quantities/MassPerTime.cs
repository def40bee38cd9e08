using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a mass flow.</summary>
public static class MassPerTime
{
    /// <summary>In kilograms per minute.</summary>
    /// <param name="value">The number.</param>
    public static MassPerTimeQuantity KilogramsPerMinute(double value) => new() { Value = value, Unit = MassPerTimeQuantity_unit.KgMin };

    /// <summary>In grams per second.</summary>
    /// <param name="value">The number.</param>
    public static MassPerTimeQuantity GramsPerSecond(double value) => new() { Value = value, Unit = MassPerTimeQuantity_unit.GS };

    /// <summary>In pounds per minute.</summary>
    /// <param name="value">The number.</param>
    public static MassPerTimeQuantity PoundsPerMinute(double value) => new() { Value = value, Unit = MassPerTimeQuantity_unit.LbMin };
}
