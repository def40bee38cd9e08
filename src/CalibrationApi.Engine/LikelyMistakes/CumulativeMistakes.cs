using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>Each reading, or one of them, holds the catch before it as well.</summary>
internal abstract class CumulativeMistake : Mistake
{
    public override bool ReshapesTest => true;

    public override bool ShowsWithoutReference => true;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.Cumulative;

    // The first catch has none before it; with two catches, the second one is the whole test.
    public override MistakeWeight Weigh(TestAtHand test, Span<double> ofCatches)
    {
        if (ofCatches.Length == 1)
            return new(0, 0);
        var weight = WeightOf(test, 0);
        if (ofCatches.Length == 2)
            return new(weight, 0);
        ofCatches[0] = 0;
        ofCatches[1..].Fill((1 - WholeTestShare) * weight / (ofCatches.Length - 1));
        return new(WholeTestShare * weight, null);
    }
}

/// <summary>The container was not emptied between catches: each mass holds the ones before it.</summary>
internal sealed class ContainerNotEmptied : CumulativeMistake
{
    protected override MistakeCode Code => MistakeCodes.ContainerNotEmptied;

    public override Prediction[] Predictions(TestAtHand test, int? at) =>
        [new CorrectedMass(i => i == 0 ? test.Mass(0) : test.Mass(i) - test.Mass(i - 1))];

    public override Sentence Fit(Prediction prediction) => $"a container that still held the catch before explains that";

    protected override double WeightOf(TestAtHand test, int at) => MistakeJudgement.Weight.NotEmptied;
}

/// <summary>The counter was not set to zero between catches: each count holds the ones before it.</summary>
internal sealed class CounterNotReset : CumulativeMistake
{
    protected override MistakeCode Code => MistakeCodes.CounterNotReset;

    public override Prediction[] Predictions(TestAtHand test, int? at) =>
        [new CorrectedTurns(i => i == 0 ? test.Turns(0) : test.Turns(i) - test.Turns(i - 1))];

    public override Sentence Fit(Prediction prediction) => $"a counter that went on from the catch before explains that";

    protected override double WeightOf(TestAtHand test, int at) => MistakeJudgement.Weight.NotReset;
}
