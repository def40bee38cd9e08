using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes an area.</summary>
public static class Area
{
    /// <summary>In hectares.</summary>
    /// <param name="value">The number.</param>
    public static AreaQuantity Hectares(double value) => new() { Value = value, Unit = AreaQuantity_unit.Ha };

    /// <summary>In square metres.</summary>
    /// <param name="value">The number.</param>
    public static AreaQuantity SquareMetres(double value) => new() { Value = value, Unit = AreaQuantity_unit.M2 };

    /// <summary>In international acres.</summary>
    /// <param name="value">The number.</param>
    public static AreaQuantity Acres(double value) => new() { Value = value, Unit = AreaQuantity_unit.Ac };

    /// <summary>In international square feet.</summary>
    /// <param name="value">The number.</param>
    public static AreaQuantity SquareFeet(double value) => new() { Value = value, Unit = AreaQuantity_unit.Ft2 };
}
