using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.CatchTests;

/// <summary>Conditions of a test or of sowing.</summary>
public sealed class Conditions
{
    /// <summary>Fill of the tank.</summary>
    [Measured]
    public RatioQuantity? TankLevel { get; init; }

    /// <summary>Pressure in the tank above that of the air around.</summary>
    [Measured(0, 100, "kPa")]
    public PressureQuantity? TankPressure { get; init; }

    /// <summary>Slope of the machine along its travel, uphill positive.</summary>
    [Measured(-100, 100, "%")]
    public RatioQuantity? Slope { get; init; }

    /// <summary>Moisture of the product by mass.</summary>
    [Measured]
    public RatioQuantity? ProductMoisture { get; init; }

    /// <summary>Temperature of the air.</summary>
    [Measured(-60, 70, "degC")]
    public TemperatureQuantity? AirTemperature { get; init; }

    /// <summary>Speed of the fan.</summary>
    [Measured(0, 10_000, "rpm")]
    public RotationQuantity? FanSpeed { get; init; }

    // Not those of the ratios: other findings state ratios too.
    internal IEnumerable<Unit> Units() => ((Quantity?[])[TankPressure, AirTemperature, FanSpeed]).Select(Quantity.UnitOf).OfType<Unit>();

    internal TestConditions Read() =>
        new()
        {
            TankLevel = RatioQuantity.Read(TankLevel),
            TankPressure = PressureQuantity.Read(TankPressure),
            Slope = RatioQuantity.Read(Slope),
            ProductMoisture = RatioQuantity.Read(ProductMoisture),
            AirTemperature = TemperatureQuantity.Read(AirTemperature),
            FanSpeed = RotationQuantity.Read(FanSpeed),
        };
}
