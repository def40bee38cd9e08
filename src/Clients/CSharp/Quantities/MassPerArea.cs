using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a mass per area, such as a rate.</summary>
public static class MassPerArea
{
    /// <summary>In kilograms per hectare.</summary>
    /// <param name="value">The number.</param>
    public static MassPerAreaQuantity KilogramsPerHectare(double value) => new() { Value = value, Unit = MassPerAreaQuantity_unit.KgHa };

    /// <summary>In grams per square metre.</summary>
    /// <param name="value">The number.</param>
    public static MassPerAreaQuantity GramsPerSquareMetre(double value) => new() { Value = value, Unit = MassPerAreaQuantity_unit.GM2 };

    /// <summary>In pounds per international acre.</summary>
    /// <param name="value">The number.</param>
    public static MassPerAreaQuantity PoundsPerAcre(double value) => new() { Value = value, Unit = MassPerAreaQuantity_unit.LbAc };
}
