namespace CalibrationApi.Engine.Nutrients;

/// <summary>A nutrient in a product.</summary>
/// <param name="Form">The form in which the share is stated.</param>
/// <param name="Share">Mass of that form per mass of the product, as a fraction.</param>
public sealed record NutrientShare(NutrientForm Form, double Share)
{
    // Real products hold less than 100 %; the slack is for what rounding adds to a sum of decimals.
    private const double MostTotal = 1 + 1e-9;

    /// <summary>True when an analysis is more than a whole: N, P2O5, K2O and S together above 100 %.</summary>
    /// <param name="analysis">The product.</param>
    /// <remarks>
    /// <para>Formula: sum of N + P2O5 + K2O + S above 1, fractions by mass, with 1e-9 for rounded decimals. Fertilizer salts hold oxygen or
    /// chlorine beside what is stated, so that this sum stays under 100 %: potassium sulfate has 72 %, potassium metaphosphate, the
    /// densest, 100 %. Sulfur counts as the element, since pure sulfur is sold and would be 250 % of SO3.</para>
    /// <para>Range: shares at least 0.</para>
    /// <para>Source: our own derivation from the atomic weights (SOURCES.md, key CIAAW-2021).</para>
    /// <para>Accuracy: the densest salts by their molar masses (ProductRateTests).</para>
    /// </remarks>
    public static bool IsMoreThanAWhole(IEnumerable<NutrientShare> analysis) =>
        analysis.Sum(one => one.Share * one.Form.To(LabelForm(one.Form.Nutrient))) > MostTotal;

    /// <summary>Mass of a nutrient, in a form, per mass of a product.</summary>
    /// <param name="analysis">The product.</param>
    /// <param name="form">The form.</param>
    /// <remarks>
    /// <para>Formula: sum of share_i f_i over the forms of one nutrient, f_i the factor of <see cref="NutrientForm.To"/>.</para>
    /// <para>Range: shares at least 0; 0 where the product has none of it.</para>
    /// <para>Source: SOURCES.md, key CIAAW-2021, the atomic weights.</para>
    /// <para>Accuracy: 1e-12 relative (NutrientFormTests); published products as printed, or the table of cases says why not
    /// (NutrientTradeTests).</para>
    /// </remarks>
    public static double Of(IEnumerable<NutrientShare> analysis, NutrientForm form) =>
        analysis.Where(one => one.Form.Nutrient == form.Nutrient).Sum(one => one.Share * one.Form.To(form));

    private static NutrientForm LabelForm(Nutrient nutrient) =>
        nutrient switch
        {
            Nutrient.Nitrogen => NutrientForm.N,
            Nutrient.Phosphorus => NutrientForm.P2O5,
            Nutrient.Potassium => NutrientForm.K2O,
            _ => NutrientForm.S,
        };
}
