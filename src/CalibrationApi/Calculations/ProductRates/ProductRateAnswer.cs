using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.ProductRates;

/// <summary>Rates of products, what they supply and what they cost.</summary>
public sealed class ProductRateAnswer
{
    /// <summary>The outcome in one or two sentences that can be shown as they are.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>
    /// Whether all targets are <c>met</c>; when <c>missed</c>, the rates are the nearest that can be had, and a finding says why for each
    /// target missed.
    /// </summary>
    [KnownWords(typeof(TargetsVerdict))]
    public required string Verdict { get; init; }

    /// <summary>The products, in the order of the question.</summary>
    public required IReadOnlyList<ProductRateLine> Products { get; init; }

    /// <summary>Each nutrient that a target, a credit or a product names.</summary>
    public required IReadOnlyList<NutrientLine> Nutrients { get; init; }

    /// <summary>Mass of all products together.</summary>
    public required MassPerAreaQuantity TotalRate { get; init; }

    /// <summary>Analysis of a blend of the products whose rates were computed; empty when none of them is applied.</summary>
    public required IReadOnlyList<BlendShare> Blend { get; init; }

    /// <summary>Cost of all products per area; absent without prices.</summary>
    public CostPerUnit? CostPerArea { get; init; }

    /// <summary>Cost of all products over the area; absent without prices or area.</summary>
    public Money? TotalCost { get; init; }

    /// <summary>Values used that the question did not state.</summary>
    public required IReadOnlyList<AssumptionAnswer> Assumptions { get; init; }

    /// <summary>What was noticed.</summary>
    [SentCodes(typeof(ProductRateCodes), nameof(ProductRateCodes.Findings))]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>What can hurt people or the crop.</summary>
    [SentCodes(typeof(ProductRateCodes), nameof(ProductRateCodes.Cautions))]
    public required IReadOnlyList<CautionAnswer> Cautions { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string EngineVersion { get; init; }
}

/// <summary>One product.</summary>
public sealed class ProductRateLine
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Its rate.</summary>
    public required MassPerAreaQuantity Rate { get; init; }

    /// <summary>True when the question fixed the rate.</summary>
    public required bool IsFixed { get; init; }

    /// <summary>What it brings of each nutrient that it holds.</summary>
    public required IReadOnlyList<SuppliedNutrient> Supplies { get; init; }

    /// <summary>Its cost per area; absent without prices.</summary>
    public CostPerUnit? CostPerArea { get; init; }

    /// <summary>Its mass over the area; absent without an area.</summary>
    public MassQuantity? TotalMass { get; init; }

    /// <summary>Whole packages that hold that mass; absent without an area or for bulk.</summary>
    public long? Packages { get; init; }

    /// <summary>Cost of that mass, not of whole packages; absent without prices or area.</summary>
    public Money? TotalCost { get; init; }

    /// <summary>Cost of its nutrient per mass, where it holds only one; absent without prices.</summary>
    public CostOfNutrient? NutrientCost { get; init; }
}

/// <summary>An amount of a nutrient.</summary>
public sealed class SuppliedNutrient
{
    /// <summary>The nutrient in the form that the amount is stated in.</summary>
    [KnownWords("N", "P2O5", "P", "K2O", "K", "S", "SO4-S", "SO3", "SO4")]
    public required string Nutrient { get; init; }

    /// <summary>The amount.</summary>
    public required MassPerAreaQuantity Amount { get; init; }
}

/// <summary>Share of a nutrient in a blend.</summary>
public sealed class BlendShare
{
    /// <summary>The nutrient in the form that the share is stated in.</summary>
    [KnownWords("N", "P2O5", "P", "K2O", "K", "S", "SO4-S", "SO3", "SO4")]
    public required string Nutrient { get; init; }

    /// <summary>The share of the mass.</summary>
    public required RatioQuantity Share { get; init; }
}

/// <summary>One nutrient: asked for, there already, brought, left over.</summary>
public sealed class NutrientLine
{
    /// <summary>The nutrient in the form of all amounts beside it: that of its target, else the first one named.</summary>
    [KnownWords("N", "P2O5", "P", "K2O", "K", "S", "SO4-S", "SO3", "SO4")]
    public required string Nutrient { get; init; }

    /// <summary>The amount of its target; absent without one.</summary>
    public MassPerAreaQuantity? Target { get; init; }

    /// <summary>How the target is meant; absent without one.</summary>
    [KnownWords(typeof(TargetKind))]
    public string? Kind { get; init; }

    /// <summary>What is there already.</summary>
    public required MassPerAreaQuantity Credits { get; init; }

    /// <summary>What products of fixed rate bring.</summary>
    public required MassPerAreaQuantity FromFixedRates { get; init; }

    /// <summary>What the products bring whose rates were computed.</summary>
    public required MassPerAreaQuantity FromComputedRates { get; init; }

    /// <summary>All of it together.</summary>
    public required MassPerAreaQuantity Total { get; init; }

    /// <summary>
    /// The total less the target: what remains over, or below zero what is missing (of an at-most target, the room left); absent without a
    /// target.
    /// </summary>
    public MassPerAreaQuantity? Surplus { get; init; }

    /// <summary>The target is met; true without one.</summary>
    public required bool Met { get; init; }

    /// <summary>
    /// What one more mass unit of the target would cost with these products while every limit stays: the price of this nutrient here. Zero
    /// where enough is there anyway, below zero where more of it would save money. Absent without prices, without a target, for an at-most
    /// target, or when no more can be had.
    /// </summary>
    public CostPerUnit? CostOfNextUnit { get; init; }

    /// <summary>
    /// What the limit of this nutrient (most, or an at-most target) costs: what one more mass unit allowed would save. Zero where the limit
    /// does not bind. Absent without prices, without a limit, or when not all targets are met.
    /// </summary>
    public CostPerUnit? CostOfLimit { get; init; }
}

/// <summary>An amount of money for one mass unit of a nutrient.</summary>
public sealed class CostOfNutrient : CostPerUnit
{
    /// <summary>The nutrient in the form that the cost is for.</summary>
    [KnownWords("N", "P2O5", "P", "K2O", "K", "S", "SO4-S", "SO3", "SO4")]
    public required string Nutrient { get; init; }
}
