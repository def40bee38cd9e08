using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a bulk density.</summary>
public static class BulkDensity
{
    /// <summary>In kilograms per hectolitre.</summary>
    /// <param name="value">The number.</param>
    public static BulkDensityQuantity KilogramsPerHectolitre(double value) => new() { Value = value, Unit = BulkDensityQuantity_unit.KgHL };

    /// <summary>In kilograms per cubic metre.</summary>
    /// <param name="value">The number.</param>
    public static BulkDensityQuantity KilogramsPerCubicMetre(double value) => new() { Value = value, Unit = BulkDensityQuantity_unit.KgM3 };

    /// <summary>In kilograms per litre.</summary>
    /// <param name="value">The number.</param>
    public static BulkDensityQuantity KilogramsPerLitre(double value) => new() { Value = value, Unit = BulkDensityQuantity_unit.KgL };

    /// <summary>In pounds per cubic foot.</summary>
    /// <param name="value">The number.</param>
    public static BulkDensityQuantity PoundsPerCubicFoot(double value) => new() { Value = value, Unit = BulkDensityQuantity_unit.LbFt3 };

    /// <summary>In pounds per US bushel.</summary>
    /// <param name="value">The number.</param>
    public static BulkDensityQuantity PoundsPerUsBushel(double value) => new() { Value = value, Unit = BulkDensityQuantity_unit.LbBuUs };

    /// <summary>In pounds per imperial bushel.</summary>
    /// <param name="value">The number.</param>
    public static BulkDensityQuantity PoundsPerImperialBushel(double value) =>
        new() { Value = value, Unit = BulkDensityQuantity_unit.LbBuImp };
}
