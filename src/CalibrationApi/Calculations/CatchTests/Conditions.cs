using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Http;
using CalibrationApi.Quantities;

namespace CalibrationApi.Calculations.CatchTests;

/// <summary>Conditions of a test or of sowing.</summary>
public sealed class Conditions
{
    /// <summary>Fill of the tank.</summary>
    public RatioQuantity? TankLevel { get; init; }

    /// <summary>Pressure in the tank above that of the air around.</summary>
    public PressureQuantity? TankPressure { get; init; }

    /// <summary>Slope of the machine along its travel, uphill positive.</summary>
    public RatioQuantity? Slope { get; init; }

    /// <summary>Moisture of the product by mass.</summary>
    public RatioQuantity? ProductMoisture { get; init; }

    /// <summary>Temperature of the air.</summary>
    public TemperatureQuantity? AirTemperature { get; init; }

    /// <summary>Speed of the fan.</summary>
    public RotationQuantity? FanSpeed { get; init; }

    // Not those of the ratios: other findings state ratios too.
    internal IEnumerable<Unit> Units() => ((Quantity?[])[TankPressure, AirTemperature, FanSpeed]).Select(Quantity.UnitOf).OfType<Unit>();

    internal TestConditions Read() => new()
    {
        TankLevel = RatioQuantity.Read(TankLevel),
        TankPressure = PressureQuantity.Read(TankPressure),
        Slope = RatioQuantity.Read(Slope),
        ProductMoisture = RatioQuantity.Read(ProductMoisture),
        AirTemperature = TemperatureQuantity.Read(AirTemperature),
        FanSpeed = RotationQuantity.Read(FanSpeed),
    };
}

internal sealed class ConditionsValidator : RequestValidator<Conditions>
{
    public ConditionsValidator()
    {
        RuleFor(conditions => conditions.TankLevel).Measured();
        RuleFor(conditions => conditions.TankPressure).Measured(new(0, 100, "kPa"));
        RuleFor(conditions => conditions.Slope).Measured(new(-100, 100, "%"));
        RuleFor(conditions => conditions.ProductMoisture).Measured();
        RuleFor(conditions => conditions.AirTemperature).Measured(new(-60, 70, "degC"));
        RuleFor(conditions => conditions.FanSpeed).Measured(new(0, 10_000, "rpm"));
    }
}
