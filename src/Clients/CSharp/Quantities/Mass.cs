using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a mass.</summary>
public static class Mass
{
    /// <summary>In kilograms.</summary>
    /// <param name="value">The number.</param>
    public static MassQuantity Kilograms(double value) => new() { Value = value, Unit = MassQuantity_unit.Kg };

    /// <summary>In grams.</summary>
    /// <param name="value">The number.</param>
    public static MassQuantity Grams(double value) => new() { Value = value, Unit = MassQuantity_unit.G };

    /// <summary>In tonnes.</summary>
    /// <param name="value">The number.</param>
    public static MassQuantity Tonnes(double value) => new() { Value = value, Unit = MassQuantity_unit.T };

    /// <summary>In pounds.</summary>
    /// <param name="value">The number.</param>
    public static MassQuantity Pounds(double value) => new() { Value = value, Unit = MassQuantity_unit.Lb };

    /// <summary>In ounces (avoirdupois).</summary>
    /// <param name="value">The number.</param>
    public static MassQuantity Ounces(double value) => new() { Value = value, Unit = MassQuantity_unit.Oz };

    /// <summary>In US tons of 2000 lb.</summary>
    /// <param name="value">The number.</param>
    public static MassQuantity UsTons(double value) => new() { Value = value, Unit = MassQuantity_unit.TonUs };

    /// <summary>In UK tons of 2240 lb.</summary>
    /// <param name="value">The number.</param>
    public static MassQuantity UkTons(double value) => new() { Value = value, Unit = MassQuantity_unit.TonUk };
}
