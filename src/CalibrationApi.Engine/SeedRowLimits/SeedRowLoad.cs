using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.SeedRowLimits;

/// <summary>Nutrients that lie with the seed in each zone: the sum over all products.</summary>
/// <remarks>Accuracy: sums within 1e-12 relative (SeedRowLoadTests).</remarks>
public sealed class SeedRowLoad
{
    private readonly Zone[] zones;

    private SeedRowLoad(Zone[] zones) => this.zones = zones;

    /// <summary>Adds up what is placed with the seed.</summary>
    /// <param name="products">The products; those with more than one rate have one for each of the same zones.</param>
    /// <remarks>
    /// <para>Formula: rate times share, kg/m2, summed over the products of a zone. Nitrogen of a form that is not stated counts as urea,
    /// the form that harms most.</para>
    /// <para>Range: rates at least 0.</para>
    /// <para>Source: our own derivation; nitrogen that is not stated as urea is judgement.</para>
    /// </remarks>
    /// <exception cref="ArgumentException">No product, or products with different numbers of zones.</exception>
    public static SeedRowLoad Of(IReadOnlyList<PlacedProduct> products)
    {
        var counts = products.Select(product => product.Rates.Count).Where(count => count != 1).Distinct().ToArray();
        if (products.Count == 0 || counts.Length > 1 || counts.Contains(0))
            throw new ArgumentException("At least one product is needed, and the same zones for all.", nameof(products));
        return new SeedRowLoad([.. Enumerable.Range(0, counts.Length == 0 ? 1 : counts[0]).Select(zone => Zone.Of(products, zone))]);
    }

    /// <summary>The heaviest load of what a limit counts, and the zone that has it.</summary>
    /// <param name="nutrient">What the limit counts.</param>
    /// <returns>The load, and its zone counted from 1; the first one of equals.</returns>
    /// <remarks>
    /// <para>Formula: the largest sum over the zones, kg/m2.</para>
    /// <para>Range: at least one zone.</para>
    /// <para>Source: our own derivation.</para>
    /// </remarks>
    public (MassPerArea Load, int Zone) Worst(LimitedNutrient nutrient)
    {
        var loads = zones.Select(zone => zone.Of(nutrient)).ToArray();
        var worst = Array.IndexOf(loads, loads.Max());
        return (new MassPerArea(loads[worst]), worst + 1);
    }

    /// <summary>No nutrient lies with the seed in any zone.</summary>
    internal bool IsNothing => Array.TrueForAll(zones, zone => zone.Of(LimitedNutrient.AllNutrients) == 0);

    /// <summary>What is placed with the seed in some zone without being counted by any of <paramref name="judged"/>, in words.</summary>
    internal IReadOnlyList<string> NotCountedBy(IReadOnlyCollection<LimitedNutrient> judged) =>
        [
            .. zones
                .SelectMany(zone => zone.Parts())
                .Where(part => part.Mass > 0 && !part.CountedBy.Any(judged.Contains))
                .Select(part => part.Name)
                .Distinct(),
        ];

    // kg/m2 each.
    private sealed record Zone(double Urea, double Sulfate, double Phosphates, double OtherNitrogen, double P2O5, double K2O, double S)
    {
        public static Zone Of(IReadOnlyList<PlacedProduct> products, int zone) =>
            new(
                Nitrogen(products, zone, NitrogenForm.Urea, NitrogenForm.UreaWithInhibitor, NitrogenForm.UreaAmmoniumNitrate),
                Nitrogen(products, zone, NitrogenForm.AmmoniumSulfate),
                Nitrogen(products, zone, NitrogenForm.AmmoniumPhosphate),
                Nitrogen(products, zone, NitrogenForm.AmmoniumNitrate, NitrogenForm.Other),
                products.Sum(product => product.RateIn(zone).KilogramsPerSquareMetre * product.Analysis.P2O5),
                products.Sum(product => product.RateIn(zone).KilogramsPerSquareMetre * product.Analysis.K2O),
                products.Sum(product => product.RateIn(zone).KilogramsPerSquareMetre * product.Analysis.S)
            );

        public double Of(LimitedNutrient nutrient) =>
            nutrient switch
            {
                LimitedNutrient.Nitrogen => Urea + Sulfate + Phosphates + OtherNitrogen,
                LimitedNutrient.UreaNitrogen => Urea,
                LimitedNutrient.UreaAndSulfateNitrogen => Urea + Sulfate,
                LimitedNutrient.NitrogenBesidePhosphates => Urea + Sulfate + OtherNitrogen,
                LimitedNutrient.PhosphateNitrogen => Phosphates,
                LimitedNutrient.Phosphate => P2O5,
                LimitedNutrient.Potash => K2O,
                LimitedNutrient.NitrogenPlusPotash => Of(LimitedNutrient.Nitrogen) + K2O,
                LimitedNutrient.Sulfur => S,
                LimitedNutrient.AllNutrients => Of(LimitedNutrient.NitrogenPlusPotash) + P2O5 + S,
                _ => throw new ArgumentOutOfRangeException(nameof(nutrient), nutrient, null),
            };

        public IEnumerable<(string Name, double Mass, LimitedNutrient[] CountedBy)> Parts() =>
            [
                (
                    "urea nitrogen",
                    Urea,
                    [
                        .. AllNitrogen,
                        LimitedNutrient.UreaNitrogen,
                        LimitedNutrient.UreaAndSulfateNitrogen,
                        LimitedNutrient.NitrogenBesidePhosphates,
                    ]
                ),
                (
                    "nitrogen of ammonium sulfate",
                    Sulfate,
                    [.. AllNitrogen, LimitedNutrient.UreaAndSulfateNitrogen, LimitedNutrient.NitrogenBesidePhosphates]
                ),
                // A source that limits all nitrogen beside it lets it be with the phosphate that it allows.
                (
                    "nitrogen of ammonium phosphate",
                    Phosphates,
                    [.. AllNitrogen, LimitedNutrient.NitrogenBesidePhosphates, LimitedNutrient.PhosphateNitrogen]
                ),
                ("other nitrogen", OtherNitrogen, [.. AllNitrogen, LimitedNutrient.NitrogenBesidePhosphates]),
                ("P2O5", P2O5, [LimitedNutrient.Phosphate, LimitedNutrient.AllNutrients]),
                ("K2O", K2O, [LimitedNutrient.Potash, LimitedNutrient.NitrogenPlusPotash, LimitedNutrient.AllNutrients]),
                ("sulfur", S, [LimitedNutrient.Sulfur, LimitedNutrient.AllNutrients]),
            ];

        private static readonly LimitedNutrient[] AllNitrogen =
        [
            LimitedNutrient.Nitrogen,
            LimitedNutrient.NitrogenPlusPotash,
            LimitedNutrient.AllNutrients,
        ];

        private static double Nitrogen(IReadOnlyList<PlacedProduct> products, int zone, params NitrogenForm[] forms) =>
            products
                .Where(product => forms.Contains(product.NitrogenForm ?? NitrogenForm.Urea))
                .Sum(product => product.RateIn(zone).KilogramsPerSquareMetre * product.Analysis.N);
    }
}
