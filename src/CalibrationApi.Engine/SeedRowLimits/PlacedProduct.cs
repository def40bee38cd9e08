using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.SeedRowLimits;

/// <summary>A product that is placed with the seed.</summary>
public sealed record PlacedProduct
{
    /// <summary>What the owner calls it.</summary>
    public required string Name { get; init; }

    /// <summary>Shares of nutrients in the product.</summary>
    public required NutrientAnalysis Analysis { get; init; }

    /// <summary>Rates of the product, at least 0: one that holds in every zone, or one for each zone.</summary>
    public required IReadOnlyList<MassPerArea> Rates { get; init; }

    /// <summary>Form of its nitrogen; null when not stated, which counts as urea.</summary>
    public NitrogenForm? NitrogenForm { get; init; }

    /// <summary>The same nutrients at rates stated directly.</summary>
    /// <param name="name">What the owner calls it.</param>
    /// <param name="n">Nitrogen per area, at least 0.</param>
    /// <param name="p2o5">P2O5 per area, at least 0.</param>
    /// <param name="k2o">K2O per area, at least 0.</param>
    /// <param name="s">Sulphur per area, at least 0.</param>
    /// <param name="form">Form of the nitrogen; null when not stated.</param>
    /// <returns>A product of nothing but these nutrients, at their sum.</returns>
    public static PlacedProduct OfNutrients(string name, MassPerArea n, MassPerArea p2o5, MassPerArea k2o, MassPerArea s, NitrogenForm? form)
    {
        var sum = n.KilogramsPerSquareMetre + p2o5.KilogramsPerSquareMetre + k2o.KilogramsPerSquareMetre + s.KilogramsPerSquareMetre;
        return new PlacedProduct
        {
            Name = name,
            Analysis = sum == 0
                ? new NutrientAnalysis()
                : new NutrientAnalysis(n.KilogramsPerSquareMetre / sum, p2o5.KilogramsPerSquareMetre / sum, k2o.KilogramsPerSquareMetre / sum, s.KilogramsPerSquareMetre / sum),
            Rates = [new MassPerArea(sum)],
            NitrogenForm = form,
        };
    }

    /// <summary>Its rate in a zone, counted from 0.</summary>
    internal MassPerArea RateIn(int zone) => Rates[Rates.Count == 1 ? 0 : zone];
}
