using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.SeedRowLimits;

namespace CalibrationApi.Engine.Tests.SeedRowLimits;

/// <summary>Dry and coarse seedbeds, openers, and the reductions that sources state.</summary>
public sealed class SeedbedConditionTests
{
    // Manitoba halves its urea limits: 15 lb/ac become 7.5.
    [Fact]
    public void DrySeedbed_WhereTheSourceHalves_HalvesAndSaysSo()
    {
        var row = Sown.Wheat(Sown.Urea(10)) with { Moisture = SeedbedMoisture.Dry };
        var limit = row.Limit("MB-SBU", LimitedNutrient.UreaNitrogen);

        Assert.Equal(7.5, Sown.InPounds(limit.Allowed), 1e-9);
        Assert.Equal(new PrintedRate(15), limit.AsPrinted);
        Assert.Equal("MB-DRY", limit.Reduction!.Source.Key);
        Assert.Equal(LimitVerdict.Above, limit.Verdict);
        Assert.Contains(SeedRowCodes.LimitReduced, SeedRowEvaluation.Evaluate(row).Codes());
    }

    [Fact]
    public void DrySeedbed_WhereTheSourcePrintsIt_TakesThatNumber()
    {
        var limit = (
            Sown.Wheat(Sown.Potash(10)) with
            {
                Region = Region.Kansas,
                RowSpacing = Sown.Inches(10),
                Moisture = SeedbedMoisture.Dry,
            }
        ).Limit("KSU-WHEAT", LimitedNutrient.NitrogenPlusPotash);

        Assert.Equal(17, Sown.InPounds(limit.Allowed), 1e-9);
        Assert.Null(limit.Reduction);
    }

