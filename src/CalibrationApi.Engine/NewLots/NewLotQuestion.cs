using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.NewLots;

/// <summary>Another lot or treatment goes into the tank: which rate, which mass per revolution, and is a test due?</summary>
public sealed record NewLotQuestion
{
    /// <summary>Mass per revolution in force k_old, above 0.</summary>
    public required MassPerRevolution ValueInForce { get; init; }

    /// <summary>Its standard uncertainty, relative; null takes the default.</summary>
    public double? ValueUncertainty { get; init; }

    /// <summary>The lot behind the value in force.</summary>
    public required SeedLot Before { get; init; }

    /// <summary>The lot that goes into the tank now.</summary>
    public required SeedLot After { get; init; }

    /// <summary>Both are the same lot: another delivery of it, or it was treated meanwhile.</summary>
    public bool SameLot { get; init; }

    /// <summary>Rate that was sown with the lot before.</summary>
    public MassPerArea? Rate { get; init; }

    /// <summary>Pure seeds per area that are to stay the same; in place of <see cref="Rate"/>.</summary>
    public CountPerArea? Seeds { get; init; }

    /// <summary>Plants per seed that can germinate, above 0, at most 1; gives plants.</summary>
    public double? Emergence { get; init; }

    /// <summary>Area to be sown with the new lot.</summary>
    public Area? Area { get; init; }

    /// <summary>Money for a kilogram of it.</summary>
    public double? PricePerKilogram { get; init; }

    /// <summary>Largest acceptable deviation T of the value in force from the truth; null takes the default.</summary>
    public double? Tolerance { get; init; }

    /// <summary>Standard deviation from day to day; null takes the default.</summary>
    public double? DayToDay { get; init; }

    /// <summary>Change of the fill of the element from lot to lot, beyond density; null takes the default.</summary>
    public double? FillOfLots { get; init; }

    /// <summary>Change of the fill of the element with another treatment; null takes the default.</summary>
    public double? FillOfTreatments { get; init; }

    /// <summary>Change of density where one of the two is unknown; null takes the default.</summary>
    public double? UnknownDensity { get; init; }

    /// <summary>Both lots carry the same treatment, or none.</summary>
    public bool SameTreatment => string.Equals(Before.Treatment?.Trim(), After.Treatment?.Trim(), StringComparison.OrdinalIgnoreCase);
}
