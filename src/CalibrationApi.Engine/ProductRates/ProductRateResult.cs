using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.ProductRates;

/// <summary>Rates of products, what they supply and what they cost.</summary>
public sealed record ProductRateResult
{
    /// <summary>One or two sentences that a tired person understands.</summary>
    public required Sentence Headline { get; init; }

    /// <summary>Whether all targets are met.</summary>
    public required TargetsVerdict Verdict { get; init; }

    /// <summary>The products, in the order of the question.</summary>
    public required IReadOnlyList<ProductLine> Products { get; init; }

    /// <summary>The nutrients that a target, a credit or a product names: N, P, K, S.</summary>
    public required IReadOnlyList<NutrientBalance> Nutrients { get; init; }

    /// <summary>Mass of all products per area.</summary>
    public required MassPerArea TotalRate { get; init; }

    /// <summary>Shares of the nutrients in a blend of the products whose rates were computed; empty when none is applied.</summary>
    public required IReadOnlyList<NutrientShare> Blend { get; init; }

    /// <summary>Money per square metre; null without prices.</summary>
    public double? CostPerSquareMetre { get; init; }

    /// <summary>Money over the area; null without prices or area.</summary>
    public double? TotalCost { get; init; }

    /// <summary>Values used that the caller did not state, with origin.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>What the engine noticed.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>What can hurt.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }
}

/// <summary>Whether targets of nutrients are met.</summary>
public enum TargetsVerdict
{
    /// <summary>All of them.</summary>
    Met,

    /// <summary>Not all: the rates are the nearest that can be had, and a finding says why for each target missed.</summary>
    Missed,
}

/// <summary>One product.</summary>
/// <param name="Product">The product.</param>
/// <param name="Rate">Its rate, computed or fixed.</param>
/// <param name="Supplies">What it brings of each of its nutrients.</param>
/// <param name="CostPerSquareMetre">Money per square metre; null without prices.</param>
/// <param name="Total">Mass over the area; null without an area.</param>
/// <param name="Packages">Whole packages that hold the total; null without an area or for bulk.</param>
/// <param name="TotalCost">Money for the total; null without prices or area.</param>
/// <param name="OnlyNutrient">Its only nutrient, with the money per kilogram of it; null for a product with several nutrients or without
/// prices.</param>
public sealed record ProductLine(
    OfferedProduct Product,
    MassPerArea Rate,
    IReadOnlyList<NutrientAmount> Supplies,
    double? CostPerSquareMetre,
    Mass? Total,
    long? Packages,
    double? TotalCost,
    NutrientCost? OnlyNutrient
);

/// <summary>An amount of a nutrient.</summary>
/// <param name="Form">The form it is stated in.</param>
/// <param name="Amount">Amount per area.</param>
public sealed record NutrientAmount(NutrientForm Form, MassPerArea Amount);

/// <summary>Money for a nutrient.</summary>
/// <param name="Form">The form it is stated in.</param>
/// <param name="PerKilogram">Money per kilogram of that form.</param>
public sealed record NutrientCost(NutrientForm Form, double PerKilogram);

/// <summary>One nutrient: asked for, there already, brought.</summary>
/// <param name="Form">Form in which all of it is stated: that of the target, else the first one named.</param>
/// <param name="Target">What was asked; null when nothing was.</param>
/// <param name="Credits">What is there already.</param>
/// <param name="FromFixed">What products of fixed rate bring.</param>
/// <param name="FromProducts">What the products whose rates were computed bring.</param>
/// <param name="Met">The target is met; true without one.</param>
/// <param name="NextKilogram">What the next kilogram of the target would cost in these products while every limit stays, below 0 where it
/// would save; null without prices, without a target, for an at-most target, or when no more can be had.</param>
/// <param name="KilogramOfLimit">What its limit costs: what one kilogram more allowed would save, 0 where the limit does not bind; null
/// without prices, without a limit, or when not all targets are met.</param>
/// <remarks>
/// <para>Formula: total = credits + fixed + computed; surplus = total - target, kg/m2, 0 where it is less than 1e-9 of them.</para>
/// <para>Range: amounts at least 0; no surplus without a target.</para>
/// <para>Source: common practice, no published source.</para>
/// <para>Accuracy: totals within 1e-12 (ProductRatePropertyTests), a surplus within 1e-9 (ProductRateFindingsTests).</para>
/// </remarks>
public sealed record NutrientBalance(
    NutrientForm Form,
    NutrientTarget? Target,
    MassPerArea Credits,
    MassPerArea FromFixed,
    MassPerArea FromProducts,
    bool Met,
    double? NextKilogram,
    double? KilogramOfLimit
)
{
    /// <summary>Credits and products together.</summary>
    public MassPerArea Total =>
        new(Credits.KilogramsPerSquareMetre + FromFixed.KilogramsPerSquareMetre + FromProducts.KilogramsPerSquareMetre);

    /// <summary>
    /// The total less the target: what remains over, negative for what is missing; null without a target. What only rounding leaves is 0.
    /// </summary>
    public MassPerArea? Surplus =>
        Target is not { } target ? null
        : Math.Abs(Total.KilogramsPerSquareMetre - target.Amount.KilogramsPerSquareMetre)
        <= 1e-9 * Math.Max(Total.KilogramsPerSquareMetre, target.Amount.KilogramsPerSquareMetre)
            ? new MassPerArea(0)
        : new MassPerArea(Total.KilogramsPerSquareMetre - target.Amount.KilogramsPerSquareMetre);
}
