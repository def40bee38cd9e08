using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedingRates;
using CalibrationApi.Engine.StandRisks;
using MathNet.Numerics.Distributions;

namespace CalibrationApi.Engine.Tests.StandRisks;

/// <summary>Rates for a minimum stand, their probability and their cost.</summary>
public sealed class StandRiskTests
{
    private static readonly StandRiskQuestion Question = new()
    {
        MinimumStand = new CountPerArea(200),
        Probability = 0.9,
        Share = new ExpectedShare(0.8, 0.08),
        Germination = 0.95,
        SeedsTested = 400,
        KernelMass = new MassPerThousand(40e-6),
        KernelMassUncertainty = 0.02,
        Purity = 0.99,
        MeteringUncertainty = 0.03,
        PricePerKilogram = 0.6,
        Area = new Area(500_000),
    };

    [Fact]
    public void Needed_Rate_ReachesTheMinimumWithTheWantedProbability()
    {
        var result = StandRiskEvaluation.Evaluate(Question);

        Assert.Equal(0.9, result.Needed!.ProbabilityReached, 1e-9);
        NearlyEqual.Assert(200, result.Needed.StandReached.PerSquareMetre, 1e-12);
        var back = StandRiskEvaluation.Evaluate(Question with { SeedsSown = result.Needed.Seeds });
        Assert.Equal(0.9, back.Given!.ProbabilityReached, 1e-9);
    }

    // D / (G E) and D TKM / (G E P), as for any seeding rate.
    [Fact]
    public void AtMean_IsTheUsualSeedingRate()
    {
        var result = StandRiskEvaluation.Evaluate(Question);

        NearlyEqual.Assert(200 / (0.95 * 0.8), result.AtMean.Seeds.PerSquareMetre);
        NearlyEqual.Assert(200 / (0.95 * 0.8) * 40e-6 / 0.99, result.AtMean.Mass!.Value.KilogramsPerSquareMetre);
        NearlyEqual.Assert(200, result.AtMean.ExpectedStand.PerSquareMetre);
        Assert.InRange(result.AtMean.ProbabilityReached, 0.45, 0.55);
    }

    [Fact]
    public void Margin_CostsWhatItsSeedCosts()
    {
        var result = StandRiskEvaluation.Evaluate(Question);

        var extra = result.Needed!.Mass!.Value.KilogramsPerSquareMetre - result.AtMean.Mass!.Value.KilogramsPerSquareMetre;
        NearlyEqual.Assert(result.Needed.Seeds.PerSquareMetre / result.AtMean.Seeds.PerSquareMetre - 1, result.Margin!.Relative);
        NearlyEqual.Assert(extra * 0.6, result.Margin.CostPerSquareMetre!.Value);
        NearlyEqual.Assert(extra * 0.6 * 500_000, result.Margin.Cost!.Value);
    }

    // With every spread zero the rate at the mean always does.
    [Fact]
    public void Margin_NothingUncertain_IsNone()
    {
        var sure = Question with { Share = new ExpectedShare(0.8, 0), Germination = 1, KernelMassUncertainty = 0, MeteringUncertainty = 0 };

        Assert.Equal(
            Math.Exp(Normal.InvCDF(0, 1, 0.9) * Math.Sqrt(399.0 / 400 / 400 / 400)) - 1,
            StandRiskEvaluation.Evaluate(sure).Margin!.Relative,
            1e-12
        );
        Assert.Equal(0, StandRiskEvaluation.Evaluate(sure with { Germination = null }).Margin!.Relative, 1e-12);
    }

