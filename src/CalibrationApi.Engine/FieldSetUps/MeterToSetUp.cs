using System.Globalization;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.NewLots;
using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.FieldSetUps;

/// <summary>One meter, with the product it puts down and what is known of its elements.</summary>
public sealed record MeterToSetUp
{
    /// <summary>Its place in the plan, from 0.</summary>
    public required int Index { get; init; }

    /// <summary>What the owner calls it.</summary>
    public required string Position { get; init; }

    /// <summary>Width it covers, above 0.</summary>
    public required Length CoveredWidth { get; init; }

    /// <summary>Its elements, each of another name.</summary>
    public required IReadOnlyList<ElementToSetUp> Elements { get; init; }

    /// <summary>Name of the element that is fitted, one of <see cref="Elements"/>.</summary>
    public required string Fitted { get; init; }

    /// <summary>The product.</summary>
    public required ProductToMeter Product { get; init; }

    /// <summary>The lot in the tank; null when not stated.</summary>
    public SeedLot? Lot { get; init; }

    /// <summary>Rate that is stated; null when it follows from the stand or from the nutrients.</summary>
    public MassPerArea? TargetRate { get; init; }

    /// <summary>Stand that is wanted; null when not stated.</summary>
    public WantedStand? Stand { get; init; }

    /// <summary>The product is laid in the seed row.</summary>
    public bool WithSeed { get; init; }

    /// <summary>A mass per revolution predicted for the element that is fitted, above 0; null when there is none.</summary>
    public MassPerRevolution? StartValue { get; init; }

    /// <summary>Bulk density of what is in the tank: of the lot, else of the product; null when neither is known.</summary>
    public BulkDensity? Density => Lot?.Density ?? Product.Density;

    /// <summary>
    /// The mass per revolution of an element of this meter with its product: the value in force, else for the element that is fitted
    /// the start value, else what its volume and the bulk density let expect (<see cref="ElementContent.StartValue"/>). Null when
    /// nothing is known.
    /// </summary>
    /// <param name="element">One of <see cref="Elements"/>.</param>
    /// <remarks>
    /// <para>Formula: the first of the three that is known; what was measured goes before what was predicted.</para>
    /// <para>Range: kg per revolution, above 0.</para>
    /// <para>Source: our own derivation.</para>
    /// <para>Accuracy: that of what is known, to the last bit; shown in MeterToSetUpTests.</para>
    /// </remarks>
    public KnownValue? ValueOf(ElementToSetUp element)
    {
        if (element.InForce is { } inForce)
            return new(element, ValueOrigin.ValueInForce, inForce.Value, inForce.RelativeUncertainty);
        if (element.Name == Fitted && StartValue is { } start)
            return new(element, ValueOrigin.StartValue, start, null);
        return element.Content(Density)?.StartValue is { } expected
            ? new(element, ValueOrigin.Displacement, expected.Value, expected.RelativeUncertainty)
            : null;
    }

    /// <summary>That of the element that is fitted.</summary>
    public KnownValue? ValueOfFitted() => FittedElement is { } fitted ? ValueOf(fitted) : null;

    /// <summary>The element that is fitted.</summary>
    internal ElementToSetUp? FittedElement => Elements.FirstOrDefault(element => element.Name == Fitted);

    /// <summary>What is open where nothing is known of the element that is fitted.</summary>
    public OpenPoint WithoutValue() =>
        OpenPoint.Missing(
            Member("startValue"),
            $"No value is in force for this meter, element, setting and product, and none can be predicted. Adopt a value, add a startValue to the plan, or give the element its displacement and the lot or product its bulk density."
        );

    /// <summary>Seed is laid with the seed by nature; nobody needs its analysis.</summary>
    internal bool IsSeed => !Product.BringsNutrients && (Stand is not null || Lot?.Kernel is not null);

    /// <summary>A member of this meter in the plan.</summary>
    internal string Member(string name) => string.Create(CultureInfo.InvariantCulture, $"meters/{Index}/{name}");