    [Fact]
    public void DrySeedbed_WhereTheSourceDoesNotSpeakOfIt_HasNoNumber()
    {
        var limit = (
            Sown.Wheat(Sown.Potash(10)) with
            {
                Crop = Crop.Corn,
                Region = Region.NorthDakota,
                RowSpacing = Sown.Inches(30),
                Moisture = SeedbedMoisture.Dry,
            }
        ).Limit("NDSU-CPR", LimitedNutrient.NitrogenPlusPotash);

        Assert.Null(limit.Allowed);
        Assert.Contains("dry seedbed", limit.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void DoubleDisc_OnLightSoil_GetsNoUreaWhereTheSourceRulesItOut()
    {
        var row = Sown.Wheat(Sown.Urea(5)) with { Soil = SoilTexture.Light, RowSpacing = Sown.Inches(6) };

        Assert.Equal(10, Sown.InPounds((row with { Opener = Opener.Knife }).Limit("MB-SBU", LimitedNutrient.UreaNitrogen).Allowed), 1e-9);
        Assert.Equal(0, Sown.InPounds((row with { Opener = Opener.DoubleDisc }).Limit("MB-SBU", LimitedNutrient.UreaNitrogen).Allowed));
        Assert.Equal(
            20,
            Sown.InPounds(
                (row with { Soil = SoilTexture.Medium, Opener = Opener.DoubleDisc }).Limit("MB-SBU", LimitedNutrient.UreaNitrogen).Allowed
            ),
            1e-9
        );
    }

    // South Dakota's tables were not read, so its reductions are told and never applied.
    [Theory]
    [InlineData(SoilTexture.Light, SeedbedMoisture.Dry, ReductionCause.CoarseAndDrySoil, 0.8)]
    [InlineData(SoilTexture.Light, SeedbedMoisture.Good, ReductionCause.CoarseAndMoistSoil, 0.6)]
    public void CoarseSoil_InSouthDakota_IsToldItsReduction(SoilTexture soil, SeedbedMoisture moisture, ReductionCause cause, double left)
    {
        var result = SeedRowEvaluation.Evaluate(Sown.Wheat() with { Region = Region.SouthDakota, Soil = soil, Moisture = moisture });

        Assert.Equal([cause, ReductionCause.SmallerStandLoss], result.Reductions.Select(reduction => reduction.Cause));
        Assert.Equal(left, result.Reductions[0].Left);
        Assert.DoesNotContain(result.Limits, limit => limit.Reduction is not null);
    }

    [Fact]
    public void SeveralProducts_InSouthDakota_AreToldThatLimitsDoNotAddUp()
    {
        var one = SeedRowEvaluation.Evaluate(Sown.Wheat(Sown.Phosphate(20)) with { Region = Region.SouthDakota });
        var two = SeedRowEvaluation.Evaluate(Sown.Wheat(Sown.Phosphate(20), Sown.Potash(10)) with { Region = Region.SouthDakota });

        Assert.DoesNotContain(one.Reductions, reduction => reduction.Cause == ReductionCause.Blend);
        Assert.Contains(two.Reductions, reduction => reduction is { Cause: ReductionCause.Blend, Left: null });
    }

    [Theory]
    [InlineData(Crop.Canola, Region.SouthDakota)]
    [InlineData(Crop.Pea, Region.Manitoba)]
    public void Reductions_OfOtherCrops_AreNotTold(Crop crop, Region region) =>
        Assert.Empty(
            SeedRowEvaluation.Evaluate(Sown.Wheat() with { Crop = crop, Region = region, Moisture = SeedbedMoisture.Dry }).Reductions
        );

    [Fact]
    public void AmmoniumSulfate_WithCanola_CountsAsUreaWithCerealsNot()
    {
        var sulfate = Sown.Nitrogen("sulfate", 5, NitrogenForm.AmmoniumSulfate);

        Assert.Equal(
            LimitVerdict.Above,
            (Sown.Wheat(sulfate) with { Crop = Crop.Canola }).Limit("MB-SBU2", LimitedNutrient.UreaAndSulfateNitrogen).Verdict
        );
        Assert.Equal(LimitVerdict.NoPublishedLimit, SeedRowEvaluation.Evaluate(Sown.Wheat(sulfate)).Verdict);
    }

    [Fact]
    public void NitrogenForm_NotStated_CountsAsUreaAndIsSaid()
    {
        var result = SeedRowEvaluation.Evaluate(Sown.Wheat(Sown.Nitrogen("blend", 20, null)));

        Assert.Equal(LimitVerdict.Above, result.Verdict);
        Assert.Contains(SeedRowCodes.NitrogenFormNotStated, result.Codes());
        Assert.Contains("blend", Assert.Single(result.Assumptions, one => one.Name == "nitrogenForm").Origin, StringComparison.Ordinal);
    }

    [Fact]
    public void NitrogenForm_OfAProductWithoutNitrogen_NeedNotBeStated() =>
        Assert.Empty(SeedRowEvaluation.Evaluate(Sown.Wheat(Sown.Potash(10))).Assumptions);

    [Theory]
    [InlineData(Opener.Knife, 1.5, false)]
    [InlineData(Opener.Knife, 1.6, true)]
    [InlineData(Opener.DoubleDisc, 2, true)]
    [InlineData(Opener.Hoe, 3, false)]
    [InlineData(Opener.Sweep, 4.4, false)]
    [InlineData(Opener.Sweep, 5, true)]
    public void Spread_FarFromWhatTheSourcePairsWithTheOpener_IsSaid(Opener opener, double spread, bool said) =>
        Assert.Equal(
            said,
            SeedRowEvaluation
                .Evaluate(Sown.Wheat() with { Opener = opener, Spread = Sown.Inches(spread) })
                .Codes()
                .Contains(SeedRowCodes.SpreadUnusual)
        );

    [Fact]
    public void BetweenPrintedOpeners_BothAreNamed()
    {
        var result = SeedRowEvaluation.Evaluate(Sown.Wheat() with { RowSpacing = Sown.Inches(7.5) });

        var finding = Assert.Single(result.Findings, finding => finding.Code == SeedRowCodes.BetweenPublishedLimits);
        var text = Engine.Quantities.DisplayUnits.UnitedStates.Write(finding.Detail);
        Assert.Contains("15 lb/ac at a seedbed utilisation of 11 %", text, StringComparison.Ordinal);
        Assert.Contains("20 lb/ac at a seedbed utilisation of 17 %", text, StringComparison.Ordinal);
    }

    [Fact]
    public void AboveALimit_OfAStatedRegion_Stops()
    {
        Assert.Contains(SeedRowEvaluation.Evaluate(Sown.Wheat(Sown.Urea(20))).Findings, finding =>
            finding.Code == SeedRowCodes.AbovePublishedLimit && finding.Severity == Severity.Stop
        );
        Assert.Contains(SeedRowEvaluation.Evaluate(Sown.Wheat(Sown.Urea(20)) with { Region = null }).Findings, finding =>
            finding.Code == SeedRowCodes.AbovePublishedLimit && finding.Severity == Severity.Warning
        );
    }
}
