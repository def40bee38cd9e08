using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.StandCounts;

namespace CalibrationApi.Engine.Tests.StandCounts;

/// <summary>What a stand count is answered.</summary>
public sealed class StandCountTests
{
    private static readonly StandCountQuestion Question = new()
    {
        Samples = Sampled.Quadrats(0.25, 50, 46, 55, 48, 52, 44),
        SeedsSown = new CountPerArea(300),
        Germination = 0.95,
        TargetStand = new CountPerArea(220),
        MinimumStand = new CountPerArea(150),
    };

    // 295 plants on 1.5 m2.
    [Fact]
    public void Emergence_BothReadings_DifferByGermination()
    {
        var result = StandCountEvaluation.Evaluate(Question);

        NearlyEqual.Assert(295 / 1.5 / 300, result.Survival!.Value);
        NearlyEqual.Assert(295 / 1.5 / (300 * 0.95), result.Emergence!.Value);
        NearlyEqual.Assert(0.95, result.Survival.Value / result.Emergence.Value);
        NearlyEqual.Assert(0.95, result.Survival.Lower / result.Emergence.Lower);
        NearlyEqual.Assert(295 / 1.5 / 220 - 1, result.Deviation!.Value);
    }

    [Fact]
    public void Headline_SaysStandIntervalEmergenceAndTarget()
    {
        var headline = DisplayUnits.Metric.Write(StandCountEvaluation.Evaluate(Question).Headline);

        Assert.Equal(
            "The stand is 196.7 plants/m2, between 174.9 plants/m2 and 220.4 plants/m2 with 95 % confidence, from six counts. Of the viable seeds sown 69 % came up. The stand is 11 % below the target.",
            headline
        );
    }

    [Fact]
    public void Germination_Unknown_LeavesSurvivalOnly()
    {
        var result = StandCountEvaluation.Evaluate(Question with { Germination = null });

        Assert.NotNull(result.Survival);
        Assert.Null(result.Emergence);
        Assert.Contains("Of the seeds sown", DisplayUnits.Metric.Write(result.Headline), StringComparison.Ordinal);
    }

    [Fact]
    public void Assumptions_NothingStated_NameEveryDefault()
    {
        var names = StandCountEvaluation.Evaluate(Question with { PurityAssumed = true }).Assumptions.Select(assumption => assumption.Name);
        Assert.Equal(["wantedPrecision", "sown/uncertainty", "sown/purity"], names);

        var stated = Question with { WantedPrecision = 0.1, SowingUncertainty = 0.01 };
        Assert.Empty(StandCountEvaluation.Evaluate(stated).Assumptions);
    }

    [Theory]
    [InlineData(SeedReading.Survival)]
    [InlineData(SeedReading.Emergence)]
    public void Learned_Prior_LiesBetweenItAndTheCount(SeedReading reading)
    {
        var result = StandCountEvaluation.Evaluate(Question with { Prior = new PriorShare(reading, 0.5, 0.1) });

        var counted = reading == SeedReading.Survival ? result.Survival! : result.Emergence!;
        Assert.InRange(result.Learned!.Value, 0.5, counted.Value);
        Assert.InRange(result.Learned.Weight, 0.5, 1);
    }

    [Fact]
    public void Prior_OfAShareThatCannotBeTold_Throws() =>
        Assert.Throws<ArgumentException>(() =>
            StandCountEvaluation.Evaluate(Question with { Germination = null, Prior = new PriorShare(SeedReading.Emergence, 0.5, 0.1) })
        );

    [Fact]
    public void Findings_EnoughEvenCounts_AreNone() => Assert.Empty(Codes(Question));

    [Fact]
    public void Findings_HoopCalledAQuarter_SayHowMuchItReadsLow()
    {
        var hoops = Question with
        {
            Samples = [.. Enumerable.Repeat(PlantSample.InHoop(50, new Length(0.56)) with { CalledArea = new Area(0.25) }, 6)],
        };

        var finding = Assert.Single(StandCountEvaluation.Evaluate(hoops).Findings, one => one.Code == StandCountCodes.SampleAreaMiscalled);
        Assert.StartsWith(
            "This sample is 1.5 % smaller than the area it is called.",
            DisplayUnits.Metric.Write(finding.Detail),
            StringComparison.Ordinal
        );
        Assert.Equal(Severity.Warning, finding.Severity);
    }

