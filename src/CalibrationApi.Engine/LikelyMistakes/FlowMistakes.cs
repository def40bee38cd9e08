using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>The count began before the product flowed: only the first catch is short.</summary>
internal sealed class MeterNotPrimed : Mistake
{
    private static readonly Prediction[] Always = [new RatioRange(MistakeJudgement.Range.NotPrimed)];

    protected override MistakeCode Code => MistakeCodes.MeterNotPrimed;

    protected override double WholeTestShare => 0;

    protected override bool IsAlikeInAllCatches => false;

    public override Prediction[] Predictions(TestAtHand test, int? at) => Always;

    public override Sentence Fit(Prediction prediction) => $"a meter that was not yet full explains that";

    // The weight is shared by the catches, and all of it belongs to one. A test of one catch is that catch.
    protected override double WeightOf(TestAtHand test, int at) =>
        test.Position(at) == 0 ? test.Count * MistakeJudgement.Weight.NotPrimed : 0;
}

/// <summary>The container ran over: the mass is short, and near what the container holds.</summary>
internal sealed class ContainerOverflowed : Mistake
{
    private static readonly Prediction[] Always = [new RatioRange(MistakeJudgement.Range.Overflowed)];

    protected override MistakeCode Code => MistakeCodes.ContainerOverflowed;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.Overflowed;

    protected override bool IsAlikeInAllCatches => false;

    public override Prediction[] Predictions(TestAtHand test, int? at) => Always;

    public override Sentence Fit(Prediction prediction) => $"a container that ran over explains that";

    protected override double WeightOf(TestAtHand test, int at)
    {
        if (test.Context.ContainerCapacity is not { } capacity)
            return MistakeJudgement.Weight.Overflowed;
        var load = test.InContainer(at) / capacity.Kilograms;
        return MistakeJudgement.Weight.Overflowed
            * (
                load < MistakeJudgement.FarFromFull ? MistakeJudgement.Factor.NearlyImpossible
                : load >= MistakeJudgement.NearlyFull ? MistakeJudgement.Factor.NearCapacity
                : 1
            );
    }
}

/// <summary>The product hung in the tank, or the tank ran empty.</summary>
internal sealed class TankBridgedOrEmpty : Mistake
{
    private static readonly Prediction[] Always = Uneven.Within(MistakeJudgement.Range.BridgedOrEmpty);

    public override double LargestGain(TestLikelihood likelihood) => Uneven.LargestGain(likelihood);

    protected override MistakeCode Code => MistakeCodes.TankBridgedOrEmpty;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.BridgedOrEmpty;

    public override Prediction[] Predictions(TestAtHand test, int? at) => Always;

    public override Sentence Fit(Prediction prediction) => $"product that hung in the tank, or a tank that ran empty, explains that";

    protected override double WeightOf(TestAtHand test, int at) => MistakeJudgement.Weight.BridgedOrEmpty;
}

/// <summary>The meter was isolated, or stood still, part of the time while the count went on.</summary>
internal sealed class MeterIsolated : Mistake
{
    private static readonly Prediction[] Always = Uneven.Within(MistakeJudgement.Range.Isolated);

    public override double LargestGain(TestLikelihood likelihood) => Uneven.LargestGain(likelihood);

    protected override MistakeCode Code => MistakeCodes.MeterIsolated;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.Isolated;

    public override Prediction[] Predictions(TestAtHand test, int? at) => Always;

    public override Sentence Fit(Prediction prediction) => $"a meter that was isolated part of the time explains that";

    protected override double WeightOf(TestAtHand test, int at) => MistakeJudgement.Weight.Isolated;
}

internal static class Uneven
{
    /// <summary>Catches that agree speak against it.</summary>
    public static double LargestGain(TestLikelihood likelihood) => Math.Max(0, likelihood.GainOfAddedScatter(MistakeJudgement.FlowScatter));

    /// <summary>Product that hangs, or a meter that stands still now and then, seldom takes the same share of every catch.</summary>
    public static Prediction[] Within((double Low, double High) range) =>
        [
            new UnevenRange(range.Low, range.High, MistakeJudgement.FlowScatter, 1 - MistakeJudgement.EvenFlow),
            new RatioRange(range.Low, range.High, MistakeJudgement.EvenFlow),
        ];
}
