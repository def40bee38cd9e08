using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.ProductRates;

/// <summary>Which rates of these products supply the nutrients that are wanted, at the least cost?</summary>
public sealed record ProductRateQuestion
{
    /// <summary>What is wanted; at least one, one for each nutrient.</summary>
    public required IReadOnlyList<NutrientTarget> Targets { get; init; }

    /// <summary>
    /// The products at hand, in the order in which the caller prefers them among equals; at least one. All of them have a price or none
    /// has.
    /// </summary>
    public required IReadOnlyList<OfferedProduct> Products { get; init; }

    /// <summary>What is there already: applied earlier, or supplied by the soil.</summary>
    public IReadOnlyList<NutrientCredit> Credits { get; init; } = [];

    /// <summary>Area to be covered, for totals.</summary>
    public Area? Area { get; init; }
}

/// <summary>How a target is meant.</summary>
public enum TargetKind
{
    /// <summary>As much or more.</summary>
    AtLeast,

    /// <summary>That much, neither more nor less.</summary>
    Exactly,

    /// <summary>That much or less.</summary>
    AtMost,
}

/// <summary>A nutrient that is wanted, or limited.</summary>
/// <param name="Form">The form in which the amount is stated; the answer speaks of the nutrient in this form.</param>
/// <param name="Amount">Amount per area, above 0 for at least, otherwise at least 0.</param>
/// <param name="Kind">How it is meant; null takes at least.</param>
/// <param name="Most">With at least: the most that may be supplied. Not below the amount.</param>
public sealed record NutrientTarget(NutrientForm Form, MassPerArea Amount, TargetKind? Kind = null, MassPerArea? Most = null);

/// <summary>A nutrient that need not be bought, because it is there already.</summary>
/// <param name="Form">The form in which the amount is stated.</param>
/// <param name="Amount">Amount per area, at least 0.</param>
public sealed record NutrientCredit(NutrientForm Form, MassPerArea Amount);

/// <summary>A product that can be applied.</summary>
public sealed record OfferedProduct
{
    /// <summary>What the caller calls it.</summary>
    public required string Name { get; init; }

    /// <summary>Its nutrients, one share for each nutrient, at least one above 0.</summary>
    public required IReadOnlyList<NutrientShare> Analysis { get; init; }

    /// <summary>Money for one kilogram, at least 0; null without a price.</summary>
    public double? PricePerKilogram { get; init; }

    /// <summary>It is applied at no less than this rate; null for 0.</summary>
    public MassPerArea? LeastRate { get; init; }

    /// <summary>It is applied at no more than this rate; null without a limit. Not below the least.</summary>
    public MassPerArea? MostRate { get; init; }

    /// <summary>Its rate is decided already, as for a starter: its nutrients count like credits. Excludes least and most.</summary>
    public MassPerArea? FixedRate { get; init; }

    /// <summary>Mass of one package; null for bulk.</summary>
    public Mass? Package { get; init; }

    /// <summary>Mass of a nutrient, in a form, per mass of the product.</summary>
    /// <param name="form">The form.</param>
    /// <remarks>
    /// <para>Formula: that of <see cref="NutrientShare.Of"/>.</para>
    /// <para>Range: 0 where the product has none of it.</para>
    /// <para>Source: SOURCES.md, key CIAAW-2021, the atomic weights.</para>
    /// <para>Accuracy: that of the sum (ProductRateTests).</para>
    /// </remarks>
    public double Share(NutrientForm form) => NutrientShare.Of(Analysis, form);
}
