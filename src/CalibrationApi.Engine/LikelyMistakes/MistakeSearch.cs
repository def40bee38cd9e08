using System.Runtime.InteropServices;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>Asks of a test which mistake, if any, explains it better than an ordinary change does.</summary>
/// <remarks>
/// Bayes' rule over hypotheses that exclude each other: an ordinary change and nothing else, or on top of it one mistake in
/// the whole test or in one catch. All mistakes together have the prior <see cref="MistakeJudgement.PriorOfAnyMistake"/>,
/// split by their weights in this context; a mistake that was ruled out gives its share back to the ordinary change.
/// </remarks>
internal static class MistakeSearch
{
    // What a catch may gain beyond the bound of the first look, through the derivative of a corrected mass.
    private const double Slack = 0.5;
    private const int FewestWithoutReference = 3;

    // No mistake at one place has more than this share of the prior of all, whatever the context (MistakePriorTests).
    private const double MostShare = 0.5;

    // Logarithm of prior times Bayes factor under which a mistake is not shown.
    private static readonly double Limit = Math.Log(MistakeJudgement.ShownFrom * (1 - MistakeJudgement.PriorOfAnyMistake));

    /// <summary>Searches.</summary>
    public static LikelyMistakesResult Of(CatchTest test, CatchReadings readings, MassPerRevolutionEstimate estimate, double dayToDay)
    {
        if (test.Reference is null && readings.Count < FewestWithoutReference)
            return LikelyMistakesResult.None;
        var change = test.Context.NewLot is true ? MistakeJudgement.OrdinaryChangeWithNewLot : MistakeJudgement.OrdinaryChange;
        var likelihood = new TestLikelihood(readings, test.Reference?.Value.KilogramsPerRevolution, change, CommonVariance(test, estimate, dayToDay));
        var result = new LikelyMistakesResult
        {
            OrdinaryChange = change,
            PredictiveDeviation = test.Reference is null ? 0 : Math.Sqrt(likelihood.NormalDeviation * likelihood.NormalDeviation + change * change),
        };
        var gains = new double[readings.Count];
        if (LargestGain(likelihood, gains) < Limit - Math.Log(MistakeJudgement.PriorOfAnyMistake * MostShare))
            return result;
        var hand = new TestAtHand(test, readings);
        var hypotheses = Hypotheses(hand);
        if (NothingCanBeShown(hand, likelihood, hypotheses, gains))
            return result;

        var posteriors = Posteriors(hand, likelihood, hypotheses);
        return result with
        {
            AnyProbability = posteriors.Where(each => each.Mistake is not null).Sum(each => each.Probability),
            Shown = Shown(hand, likelihood, posteriors),
        };
    }

    /// <summary>Every mistake at every place where it can have happened, with its prior probability; ruled out ones have none.</summary>
    public static List<Hypothesis> Hypotheses(TestAtHand test)
    {
        var kinds = MistakeCatalog.All;
        var first = test.Reference is null ? 0 : -1;
        var end = test.Count == 1 ? 0 : test.Count;
        // Row 0 is the whole test, row i + 1 the counted catch i.
        var weights = new double[(test.Count + 1) * kinds.Length];
        Span<double> ofCatches = stackalloc double[test.Count];
        for (var kind = 0; kind < kinds.Length; kind++)
        {
            weights[kind] = kinds[kind].Weigh(test, ofCatches);
            for (var at = 0; at < test.Count; at++)
                weights[(at + 1) * kinds.Length + kind] = ofCatches[at];
        }

        var total = 0.0;
        foreach (var weight in weights.AsSpan((first + 1) * kinds.Length, (end - first) * kinds.Length))
            total += weight;
        var hypotheses = new List<Hypothesis>(weights.Length);
        var ruledOut = Array.ConvertAll(kinds, test.IsRuledOut);
        for (var at = first; at < end; at++)
        {
            int? place = at < 0 ? null : at;
            for (var kind = 0; kind < kinds.Length; kind++)
            {
                if (weights[(at + 1) * kinds.Length + kind] is > 0 and var weight && !ruledOut[kind])
                    hypotheses.Add(new Hypothesis(kinds[kind], place, MistakeJudgement.PriorOfAnyMistake * weight / total));
            }
        }

        return hypotheses;
    }

