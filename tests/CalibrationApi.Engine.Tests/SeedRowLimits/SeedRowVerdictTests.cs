using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedRowLimits;

namespace CalibrationApi.Engine.Tests.SeedRowLimits;

/// <summary>Which limits are looked at, what they say, and what leads.</summary>
public sealed class SeedRowVerdictTests
{
    public static TheoryData<Crop> Crops => [.. Enum.GetValues<Crop>()];

    // 15 lb/ac are printed for 1 in spread in rows of 9 in.
    [Theory]
    [InlineData(14.9, LimitVerdict.Within)]
    [InlineData(15, LimitVerdict.Within)]
    [InlineData(15.1, LimitVerdict.Above)]
    public void Verdict_LoadAgainstThePrintedLimit_IsWithinUpToIt(double pounds, LimitVerdict verdict)
    {
        var result = SeedRowEvaluation.Evaluate(Sown.Wheat(Sown.Urea(pounds)));

        Assert.Equal(verdict, result.Verdict);
        Assert.Equal(15 - pounds, Sown.InPounds(result.Limits[0].Margin), 1e-9);
    }

    [Fact]
    public void Verdict_TwoProductsEachWithin_AreAboveTogether()
    {
        Assert.Equal(LimitVerdict.Within, SeedRowEvaluation.Evaluate(Sown.Wheat(Sown.Urea(10))).Verdict);
        Assert.Equal(
            LimitVerdict.Above,
            SeedRowEvaluation.Evaluate(Sown.Wheat(Sown.Urea(10), Sown.Nitrogen("solution", 8, NitrogenForm.UreaAmmoniumNitrate))).Verdict
        );
    }

