using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedingRates;

namespace CalibrationApi.Engine.Tests.SeedingRates;

/// <summary>Unusual is possible: a finding with its published range, never a refusal.</summary>
public sealed class SeedingRateFindingsTests
{
    private static SeedingRateQuestion Question(Crop crop, double grams, Establishment establishment) =>
        new()
        {
            Stand = new(100),
            Kernel = new(grams * 1e-6),
            Establishment = establishment,
            Crop = crop,
        };

    private static FindingCode[] CodesOf(SeedingRateQuestion question) =>
        [.. SeedingRateEvaluation.Evaluate(question).Findings.Select(finding => finding.Code)];

    // Kentucky: 10 000 to 20 000 seeds per pound; Nebraska: up to 23 000; Ireland: up to 46.8 g.
    [Theory]
    [InlineData(Crop.Wheat, 19.6, true)]
    [InlineData(Crop.Wheat, 19.8, false)]
    [InlineData(Crop.Wheat, 46.8, false)]
    [InlineData(Crop.Wheat, 47, true)]
    [InlineData(Crop.Barley, 38, true)]
    [InlineData(Crop.Canola, 2.9, true)]
    [InlineData(Crop.Canola, 7.5, false)]
    [InlineData(Crop.Soybean, 90, true)]
    [InlineData(Crop.Soybean, 260, false)]
    [InlineData(Crop.Lentil, 5000, false)]
    public void KernelMass_OutsideEveryPublishedRange_IsNoted(Crop crop, double grams, bool noted) =>
        Assert.Equal(noted, CodesOf(Question(crop, grams, Establishment.Folded(0.7))).Contains(SeedingRateCodes.KernelMassUnusual));

    [Theory]
    [InlineData(Crop.Wheat, 0.79, true)]
    [InlineData(Crop.Wheat, 0.80, false)]
    [InlineData(Crop.Oat, 0.76, false)]
    [InlineData(Crop.Canola, 0.71, false)]
    [InlineData(Crop.Canola, 0.69, true)]
    public void Germination_BelowTheStandardOfASeedLaw_IsAWarning(Crop crop, double germination, bool warned) =>
        Assert.Equal(
            warned,
            CodesOf(Question(crop, 40, Establishment.Tested(germination, emergence: 0.85))).Contains(SeedingRateCodes.GerminationLow)
        );

    // Barley: North Dakota 80 to 90 % of the viable seeds, Manitoba 85 to 90 %, cereals 5 to 20 points under germination.
    [Theory]
    [InlineData(0.95, 0.85, false)]
    [InlineData(0.95, 0.79, false)]
    [InlineData(0.95, 0.75, true)]
    [InlineData(0.95, 0.97, true)]
    public void Emergence_OfBarley_IsComparedInBothReadings(double germination, double emergence, bool noted) =>
        Assert.Equal(
            noted,
            CodesOf(Question(Crop.Barley, 45, Establishment.Tested(germination, emergence: emergence)))
                .Contains(SeedingRateCodes.EmergenceUnusual)
        );

    // Canola, folded: Manitoba 50 to 75 %, Alberta 20 to 80 % from year to year. A folded figure says nothing about germination, so only
    // folded ranges judge it.
    [Theory]
    [InlineData(Crop.Canola, 0.50, false)]
    [InlineData(Crop.Canola, 0.80, false)]
    [InlineData(Crop.Canola, 0.20, false)]
    [InlineData(Crop.Canola, 0.19, true)]
    [InlineData(Crop.Canola, 0.81, true)]
    [InlineData(Crop.Barley, 0.10, false)]
    public void Survival_Folded_IsComparedWithFoldedRanges(Crop crop, double survival, bool noted) =>
        Assert.Equal(
            noted,
            CodesOf(Question(crop, crop == Crop.Canola ? 4 : 45, Establishment.Folded(survival)))
                .Contains(SeedingRateCodes.EmergenceUnusual)
        );

    // North Dakota: no more than 1.6 million seeds per acre, 395 per m2.
    [Fact]
    public void Seeds_AboveTheMostPublished_AreNoted()
    {
        var question = Question(Crop.Barley, 45, Establishment.Unknown) with { Stand = null };

        Assert.Contains(SeedingRateCodes.SeedsAbovePublished, CodesOf(question with { Seeds = new(396) }));
        Assert.DoesNotContain(SeedingRateCodes.SeedsAbovePublished, CodesOf(question with { Seeds = new(395) }));
    }

    [Fact]
    public void Sample_OfFewSeeds_IsNoted()
    {
        var question = Question(Crop.Pea, 210, Establishment.Folded(0.85));

        Assert.Contains(SeedingRateCodes.SmallSample, CodesOf(question with { SeedsCounted = 99 }));
        Assert.DoesNotContain(SeedingRateCodes.SmallSample, CodesOf(question with { SeedsCounted = 100 }));
    }

    [Fact]
    public void Finding_OfARange_NamesThePublisherAndTheRange()
    {
        var finding = Assert.Single(SeedingRateEvaluation.Evaluate(Question(Crop.Canola, 8, Establishment.Folded(0.6))).Findings);

        Assert.Equal(
            "8 g/1000 is heavier than the range published for canola, 3 g/1000 to 7.5 g/1000 (Alberta Agriculture). Check count, mass and unit; if they are right, use them.",
            DisplayUnits.Metric.Write(finding.Detail)
        );
    }

    [Fact]
    public void Ranges_All_AreInOrderAndNameTheirSource()
    {
        PublishedRange[] ranges =
        [
            .. PublishedSeedRanges.KernelMass,
            .. PublishedSeedRanges.Germination,
            .. PublishedSeedRanges.SeedsPerArea,
            PublishedSeedRanges.GerminationOfOtherCrops,
        ];

        Assert.NotEmpty(ranges);
        Assert.All(ranges, range => Assert.True(range.Low < range.High && range.Source.Length > 0));
        Assert.All(PublishedSeedRanges.Establishment, range =>
            Assert.True(range.Low < range.High && range.High <= 1 && range.Source.Length > 0)
        );
    }

    [Fact]
    public void WithoutACrop_OnlyGerminationIsCompared() =>
        Assert.Equal(
            [SeedingRateCodes.GerminationLow],
            CodesOf(Question(Crop.Wheat, 500, Establishment.Tested(0.5, emergence: 0.1)) with { Crop = null })
        );

    [Theory]
    [InlineData(EstablishmentBasis.OfPureSeeds, 0.2, 0.8)]
    [InlineData(EstablishmentBasis.OfViableSeeds, 0.18, 0.72)]
    [InlineData(EstablishmentBasis.PointsUnderGermination, 0.1, 0.7)]
    public void AsSurvival_EachBasis_IsOfPureSeeds(EstablishmentBasis basis, double low, double high)
    {
        var (lowest, highest) = new EstablishmentRange([Crop.Canola], basis, 0.2, 0.8, "test").AsSurvival(0.9)!.Value;

        Assert.Equal(low, lowest, 1e-12);
        Assert.Equal(high, highest, 1e-12);
    }

    [Fact]
    public void AsSurvival_GerminationUnknown_IsToldForPureSeedsOnly()
    {
        Assert.NotNull(new EstablishmentRange([Crop.Canola], EstablishmentBasis.OfPureSeeds, 0.2, 0.8, "test").AsSurvival(null));
        Assert.Null(new EstablishmentRange([Crop.Canola], EstablishmentBasis.OfViableSeeds, 0.2, 0.8, "test").AsSurvival(null));
    }
}
