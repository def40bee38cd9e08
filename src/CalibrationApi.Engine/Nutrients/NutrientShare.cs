namespace CalibrationApi.Engine.Nutrients;

/// <summary>A nutrient in a product.</summary>
/// <param name="Form">The form in which the share is stated.</param>
/// <param name="Share">Mass of that form per mass of the product, as a fraction.</param>
public sealed record NutrientShare(NutrientForm Form, double Share)
{
    // Real products hold less than 100 %; the slack is for what rounding adds to a sum of decimals.
    private const double MostTotal = 1 + 1e-9;

    /// <summary>True when an analysis is more than a whole: N, P2O5, K2O and S together above 100 %.</summary>
    /// <remarks>
    /// Fertilizer salts hold oxygen or chlorine beside what is stated, so that this sum stays under 100 %: potassium sulfate has
    /// 72 %, potassium metaphosphate, the densest, 100 %. Sulfur counts as the element, since pure sulfur is sold and would be
    /// 250 % of SO3.
    /// </remarks>
    public static bool IsMoreThanAWhole(IEnumerable<NutrientShare> analysis) => analysis.Sum(one => one.Share * one.Form.To(LabelForm(one.Form.Nutrient))) > MostTotal;

    /// <summary>Mass of a nutrient, in a form, per mass of a product.</summary>
    /// <param name="analysis">The product.</param>
    /// <param name="form">The form.</param>
    public static double Of(IEnumerable<NutrientShare> analysis, NutrientForm form) => analysis.Where(one => one.Form.Nutrient == form.Nutrient).Sum(one => one.Share * one.Form.To(form));

    private static NutrientForm LabelForm(Nutrient nutrient) => nutrient switch
    {
        Nutrient.Nitrogen => NutrientForm.N,
        Nutrient.Phosphorus => NutrientForm.P2O5,
        Nutrient.Potassium => NutrientForm.K2O,
        _ => NutrientForm.S,
    };
}
