using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedRowLimits;

namespace CalibrationApi.Engine.Tests.SeedRowLimits;

/// <summary>Seed rows to start from.</summary>
internal static class Sown
{
    /// <summary>Wheat on medium soil in Manitoba, 1 in spread in rows of 9 in, where 15 lb/ac of urea nitrogen are printed.</summary>
    public static SeedRowQuestion Wheat(params PlacedProduct[] products) =>
        new()
        {
            Crop = Crop.Wheat,
            Soil = SoilTexture.Medium,
            Moisture = SeedbedMoisture.Good,
            Region = Region.Manitoba,
            RowSpacing = Inches(9),
            Spread = Inches(1),
            Products = products.Length == 0 ? [Urea(10)] : products,
        };

    /// <summary>Nitrogen from urea, in lb/ac of nitrogen.</summary>
    public static PlacedProduct Urea(double poundsOfNitrogen) => Nitrogen("urea", poundsOfNitrogen, NitrogenForm.Urea);

    public static PlacedProduct Nitrogen(string name, double poundsOfNitrogen, NitrogenForm? form) =>
        PlacedProduct.OfNutrients(name, [(NutrientForm.N, Pounds(poundsOfNitrogen))], form);

    /// <summary>Ammonium phosphate 11-52-0.</summary>
    public static PlacedProduct Phosphate(params double[] poundsOfProduct) =>
        new()
        {
            Name = "phosphate",
            Analysis = new NutrientAnalysis(N: 0.11, P2O5: 0.52),
            Rates = [.. poundsOfProduct.Select(Pounds)],
            NitrogenForm = NitrogenForm.AmmoniumPhosphate,
        };

    /// <summary>Muriate 0-0-60.</summary>
    public static PlacedProduct Potash(params double[] poundsOfProduct) =>
        new()
        {
            Name = "potash",
            Analysis = new NutrientAnalysis(K2O: 0.60),
            Rates = [.. poundsOfProduct.Select(Pounds)],
        };

    public static Length Inches(double value) => new(UnitTable.Get("in").Canonical(value));

    public static MassPerArea Pounds(double value) => new(UnitTable.Get("lb/ac").Canonical(value));

    public static double InPounds(MassPerArea? rate) => UnitTable.Get("lb/ac").FromCanonical(rate!.Value.KilogramsPerSquareMetre);

    public static LimitJudgement Limit(this SeedRowQuestion row, string source, LimitedNutrient nutrient) =>
        SeedRowEvaluation.Evaluate(row).Limits.Single(limit => limit.Limit.Source.Key == source && limit.Limit.Nutrient == nutrient);

    public static string Text(this SeedRowResult result) => DisplayUnits.UnitedStates.Write(result.Headline);

    public static FindingCode[] Codes(this SeedRowResult result) => [.. result.Findings.Select(finding => finding.Code)];
}