    [Fact]
    public void Findings_HoopOfFiftySixCentimetres_IsNotedByItself()
    {
        var hoops = Question with { Samples = [.. Enumerable.Repeat(PlantSample.InHoop(50, new Length(0.56)), 6)] };

        var finding = Assert.Single(StandCountEvaluation.Evaluate(hoops).Findings, one => one.Code == StandCountCodes.SampleAreaMiscalled);
        Assert.Contains("0.5642 m across", DisplayUnits.Metric.Write(finding.Detail), StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_FrameLargerThanCalled_ReadsHigh()
    {
        var frames = Question with { Samples = [.. Question.Samples.Select(sample => sample with { CalledArea = new Area(0.24) })] };

        var finding = Assert.Single(StandCountEvaluation.Evaluate(frames).Findings);
        Assert.Contains("4.2 % larger", DisplayUnits.Metric.Write(finding.Detail), StringComparison.Ordinal);
    }

    // 50 plants in each hoop, times four, divided by ten.
    [Fact]
    public void Findings_HoopTimesFourDividedByTen_IsTheShortcutToo()
    {
        var hoops = Question with
        {
            Samples = [.. Enumerable.Repeat(PlantSample.InHoop(50, new Length(0.56)), 6)],
            StatedStand = new CountPerArea(UnitTable.Get("/ft2").Canonical(20)),
            StatedPerSquareFoot = true,
        };

        Assert.Contains(SharedCodes.DivideByTen, Codes(hoops));
    }

    // 100 plants/m2 called 10 plants/ft2, as in a published example.
    [Theory]
    [InlineData(19.6667, "divide-by-ten")]
    [InlineData(18.2709, null)]
    [InlineData(21, "stated-stand-differs")]
    public void Findings_StatedStandPerSquareFoot_IsCompared(double perSquareFoot, string? code)
    {
        var stated = Question with
        {
            StatedStand = new CountPerArea(UnitTable.Get("/ft2").Canonical(perSquareFoot)),
            StatedPerSquareFoot = true,
        };

        Assert.Equal(code is null ? [] : [code], Codes(stated).Select(one => one.Word));
        // The shortcut makes plants per square foot; in plants per m2 as much is off for another reason.
        Assert.DoesNotContain(SharedCodes.DivideByTen, Codes(stated with { StatedPerSquareFoot = false }));
    }

    [Fact]
    public void Findings_CountsInARow_ClumpedAndFew()
    {
        Assert.Equal([SharedCodes.SingleReading], Codes(Question with { Samples = Sampled.Quadrats(0.25, 50), SeedsSown = null }));
        Assert.Contains(StandCountCodes.FewCounts, Codes(Question with { Samples = Sampled.Quadrats(0.25, 50, 47, 52) }));
        Assert.Contains(StandCountCodes.StronglyClumped, Codes(Question with { Samples = Sampled.Quadrats(0.25, 90, 20, 60, 10, 70, 44) }));
        Assert.DoesNotContain(
            StandCountCodes.MoreCountsNeeded,
            Codes(Question with { Samples = Sampled.Quadrats(0.25, 90, 20, 60, 10, 70, 44) })
        );
        Assert.Contains(
            StandCountCodes.MoreCountsNeeded,
            Codes(Question with { Samples = Sampled.Quadrats(0.25, 20, 24, 22, 25, 18, 21), WantedPrecision = 0.05 })
        );
        Assert.Contains(
            StandCountCodes.CountsInSameRow,
            Codes(Question with { Samples = [.. Question.Samples.Select(sample => sample with { Row = "4" })] })
        );
        Assert.DoesNotContain(
            StandCountCodes.CountsInSameRow,
            Codes(Question with { Samples = [.. Question.Samples.Select((sample, i) => sample with { Row = $"{i}" })] })
        );
        Assert.Contains(StandCountCodes.NoPlantsFound, Codes(Question with { Samples = Sampled.Quadrats(0.25, 0, 0, 0, 0, 0, 0) }));
    }

    [Theory]
    [InlineData(200, "Chance can do that")]
    [InlineData(120, "too sure")]
    public void Findings_MorePlantsThanSeeds_SayWhetherChanceDoesIt(double seeds, string part)
    {
        var finding = Assert.Single(StandCountEvaluation.Evaluate(Question with { SeedsSown = new CountPerArea(seeds) }).Findings, one =>
            one.Code == StandCountCodes.MorePlantsThanSeeds
        );

        Assert.Contains(part, DisplayUnits.Metric.Write(finding.Detail), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(150, null)]
    [InlineData(185, Severity.Note)]
    [InlineData(230, Severity.Warning)]
    public void Findings_MinimumStand_WeighsItsProbability(double minimum, Severity? severity)
    {
        var found = StandCountEvaluation
            .Evaluate(Question with { MinimumStand = new CountPerArea(minimum) })
            .Findings.Where(one => one.Code == StandCountCodes.StandBelowMinimum)
            .ToArray();

        Assert.Equal(severity, found.SingleOrDefault()?.Severity);
    }

    [Fact]
    public void Findings_StrongPrior_SayThatItCarries() =>
        Assert.Contains(
            StandCountCodes.PriorOutweighsCounts,
            Codes(Question with { Prior = new PriorShare(SeedReading.Survival, 0.6, 0.01) })
        );

    [Fact]
    public void Findings_CountsFarFromThePrior_AskForTheCause()
    {
        var none = Question with
        {
            Samples = Sampled.Quadrats(0.25, 0, 0, 0, 0, 0),
            Prior = new PriorShare(SeedReading.Survival, 0.8, 0.08),
        };

        Assert.Contains(StandCountCodes.CountsAtOddsWithPrior, Codes(none));
        Assert.DoesNotContain(
            StandCountCodes.CountsAtOddsWithPrior,
            Codes(Question with { Prior = new PriorShare(SeedReading.Survival, 0.75, 0.08) })
        );
    }

    [Theory]
    [InlineData(true, 0, 90, 2, 0, 60, 0)]
    [InlineData(false, 90, 20, 60, 10, 70, 44)]
    public void Findings_VeryPatchyStand_SaysThatTheIntervalIsTooNarrow(bool said, params int[] plants)
    {
        var finding = Assert.Single(
            StandCountEvaluation.Evaluate(Question with { Samples = Sampled.Quadrats(0.25, plants) }).Findings,
            one => one.Code == StandCountCodes.StronglyClumped
        );

        Assert.Equal(said, DisplayUnits.Metric.Write(finding.Detail).EndsWith("the interval is too narrow.", StringComparison.Ordinal));
    }

    // A target says nothing where nothing came up, and an upper limit is no certainty.
    [Fact]
    public void Headline_NoPlants_SaysHowSure()
    {
        var none = StandCountEvaluation.Evaluate(
            Question with
            {
                Samples = Sampled.Quadrats(0.2, 0, 0, 0, 0, 0),
                TargetStand = new(240),
                MinimumStand = new(100),
            }
        );

        Assert.Equal(
            "No plant was found in five counts: with 95 % confidence there are fewer than 3.689 plants/m2.",
            DisplayUnits.Metric.Write(none.Headline)
        );
        var below = Assert.Single(none.Findings, one => one.Code == StandCountCodes.StandBelowMinimum);
        Assert.Contains("with a probability of over 99 %", DisplayUnits.Metric.Write(below.Detail), StringComparison.Ordinal);
    }

    private static FindingCode[] Codes(StandCountQuestion question) =>
        [.. StandCountEvaluation.Evaluate(question).Findings.Select(finding => finding.Code)];
}
