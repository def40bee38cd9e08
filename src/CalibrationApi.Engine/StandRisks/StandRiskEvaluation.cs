using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedingRates;

namespace CalibrationApi.Engine.StandRisks;

/// <summary>
/// The rate that reaches a minimum stand with a wanted probability, what the margin costs, and the probability at a given rate.
/// </summary>
public static class StandRiskEvaluation
{
    // More than five times the rate at the mean: then the seed is not what is missing. Judgement, no published source.
    private const double MostMargin = 5;

    private const double AsGoodAsNone = 1e-12;

    // Reported for canola from year to year (SOURCES.md, key AB-HARTMAN).
    private const double LeastReportedSurvival = 0.20;

    /// <summary>Evaluates <paramref name="question"/>.</summary>
    /// <param name="question">A minimum stand above 0 and a share of seeds; germination, kernel mass and rates as far as they are
    /// known.</param>
    /// <remarks>
    /// <para>Formula: stand = seeds G X, with X as in <see cref="SeedSurvival"/> and G germination (1 where it is part of the share). The
    /// rate for probability p is minimum / (G x) at the quantile x with P(X &lt;= x) = 1 - p; the rate at the mean minimum / (G m).</para>
    /// <para>Range: shares above 0 and at most 1; a probability from 0.5 to below 1. Beyond five times the rate at the mean no rate is
    /// given.</para>
    /// <para>Source: our own derivation; five times is judgement; the spread of survival is published in SOURCES.md, key AB-HARTMAN.</para>
    /// <para>Accuracy: the needed rate has its probability within 1e-9, rates and costs within 1e-12, errors of the rate alone within 1e-9
    /// of the library's log-normal distribution, simulated seasons within 0.005 (StandRiskTests); the distribution as
    /// <see cref="SeedSurvival"/>.</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A share with an impossible spread, or a share outside (0, 1].</exception>
    public static StandRiskResult Evaluate(StandRiskQuestion question)
    {
        var parts = Parts(question);
        var errors = parts.Where(part => part.Source != RiskSource.ShareOfSeeds).Sum(part => part.Relative * part.Relative);
        var survival = new SeedSurvival(question.Share.Mean, question.Share.Spread, Math.Sqrt(errors));
        var probability = question.Probability ?? StandRiskDefaults.Probability;
        // What errors of the rate lift above 1 cannot be planned on; at the other end anything so small is out of reach alike.
        var reached = Math.Clamp(survival.Quantile(1 - probability), AsGoodAsNone, 1);
        var atMean = Rate(question, survival, SeedsFor(question, question.Share.Mean), reached);
        var needed = question.Share.Mean / reached <= MostMargin ? Rate(question, survival, SeedsFor(question, reached), reached) : null;
        var result = new StandRiskResult
        {
            Headline = $"",
            Probability = probability,
            AtMean = atMean,
            Needed = needed,
            Margin = needed is null ? null : RateMargin.Of(needed, atMean, question.PricePerKilogram, question.Area),
            Given = question.SeedsSown is { } seeds ? Rate(question, survival, seeds, reached) : null,
            Parts = parts,
            Assumptions = [.. Assumptions(question)],
            Findings = [],
        };
        return result with { Headline = Headline(question, result), Findings = [.. Findings(question, result)] };
    }

    private static (RiskSource Source, double Relative)[] Parts(StandRiskQuestion question)
    {
        var parts = new List<(RiskSource, double)> { (RiskSource.ShareOfSeeds, question.Share.Spread / question.Share.Mean) };
        if (question.Germination is { } germination)
            parts.Add(
                (
                    RiskSource.GerminationTest,
                    Establishment.UncertaintyOfTest(germination, question.SeedsTested ?? StandRiskDefaults.SeedsTested)
                )
            );
        if (question.KernelMass is not null || question.KernelMassUncertainty is not null)
            parts.Add((RiskSource.KernelMass, question.KernelMassUncertainty ?? StandRiskDefaults.KernelMassUncertainty.Value.Canonical));
        parts.Add((RiskSource.Metering, question.MeteringUncertainty ?? SownSeedDefaults.MeteringUncertainty.Value.Canonical));
        return [.. parts];
    }

    private static CountPerArea SeedsFor(StandRiskQuestion question, double share) =>
        SeedingRate.Seeds(question.MinimumStand, share * (question.Germination ?? 1));

    private static SownRate Rate(StandRiskQuestion question, SeedSurvival survival, CountPerArea seeds, double reached)
    {
        var viable = SeedingRate.Plants(seeds, question.Germination ?? 1);
        return new SownRate(
            seeds,
            question.KernelMass is { } kernel
                ? SeedingRate.Mass(seeds, kernel, question.Purity ?? SownSeedDefaults.Purity.Value.Canonical)
                : null,
            SeedingRate.Plants(viable, question.Share.Mean),
            SeedingRate.Plants(viable, reached),
            1 - survival.Cdf(question.MinimumStand.PerSquareMetre / viable.PerSquareMetre)
        );
    }

