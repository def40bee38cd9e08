using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.SeedRowLimits;

namespace CalibrationApi.Engine.Tests.SeedRowLimits;

/// <summary>The linear stand-loss model beside the tables: T = C F R MX / (30 S).</summary>
public sealed class StandLossTests
{
    // Corn in rows of 30 in with a furrow of 1 in: 0.965 % for each lb/ac of urea.
    private static SeedRowQuestion Corn(params PlacedProduct[] products) =>
        Sown.Wheat(products) with
        {
            Crop = Crop.Corn,
            Region = Region.SouthDakota,
            RowSpacing = Sown.Inches(30),
        };

    private static PlacedProduct Urea(double pounds, NitrogenForm? form = NitrogenForm.Urea) =>
        new()
        {
            Name = "urea",
            Analysis = new NutrientAnalysis(N: 0.46),
            Rates = [Sown.Pounds(pounds)],
            NitrogenForm = form,
        };

    [Theory]
    [InlineData(10, 0.0965, LimitVerdict.Within)]
    [InlineData(11, 0.10615, LimitVerdict.Above)]
    public void Verdict_SouthDakota_IsThatOfTheExpectedLoss(double pounds, double expected, LimitVerdict verdict)
    {
        var result = SeedRowEvaluation.Evaluate(Corn(Urea(pounds)));

        NearlyEqual.Assert(expected, result.StandLoss!.Expected!.Value, 1e-12);
        Assert.Equal(verdict, result.Verdict);
        Assert.Equal(
            verdict == LimitVerdict.Above,
            result.Findings.Any(finding => finding.Code == SeedRowCodes.StandLossAboveAccepted && finding.Severity == Severity.Stop)
        );
        Assert.Contains("stand-loss model of South Dakota State University", result.Text(), StringComparison.Ordinal);
        Assert.Equal(0.10, Assert.Single(result.Assumptions, one => one.Name == "acceptableStandLoss").Value!.Canonical);
    }

    // Their page: half the accepted loss takes half the rate; wide furrows and narrow rows stand more.
    [Fact]
    public void Most_OfOneProduct_GoesWithLossAndFurrowAndAgainstRowSpacing()
    {
        double Most(SeedRowQuestion row) => Sown.InPounds(Assert.Single(SeedRowEvaluation.Evaluate(row).StandLoss!.Products).Most);
        var row = Corn(Urea(5)) with { AcceptableStandLoss = 0.10 };

        NearlyEqual.Assert(10 / 0.965, Most(row), 1e-12);
        NearlyEqual.Assert(5 / 0.965, Most(row with { AcceptableStandLoss = 0.05 }), 1e-12);
        NearlyEqual.Assert(20 / 0.965, Most(row with { Spread = Sown.Inches(2) }), 1e-12);
        NearlyEqual.Assert(40 / 0.965, Most(row with { RowSpacing = Sown.Inches(7.5) }), 1e-12);
    }

    // Coarse soil in a moist seedbed takes 40 % off; what they take as a factor for a dry seedbed was not read.
    [Fact]
    public void Most_CoarseOrDrySoil_IsSixTenthsOrNotTold()
    {
        var fine = SeedRowEvaluation.Evaluate(Corn(Urea(5))).StandLoss!;
        var coarse = SeedRowEvaluation.Evaluate(Corn(Urea(5)) with { Soil = SoilTexture.Light }).StandLoss!;
        var dry = SeedRowEvaluation.Evaluate(Corn(Urea(5)) with { Moisture = SeedbedMoisture.Dry });

        NearlyEqual.Assert(0.6 * Sown.InPounds(fine.Products[0].Most), Sown.InPounds(coarse.Products[0].Most), 1e-12);
        Assert.Equal(ReductionCause.CoarseAndMoistSoil, coarse.Reduction!.Cause);
        Assert.Null(dry.StandLoss!.Expected);
        Assert.Contains("dry seedbed", dry.StandLoss.Reason, StringComparison.Ordinal);
        Assert.Equal(LimitVerdict.NoPublishedLimit, dry.Verdict);
    }

