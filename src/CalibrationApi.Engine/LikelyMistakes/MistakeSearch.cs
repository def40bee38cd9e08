using System.Runtime.InteropServices;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.ReferenceValues;

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

    // The bounds of so many mistakes in the whole test add up.
    private const int WholeTestKinds = 10;

    // No mistake at one place has more than this share of the prior of all, whatever the context (MistakePriorTests).
    private const double MostShare = 0.5;

    // Logarithm of prior times Bayes factor under which a mistake is not shown.
    private static readonly double Limit = Math.Log(MistakeJudgement.ShownFrom * (1 - MistakeJudgement.PriorOfAnyMistake));

    /// <summary>Searches.</summary>
    /// <param name="test">The test.</param>
    /// <param name="readings">Its readings.</param>
    /// <param name="estimate">Its value.</param>
    /// <param name="dayToDay">Standard deviation between days, relative.</param>
    /// <param name="isLarge">The change is so large that everything that could explain it is listed.</param>
    /// <param name="isBorneOut">A second test, set up apart, agrees.</param>
    public static LikelyMistakesResult Of(
        CatchTestQuestion test,
        CatchReadings readings,
        MassPerRevolutionEstimate estimate,
        double dayToDay,
        bool isLarge = false,
        bool isBorneOut = false
    )
    {
        if (test.Reference is null && readings.Count < FewestWithoutReference)
            return LikelyMistakesResult.None;
        var hand = new TestAtHand(test, readings);
        // What another lot changes is in the value predicted for it, with its uncertainty.
        var change = test is { Context.NewLot: true, Predicted: null }
            ? MistakeJudgement.OrdinaryChangeWithNewLot
            : MistakeJudgement.OrdinaryChange;
        var likelihood = new TestLikelihood(readings, hand.Expected, change, CommonVariance(test, estimate, dayToDay));
        var gains = new double[readings.Count];
        var gain = LargestGain(likelihood, gains);
        var mayFit = !isLarge && likelihood.IsVisible && ExactFit.MayExplain(hand, likelihood);
        if (
            !isLarge
            && !mayFit
            && !hand.TareIsZeroAgainstTheRecord
            && gain < Limit - Math.Log(MistakeJudgement.PriorOfAnyMistake * MostShare)
        )
            return LikelyMistakesResult.None;
        var priors = new MistakePriors(hand, isBorneOut);
        var decidesNothing = !isLarge && NothingCanBeShown(hand, likelihood, priors, gains);
        if (decidesNothing && !(mayFit && ExactFit.IsWorthListing(hand, likelihood, priors)))
            return LikelyMistakesResult.None;

        var posteriors = Posteriors(hand, likelihood, priors);
        var listing = new MistakeListing(hand, likelihood, posteriors);
        // Too improbable to be shown, and to count against the change: it is only listed.
        if (decidesNothing)
            return new LikelyMistakesResult { AlsoPossible = listing.FittingExactly() };
        var shown = listing.Shown();
        return new LikelyMistakesResult
        {
            AnyProbability = OfAnyMistake(posteriors),
            Shown = shown,
            AlsoPossible =
                isLarge ? listing.AlsoPossible(shown)
                : mayFit && shown.Count == 0 ? listing.FittingExactly()
                : [],
        };
    }

    /// <summary>Every hypothesis with its posterior probability; the ordinary change, without a mistake, comes first.</summary>
    public static List<Posterior> Posteriors(TestAtHand test, TestLikelihood likelihood, MistakePriors priors)
    {
        var ofMistakes = 0.0;
        var all = new List<Posterior>(MistakeCatalog.All.Length * (priors.Catches + 1) + 1) { default };
        foreach (var hypothesis in priors.Hypotheses())
        {
            ofMistakes += hypothesis.Prior;
            all.Add(Weigh(hypothesis, test, likelihood));
        }

        all[0] = new(null, null, null, Math.Log(1 - ofMistakes), likelihood.Ordinary, 0);
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

    /// <summary>
    /// One hypothesis without its probability: the variants of a mistake share its prior, and its likelihood is their mean.
    /// </summary>
    public static Posterior Weigh(Hypothesis hypothesis, TestAtHand test, TestLikelihood likelihood)
    {
        var (mistake, at, prior) = hypothesis;
        Prediction? best = null;
        double most = double.NegativeInfinity,
            sum = 0;
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
    private static bool NothingCanBeShown(TestAtHand test, TestLikelihood likelihood, MistakePriors priors, double[] gains)
    {
        var ofLevel = Math.Exp(likelihood.LargestGainOfLevel + Slack);
        var most = Math.Exp(Limit);
        var sum = 0.0;
        for (var kind = 0; kind < MistakeCatalog.All.Length; kind++)
        {
            var mistake = MistakeCatalog.All[kind];
            var prior = priors.OfWhole[kind];
            var bound = prior <= 0 ? 0 : prior * ofLevel * (test.Count > 1 ? Math.Exp(mistake.LargestGain(likelihood)) : 1);
            if (!IsUnlikely(new Hypothesis(mistake, null, prior), bound, most / WholeTestKinds))
                return false;
        }

        for (var at = 0; at < priors.Catches; at++)
        {
            var factor = ofLevel * Math.Exp(gains[at]);
            // In most catches no mistake comes near the limit, however large a share of the prior it has.
            if (priors.LargestIn(at) * factor <= most)
            {
                sum += priors.SumIn(at) * factor;
                if (sum > MistakeJudgement.NamedFrom)
                    return false;
                continue;
            }

            for (var kind = 0; kind < MistakeCatalog.All.Length; kind++)
            {
                var prior = priors.Of(kind, at);
                if (!IsUnlikely(new Hypothesis(MistakeCatalog.All[kind], at, prior), prior * factor, most))
                    return false;
            }
        }

        return true;

        // Together they must not be likelier than the ordinary change either.
        bool IsUnlikely(Hypothesis hypothesis, double bound, double enough)
        {
            if (bound > enough)
                bound = hypothesis.Prior * Math.Exp(Weigh(hypothesis, test, likelihood).LogLikelihood - likelihood.Ordinary);
            sum += bound;
            return bound <= most && sum <= MistakeJudgement.NamedFrom;
        }
    }

    private static double OfAnyMistake(List<Posterior> posteriors)
    {
        var sum = 0.0;
        foreach (ref readonly var each in CollectionsMarshal.AsSpan(posteriors))
            sum += each.Mistake is null ? 0 : each.Probability;
        return sum;
    }

    private static double CommonVariance(CatchTestQuestion test, MassPerRevolutionEstimate estimate, double dayToDay)
    {
        var reference = test switch
        {
            { Reference: not null, Predicted: { } predicted } => predicted.StandardUncertainty,
            { Reference: { Kind: ReferenceKind.StartValue, RelativeUncertainty: null } } => MistakeJudgement.StartValueUncertainty,
            _ => test.Reference?.StandardUncertainty ?? 0,
        };
        return estimate.SharedTare * estimate.SharedTare
            + estimate.Points * estimate.Points
            + dayToDay * dayToDay
            + reference * reference
            + (test.Reference?.FromAnotherScale is true ? estimate.Span * estimate.Span : 0);
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
    public readonly record struct Posterior(
        Mistake? Mistake,
        Prediction? Prediction,
        int? At,
        double LogPrior,
        double LogLikelihood,
        double Probability
    );
}
