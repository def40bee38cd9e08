using CalibrationApi.Engine.FieldSetUps;
using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.FieldSetUps;

/// <summary>The rate of each meter, and what keeps it from being told.</summary>
public sealed class FieldRatesTests
{
    private static readonly WantedStand Stand = new(new CountPerArea(300), Emergence: 0.85, Survival: null);

    private static readonly MeterToSetUp Seed = Planted.Front with { TargetRate = null, Stand = Stand };

    [Fact]
    public void Of_StatedRate_IsThatRate()
    {
        var rate = FieldRates.Of(Planted.Field(Planted.Front)).Meters[0];

        Assert.Equal((MeterRateOrigin.TargetRate, Planted.Front.TargetRate), (rate.From, rate.Rate));
        Assert.Null(rate.Seeding);
    }

    // 300 x 45 / (0.96 x 0.85 x 0.99) grams on a hectare of 10 000 m2.
    [Fact]
    public void Of_Stand_FollowsFromItsLot()
    {
        var rate = FieldRates.Of(Planted.Field(Seed)).Meters[0];

        Assert.Equal(MeterRateOrigin.Stand, rate.From);
        NearlyEqual.Assert(300 * 45 / (0.96 * 0.85 * 0.99) / 100, rate.Rate.InPerHectare(), 1e-12);
        Assert.Equal(rate.Rate, rate.Seeding!.Rate);
    }

    [Fact]
    public void Of_StandBySurvival_NeedsNoGermination()
    {
        var meter = Seed with
        {
            Stand = new WantedStand(new CountPerArea(300), null, Survival: 0.75),
            Lot = Planted.Lot with { Germination = null, Purity = null },
        };

        NearlyEqual.Assert(300 * 45 / 0.75 / 100, FieldRates.Of(Planted.Field(meter)).Meters[0].Rate.InPerHectare(), 1e-12);
    }

    [Theory]
    [InlineData(true, "thousand-kernel mass")]
    [InlineData(false, "germination")]
    public void Of_StandOfALotThatLacksAValue_IsOpenAtTheLot(bool lacksKernel, string named)
    {
        var lot = lacksKernel ? Planted.Lot with { Kernel = null } : Planted.Lot with { Germination = null };

        var rates = FieldRates.Of(Planted.Field(Planted.Front, Seed with { Lot = lot }));

        Assert.Null(rates.Meters[1].Rate);
        var open = Assert.Single(rates.Open);
        Assert.Equal((OpenKind.MissingValue, "meters/1/lot"), (open.Kind, open.Member));
        Assert.Contains(named, open.Detail.InMetric(), StringComparison.Ordinal);
    }

    // A hundred thousand plants on a square metre are a slip; the field is not set up for 60 t/ha... and more.
    [Fact]
    public void Of_StandThatNoMachineSows_IsRefused()
    {
        var rates = FieldRates.Of(Planted.Field(Seed with { Stand = Stand with { Plants = new CountPerArea(300_000) } }));

        Assert.Null(rates.Meters[0].Rate);
        var open = Assert.Single(rates.Open);
        Assert.Equal((OpenKind.Refused, "meters/0/stand"), (open.Kind, open.Member));
        Assert.Equal(new SetUpPart(SetUpPartKind.SeedingRate, 0), open.About);
    }

    // 69 kg N from a product of 46 %, of which 23 kg are there already.
    [Fact]
    public void Of_NutrientsWanted_GivesTheFertilizerItsRate()
    {
        var rates = FieldRates.Of(Planted.Field(Planted.Front, Planted.Rear).Wanting(69, there: 23));

        Assert.Equal(MeterRateOrigin.Nutrients, rates.Meters[1].From);
        NearlyEqual.Assert(100, rates.Meters[1].Rate.InPerHectare(), 1e-9);
        Assert.Equal(TargetsVerdict.Met, rates.Nutrients!.Verdict);
    }

    [Fact]
    public void Of_NutrientsThatAreThereAlready_LeavesTheMeterOff()
    {
        var rate = FieldRates.Of(Planted.Field(Planted.Front, Planted.Rear).Wanting(20, there: 30)).Meters[1];

        Assert.True(rate.IsOff);
        Assert.False(rate.IsOn);
    }

    // Half the width each, or the whole width each: the field gets 100 kg/ha of both together.
    [Theory]
    [InlineData(4.5, 100)]
    [InlineData(9, 50)]
    public void Of_TwoMetersThatShareAProduct_SplitTheRateByTheirWidths(double coveredWidth, double rate)
    {
        var meter = Planted.Rear with { CoveredWidth = new Length(coveredWidth) };

        var rates = FieldRates.Of(Planted.Field(meter, meter).Wanting(46));

        Assert.All(rates.Meters, one => NearlyEqual.Assert(rate, one.Rate.InPerHectare(), 1e-9));
        NearlyEqual.Assert(100, ((MassPerArea?)Assert.Single(rates.Nutrients!.Products).Rate).InPerHectare(), 1e-9);
    }

    // 46 less half of 20, from a product of 46 %.
    [Fact]
    public void Of_StatedRateOnHalfTheWidth_CountsForHalf()
    {
        var starter = Planted.Front with
        {
            CoveredWidth = new Length(4.5),
            Product = Planted.Fertilizer("starter", NutrientForm.N, 0.20),
            TargetRate = Planted.PerHectare(100),
        };

        NearlyEqual.Assert(36 / 0.46, FieldRates.Of(Planted.Field(starter, Planted.Rear).Wanting(46)).Meters[1].Rate.InPerHectare(), 1e-9);
    }

    [Fact]
    public void Of_FertilizerOfUnknownAnalysis_IsOpenAtTheProduct()
    {
        var rates = FieldRates.Of(
            Planted.Field(Planted.Front, Planted.Rear with { Product = new ProductToMeter("grey", "grey granules") }).Wanting(46)
        );

        Assert.Null(rates.Meters[1].Rate);
        Assert.Equal("meters/1/product", Assert.Single(rates.Open).Member);
    }

    // What such a meter brings is not known, and the others would have to make up for it.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Of_AnotherRateOrMeterThatIsOpen_LeavesTheNutrientsOpen(bool isLeftOut)
    {
        var field = isLeftOut
            ? Planted.Field(Planted.Rear) with
            {
                MetersLeftOut = 1,
            }
            : Planted.Field(Seed with { Lot = null }, Planted.Rear);

        var rates = FieldRates.Of(field.Wanting(46));

        Assert.Null(rates.Nutrients);
        Assert.Null(rates.Meters[^1].Rate);
    }

    // 1.00 EUR for a kilogram of nitrogen in urea, 0.80 EUR in nitrate; but not against crowns.
    [Theory]
    [InlineData("EUR", 0)]
    [InlineData("CZK", 46 / 0.46)]
    public void Of_PricesOfOneCurrency_TakesTheCheaperProduct(string currency, double urea)
    {
        var dear = Planted.Rear with { Product = Planted.Urea with { Price = new ProductPrice(0.46, "EUR") } };
        var cheap = Planted.Rear with
        {
            Product = Planted.Fertilizer("nitrate", NutrientForm.N, 0.33) with { Price = new ProductPrice(0.33 * 0.8, currency) },
        };

        var rates = FieldRates.Of(Planted.Field(dear, cheap).Wanting(46));

        Assert.Equal(urea, rates.Meters[0].Rate.InPerHectare(), 1e-9);
    }
}
