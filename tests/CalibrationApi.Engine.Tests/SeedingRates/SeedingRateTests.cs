using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedingRates;

namespace CalibrationApi.Engine.Tests.SeedingRates;

public sealed class SeedingRateTests
{
    // University of Kentucky (SOURCES.md, UKY-SR): 35 seeds per square foot of 12 000 seeds per pound take 127 lb/ac.
    [Fact]
    public void Mass_SeedsPerSquareFoot_GivesThePublishedRate()
    {
        var rate = SeedingRate.Mass(new(UnitTable.Get("/ft2").Canonical(35)), new(1 / UnitTable.Get("/lb").Canonical(12_000)), 1);

        new PrintedNumber("127").AssertReproducedBy(UnitTable.Get("lb/ac").FromCanonical(rate.KilogramsPerSquareMetre));
    }

    [Fact]
    public void SeedsIn_AfterMass_GivesTheSeedsBack()
    {
        var seeds = new CountPerArea(311.7);

        var back = SeedingRate.SeedsIn(SeedingRate.Mass(seeds, new(0.0000413), 0.97), new(0.0000413), 0.97);

        Assert.Equal(seeds.PerSquareMetre, back.PerSquareMetre, 1e-12 * seeds.PerSquareMetre);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void Seeds_ShareOutsideItsRange_IsRefused(double survival) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SeedingRate.Seeds(new(250), survival));

    // The shortcut on paper: plants per square foot times grams per thousand over survival over 10.
    [Fact]
    public void Corrected_RateOfTheShortcut_IsTheExactOne()
    {
        var shortcut = new MassPerArea(UnitTable.Get("lb/ac").Canonical(24 * 38 / 0.85 / 10));

        var exact = SeedingRate.Mass(SeedingRate.Seeds(new(UnitTable.Get("/ft2").Canonical(24)), 0.85), new(38e-6), 1);

        NearlyEqual.Assert(exact.KilogramsPerSquareMetre, DivideByTen.Corrected(shortcut).KilogramsPerSquareMetre);
        Assert.True(DivideByTen.Explains(shortcut.KilogramsPerSquareMetre / exact.KilogramsPerSquareMetre));
        Assert.True(DivideByTen.Explains(1.0413 * 1.0049));
        Assert.False(DivideByTen.Explains(1.0413 * 1.0052));
        Assert.False(DivideByTen.Explains(1));
    }

    [Fact]
    public void MassOf_PackageOfSeeds_HoldsWhatIsNoSeedToo()
    {
        NearlyEqual.Assert(80_000 * 0.33e-3 / 0.98, SeedPackage.Of(80_000).MassOf(new(0.33e-3), 0.98).Kilograms);
        Assert.Equal(25, SeedPackage.Of(new Mass(25)).MassOf(new(0.33e-3), 0.98).Kilograms);
    }
}
