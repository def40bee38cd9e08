using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>Which of the mistakes that were weighed an answer names, and in what words.</summary>
internal sealed class MistakeListing(TestAtHand test, TestLikelihood likelihood, List<MistakeSearch.Posterior> posteriors)
{
    private const int FewestAgainstOthers = 3;

    /// <summary>Those probable enough to be shown.</summary>
    public List<LikelyMistake> Shown()
    {
        MistakeSearch.Posterior[] probable =
        [
            .. posteriors
                .Where(each => each.Mistake is not null && each.Probability >= MistakeJudgement.ShownFrom)
                .OrderByDescending(each => each.Probability),
        ];
        var shown = new List<LikelyMistake>(probable.Length);
        var close = Math.Log(MistakeJudgement.ClearEvidence);
        var rivals = probable.Skip(1).Any(each => probable[0].LogLikelihood - each.LogLikelihood < close);
        for (var i = 0; i < probable.Length; i++)
            shown.Add(InWords(probable[i], rivals && (i == 0 || probable[0].LogLikelihood - probable[i].LogLikelihood < close)));
        return shown;
    }

    /// <summary>
    /// What in the whole test could explain it although it is not probable: all that fits not clearly worse than an ordinary change.
    /// </summary>
    /// <param name="shown">Those that are shown already.</param>
    public List<LikelyMistake> AlsoPossible(List<LikelyMistake> shown)
    {
        // Beside a mistake that is nearly certain, what is a million times less likely explains nothing.
        var least =
            MistakeJudgement.LeastOfTheLikeliest
            * posteriors.Where(each => each.Mistake is not null).Select(each => each.Probability).DefaultIfEmpty().Max();
        return
        [
            .. posteriors
                .Where(each =>
                    each is { Mistake: not null, At: null, Prediction: not null }
                    && each.Probability < MistakeJudgement.ShownFrom
                    && each.Probability >= least
                    && each.LogLikelihood - likelihood.Ordinary > -Math.Log(MistakeJudgement.ClearEvidence)
                )
                .OrderByDescending(each => each.Probability)
                .Take(Math.Max(0, MistakeJudgement.MostListed - shown.Count))
                .Select(each => InWords(each, false)),
        ];
    }

    /// <summary>
    /// Under the limit of a second test: the mistakes in the whole test whose ratio, and not only a range, leaves nothing of the change.
    /// </summary>
    public List<LikelyMistake> FittingExactly() =>
        [
            .. posteriors
                .Where(each =>
                    each is { Mistake: not null, At: null, Prediction: { } prediction }
                    && each.Probability >= MistakeJudgement.ListedFrom
                    && ExactFit.Explains(prediction, each.LogLikelihood, likelihood)
                )
                .OrderByDescending(each => each.Probability)
                .Take(MistakeJudgement.MostListedUnderTheLimit)
                .Select(each => InWords(each, false)),
        ];

    private LikelyMistake InWords(MistakeSearch.Posterior posterior, bool cannotBeToldApart)
    {
        var (mistake, prediction, at, _, log, probability) = posterior;
        return new LikelyMistake(
            mistake!.CodeFor(test),
            at is { } one ? test.Position(one) : null,
            probability,
            Math.Min(LikelyMistake.MostBayesFactor, Math.Exp(log - likelihood.Ordinary)),
            $"{Seen(at)}: {mistake.Fit(prediction!)}."
        )
        {
            CannotBeToldApart = cannotBeToldApart,
        };
    }

    private Sentence Seen(int? at)
    {
        if (at is null && test.Reference is null)
            return $"The catches differ from one another";
        var againstOthers = at is not null && test.Count >= FewestAgainstOthers;
        var log =
            at is not { } one ? likelihood.Mean
            : againstOthers ? likelihood.AgainstOthers(one)
            : likelihood.Observed(one);
        var subject =
            at is { } shown ? $"Catch {test.Position(shown) + 1} shows"
            : test.Count == 1 ? "The catch shows"
            : "The whole test shows";
        var than =
            againstOthers ? "the other catches show"
            : test.Test.Predicted is not null ? "is expected of this lot"
            : $"{test.Reference!.Called} says";
        return $"{subject} {Amount(log)} {than}";
    }

    private static Sentence Amount(double log)
    {
        const double Thrice = 1.0986,
            AThousandth = -6.9078;
        return log switch
        {
            > Thrice => $"{Math.Exp(log):0.#} times what",
            >= 0 => $"{new Ratio(Math.Exp(log) - 1):F0} more than",
            >= -Thrice => $"{new Ratio(1 - Math.Exp(log)):F0} less than",
            >= AThousandth => $"{Math.Exp(log):0.###} times what",
            _ => $"less than a thousandth of what",
        };
    }
}
