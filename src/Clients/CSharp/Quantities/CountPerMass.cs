using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a number of seeds per mass.</summary>
public static class CountPerMass
{
    /// <summary>In seeds per kilogram.</summary>
    /// <param name="value">The number.</param>
    public static CountPerMassQuantity PerKilogram(double value) => new() { Value = value, Unit = CountPerMassQuantity_unit.Kg };

    /// <summary>In seeds per pound.</summary>
    /// <param name="value">The number.</param>
    public static CountPerMassQuantity PerPound(double value) => new() { Value = value, Unit = CountPerMassQuantity_unit.Lb };
}
