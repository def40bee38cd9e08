using System.Globalization;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Nutrients;

namespace CalibrationApi.Engine.ProductRates;

/// <summary>What is used where the caller says nothing, and where findings begin.</summary>
public static class ProductRateDefaults
{
    /// <summary>How a target is meant that does not say.</summary>
    public const TargetKind Kind = TargetKind.AtLeast;

    // A fifth more than asked is worth a word; judgement, no published source.
    internal const double LargeSurplus = 0.20;

    // A tonne per hectare is more than machines that meter seed and fertilizer put down; judgement, no published source. It
    // catches a slip of the decimal point in an analysis.
    internal const double UnusualRate = 0.1;

    // Muriate of potash, the densest potassium salt in common use, is 52.44 % potassium when pure: SOURCES.md, key VT-SPES-201.
    internal const double MostPotassium = 0.5244;

    internal static Assumption AssumedKind(int target) =>
        new(
            "kind",
            null,
            "at-least, the default: a target that does not say how it is meant is a least amount; common practice, no published source"
        )
        {
            Member = string.Create(CultureInfo.InvariantCulture, $"targets/{target}/kind"),
            Word = "at-least",
        };

    internal static Assumption LeastMass { get; } = new("price", null, "no prices were given, so the rates are those of least total mass");

    internal static Assumption Converted(NutrientForm from, NutrientForm to) =>
        new(
            "nutrient",
            null,
            string.Create(
                CultureInfo.InvariantCulture,
                $"1 kg of {from.Symbol} counts as {from.To(to):F4} kg of {to.Symbol}, by molar masses from the standard atomic weights of 2021 (CIAAW)"
            )
        );
}
