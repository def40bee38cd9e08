using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedingRates;

namespace CalibrationApi.Engine.StandCounts;

/// <summary>From plants counted at spots to the stand, its interval, and the share of the seeds that came up.</summary>
public static class StandCountEvaluation
{
    /// <summary>Evaluates <paramref name="question"/>.</summary>
    /// <param name="question">At least one count; seeds, germination, prior and stands as far as they are known.</param>
    /// <remarks>
    /// <para>Formula: survival is D over pure seeds sown, emergence D over viable ones (germination taken out); both are ratios and can
    /// exceed 1. How D and its interval come about: <see cref="PlantDensity"/>.</para>
    /// <para>Range: areas and seeds above 0; without seeds there is no share.</para>
    /// <para>Source: our own derivation; counts as <see cref="PlantDensity"/> (SOURCES.md, keys MASS and GARWOOD-1936).</para>
    /// <para>Accuracy: shares and deviations within 1e-12 (StandCountTests); published counts as printed, or the table of cases says why
    /// not (StandsTradeTests); coverage as <see cref="PlantDensity"/>.</para>
    /// </remarks>
    /// <exception cref="ArgumentException">No count; or a prior for a share that cannot be told from the question.</exception>
    public static StandCountResult Evaluate(StandCountQuestion question)
    {
        var density = new PlantDensity(question.Samples);
        var coverage = question.CoverageProbability ?? StandCountDefaults.CoverageProbability;
        var sowing = question.SowingUncertainty ?? SownSeedDefaults.MeteringUncertainty.Value.Canonical;
        var survival = question.SeedsSown is { } sown ? ShareOfSeeds.Of(density, sown.PerSquareMetre, sowing, coverage) : null;
        var emergence = question is { SeedsSown: { } seeds, Germination: { } germination }
            ? ShareOfSeeds.Of(density, seeds.PerSquareMetre * germination, sowing, coverage)
            : null;
        var result = new StandCountResult
        {
            Headline = $"",
            Density = density,
            CoverageProbability = coverage,
            CountsNeeded = density.CountsFor(question.WantedPrecision ?? StandCountDefaults.WantedPrecision.Value.Canonical, coverage),
            SeedsSown = question.SeedsSown,
            Survival = survival,
            Emergence = emergence,
            Learned = question.Prior is { } prior ? Learn(prior, survival, emergence, coverage) : null,
            Deviation = question.TargetStand is { } target ? density.PerSquareMetre / target.PerSquareMetre - 1 : null,
            ProbabilityBelowMinimum = question.MinimumStand is { } minimum ? density.ProbabilityBelow(minimum.PerSquareMetre) : null,
            Assumptions = [.. Assumptions(question)],
            Findings = [],
        };
        return result with { Headline = Headline(result), Findings = [.. StandCountFindings.Of(question, result)] };
    }

    private static LearnedShare Learn(PriorShare prior, ShareOfSeeds? survival, ShareOfSeeds? emergence, double coverage)
    {
        var counted = (prior.Reading == SeedReading.Emergence ? emergence : survival)
            ?? throw new ArgumentException(
                "The share of the prior cannot be told without seeds sown and, for emergence, germination.",
                nameof(prior)
            );
        return LearnedShare.Of(counted, prior.Mean, prior.Spread, coverage);
    }

    private static IEnumerable<Assumption> Assumptions(StandCountQuestion question)
    {
        if (question.WantedPrecision is null)
            yield return StandCountDefaults.WantedPrecision.Assumed("wantedPrecision");
        if (question.SeedsSown is not null && question.SowingUncertainty is null)
            yield return SownSeedDefaults.MeteringUncertainty.Assumed("sown/uncertainty");
        if (question.PurityAssumed)
            yield return SownSeedDefaults.Purity.Assumed("sown/purity");
    }

    private static Sentence Headline(StandCountResult result)
    {
        var counts = result.Density.Counts == 1 ? (Sentence)$"one count" : $"{new CountInWords(result.Density.Counts)} counts";
        Sentence stand =
            result.Density.Plants == 0
                ? (Sentence)
                    $"No plant was found in {counts}: with {new Ratio(result.CoverageProbability):0.##} confidence there are fewer than {result.Upper:plants}."
                : $"The stand is {result.Stand:plants}, between {result.Lower:plants} and {result.Upper:plants} with {new Ratio(result.CoverageProbability):0.##} confidence, from {counts}.";
        return $"{stand}{Seeds(result)}{Target(result)}";
    }

    private static Sentence Seeds(StandCountResult result) =>
        result.Density.Plants == 0 ? (Sentence)$""
        : result.Emergence is { } emergence ? (Sentence)$" Of the viable seeds sown {new Ratio(emergence.Value):F0} came up."
        : result.Survival is { } survival ? (Sentence)$" Of the seeds sown {new Ratio(survival.Value):F0} became plants."
        : $"";

    private static Sentence Target(StandCountResult result) =>
        result.Deviation switch
        {
            null or -1 => $"",
            < -0.005 and var off => $" The stand is {new Ratio(-off):F0} below the target.",
            > 0.005 and var off => $" The stand is {new Ratio(off):F0} above the target.",
            _ => $" The stand is the target.",
        };
}