    private static IEnumerable<Assumption> Assumptions(StandRiskQuestion question)
    {
        if (question.Probability is null)
            yield return new Assumption("probability", null, StandRiskDefaults.ProbabilityOrigin)
            {
                Number = StandRiskDefaults.Probability,
            };
        if (question.Germination is not null && question.SeedsTested is null)
            yield return new Assumption("germinationSeedsTested", null, StandRiskDefaults.SeedsTestedOrigin)
            {
                Number = StandRiskDefaults.SeedsTested,
            };
        if (question.KernelMass is not null && question.KernelMassUncertainty is null)
            yield return StandRiskDefaults.KernelMassUncertainty.Assumed("kernelMassUncertainty");
        if (question.MeteringUncertainty is null)
            yield return SownSeedDefaults.MeteringUncertainty.Assumed("meteringUncertainty");
        if (question.KernelMass is not null && question.Purity is null)
            yield return SownSeedDefaults.Purity.Assumed("purity");
    }

    private static Sentence Headline(StandRiskQuestion question, StandRiskResult result)
    {
        var probability = new Ratio(result.Probability);
        var needed = result.Needed is null
            ? (Sentence)
                $"No sensible rate reaches {question.MinimumStand:plants} with a probability of {probability:0.##}: too much survival is in doubt."
            : $"Sow {Written(result.Needed)} to reach {question.MinimumStand:plants} with a probability of {probability:0.##}. {Margin(result.Margin!.Relative)}";
        return result.Given is null
            ? needed
            : $"{needed} The stated rate reaches it with a probability of {Chance.Of(result.Given.ProbabilityReached)}.";
    }

    private static Sentence Margin(double relative) =>
        Math.Abs(relative) < 0.005
            ? $"That is what an average season takes."
            : (Sentence)$"That is {new Ratio(Math.Abs(relative)):F0} {(relative < 0 ? "less" : "more")} than an average season takes.";

    private static Sentence Written(SownRate rate) =>
        rate.Mass is { } mass ? (Sentence)$"{rate.Seeds:seeds}, {mass}," : $"{rate.Seeds:seeds}";

    private static IEnumerable<Finding> Findings(StandRiskQuestion question, StandRiskResult result)
    {
        var probability = new Ratio(result.Probability);
        if (result.Needed is null)
            yield return Finding.Warning(
                StandRiskCodes.ProbabilityOutOfReach,
                $"A probability of {probability:0.##} would take more than {MostMargin:F0} times the rate for an average season. In the poorest seasons it is not seed that is missing: ask for a lower probability, or find out why so little may come up."
            );
        if (
            question.MaximumSeeds is { } maximum
            && result.Needed is { } needed
            && Threshold.IsAbove(needed.Seeds.PerSquareMetre, maximum.PerSquareMetre)
        )
            yield return Finding.Warning(
                StandRiskCodes.RateAboveMaximum,
                $"The rate needed is {needed.Seeds:seeds}, above the stated maximum of {maximum:seeds}. Accept a lower probability or a lower minimum stand."
            );
        if (result.Given is { } given && Threshold.IsBelow(given.ProbabilityReached, result.Probability))
            yield return Finding.Warning(
                StandRiskCodes.StandAtRisk,
                result.Needed is null
                    ? (Sentence)
                        $"The stated rate reaches {question.MinimumStand:plants} with a probability of {Chance.Of(given.ProbabilityReached)} instead of {probability:0.##}."
                    : $"The stated rate reaches {question.MinimumStand:plants} with a probability of {Chance.Of(given.ProbabilityReached)} instead of {probability:0.##}. With {probability:0.##} it reaches {given.StandReached:plants}."
            );
        if (question.Share.FromOneStand)
            yield return Finding.Warning(
                StandRiskCodes.SeasonSpreadMissing,
                $"The spread comes from the counts of one stand. Seasons and fields differ by more, so the margin is too small. Add seasonSpread."
            );
        if (question.Share.Mean * (question.Germination ?? 1) < LeastReportedSurvival)
            yield return Finding.Note(
                StandRiskCodes.UnusualShareOfSeeds,
                $"Fewer than {new Ratio(LeastReportedSurvival):F0} of the seeds are expected to become plants. Alberta Agriculture reports {new Ratio(LeastReportedSurvival):F0} to {new Ratio(0.8):F0} for canola from year to year. Check the number."
            );
    }
}