    // With every spread zero the usual seeding rate is the answer for any probability, and it is reached for certain.
    [Theory]
    [InlineData(0.31, 200)]
    [InlineData(0.8, 200)]
    [InlineData(0.9, 53.3)]
    [InlineData(1.0, 137)]
    public void Needed_NothingUncertain_IsTheSeedingRateAndIsReached(double share, double minimum)
    {
        var sure = Question with
        {
            MinimumStand = new(minimum),
            Share = new ExpectedShare(share, 0),
            Germination = null,
            SeedsTested = null,
            KernelMassUncertainty = 0,
            MeteringUncertainty = 0,
        };
        var usual = SeedingRate.Seeds(new(minimum), share);

        var result = StandRiskEvaluation.Evaluate(sure with { SeedsSown = usual });

        NearlyEqual.Assert(usual.PerSquareMetre, result.Needed!.Seeds.PerSquareMetre);
        Assert.Equal([1, 1, 1], [result.Needed.ProbabilityReached, result.AtMean.ProbabilityReached, result.Given!.ProbabilityReached]);
        Assert.Empty(result.Findings);
        Assert.Contains("That is what an average season takes.", DisplayUnits.Metric.Write(result.Headline), StringComparison.Ordinal);
        Assert.Equal(
            0,
            StandRiskEvaluation.Evaluate(sure with { SeedsSown = new(0.999 * usual.PerSquareMetre) }).Given!.ProbabilityReached
        );
    }

    // Half of the seasons: errors of the rate alone do not move it off the usual seeding rate.
    [Fact]
    public void Needed_HalfOfTheSeasons_IsTheSeedingRateWhereOnlyTheRateErrs() =>
        Assert.Equal(
            0,
            StandRiskEvaluation.Evaluate(Question with { Probability = 0.5, Share = new ExpectedShare(0.8, 0) }).Margin!.Relative,
            1e-12
        );

    [Theory]
    [InlineData(0)]
    [InlineData(0.03)]
    public void Needed_MoreSpreadOrMoreProbability_IsNeverLess(double metering)
    {
        double[] spreads = [0, 1e-7, 1e-5, 7.9e-5, 8.1e-5, 0.001, 0.0025, 0.0035, 0.01, 0.03, 0.08, 0.15, 0.2];
        double[] probabilities = [0.8, 0.9, 0.95, 0.99];
        double Needed(double spread, double probability) =>
            StandRiskEvaluation
                .Evaluate(
                    Question with
                    {
                        Share = new ExpectedShare(0.8, spread),
                        Probability = probability,
                        MeteringUncertainty = metering,
                    }
                )
                .Needed!.Seeds.PerSquareMetre;

        Assert.All(probabilities, probability =>
            Assert.All(spreads.Zip(spreads.Skip(1)), pair =>
                Assert.True(Needed(pair.First, probability) <= Needed(pair.Second, probability) * (1 + 1e-4), $"{pair} at {probability}")
            )
        );
        Assert.All(spreads, spread =>
            Assert.All(probabilities.Zip(probabilities.Skip(1)), pair =>
                Assert.True(Needed(spread, pair.First) <= Needed(spread, pair.Second), $"{pair} at {spread}")
            )
        );
    }

    // Shapes of the beta distribution as large as this overflowed.
    [Theory]
    [InlineData(1e-11)]
    [InlineData(1e-8)]
    [InlineData(1e-6)]
    [InlineData(1e-4)]
    public void Needed_SpreadNextToNothing_IsAFiniteProbability(double spread)
    {
        var result = StandRiskEvaluation.Evaluate(
            Question with
            {
                Share = new ExpectedShare(0.8, spread),
                Germination = null,
                SeedsTested = null,
                KernelMassUncertainty = 0,
                MeteringUncertainty = 0,
                SeedsSown = new(251),
            }
        );

        Assert.Equal(1, result.Given!.ProbabilityReached, 1e-9);
        NearlyEqual.Assert(250 * Math.Exp(1.2815515655446 * spread / 0.8), result.Needed!.Seeds.PerSquareMetre, 1e-6);
    }

    [Fact]
    public void Germination_OfAHundredPercent_IsNotTakenForCertain() =>
        Assert.Equal(
            Establishment.Tested(1, 50).GerminationUncertainty!.Value,
            StandRiskEvaluation
                .Evaluate(Question with { Germination = 1, SeedsTested = 50 })
                .Parts.Single(part => part.Source == RiskSource.GerminationTest)
                .Relative
        );

