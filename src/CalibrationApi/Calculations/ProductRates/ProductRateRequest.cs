using CalibrationApi.Calculations.Nutrients;
using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.ProductRates;

/// <summary>Nutrients that are wanted, and the products that can supply them.</summary>
[CheckedBy(typeof(ProductRateRequestValidator))]
public sealed class ProductRateRequest
{
    /// <summary>What is wanted of each nutrient: nitrogen, phosphorus, potassium, sulfur. One target for each nutrient.</summary>
    [Needed, Items(1, 4)]
    public IReadOnlyList<WantedNutrient?>? Targets { get; init; }

    /// <summary>
    /// The products at hand. Among choices of equal cost and mass, earlier ones are taken before later ones. Either all have a price, in
    /// one currency, or none has.
    /// </summary>
    // As many as a plan has meters.
    [Needed, Items(1, 64)]
    public IReadOnlyList<ProductOffer?>? Products { get; init; }

    /// <summary>
    /// What is there already and need not be bought: applied earlier, or supplied by the soil. Credits of one nutrient add up.
    /// </summary>
    [Items(0, 20)]
    public IReadOnlyList<CreditedNutrient?>? Credits { get; init; }

    /// <summary>Area to be covered; gives totals and packages.</summary>
    [Measured]
    public AreaQuantity? Area { get; init; }
}

/// <summary>A nutrient that is wanted, or limited.</summary>
[CheckedBy(typeof(WantedNutrientValidator))]
public sealed class WantedNutrient
{
    /// <summary>
    /// The nutrient in the form that the amount is stated in, as the element (N, P, K, S, and SO4-S for sulfur in sulfate) or as P2O5, K2O,
    /// SO3 or SO4. The answer speaks of it in the same form.
    /// </summary>
    [Needed, Word(typeof(NutrientRules), nameof(NutrientRules.Words))]
    public string? Nutrient { get; init; }

    /// <summary>Amount per area. Zero only with <c>at-most</c> or <c>exactly</c>.</summary>
    [Needed, Measured(0, 10_000, "kg/ha")]
    public MassPerAreaQuantity? Amount { get; init; }

    /// <summary>
    /// How the amount is meant: <c>at-least</c>, <c>exactly</c> or <c>at-most</c>. Default at-least: common practice, no published source.
    /// </summary>
    [Word(typeof(TargetKind))]
    public string? Kind { get; init; }

    /// <summary>With at-least: the most that may be given, credits included. No limit when left out.</summary>
    [Measured(0, 10_000, "kg/ha")]
    public MassPerAreaQuantity? Maximum { get; init; }
}

/// <summary>A nutrient that is there already.</summary>
public sealed class CreditedNutrient : AmountOfNutrient
{
    /// <summary>Where it comes from, in your words.</summary>
    [Text(Rules.LongestName)]
    public string? Origin { get; init; }
}

/// <summary>A product that can be applied.</summary>
[CheckedBy(typeof(ProductOfferValidator))]
public sealed class ProductOffer
{
    /// <summary>What you call it.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? Name { get; init; }

    /// <summary>
    /// Its nutrients, each as a share of its mass in a stated form. A grade such as 11-52-0 states N, P2O5 and K2O in most countries, but
    /// the elements N, P and K in some: look on the label.
    /// </summary>
    [Needed, Items(1, NutrientRules.MostShares)]
    public IReadOnlyList<ShareOfNutrient?>? Analysis { get; init; }

    /// <summary>Price. Default none: without prices the rates are those of least total mass.</summary>
    public Price? Price { get; init; }

    /// <summary>It is applied at no less than this rate. None when left out.</summary>
    [Measured(0, 100_000, "kg/ha")]
    public MassPerAreaQuantity? MinimumRate { get; init; }

    /// <summary>
    /// It is applied at no more than this rate, for example because of a limit for the seed row or of the meter. No limit when left out.
    /// </summary>
    [Measured(0, 100_000, "kg/ha")]
    public MassPerAreaQuantity? MaximumRate { get; init; }

    /// <summary>
    /// Its rate is decided already, as for a starter; its nutrients count like credits and its cost is added. Excludes minimumRate and
    /// maximumRate.
    /// </summary>
    [Measured(0, 100_000, "kg/ha")]
    public MassPerAreaQuantity? FixedRate { get; init; }

    /// <summary>Mass of one package; left out for bulk.</summary>
    [Measured(0.1, 100_000, "kg")]
    public MassQuantity? PackageMass { get; init; }
}
