namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>
/// Whether a mistake in the whole test fits a change under the limit of a second test exactly. Most changes fit nothing, so that a look at
/// what each mistake leaves spares weighing all of them in all catches.
/// </summary>
internal static class ExactFit
{
    private static readonly double Evidence = Math.Log(MistakeJudgement.ListedEvidence);

    /// <summary>Some mistake, however rare, leaves nothing of the change and explains it clearly better than an ordinary one.</summary>
    public static bool MayExplain(TestAtHand test, TestLikelihood likelihood)
    {
        if (likelihood.LargestGainOfLevel < Evidence)
            return false;
        Span<double> ofCatches = stackalloc double[test.Count];
        foreach (var kind in MistakeCatalog.All)
        {
            if (kind.Weigh(test, ofCatches).OfWhole <= 0)
                continue;
            foreach (var prediction in kind.Predictions(test, null))
            {
                if (prediction.Explains(likelihood) && IsEvidence(prediction.LogLikelihood(likelihood, null), likelihood))
                    return true;
            }
        }

        return false;
    }

    /// <summary>One of them is probable enough to be listed.</summary>
    public static bool IsWorthListing(TestAtHand test, TestLikelihood likelihood, MistakePriors priors)
    {
        // The ordinary change alone is worth less than its prior beside the others, never more.
        var least = MistakeJudgement.ListedFrom * (1 - MistakeJudgement.PriorOfAnyMistake);
        for (var kind = 0; kind < MistakeCatalog.All.Length; kind++)
        {
            if (priors.OfWhole[kind] <= 0)
                continue;
            var hypothesis = new MistakeSearch.Hypothesis(MistakeCatalog.All[kind], null, priors.OfWhole[kind]);
            var weighed = MistakeSearch.Weigh(hypothesis, test, likelihood);
            if (
                weighed.Prediction is { } best
                && Explains(best, weighed.LogLikelihood, likelihood)
                && hypothesis.Prior * Math.Exp(weighed.LogLikelihood - likelihood.Ordinary) >= least
            )
                return true;
        }

        return false;
    }

    /// <summary>The prediction leaves nothing of the change, and its density is high enough to be listed.</summary>
    public static bool Explains(Prediction prediction, double logLikelihood, TestLikelihood likelihood) =>
        IsEvidence(logLikelihood, likelihood) && prediction.Explains(likelihood);

    private static bool IsEvidence(double logLikelihood, TestLikelihood likelihood) => logLikelihood - likelihood.Ordinary >= Evidence;
}