    /// <summary>Every hypothesis with its posterior probability; the ordinary change, without a mistake, comes first.</summary>
    public static List<Posterior> Posteriors(TestAtHand test, TestLikelihood likelihood, List<Hypothesis> hypotheses)
    {
        var ofMistakes = 0.0;
        foreach (var hypothesis in hypotheses)
            ofMistakes += hypothesis.Prior;
        var all = new List<Posterior>(hypotheses.Count + 1) { new(null, null, null, Math.Log(1 - ofMistakes), likelihood.Ordinary, 0) };
        foreach (var hypothesis in hypotheses)
            all.Add(Weigh(hypothesis, test, likelihood));

        // In place: this runs for every test that is not quite ordinary, thousands of times in a batch.
        var each = CollectionsMarshal.AsSpan(all);
        var most = double.NegativeInfinity;
        foreach (ref readonly var one in each)
            most = Math.Max(most, one.LogPrior + one.LogLikelihood);
        var sum = 0.0;
        foreach (ref readonly var one in each)
            sum += Math.Exp(one.LogPrior + one.LogLikelihood - most);
        foreach (ref var one in each)
            one = one with { Probability = Math.Exp(one.LogPrior + one.LogLikelihood - most) / sum };
        return all;
    }

    // The variants of a mistake share its prior; its likelihood is their mean.
    private static Posterior Weigh(Hypothesis hypothesis, TestAtHand test, TestLikelihood likelihood)
    {
        var (mistake, at, prior) = hypothesis;
        Prediction? best = null;
        double most = double.NegativeInfinity, sum = 0;
        foreach (var prediction in mistake.Predictions(test, at))
        {
            var log = Math.Log(prediction.Share) + prediction.LogLikelihood(likelihood, at);
            if (log > most)
            {
                sum = sum * Math.Exp(most - log) + 1;
                (most, best) = (log, prediction);
            }
            else if (!double.IsNegativeInfinity(log))
            {
                sum += Math.Exp(log - most);
            }
        }

        return new Posterior(mistake, best, at, Math.Log(prior), best is null ? double.NegativeInfinity : most + Math.Log(sum), 0);
    }

    // Most tests hold nothing unusual. No mistake can gain more than the ordinary density has lost, so that often one look
    // is enough to know that none of them reaches the limit for being shown.
    private static double LargestGain(TestLikelihood likelihood, double[] gains)
    {
        var gain = 0.0;
        if (gains.Length > 1)
        {
            gain = likelihood.LargestGainOfScatter;
            for (var at = 0; at < gains.Length; at++)
                gain = Math.Max(gain, gains[at] = likelihood.LargestGainOf(at));
        }

        return likelihood.LargestGainOfLevel + gain + Slack;
    }

    // The same with the prior of each, and with what a mistake really gains where the bound alone does not settle it: one that
    // changes the shape of the whole test could gain all of its scatter, which grows with the number of catches.
    private static bool NothingCanBeShown(TestAtHand test, TestLikelihood likelihood, List<Hypothesis> hypotheses, double[] gains)
    {
        var ofLevel = likelihood.LargestGainOfLevel + Slack;
        var reshaped = test.Count > 1 ? Math.Exp(likelihood.LargestGainOfScatter) : 1;
        var most = Math.Exp(Limit);
        var sum = 0.0;
        int? place = -1;
        var factor = 0.0;
        foreach (var hypothesis in hypotheses)
        {
            var (mistake, at, prior) = hypothesis;
            if (at != place)
                (place, factor) = (at, Math.Exp(ofLevel + (at is { } one ? gains[one] : 0)));
            var bound = prior * factor * (at is null && mistake.ReshapesTest ? reshaped : 1);
            if (bound > most)
                bound = prior * Math.Exp(Weigh(hypothesis, test, likelihood).LogLikelihood - likelihood.Ordinary);
            sum += bound;
            // Together they must not be likelier than the ordinary change either.
            if (bound > most || sum > MistakeJudgement.NamedFrom)
                return false;
        }

        return true;
    }

