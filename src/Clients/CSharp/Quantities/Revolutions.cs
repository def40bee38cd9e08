using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a count of revolutions.</summary>
public static class Revolutions
{
    /// <summary>In revolutions, also broken ones.</summary>
    /// <param name="value">The number.</param>
    public static RevolutionsQuantity Of(double value) => new() { Value = value, Unit = RevolutionsQuantity_unit.Rev };
}