    [Theory]
    [InlineData(900, "reaches it with a probability of over 99 %.")]
    [InlineData(100, "reaches it with a probability of under 1 %.")]
    public void Headline_NearlyCertain_IsNotCalledCertain(double seeds, string words) =>
        Assert.EndsWith(
            words,
            DisplayUnits.Metric.Write(StandRiskEvaluation.Evaluate(Question with { SeedsSown = new(seeds) }).Headline),
            StringComparison.Ordinal
        );

    // Share known exactly: all is log-normal, and the margin is exp(z u).
    [Fact]
    public void Margin_RateErrorsOnly_IsThatOfTheLogNormalDistribution()
    {
        var result = StandRiskEvaluation.Evaluate(Question with { Share = new ExpectedShare(0.8, 0) });

        var germination = 0.05 / (0.95 * 400);
        var u = Math.Sqrt(germination + 0.02 * 0.02 + 0.03 * 0.03);
        NearlyEqual.Assert(Math.Exp(Normal.InvCDF(0, 1, 0.9) * u) - 1, result.Margin!.Relative, 1e-9);
        NearlyEqual.Assert(Math.Sqrt(germination), result.Parts.Single(part => part.Source == RiskSource.GerminationTest).Relative);
    }

    // The whole question against 300 000 simulated seasons.
    [Fact]
    public void Probability_AgainstSimulatedSeasons_Holds()
    {
        const int Seasons = 300_000;
        var random = new Random(20260302);
        var given = new CountPerArea(290);
        var result = StandRiskEvaluation.Evaluate(Question with { SeedsSown = given });
        var size = 0.8 * 0.2 / (0.08 * 0.08) - 1;
        var reached = 0;
        for (var i = 0; i < Seasons; i++)
        {
            // Seeds put down: the mass metered over the true mass of a kernel.
            var seeds = given.PerSquareMetre * (1 + 0.03 * Normal.Sample(random, 0, 1)) / (1 + 0.02 * Normal.Sample(random, 0, 1));
            var germination = Binomial.Sample(random, 0.95, 400) / 400.0;
            if (seeds * germination * Beta.Sample(random, 0.8 * size, 0.2 * size) >= 200)
                reached++;
        }

        // The germination test and the rate are taken as log-normal, which costs less than half a percent here.
        Assert.Equal((double)reached / Seasons, result.Given!.ProbabilityReached, 0.005);
    }

    [Fact]
    public void Survival_AsOneFigure_GivesWhatGerminationTimesEmergenceGives()
    {
        var folded = Question with { Germination = null, SeedsTested = null, Share = new ExpectedShare(0.76, 0) };
        var apart = Question with { Germination = 0.95, SeedsTested = int.MaxValue, Share = new ExpectedShare(0.8, 0) };

        NearlyEqual.Assert(
            StandRiskEvaluation.Evaluate(apart).Needed!.Seeds.PerSquareMetre,
            StandRiskEvaluation.Evaluate(folded).Needed!.Seeds.PerSquareMetre,
            1e-9
        );
    }

    [Fact]
    public void Assumptions_NothingStated_NameEveryDefault()
    {
        var bare = Question with
        {
            Probability = null,
            SeedsTested = null,
            KernelMassUncertainty = null,
            MeteringUncertainty = null,
            Purity = null,
        };

        var result = StandRiskEvaluation.Evaluate(bare);

        Assert.Equal(
            ["probability", "germinationSeedsTested", "kernelMassUncertainty", "meteringUncertainty", "purity"],
            result.Assumptions.Select(assumption => assumption.Name)
        );
        Assert.Equal(0.9, result.Probability);
        Assert.Empty(StandRiskEvaluation.Evaluate(Question).Assumptions);
    }

