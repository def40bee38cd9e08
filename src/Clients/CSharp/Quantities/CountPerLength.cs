using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a number of seeds or plants per length of row.</summary>
public static class CountPerLength
{
    /// <summary>In seeds or plants per metre.</summary>
    /// <param name="value">The number.</param>
    public static CountPerLengthQuantity PerMetre(double value) => new() { Value = value, Unit = CountPerLengthQuantity_unit.M };

    /// <summary>In seeds or plants per international foot.</summary>
    /// <param name="value">The number.</param>
    public static CountPerLengthQuantity PerFoot(double value) => new() { Value = value, Unit = CountPerLengthQuantity_unit.Ft };
}
