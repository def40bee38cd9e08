using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a number of plants or seeds per area.</summary>
public static class CountPerArea
{
    /// <summary>In plants or seeds per square metre.</summary>
    /// <param name="value">The number.</param>
    public static CountPerAreaQuantity PerSquareMetre(double value) => new() { Value = value, Unit = CountPerAreaQuantity_unit.M2 };

    /// <summary>In plants or seeds per hectare.</summary>
    /// <param name="value">The number.</param>
    public static CountPerAreaQuantity PerHectare(double value) => new() { Value = value, Unit = CountPerAreaQuantity_unit.Ha };

    /// <summary>In plants or seeds per international square foot.</summary>
    /// <param name="value">The number.</param>
    public static CountPerAreaQuantity PerSquareFoot(double value) => new() { Value = value, Unit = CountPerAreaQuantity_unit.Ft2 };

    /// <summary>In plants or seeds per international acre.</summary>
    /// <param name="value">The number.</param>
    public static CountPerAreaQuantity PerAcre(double value) => new() { Value = value, Unit = CountPerAreaQuantity_unit.Ac };
}