    [Fact]
    public void KernelMass_Unknown_LeavesSeedsOnly()
    {
        var result = StandRiskEvaluation.Evaluate(
            Question with
            {
                KernelMass = null,
                KernelMassUncertainty = null,
                PricePerKilogram = null,
            }
        );

        Assert.Null(result.Needed!.Mass);
        Assert.Null(result.Margin!.CostPerSquareMetre);
        Assert.DoesNotContain(result.Parts, part => part.Source == RiskSource.KernelMass);
        Assert.Contains("seeds/m2 to reach 200 plants/m2", DisplayUnits.Metric.Write(result.Headline), StringComparison.Ordinal);
    }

    [Fact]
    public void Headline_SaysRateProbabilityAndMargin()
    {
        var headline = DisplayUnits.Metric.Write(
            StandRiskEvaluation.Evaluate(Question with { SeedsSown = new CountPerArea(280) }).Headline
        );

        Assert.Matches(
            @"^Sow \d+(\.\d)? seeds/m2, 12\d(\.\d)? kg/ha, to reach 200 plants/m2 with a probability of 90 %\. That is 1\d % more than an average season takes\. The stated rate reaches it with a probability of \d\d %\.$",
            headline
        );
    }

    [Fact]
    public void Findings_RateInDoubt_AreTold()
    {
        Assert.Empty(Codes(Question));
        Assert.Equal([StandRiskCodes.StandAtRisk], Codes(Question with { SeedsSown = new CountPerArea(265) }));
        Assert.Equal([StandRiskCodes.RateAboveMaximum], Codes(Question with { MaximumSeeds = new CountPerArea(280) }));
        Assert.Empty(Codes(Question with { MaximumSeeds = new CountPerArea(350) }));
        Assert.Equal(
            [StandRiskCodes.SeasonSpreadMissing],
            Codes(Question with { Share = ExpectedShare.FromCounts(0.8, 0.7, 0.9, 0.95, null) })
        );
        Assert.Equal([StandRiskCodes.UnusualShareOfSeeds], Codes(Question with { Share = new ExpectedShare(0.15, 0.02) }));
    }

    [Fact]
    public void Needed_SurvivalThatCanFailAltogether_IsNone()
    {
        var result = StandRiskEvaluation.Evaluate(Question with { Probability = 0.99, Share = new ExpectedShare(0.5, 0.35) });

        Assert.Null(result.Needed);
        Assert.Null(result.Margin);
        Assert.Equal([StandRiskCodes.ProbabilityOutOfReach], result.Findings.Select(finding => finding.Code));
        Assert.StartsWith("No sensible rate", DisplayUnits.Metric.Write(result.Headline), StringComparison.Ordinal);
    }

    [Fact]
    public void Needed_GerminationNextToNothing_IsNone() =>
        Assert.Null(StandRiskEvaluation.Evaluate(Question with { Germination = 1e-15, Share = new ExpectedShare(0.8, 0) }).Needed);

    // The width of an interval of 95 % is 3.92 standard deviations; seasons add in quadrature.
    [Fact]
    public void FromCounts_AddsSeasonsInQuadrature()
    {
        var share = ExpectedShare.FromCounts(0.7, 0.6, 0.8, 0.95, 0.1);

        Assert.Equal(Math.Sqrt(Math.Pow(0.1 / 1.959964, 2) + 0.01), share.Spread, 1e-7);
        Assert.False(share.FromOneStand);
        Assert.True(ExpectedShare.FromCounts(0.7, 0.6, 0.8, 0.95, null).FromOneStand);
    }

    private static FindingCode[] Codes(StandRiskQuestion question) =>
        [.. StandRiskEvaluation.Evaluate(question).Findings.Select(finding => finding.Code)];

    [Fact]
    public void Margin_WithoutKernelMass_IsInSeedsOnly()
    {
        static SownRate Rate(double seeds) => new(new(seeds), null, new(0), new(0), 0.5);

        var margin = RateMargin.Of(Rate(300), Rate(240), 0.6, new Area(500_000));

        NearlyEqual.Assert(0.25, margin.Relative);
        NearlyEqual.Assert(60, margin.Seeds.PerSquareMetre);
        Assert.Equal((null, null, null), (margin.Mass, margin.CostPerSquareMetre, margin.Cost));
    }
}
