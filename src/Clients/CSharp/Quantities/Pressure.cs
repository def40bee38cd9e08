using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a pressure.</summary>
public static class Pressure
{
    /// <summary>In kilopascals.</summary>
    /// <param name="value">The number.</param>
    public static PressureQuantity Kilopascals(double value) => new() { Value = value, Unit = PressureQuantity_unit.KPa };

    /// <summary>In millibars.</summary>
    /// <param name="value">The number.</param>
    public static PressureQuantity Millibars(double value) => new() { Value = value, Unit = PressureQuantity_unit.Mbar };

    /// <summary>In pounds-force per square inch.</summary>
    /// <param name="value">The number.</param>
    public static PressureQuantity PoundsPerSquareInch(double value) => new() { Value = value, Unit = PressureQuantity_unit.Psi };

    /// <summary>In inches of water.</summary>
    /// <param name="value">The number.</param>
    public static PressureQuantity InchesOfWater(double value) => new() { Value = value, Unit = PressureQuantity_unit.InH2O };
}
