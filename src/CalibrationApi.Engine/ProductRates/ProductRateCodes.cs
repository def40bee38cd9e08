using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.ProductRates;

/// <summary>The codes of product rates.</summary>
public static class ProductRateCodes
{
    /// <summary>None of the products whose rates are open holds a nutrient that is still wanted.</summary>
    public static WarningCode NutrientWithoutSource { get; } =
        new("nutrient-without-source", "Add a product that holds it, or take the target out.");

    /// <summary>What is there already goes over an exact or at-most target.</summary>
    public static WarningCode CreditsAboveTarget { get; } =
        new(
            "credits-above-target",
            "Check the credits and the fixed rates. If they are right, nothing more of this nutrient should be applied."
        );

    /// <summary>A nutrient stays short because products may not be applied at a higher rate.</summary>
    public static WarningCode MostRateBinds { get; } =
        new("most-rate-binds", "Raise the most rate if it may be raised, add another source of the nutrient, or apply the rest apart.");

    /// <summary>A nutrient goes over its target because products have to be applied at no lower rate.</summary>
    public static WarningCode LeastRateBinds { get; } =
        new("least-rate-binds", "Lower the least rate or leave it out, or raise the target.");

    /// <summary>A target cannot be met together with another one, because products hold both nutrients.</summary>
    public static WarningCode TargetsConflict { get; } =
        new(
            "targets-conflict",
            "Add a product that holds the nutrient by itself, or loosen one of the targets that the sentence names, for example from exactly to at-least."
        );

    /// <summary>Much more of a nutrient is given than was asked for.</summary>
    public static NoteCode LargeSurplus { get; } =
        new(
            "large-surplus",
            "Nothing to do if it does no harm. Otherwise state a most for this nutrient, or add a product that holds less of it."
        );

    /// <summary>A product rate is higher than seeding machines usually put down.</summary>
    public static WarningCode UnusualProductRate { get; } =
        new("unusual-product-rate", "Check the analysis and the targets, number and unit.");

    /// <summary>A share stated as the element is higher than any usual product holds; it may be that of the oxide.</summary>
    public static WarningCode ElementOrOxide { get; } =
        new("element-or-oxide", "Look on the label whether it says K or K2O, and state that form.");

    /// <summary>Nutrients given without knowing what the soil holds and what local rules allow.</summary>
    public static CautionCode SoilTestFirst { get; } =
        new("soil-test-first", "Rates follow a soil test, the product label, local rules and a licensed or certified adviser.");

    /// <summary>Fertilizer in the seed row that kills the seed beside it.</summary>
    public static CautionCode SeedRowHasItsOwnLimit { get; } =
        new("seed-row-has-its-own-limit", "Ask for the limit of what is laid in the seed row before placing any of it there.");

    /// <summary>Products that cake, give off gas or feed a fire when they are mixed.</summary>
    public static CautionCode NotAllProductsMix { get; } =
        new(
            "not-all-products-mix",
            "Read the labels and safety data sheets, and ask the supplier, before products share a tank or a heap."
        );

    /// <summary>What an answer can find.</summary>
    public static IReadOnlyList<FindingCode> Findings { get; } =
    [
        NutrientWithoutSource,
        CreditsAboveTarget,
        MostRateBinds,
        LeastRateBinds,
        TargetsConflict,
        LargeSurplus,
        UnusualProductRate,
        ElementOrOxide,
    ];

    /// <summary>The cautions of an answer.</summary>
    public static IReadOnlyList<CautionCode> Cautions { get; } = [SoilTestFirst, SeedRowHasItsOwnLimit, NotAllProductsMix];
}
