using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Catches;

/// <summary>What is known around a test that makes a mistake more or less likely, or says what it would look like.</summary>
/// <remarks>Nothing in it is needed: a mistake about which nothing is known is left out or gets a broad prediction.</remarks>
public sealed record MistakeContext
{
    /// <summary>Mass of product that the container holds when full; above 0.</summary>
    public Mass? ContainerCapacity { get; init; }

    /// <summary>Mass of the empty container, for catches that do not carry their tare; above 0.</summary>
    public Mass? ContainerTare { get; init; }

    /// <summary>Other containers that may have been at hand.</summary>
    public IReadOnlyList<OtherContainer> OtherContainers { get; init; } = [];

    /// <summary>What other metering elements of this machine deliver of this product.</summary>
    public IReadOnlyList<OtherDelivery> OtherElements { get; init; } = [];

    /// <summary>What the same element delivers of other products of this machine.</summary>
    public IReadOnlyList<OtherDelivery> OtherProducts { get; init; } = [];

    /// <summary>Points or outlets under which the catch was collected; at least 1.</summary>
    public int? CatchPoints { get; init; }

    /// <summary>
    /// True when the lot is another than that behind the value compared with; null when not stated, which counts as the same.
    /// </summary>
    public bool? NewLot { get; init; }

    /// <summary>The masses of the catches were entered in pounds or ounces (true) or metric units (false).</summary>
    public bool? EnteredInPounds { get; init; }

    /// <summary>The value compared with was given per pound (true) or per kilogram or gram (false).</summary>
    public bool? ReferenceInPounds { get; init; }

    /// <summary>What the revolutions of the catches were counted as.</summary>
    public CountSource CountedAs { get; init; }

    /// <summary>Revolutions of the meter for one turn of the crank, wheel or motor that drives it, where known; above 0.</summary>
    public double? MeterRevolutionsPerTurn { get; init; }

    /// <summary>The scale is described in pounds or ounces (true) or metric units (false).</summary>
    public bool? ScaleInPounds { get; init; }

    /// <summary>Codes of mistakes that somebody has checked and ruled out.</summary>
    public IReadOnlyList<MistakeCode> RuledOut { get; init; } = [];
}

/// <summary>Where the revolutions of a catch come from.</summary>
public enum CountSource
{
    /// <summary>Not stated.</summary>
    Unknown,

    /// <summary>Revolutions of the meter were counted.</summary>
    Revolutions,

    /// <summary>Pulses of a sensor, divided by its pulses per revolution.</summary>
    Pulses,

    /// <summary>Turns of another shaft, times the revolutions of the meter per turn.</summary>
    Turns,

    /// <summary>Something else: a run time, or a mass that the machine believes to have metered.</summary>
    Other,
}

/// <summary>A container with its empty mass.</summary>
/// <param name="Name">What the owner calls it; null when it has no name.</param>
/// <param name="Tare">Mass when empty, at least 0.</param>
public sealed record OtherContainer(string? Name, Mass Tare);

/// <summary>What another element or product would have given.</summary>
/// <param name="Name">What the owner calls it; null when it has no name.</param>
/// <param name="MassPerRevolution">Its mass per revolution, above 0.</param>
public sealed record OtherDelivery(string? Name, MassPerRevolution MassPerRevolution)
{
    /// <summary>What another element is expected to deliver of the product: as much more as it displaces more.</summary>
    /// <param name="delivered">Mass per revolution m that the fitted element is believed to deliver, above 0.</param>
    /// <param name="own">Volume V that one revolution of the fitted element displaces, above 0.</param>
    /// <param name="other">Volume V' that one revolution of the other displaces, above 0.</param>
    /// <remarks>
    /// <para>Formula: m' = m V' / V, kg per revolution: both elements filled alike.</para>
    /// <para>Range: all above 0.</para>
    /// <para>Source: our own derivation.</para>
    /// <para>Accuracy: 1e-12 relative (OtherDeliveryTests).</para>
    /// </remarks>
    public static MassPerRevolution OfElement(MassPerRevolution delivered, Volume own, Volume other) =>
        new(delivered.KilogramsPerRevolution * other.CubicMetres / own.CubicMetres);

    /// <summary>What the element is expected to deliver of another product: as much more as that is denser.</summary>
    /// <param name="delivered">Mass per revolution m of the product at hand, above 0.</param>
    /// <param name="own">Bulk density rho of the product at hand, above 0.</param>
    /// <param name="other">Bulk density rho' of the other product, above 0.</param>
    /// <remarks>
    /// <para>Formula: m' = m rho' / rho, kg per revolution: both products fill the element alike.</para>
    /// <para>Range: all above 0.</para>
    /// <para>Source: our own derivation.</para>
    /// <para>Accuracy: 1e-12 relative (OtherDeliveryTests).</para>
    /// </remarks>
    public static MassPerRevolution OfProduct(MassPerRevolution delivered, BulkDensity own, BulkDensity other) =>
        new(delivered.KilogramsPerRevolution * other.KilogramsPerCubicMetre / own.KilogramsPerCubicMetre);
}
