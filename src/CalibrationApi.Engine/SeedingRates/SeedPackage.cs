using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.SeedingRates;

/// <summary>A bag or box in which seed is sold: by mass, or by a count of seeds.</summary>
public sealed record SeedPackage
{
    private readonly Mass? mass;
    private readonly double? seeds;

    private SeedPackage(Mass? mass, double? seeds)
    {
        this.mass = mass;
        this.seeds = seeds;
    }

    /// <summary>A package of a mass.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The mass is not above 0.</exception>
    public static SeedPackage Of(Mass mass)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(mass.Kilograms);
        return new(mass, null);
    }

    /// <summary>A package of a count of pure seeds.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The count is not above 0.</exception>
    public static SeedPackage Of(double seeds)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(seeds);
        return new(null, seeds);
    }

    /// <summary>Mass of a package of this seed.</summary>
    /// <param name="kernel">Mass of a kernel.</param>
    /// <param name="purity">Share of the mass that is pure seed, above 0, at most 1.</param>
    /// <remarks>
    /// <para>Formula: the mass stated, or n m / P: n pure seeds, m kernel mass kg, P purity.</para>
    /// <para>Range: counts and masses above 0, purity above 0 and at most 1.</para>
    /// <para>Source: common practice, no published source.</para>
    /// <para>Accuracy: 1e-12 relative (SeedingRateTests); published bags as printed, or the table of cases says why not
    /// (SeedingRateTradeTests).</para>
    /// </remarks>
    public Mass MassOf(MassPerThousand kernel, double purity) => mass ?? new(seeds!.Value * kernel.KilogramsPerKernel / purity);
}

/// <summary>What seed costs: for a mass, or for a package.</summary>
/// <param name="PerKilogram">Money for one kilogram; null when the package has a price.</param>
/// <param name="PerPackage">Money for one package; null when the mass has a price.</param>
public sealed record SeedPrice(double? PerKilogram, double? PerPackage);
