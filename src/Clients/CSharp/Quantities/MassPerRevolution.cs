using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes the mass that a meter delivers per revolution.</summary>
public static class MassPerRevolution
{
    /// <summary>In kilograms per revolution.</summary>
    /// <param name="value">The number.</param>
    public static MassPerRevolutionQuantity KilogramsPerRevolution(double value) =>
        new() { Value = value, Unit = MassPerRevolutionQuantity_unit.KgRev };

    /// <summary>In grams per revolution.</summary>
    /// <param name="value">The number.</param>
    public static MassPerRevolutionQuantity GramsPerRevolution(double value) =>
        new() { Value = value, Unit = MassPerRevolutionQuantity_unit.GRev };

    /// <summary>In pounds per revolution.</summary>
    /// <param name="value">The number.</param>
    public static MassPerRevolutionQuantity PoundsPerRevolution(double value) =>
        new() { Value = value, Unit = MassPerRevolutionQuantity_unit.LbRev };

    /// <summary>In ounces per revolution.</summary>
    /// <param name="value">The number.</param>
    public static MassPerRevolutionQuantity OuncesPerRevolution(double value) =>
        new() { Value = value, Unit = MassPerRevolutionQuantity_unit.OzRev };
}
