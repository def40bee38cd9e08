using CalibrationApi.Nutrients;
using CalibrationApi.Quantities;

namespace CalibrationApi.Calculations.ProductRates;

/// <summary>Nutrients that are wanted, and the products that can supply them.</summary>
public sealed class ProductRateRequest
{
    /// <summary>What is wanted of each nutrient: nitrogen, phosphorus, potassium, sulfur. One target for each nutrient.</summary>
    public IReadOnlyList<WantedNutrient?>? Targets { get; init; }

    /// <summary>The products at hand. Among choices of equal cost and mass, earlier ones are taken before later ones. Either all have a price, in one currency, or none has.</summary>
    public IReadOnlyList<ProductOffer?>? Products { get; init; }

    /// <summary>What is there already and need not be bought: applied earlier, or supplied by the soil. Credits of one nutrient add up.</summary>
    public IReadOnlyList<CreditedNutrient?>? Credits { get; init; }

    /// <summary>Area to be covered; gives totals and packages.</summary>
    public AreaQuantity? Area { get; init; }
}

/// <summary>A nutrient that is wanted, or limited.</summary>
public sealed class WantedNutrient
{
    /// <summary>The nutrient in the form that the amount is stated in, as the element (N, P, K, S, and SO4-S for sulfur in sulfate) or as P2O5, K2O, SO3 or SO4. The answer speaks of it in the same form.</summary>
    public string? Nutrient { get; init; }

    /// <summary>Amount per area. Zero only with <c>at-most</c> or <c>exactly</c>.</summary>
    public MassPerAreaQuantity? Amount { get; init; }

    /// <summary>How the amount is meant: <c>at-least</c>, <c>exactly</c> or <c>at-most</c>. Default at-least: common practice, no published source.</summary>
    public string? Kind { get; init; }

    /// <summary>With at-least: the most that may be given, credits included. No limit when left out.</summary>
    public MassPerAreaQuantity? Most { get; init; }
}

/// <summary>A nutrient that is there already.</summary>
public sealed class CreditedNutrient : AmountOfNutrient
{
    /// <summary>Where it comes from, in your words.</summary>
    public string? Origin { get; init; }
}

/// <summary>A product that can be applied.</summary>
public sealed class ProductOffer
{
    /// <summary>What you call it.</summary>
    public string? Name { get; init; }

    /// <summary>Its nutrients, each as a share of its mass in a stated form. A grade such as 11-52-0 states N, P2O5 and K2O in most countries, but the elements N, P and K in some: look on the label.</summary>
    public IReadOnlyList<ShareOfNutrient?>? Analysis { get; init; }

    /// <summary>Price. Default none: without prices the rates are those of least total mass.</summary>
    public Price? Price { get; init; }

    /// <summary>It is applied at no less than this rate. None when left out.</summary>
    public MassPerAreaQuantity? LeastRate { get; init; }

    /// <summary>It is applied at no more than this rate, for example because of a limit for the seed row or of the meter. No limit when left out.</summary>
    public MassPerAreaQuantity? MostRate { get; init; }

    /// <summary>Its rate is decided already, as for a starter; its nutrients count like credits and its cost is added. Excludes leastRate and mostRate.</summary>
    public MassPerAreaQuantity? FixedRate { get; init; }

    /// <summary>Mass of one package; left out for bulk.</summary>
    public MassQuantity? PackageMass { get; init; }
}
