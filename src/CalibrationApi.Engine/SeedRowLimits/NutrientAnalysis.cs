using CalibrationApi.Engine.Nutrients;

namespace CalibrationApi.Engine.SeedRowLimits;

/// <summary>Shares of nutrients in a product by mass, as labels state them. Each is 0 to 1, their sum at most 1.</summary>
/// <param name="N">Nitrogen.</param>
/// <param name="P2O5">Phosphorus as P2O5.</param>
/// <param name="K2O">Potassium as K2O.</param>
/// <param name="S">Sulfur as the element.</param>
public sealed record NutrientAnalysis(double N = 0, double P2O5 = 0, double K2O = 0, double S = 0)
{
    /// <summary>The same, from shares in whatever form they are stated.</summary>
    public static NutrientAnalysis Of(IReadOnlyList<NutrientShare> shares) =>
        new(
            NutrientShare.Of(shares, NutrientForm.N),
            NutrientShare.Of(shares, NutrientForm.P2O5),
            NutrientShare.Of(shares, NutrientForm.K2O),
            NutrientShare.Of(shares, NutrientForm.S)
        );
}