    [Fact]
    public void Verdict_OneZoneAbove_CountsAndIsNamed()
    {
        var urea = new PlacedProduct
        {
            Name = "urea",
            Analysis = new NutrientAnalysis(N: 0.46),
            Rates = [Sown.Pounds(10), Sown.Pounds(40), Sown.Pounds(20)],
            NitrogenForm = NitrogenForm.Urea,
        };

        var result = SeedRowEvaluation.Evaluate(Sown.Wheat(urea));

        Assert.Equal(LimitVerdict.Above, result.Verdict);
        Assert.Equal(2, result.Limits[0].Zone);
        Assert.Contains("18.4 lb/ac of urea nitrogen with the seed in zone 2 against 15 lb/ac", result.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void Headline_Verdict_NamesCropSoilPlaceAndSource()
    {
        var within = SeedRowEvaluation.Evaluate(Sown.Wheat()).Text();
        var above = SeedRowEvaluation.Evaluate(Sown.Wheat(Sown.Urea(20))).Text();

        Assert.StartsWith(
            "Not above the published limit for wheat on medium soil, moist seedbed, in Manitoba (Manitoba Agriculture, year not shown)",
            within,
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "Above the published limit for wheat on medium soil, moist seedbed, in Manitoba (Manitoba Agriculture, year not shown)",
            above,
            StringComparison.Ordinal
        );
        Assert.Contains("Place at least 5 lb/ac less of it with the seed", above, StringComparison.Ordinal);
    }

    // What a source does not tell apart is not said of its limit.
    [Theory]
    [InlineData(Crop.Wheat, Region.Kansas, SoilTexture.Light, SeedbedMoisture.Good, "for wheat on light soil in Kansas (")]
    [InlineData(Crop.Wheat, Region.Kansas, SoilTexture.Heavy, SeedbedMoisture.Dry, "for wheat in a dry seedbed in Kansas (")]
    [InlineData(Crop.Corn, Region.NorthDakota, SoilTexture.Heavy, SeedbedMoisture.Good, "for corn in a moist seedbed in North Dakota (")]
    [InlineData(Crop.Pea, Region.Manitoba, SoilTexture.Heavy, SeedbedMoisture.Good, "for peas in Manitoba (")]
    public void Headline_Conditions_AreThoseThatTheSourceTellsApart(
        Crop crop,
        Region region,
        SoilTexture soil,
        SeedbedMoisture moisture,
        string part
    )
    {
        var row = Sown.Wheat(Sown.Potash(2)) with
        {
            Crop = crop,
            Region = region,
            Soil = soil,
            Moisture = moisture,
            RowSpacing = Sown.Inches(crop == Crop.Corn ? 30 : 10),
        };

        Assert.Contains(part, SeedRowEvaluation.Evaluate(row).Text(), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Crops))]
    public void Answer_AnyCropAndPlace_NeverSaysSafe(Crop crop)
    {
        foreach (var region in (Region?[])[null, .. Enum.GetValues<Region>().Select(region => (Region?)region)])
        {
            var result = SeedRowEvaluation.Evaluate(
                Sown.Wheat(Sown.Urea(1), Sown.Phosphate(10), Sown.Potash(5)) with
                {
                    Crop = crop,
                    Region = region,
                }
            );

            string[] sentences =
            [
                result.Text(),
                .. result.Findings.Select(finding => DisplayUnits.Metric.Write(finding.Detail)),
                .. result.Limits.Select(limit => limit.Limit.Conditions + limit.Reason),
                .. result.Cautions.Select(caution => DisplayUnits.Metric.Write(caution.Detail)),
            ];
            Assert.All(sentences, sentence => Assert.DoesNotContain("safe", sentence, StringComparison.OrdinalIgnoreCase));
            Assert.Equal(
                [SeedRowCodes.LocalGuidanceFirst, SeedRowCodes.LimitIsNoPromise, SeedRowCodes.SpreadToBeMeasured],
                result.Cautions.Select(caution => caution.Code)
            );
        }
    }

    [Theory]
    [MemberData(nameof(Crops))]
    public void Limits_AnyCropAndPlace_AreOfThemOnly(Crop crop)
    {
        foreach (var region in Enum.GetValues<Region>())
        {
            var result = SeedRowEvaluation.Evaluate(Sown.Wheat() with { Crop = crop, Region = region });

            Assert.All(result.Limits, limit =>
                Assert.True(limit.Limit.Crops.Contains(crop) && limit.Limit.Source.Regions.Contains(region))
            );
            Assert.All(result.Reductions, reduction => Assert.Contains(region, reduction.Source.Regions));
        }
    }

    [Theory]
    [InlineData(Crop.Other, Region.Manitoba)]
    [InlineData(Crop.Sunflower, Region.Manitoba)]
    [InlineData(Crop.Wheat, Region.Elsewhere)]
    [InlineData(Crop.Wheat, Region.Alberta)]
    [InlineData(Crop.Oat, Region.SouthDakota)]
    public void Verdict_NothingHeldForIt_GivesNoNumber(Crop crop, Region region)
    {
        var result = SeedRowEvaluation.Evaluate(Sown.Wheat(Sown.Urea(1)) with { Crop = crop, Region = region });

        Assert.Equal(LimitVerdict.NoPublishedLimit, result.Verdict);
        Assert.DoesNotContain(result.Limits, limit => limit.Allowed is not null);
        Assert.StartsWith("No published limit is held", result.Text(), StringComparison.Ordinal);
        Assert.Contains("Before you place fertilizer with the seed, ask ", result.Text(), StringComparison.Ordinal);
        Assert.Contains(SeedRowCodes.NoPublishedLimit, result.Codes());
    }

    // Manitoba Agriculture, safe rates of phosphorus, table 1: 50 lb/ac of P2O5 as monoammonium phosphate in rows of 6 to 7 in.
    [Theory]
    [InlineData(Crop.Wheat, 96, LimitVerdict.Within)]
    [InlineData(Crop.Oat, 97, LimitVerdict.Above)]
    [InlineData(Crop.Canola, 39, LimitVerdict.Above)]
    public void Verdict_AmmoniumPhosphateInNarrowRows_HasItsLimitWithItsNitrogen(Crop crop, double pounds, LimitVerdict verdict)
    {
        var row = Sown.Wheat(Sown.Phosphate(pounds)) with { Crop = crop, RowSpacing = Sown.Inches(6), Sources = ["mb-safe-p"] };
        var result = SeedRowEvaluation.Evaluate(row);

        Assert.Equal(verdict, result.Verdict);
        Assert.DoesNotContain(SeedRowCodes.NutrientWithoutLimit, result.Codes());
        Assert.Equal(LimitVerdict.NoPublishedLimit, SeedRowEvaluation.Evaluate(row with { RowSpacing = Sown.Inches(9) }).Verdict);
    }

    // Manitoba limits urea only: potash alone is not judged by it, whatever the amount.
    [Fact]
    public void Verdict_OnlyWhatNoLimitCounts_IsNoVerdict()
    {
        var result = SeedRowEvaluation.Evaluate(Sown.Wheat(Sown.Potash(200)));

        Assert.Equal(LimitVerdict.NoPublishedLimit, result.Verdict);
        Assert.Contains(SeedRowCodes.NoPublishedLimit, result.Codes());
    }

    [Fact]
    public void Verdict_PartThatNoLimitCounts_IsNamed()
    {
        var result = SeedRowEvaluation.Evaluate(Sown.Wheat(Sown.Urea(10), Sown.Phosphate(40), Sown.Potash(40)));

        Assert.Equal(LimitVerdict.Within, result.Verdict);
        Assert.Contains(SeedRowCodes.NutrientWithoutLimit, result.Codes());
        Assert.EndsWith(
            "No limit held here judges the nitrogen of ammonium phosphate, P2O5 and K2O.",
            result.Text(),
            StringComparison.Ordinal
        );
    }

    // Canola on medium soil, 1 in spread in rows of 9 in: Manitoba prints 0, Saskatchewan 10 lb/ac.
    [Fact]
    public void Limits_SourcesThatDisagree_AreAllShownAndTheStricterLeads()
    {
        var result = SeedRowEvaluation.Evaluate(Sown.Wheat(Sown.Urea(8)) with { Crop = Crop.Canola, Region = null });

        Assert.Contains(SeedRowCodes.SourcesDisagree, result.Codes());
        Assert.Contains(SeedRowCodes.RegionNotStated, result.Codes());
        Assert.Equal("MB-SBU2", result.Limits[0].Limit.Source.Key);
        Assert.Equal(LimitVerdict.Above, result.Limits[0].Verdict);
        Assert.Equal(LimitVerdict.Within, result.Limits.Single(limit => limit.Limit.Source.Key == "SK-CANOLA").Verdict);
        Assert.Contains("in Manitoba (", result.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void Limits_CornInKansasAndNorthDakota_AreBothShown()
    {
        var result = SeedRowEvaluation.Evaluate(
            Sown.Wheat(Sown.Potash(15)) with
            {
                Crop = Crop.Corn,
                Region = null,
                RowSpacing = Sown.Inches(30),
            }
        );

        var both = result.Limits.Where(limit => limit.Limit.Nutrient == LimitedNutrient.NitrogenPlusPotash).ToArray();
        Assert.Equal(["KSU-CORN", "NDSU-CPR"], both.Select(limit => limit.Limit.Source.Key));
        Assert.Equal([8.0, 10.0], both.Select(limit => Math.Round(Sown.InPounds(limit.Allowed), 9)));
        Assert.Equal([LimitVerdict.Above, LimitVerdict.Within], both.Select(limit => limit.Verdict));
        Assert.Contains(SeedRowCodes.SourcesDisagree, result.Codes());
    }

    [Fact]
    public void Sources_Chosen_AreTheOnlyOnesLookedAt()
    {
        var result = SeedRowEvaluation.Evaluate(Sown.Wheat() with { Region = null, Sources = ["ksu-wheat"] });

        Assert.All(result.Limits, limit => Assert.Equal("KSU-WHEAT", limit.Limit.Source.Key));
        Assert.Empty(result.Reductions);
    }

    [Fact]
    public void LocalLimit_Stricter_Leads()
    {
        var result = SeedRowEvaluation.Evaluate(
            Sown.Wheat() with
            {
                LocalLimits = [new LocalLimit("adviser's sheet", LimitedNutrient.Nitrogen, new PrintedRate(6))],
            }
        );

        Assert.Equal(LimitSource.StatedKey, result.Limits[0].Limit.Source.Key);
        Assert.StartsWith("Above the limit that you state for wheat from adviser's sheet", result.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void LocalLimit_WhereNothingIsHeld_IsJudged()
    {
        var result = SeedRowEvaluation.Evaluate(
            Sown.Wheat() with
            {
                Region = Region.Elsewhere,
                LocalLimits = [new LocalLimit("sheet", LimitedNutrient.Nitrogen, new PrintedRate(12, "kg/ha"))],
            }
        );

        Assert.Equal(LimitVerdict.Within, result.Verdict);
        Assert.Equal(new PrintedRate(12, "kg/ha"), Assert.Single(result.Limits).AsPrinted);
        Assert.DoesNotContain(SeedRowCodes.RegionNotStated, result.Codes());
    }

    [Theory]
    [InlineData(Crop.Wheat, Region.Manitoba)]
    [InlineData(Crop.Other, null)]
    public void Evaluate_NothingPlaced_IsWithinAndCallsForNobody(Crop crop, Region? region)
    {
        var result = SeedRowEvaluation.Evaluate(Sown.Wheat(Sown.Phosphate(0)) with { Crop = crop, Region = region });

        Assert.Equal(LimitVerdict.Within, result.Verdict);
        Assert.StartsWith("None of these products lays a nutrient with the seed", result.Text(), StringComparison.Ordinal);
        Assert.Empty(result.Findings);
    }

    [Fact]
    public void Evaluate_LimitOfNothing_SaysThatNoneIsAllowed()
    {
        var result = SeedRowEvaluation.Evaluate(Sown.Wheat(Sown.Urea(10)) with { Region = Region.Kansas });

        Assert.EndsWith(
            "10 lb/ac of urea nitrogen with the seed, where none is allowed. Put it away from the seed row.",
            result.Text(),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "allows no urea nitrogen with the seed of wheat here; 10 lb/ac would lie there.",
            DisplayUnits.UnitedStates.Write(result.Findings[0].Detail),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Headline_RegionNotStated_SaysThatTheLimitMayBeOfAnotherPlace()
    {
        var row = Sown.Wheat(Sown.Urea(10));

        Assert.EndsWith(
            "You name no region, so this may not be the limit for yours.",
            SeedRowEvaluation.Evaluate(row with { Region = null }).Text(),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("You name no region", SeedRowEvaluation.Evaluate(row).Text(), StringComparison.Ordinal);
    }

    // Ammonium sulfate is no urea: the source of urea has nothing to say of it, and so nothing to disagree about.
    [Fact]
    public void Evaluate_SourcesOfWhatIsNotPlaced_DoNotDisagree()
    {
        var sulfate = SeedRowEvaluation.Evaluate(
            Sown.Wheat(Sown.Nitrogen("sulfate", 4, NitrogenForm.AmmoniumSulfate)) with
            {
                Crop = Crop.Canola,
                Region = Region.Saskatchewan,
            }
        );
        var urea = SeedRowEvaluation.Evaluate(Sown.Wheat(Sown.Urea(4)) with { Crop = Crop.Canola, Region = Region.Saskatchewan });

        Assert.DoesNotContain(SeedRowCodes.SourcesDisagree, sulfate.Codes());
        Assert.Contains(SeedRowCodes.SourcesDisagree, urea.Codes());
    }

    // CCC-20 wants all but phosphate away from the seed: the nitrogen that comes with ammonium phosphate is let be. KSU-WHEAT limits
    // fertilizer as a whole by nitrogen and potash. MB-SBU speaks of urea alone.
    [Theory]
    [InlineData(Crop.Canola, Region.Saskatchewan, false)]
    [InlineData(Crop.Wheat, Region.Kansas, false)]
    [InlineData(Crop.Wheat, Region.Manitoba, true)]
    public void Evaluate_AmmoniumPhosphate_WarnsOnlyWhereNoSourceSpeaksOfIt(Crop crop, Region region, bool warns)
    {
        var result = SeedRowEvaluation.Evaluate(
            Sown.Wheat(Sown.Phosphate(20), Sown.Urea(region == Region.Manitoba ? 5 : 0)) with
            {
                Crop = crop,
                Region = region,
                RowSpacing = Sown.Inches(8),
            }
        );

        Assert.Equal(LimitVerdict.Within, result.Verdict);
        Assert.Equal(warns, result.Codes().Contains(SeedRowCodes.NutrientWithoutLimit));
    }

    [Fact]
    public void PublishedLimits_EachSource_StandsInTheListOfSources()
    {
        var sources = File.ReadAllText(Path.Combine(Repository(), "src", "CalibrationApi.Engine", "SOURCES.md"));

        Assert.True(PublishedLimits.Keys.Count >= 15);
        Assert.All(PublishedLimits.Keys, key => Assert.Contains($"| {key} |", sources, StringComparison.OrdinalIgnoreCase));
        Assert.All(PublishedLimits.All, limit => Assert.False(string.IsNullOrWhiteSpace(limit.Conditions) || limit.Source.Address is null));
    }

    private static string Repository()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "CalibrationApi.sln")))
            folder = folder.Parent!;
        return folder.FullName;
    }
}