    private static double CommonVariance(CatchTest test, MassPerRevolutionEstimate estimate, double dayToDay)
    {
        var reference = test.Reference is not { } compared ? 0
            : compared.RelativeUncertainty
                ?? (compared.Kind == ReferenceKind.StartValue ? MistakeJudgement.StartValueUncertainty : MistakeJudgement.ValueInForceUncertainty);
        return estimate.SharedTare * estimate.SharedTare + estimate.Points * estimate.Points + dayToDay * dayToDay + reference * reference
            + (test.Reference?.FromAnotherScale is true ? estimate.Span * estimate.Span : 0);
    }

    private static List<LikelyMistake> Shown(TestAtHand test, TestLikelihood likelihood, List<Posterior> posteriors)
    {
        Posterior[] probable = [.. posteriors
            .Where(each => each.Mistake is not null && each.Probability >= MistakeJudgement.ShownFrom)
            .OrderByDescending(each => each.Probability)];
        var shown = new List<LikelyMistake>(probable.Length);
        var close = Math.Log(MistakeJudgement.ClearEvidence);
        var rivals = probable.Skip(1).Any(each => probable[0].LogLikelihood - each.LogLikelihood < close);
        for (var i = 0; i < probable.Length; i++)
        {
            var (mistake, prediction, at, _, log, probability) = probable[i];
            shown.Add(new LikelyMistake(
                mistake!.CodeFor(test),
                at is { } one ? test.Position(one) : null,
                probability,
                Math.Min(LikelyMistake.MostBayesFactor, Math.Exp(log - likelihood.Ordinary)),
                $"{Seen(test, likelihood, at)}: {mistake.Fit(prediction!)}.",
                mistake.Check)
            {
                CannotBeToldApart = rivals && (i == 0 || probable[0].LogLikelihood - log < close),
            });
        }

        return shown;
    }

    private static FormattableString Seen(TestAtHand test, TestLikelihood likelihood, int? at)
    {
        var againstOthers = at is not null && test.Count >= FewestWithoutReference;
        var log = at is not { } one ? likelihood.Mean : againstOthers ? likelihood.AgainstOthers(one) : likelihood.Observed(one);
        var subject = at is { } shown ? $"Catch {test.Position(shown) + 1} shows" : test.Count == 1 ? "The catch shows" : "The whole test shows";
        var than = againstOthers ? "the other catches show"
            : test.Reference!.Kind == ReferenceKind.StartValue ? "the start value says" : "the value in force says";
        return $"{subject} {Amount(log)} {than}";
    }

    private static FormattableString Amount(double log)
    {
        const double Thrice = 1.0986, AThousandth = -6.9078;
        return log switch
        {
            > Thrice => $"{Math.Exp(log):0.#} times what",
            >= 0 => $"{new Ratio(Math.Exp(log) - 1):F0} more than",
            >= -Thrice => $"{new Ratio(1 - Math.Exp(log)):F0} less than",
            >= AThousandth => $"{Math.Exp(log):0.###} times what",
            _ => $"less than a thousandth of what",
        };
    }

    /// <summary>A mistake in one catch or in the whole test.</summary>
    /// <param name="Mistake">The mistake.</param>
    /// <param name="At">The counted catch; null for the whole test.</param>
    /// <param name="Prior">Prior probability.</param>
    public readonly record struct Hypothesis(Mistake Mistake, int? At, double Prior);

    /// <summary>A hypothesis after the numbers were looked at.</summary>
    /// <param name="Mistake">Null for the ordinary change alone.</param>
    /// <param name="Prediction">Its variant that fits best; null when none is possible.</param>
    /// <param name="At">The counted catch; null for the whole test.</param>
    /// <param name="LogPrior">Natural logarithm of the prior probability.</param>
    /// <param name="LogLikelihood">Natural logarithm of the density of the numbers.</param>
    /// <param name="Probability">Posterior probability.</param>
    public readonly record struct Posterior(Mistake? Mistake, Prediction? Prediction, int? At, double LogPrior, double LogLikelihood, double Probability);
}
