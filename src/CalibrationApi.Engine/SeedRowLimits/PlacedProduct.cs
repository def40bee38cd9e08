using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.PublishedSeedRowLimits;
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

    /// <summary>Nutrients at rates stated directly.</summary>
    /// <param name="name">What the owner calls it.</param>
    /// <param name="amounts">Amount per area of each nutrient in a form, at least 0.</param>
    /// <param name="form">Form of the nitrogen; null when not stated.</param>
    /// <returns>A product of nothing but these nutrients, at their sum.</returns>
    /// <remarks>
    /// <para>Formula: rate = sum of the amounts, kg/m2, and share_i = amount_i over that sum.</para>
    /// <para>Range: amounts at least 0; all of them 0 is nothing placed.</para>
    /// <para>Source: our own derivation.</para>
    /// <para>Accuracy: each amount comes back within 1e-12 (SeedRowLoadTests).</para>
    /// </remarks>
    public static PlacedProduct OfNutrients(string name, IReadOnlyList<(NutrientForm Form, MassPerArea Amount)> amounts, NitrogenForm? form)
    {
        var sum = amounts.Sum(one => one.Amount.KilogramsPerSquareMetre);
        return new PlacedProduct
        {
            Name = name,
            Analysis = NutrientAnalysis.Of([
                .. amounts.Select(one => new NutrientShare(one.Form, sum == 0 ? 0 : one.Amount.KilogramsPerSquareMetre / sum)),
            ]),
            Rates = [new MassPerArea(sum)],
            NitrogenForm = form,
        };
    }

    /// <summary>Its rate in a zone, counted from 0.</summary>
    internal MassPerArea RateIn(int zone) => Rates[Rates.Count == 1 ? 0 : zone];
}