    /// <summary>The share of a working width that this meter covers, at most 1; all of it where the width is not known.</summary>
    internal double ShareOf(Length? workingWidth) => workingWidth is { } whole ? Math.Min(1, CoveredWidth.Metres / whole.Metres) : 1;
}

/// <summary>A product that a meter puts down.</summary>
/// <param name="Key">Tells it from other products; meters of the same key share it.</param>
/// <param name="Name">What the owner calls it.</param>
public sealed record ProductToMeter(string Key, string Name)
{
    /// <summary>Usual bulk density, above 0; null when unknown.</summary>
    public BulkDensity? Density { get; init; }

    /// <summary>Its nutrients; empty when they are not known.</summary>
    public IReadOnlyList<NutrientShare> Analysis { get; init; } = [];

    /// <summary>Form of its nitrogen; null when not stated.</summary>
    public NitrogenForm? NitrogenForm { get; init; }

    /// <summary>Fan speeds that it may have; null when none are stated.</summary>
    public StatedLimits<RotationalSpeed>? FanSpeeds { get; init; }

    /// <summary>What it costs; null when not stated.</summary>
    public ProductPrice? Price { get; init; }

    /// <summary>Its analysis is known.</summary>
    public bool BringsNutrients => Analysis.Count > 0;
}

/// <summary>A price.</summary>
/// <param name="PerKilogram">Money for one kilogram, at least 0.</param>
/// <param name="Currency">Of which currency; prices of one currency can be compared.</param>
public sealed record ProductPrice(double PerKilogram, string Currency);

/// <summary>A stand that is wanted; with an emergence, which goes with the germination of the lot, or with a survival.</summary>
/// <param name="Plants">Plants per area, above 0.</param>
/// <param name="Emergence">Plants per seed that can germinate, above 0, at most 1.</param>
/// <param name="Survival">Plants per pure seed, above 0, at most 1.</param>
public sealed record WantedStand(CountPerArea Plants, double? Emergence, double? Survival);

/// <summary>A roller, auger or other element of a meter.</summary>
/// <param name="Name">What the owner calls it.</param>
/// <param name="Limits">Speeds at which it may turn.</param>
public sealed record ElementToSetUp(string Name, MeterSpeedLimits Limits)
{
    /// <summary>How it carries product; null when unknown.</summary>
    public ElementKind? Kind { get; init; }

    /// <summary>Volume that one revolution displaces, above 0; null when unknown.</summary>
    public Volume? Displacement { get; init; }

    /// <summary>Pockets or flutes that discharge one after the other in one revolution; null when unknown.</summary>
    public int? Pockets { get; init; }

    /// <summary>What is in force with the product and the setting planned; null when nothing is.</summary>
    public ElementInForce? InForce { get; init; }

    /// <summary>What it can hold of a product; null when displacement or density is not known.</summary>
    internal ElementContent? Content(BulkDensity? density) =>
        Displacement is { } displacement && density is { } known ? new(new(displacement), new(known), Kind, Name) : null;
}

/// <summary>A mass per revolution in force.</summary>
/// <param name="Value">The value, above 0.</param>
/// <param name="RelativeUncertainty">Its standard uncertainty; null when it is not known.</param>
/// <param name="OtherLot">The lot that it was adopted for, where that is known and is another than the planned one.</param>
public sealed record ElementInForce(MassPerRevolution Value, double? RelativeUncertainty = null, SeedLot? OtherLot = null);

/// <summary>A mass per revolution, and where it comes from.</summary>
/// <param name="Element">The element that delivers it.</param>
/// <param name="From">Where it comes from.</param>
/// <param name="Value">The value.</param>
/// <param name="RelativeUncertainty">Its standard uncertainty; null when it is not known.</param>
public sealed record KnownValue(ElementToSetUp Element, ValueOrigin From, MassPerRevolution Value, double? RelativeUncertainty);

/// <summary>Where a mass per revolution comes from.</summary>
public enum ValueOrigin
{
    /// <summary>It is in force.</summary>
    ValueInForce,

    /// <summary>The plan predicts it.</summary>
    StartValue,

    /// <summary>Displacement, bulk density and a usual fill efficiency give it.</summary>
    Displacement,
}
