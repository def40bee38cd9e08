using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.SeedRowLimits;

namespace CalibrationApi.Engine.Tests.SeedRowLimits;

/// <summary>What lies with the seed: sums over products, the worst zone, forms of nitrogen.</summary>
public sealed class SeedRowLoadTests
{
    // On paper: 20 lb urea N; 50 lb of 11-52-0 brings 5.5 lb N and 26 lb P2O5; 40 lb of 0-0-60 brings 24 lb K2O.
    [Theory]
    [InlineData(LimitedNutrient.Nitrogen, 25.5)]
    [InlineData(LimitedNutrient.UreaNitrogen, 20)]
    [InlineData(LimitedNutrient.UreaAndSulfateNitrogen, 20)]
    [InlineData(LimitedNutrient.NitrogenBesidePhosphates, 20)]
    [InlineData(LimitedNutrient.Phosphate, 26)]
    [InlineData(LimitedNutrient.Potash, 24)]
    [InlineData(LimitedNutrient.NitrogenPlusPotash, 49.5)]
    [InlineData(LimitedNutrient.Sulfur, 0)]
    [InlineData(LimitedNutrient.AllNutrients, 75.5)]
    public void Worst_SeveralProducts_IsTheirSum(LimitedNutrient nutrient, double pounds)
    {
        var load = SeedRowLoad.Of([Sown.Urea(20), Sown.Phosphate(50), Sown.Potash(40)]);

        Assert.Equal(pounds, Sown.InPounds(load.Worst(nutrient).Load), 1e-12 * 100);
    }

    [Theory]
    [InlineData(NitrogenForm.Urea, 10, 10, 10)]
    [InlineData(NitrogenForm.UreaAmmoniumNitrate, 10, 10, 10)]
    [InlineData(NitrogenForm.AmmoniumSulfate, 0, 10, 10)]
    [InlineData(NitrogenForm.AmmoniumPhosphate, 0, 0, 0)]
    [InlineData(NitrogenForm.AmmoniumNitrate, 0, 0, 10)]
    [InlineData(NitrogenForm.Other, 0, 0, 10)]
    [InlineData(null, 10, 10, 10)]
    public void Worst_FormOfNitrogen_CountsWhereItIsLimited(NitrogenForm? form, double urea, double withSulfate, double besidePhosphates)
    {
        var load = SeedRowLoad.Of([Sown.Nitrogen("one", 10, form)]);

        Assert.Equal(urea, Sown.InPounds(load.Worst(LimitedNutrient.UreaNitrogen).Load), 1e-12);
        Assert.Equal(withSulfate, Sown.InPounds(load.Worst(LimitedNutrient.UreaAndSulfateNitrogen).Load), 1e-12);
        Assert.Equal(besidePhosphates, Sown.InPounds(load.Worst(LimitedNutrient.NitrogenBesidePhosphates).Load), 1e-12);
        Assert.Equal(10, Sown.InPounds(load.Worst(LimitedNutrient.Nitrogen).Load), 1e-12);
    }

    // Zone 2 is the worst for P2O5, zone 3 for K2O, zone 1 for both together; a single rate holds in all of them.
    [Fact]
    public void Worst_Zones_AreAddedUpZoneByZone()
    {
        var load = SeedRowLoad.Of([Sown.Urea(10), Sown.Phosphate(40, 60, 0), Sown.Potash(60, 10, 62)]);

        Assert.Equal(2, load.Worst(LimitedNutrient.Phosphate).Zone);
        Assert.Equal(3, load.Worst(LimitedNutrient.Potash).Zone);
        var (worst, zone) = load.Worst(LimitedNutrient.NitrogenPlusPotash);
        Assert.Equal(1, zone);
        Assert.Equal(10 + 40 * 0.11 + 60 * 0.60, Sown.InPounds(worst), 1e-9);
        Assert.Equal(1, load.Worst(LimitedNutrient.UreaNitrogen).Zone);
    }

    [Fact]
    public void Of_ProductsWithDifferentZones_IsACallersMistake() =>
        Assert.Throws<ArgumentException>(() => SeedRowLoad.Of([Sown.Phosphate(1, 2), Sown.Potash(1, 2, 3)]));

    [Fact]
    public void Of_NoProduct_IsACallersMistake() => Assert.Throws<ArgumentException>(() => SeedRowLoad.Of([]));

    [Fact]
    public void OfNutrients_EachNutrient_ComesBack()
    {
        var load = SeedRowLoad.Of([
            PlacedProduct.OfNutrients(
                "blend",
                [
                    (NutrientForm.N, Sown.Pounds(7)),
                    (NutrientForm.P2O5, Sown.Pounds(20)),
                    (NutrientForm.K2O, Sown.Pounds(11)),
                    (NutrientForm.S, Sown.Pounds(3)),
                ],
                NitrogenForm.Other
            ),
        ]);

        Assert.Equal(7, Sown.InPounds(load.Worst(LimitedNutrient.Nitrogen).Load), 1e-12 * 7);
        Assert.Equal(20, Sown.InPounds(load.Worst(LimitedNutrient.Phosphate).Load), 1e-12 * 20);
        Assert.Equal(11, Sown.InPounds(load.Worst(LimitedNutrient.Potash).Load), 1e-12 * 11);
        Assert.Equal(3, Sown.InPounds(load.Worst(LimitedNutrient.Sulfur).Load), 1e-12 * 3);
    }

    [Fact]
    public void OfNutrients_AllZero_IsNothing() =>
        Assert.Equal(
            default,
            SeedRowLoad.Of([PlacedProduct.OfNutrients("none", [(NutrientForm.N, default)], null)]).Worst(LimitedNutrient.AllNutrients).Load
        );
}
