using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.SeedingRates;

/// <summary>From a stand of plants to seeds and mass per area, and back.</summary>
/// <remarks>
/// <para>Formula: R = D TKM / (S P), kg/m2: D plants per area, TKM mass of a kernel as sown (treated), S plants per pure seed (survival:
/// germination times field emergence, or one published figure for both), P share of the mass that is pure seed. Exact units; the published
/// shortcut that divides by 10 reads 4.13 % high.</para>
/// <para>Range: counts and masses above 0, shares above 0 and at most 1.</para>
/// <para>Source: SOURCES.md, keys NDSU-B, UKY-SR, TXDOT-PLS.</para>
/// <para>Accuracy: there and back within 1e-12 (SeedingRateTests, SeedingRatePropertyTests); published rates as printed, or the table of
/// cases says why not (SeedingRateTradeTests).</para>
/// </remarks>
public static class SeedingRate
{
    /// <summary>Pure seeds per area for a stand: D / S.</summary>
    /// <param name="plants">Plants wanted, above 0.</param>
    /// <param name="survival">Plants per pure seed, above 0, at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not above 0 and at most 1.</exception>
    public static CountPerArea Seeds(CountPerArea plants, double survival) => new(plants.PerSquareMetre / Share(survival));

    /// <summary>Plants per area from pure seeds per area: the inverse of <see cref="Seeds"/>.</summary>
    /// <param name="seeds">Pure seeds sown.</param>
    /// <param name="survival">Plants per pure seed, above 0, at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not above 0 and at most 1.</exception>
    public static CountPerArea Plants(CountPerArea seeds, double survival) => new(seeds.PerSquareMetre * Share(survival));

    /// <summary>Mass per area that holds so many pure seeds.</summary>
    /// <param name="seeds">Pure seeds per area.</param>
    /// <param name="kernel">Mass of a kernel as sown, above 0.</param>
    /// <param name="purity">Share of the mass that is pure seed, above 0, at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not above 0 and at most 1.</exception>
    public static MassPerArea Mass(CountPerArea seeds, MassPerThousand kernel, double purity) =>
        new(seeds.PerSquareMetre * kernel.KilogramsPerKernel / Share(purity));

    /// <summary>Pure seeds per area in a mass per area: the inverse of <see cref="Mass"/>.</summary>
    /// <param name="rate">Mass sown per area.</param>
    /// <param name="kernel">Mass of a kernel as sown, above 0.</param>
    /// <param name="purity">Share of the mass that is pure seed, above 0, at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not above 0 and at most 1, or the kernel has no mass.</exception>
    public static CountPerArea SeedsIn(MassPerArea rate, MassPerThousand kernel, double purity)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(kernel.KilogramsPerKernel);
        return new(rate.KilogramsPerSquareMetre * Share(purity) / kernel.KilogramsPerKernel);
    }

    /// <summary>Seeds or plants per length of row: density times row spacing.</summary>
    /// <param name="density">Seeds or plants per area.</param>
    /// <param name="rowSpacing">Distance between two rows, above 0.</param>
    public static CountPerLength PerRow(CountPerArea density, Length rowSpacing) => new(density.PerSquareMetre * rowSpacing.Metres);

    /// <summary>Seeds or plants per area from those in a length of row: the inverse of <see cref="PerRow"/>.</summary>
    /// <param name="perRow">Seeds or plants per length of row.</param>
    /// <param name="rowSpacing">Distance between two rows, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The row spacing is not above 0.</exception>
    public static CountPerArea PerArea(CountPerLength perRow, Length rowSpacing)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rowSpacing.Metres);
        return new(perRow.PerMetre / rowSpacing.Metres);
    }

    /// <summary>Mass of a kernel from seeds per mass.</summary>
    /// <param name="seeds">Seeds per mass, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are no seeds.</exception>
    public static MassPerThousand Kernel(CountPerMass seeds)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(seeds.PerKilogram);
        return new(1 / seeds.PerKilogram);
    }

    /// <summary>Mass of a kernel from a counted and weighed sample.</summary>
    /// <param name="seeds">Seeds counted, above 0.</param>
    /// <param name="mass">Their mass together.</param>
    /// <remarks>Source: SOURCES.md, keys UKY-SR, MSUE-COUNT and NDSU-B.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">There are no seeds.</exception>
    public static MassPerThousand Kernel(double seeds, Mass mass)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(seeds);
        return new(mass.Kilograms / seeds);
    }

    /// <summary>Seeds per mass from the mass of a kernel.</summary>
    /// <param name="kernel">Mass of a kernel, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The kernel has no mass.</exception>
    public static CountPerMass SeedsPerMass(MassPerThousand kernel)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(kernel.KilogramsPerKernel);
        return new(1 / kernel.KilogramsPerKernel);
    }

    /// <summary>
    /// Share of the bulk mass that is pure and germinates: purity times germination. One over it is the bulk mass that holds one mass of
    /// pure live seed.
    /// </summary>
    /// <param name="purity">Share of the mass that is pure seed, above 0, at most 1.</param>
    /// <param name="germination">Share of the pure seeds that germinate, above 0, at most 1.</param>
    /// <remarks>
    /// <para>Source: SOURCES.md, keys TXDOT-PLS and USGS-T4.</para>
    /// <para>Formula: purity times germination, fractions. Not rounded on the way: rounding it first costs half a per cent.</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A share is not above 0 and at most 1.</exception>
    public static double PureLiveSeed(double purity, double germination) => Share(purity) * Share(germination);

    private static double Share(double share)
    {
        // Also refuses what is not a number.
        if (!(share > 0 && share <= 1))
            throw new ArgumentOutOfRangeException(nameof(share), share, "A share is above 0 and at most 1.");
        return share;
    }
}