    [Fact]
    public void Expected_SeveralProducts_AddsUpAndSaysWhatHasNoSlope()
    {
        var nitrate = new PlacedProduct
        {
            Name = "nitrate",
            Analysis = new NutrientAnalysis(N: 0.34),
            Rates = [Sown.Pounds(10)],
            NitrogenForm = NitrogenForm.AmmoniumNitrate,
        };
        var both = SeedRowEvaluation.Evaluate(Corn(Urea(5), nitrate)).StandLoss!;
        var withPotash = SeedRowEvaluation.Evaluate(Corn(Urea(5), Sown.Potash(5)));

        NearlyEqual.Assert((5 * 0.965 + 10 * 0.215) / 100, both.Expected!.Value, 1e-12);
        Assert.True(both.IsWhole);
        Assert.False(withPotash.StandLoss!.IsWhole);
        Assert.Null(withPotash.StandLoss.Products[1].Material);
        Assert.Equal(LimitVerdict.NoPublishedLimit, withPotash.Verdict);
    }

    // Urea with an inhibitor has a slope of its own; the form that is not stated counts as urea; nitrogen stated alone is so much more
    // urea.
    [Fact]
    public void Expected_FormOfNitrogen_ChoosesTheSlope()
    {
        double Loss(PlacedProduct product) => SeedRowEvaluation.Evaluate(Corn(product)).StandLoss!.Expected!.Value;

        NearlyEqual.Assert(0.0434, Loss(Urea(10, NitrogenForm.UreaWithInhibitor)), 1e-12);
        NearlyEqual.Assert(0.0965, Loss(Urea(10, null)), 1e-12);
        NearlyEqual.Assert(0.0965, Loss(Sown.Urea(4.6)), 1e-12);
        Assert.Null(SeedRowEvaluation.Evaluate(Corn(Urea(10) with { Analysis = new NutrientAnalysis(N: 0.30) })).StandLoss!.Expected);
    }

    // Hard red spring wheat 1.436, durum 1.468; the question says only wheat.
    [Fact]
    public void Expected_Wheat_TakesTheSteeperOfTwoKinds() =>
        NearlyEqual.Assert(
            0.01468 * 10 * 9 / 30,
            SeedRowEvaluation.Evaluate(Sown.Wheat(Urea(10)) with { Region = Region.SouthDakota }).StandLoss!.Expected!.Value,
            1e-12
        );

    [Fact]
    public void Expected_ZonesOfOneField_AreTakenWhereItIsLargest()
    {
        var loss = SeedRowEvaluation.Evaluate(Corn(Urea(0) with { Rates = [Sown.Pounds(2), Sown.Pounds(6), Sown.Pounds(4)] })).StandLoss!;

        Assert.Equal(2, loss.Zone);
        NearlyEqual.Assert(6 * 0.00965, loss.Expected!.Value, 1e-12);
    }

    // 30 lb of urea stay under Manitoba's 15 lb of nitrogen; the model of another place is shown and judges nothing.
    [Theory]
    [InlineData(Region.Manitoba)]
    [InlineData(null)]
    public void Verdict_ElsewhereThanSouthDakota_IsThatOfTheTables(Region? region)
    {
        var result = SeedRowEvaluation.Evaluate(Sown.Wheat(Urea(30)) with { Region = region, Sources = ["mb-sbu", "sdsu-model"] });

        Assert.True(result.StandLoss!.Expected > result.StandLoss.Accepted);
        Assert.False(result.StandLoss.IsJudged);
        Assert.Equal(LimitVerdict.Within, result.Verdict);
        Assert.DoesNotContain(SeedRowCodes.StandLossAboveAccepted, result.Codes());
    }

    [Fact]
    public void StandLoss_CropWithoutSlopesOrOtherSources_IsNotThere()
    {
        Assert.Null(SeedRowEvaluation.Evaluate(Corn(Urea(5)) with { Crop = Crop.Lentil }).StandLoss);
        Assert.Null(SeedRowEvaluation.Evaluate(Corn(Urea(5)) with { Sources = ["ndsu-cpr"] }).StandLoss);
    }
}
