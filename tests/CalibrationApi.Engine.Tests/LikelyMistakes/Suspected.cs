using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.LikelyMistakes;

/// <summary>Tests of a meter near 0.36 kg per revolution that hold a mistake. Invented; nothing here is published.</summary>
internal static class Suspected
{
    public const double InForce = 0.36;

    public static MistakeContext Metric { get; } = new() { EnteredInPounds = false };

    /// <summary>Catches of which only the net mass is known, as ratios to the value in force.</summary>
    public static CatchTestQuestion Net(params double[] ratios) =>
        Given.Test([.. ratios.Select(ratio => Given.Delivering(ratio * InForce))]).InForce(InForce) with
        {
            Context = Metric,
        };

    /// <summary>Catches with a tare of 1.6 kg, as ratios of the net mass.</summary>
    public static CatchTestQuestion Weighed(params double[] ratios) =>
        Given.Test([.. ratios.Select(ratio => Given.Weighed(ratio * InForce * 47 + 1.6, 1.6, 47))]).InForce(InForce) with
        {
            Context = Metric,
        };

    public static CatchTestQuestion Knowing(this CatchTestQuestion test, Func<MistakeContext, MistakeContext> context) =>
        test with
        {
            Context = context(test.Context),
        };

    public static CatchTestQuestion RulingOut(this CatchTestQuestion test, params MistakeCode[] codes) =>
        test.Knowing(known => known with { RuledOut = [.. known.RuledOut, .. codes] });

    public static CatchTestQuestion WithoutReference(this CatchTestQuestion test) => test with { Reference = null };

    /// <summary>Every hypothesis with prior and posterior, whether or not it is worth showing.</summary>
    public static List<MistakeSearch.Posterior> Posteriors(this CatchTestQuestion test)
    {
        var readings = CatchReadings.From(test);
        var settings = test.Evaluated().Settings;
        var likelihood = new TestLikelihood(
            readings,
            test.Reference?.Value.KilogramsPerRevolution,
            MistakeJudgement.OrdinaryChange,
            0.0005
        );
        var hand = new TestAtHand(test, readings);
        return MistakeSearch.Posteriors(hand, likelihood, new MistakePriors(hand));
    }

    /// <summary>Prior probability of a mistake at one place; 0 where it cannot have happened.</summary>
    public static double Prior(this CatchTestQuestion test, MistakeCode code, int? at = null)
    {
        var hand = new TestAtHand(test, CatchReadings.From(test));
        return new MistakePriors(hand)
            .Hypotheses()
            .Where(each => each.Mistake.CodeFor(hand) == code && each.At == at)
            .Sum(each => each.Prior);
    }

    public static OtherDelivery Other(string name, double ratio) => new(name, new MassPerRevolution(ratio * InForce));
}
