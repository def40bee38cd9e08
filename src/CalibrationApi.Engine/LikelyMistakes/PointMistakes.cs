using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>Product from one or two of the points was not caught.</summary>
internal sealed class CatchPointMissed : Mistake
{
    public override double RepeatChance => MistakeJudgement.Repeat.Habit;

    protected override MistakeCode Code => MistakeCodes.CatchPointMissed;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.PointMissed;

    public override Prediction[] Predictions(TestAtHand test, int? at) =>
        Meant(test) switch
        {
            null => [new RatioRange(MistakeJudgement.Range.PointMissed)],
            2 => [new FixedRatio(0.5)],
            { } points => [new FixedRatio((points - 1.0) / points, 0.8), new FixedRatio((points - 2.0) / points, 0.2)],
        };

    public override Sentence Fit(Prediction prediction) => $"a point whose product was not caught explains that";

    protected override double WeightOf(TestAtHand test, int at) =>
        Meant(test) switch
        {
            null => MistakeJudgement.Factor.Unsharp * MistakeJudgement.Weight.PointMissed,
            1 => 0,
            _ => MistakeJudgement.Weight.PointMissed,
        };

    /// <summary>Points that were meant to be caught; null when nobody said.</summary>
    public static int? Meant(TestAtHand test) => test.Test.CaughtPoints?.Caught ?? test.Context.CatchPoints;
}

/// <summary>Half of the points fed into the container, and the mass was sent as that of the whole meter.</summary>
internal sealed class HalfOfPointsAsWhole : Mistake
{
    private static readonly Prediction[] Always = [new FixedRatio(0.5)];

    public override double RepeatChance => MistakeJudgement.Repeat.Habit;

    protected override MistakeCode Code => MistakeCodes.HalfOfPointsAsWhole;

    protected override double WholeTestShare => 1;

    public override Prediction[] Predictions(TestAtHand test, int? at) => Always;

    public override Sentence Fit(Prediction prediction) => $"half of the points sent as the whole meter explain that";

    // A meter of one point has no half; of two, the half is the missed point; a part that was stated was thought of.
    protected override double WeightOf(TestAtHand test, int at) =>
        test.Test.CaughtPoints is not null
            ? 0
            : test.Context.CatchPoints switch
            {
                null => MistakeJudgement.Factor.Unsharp * MistakeJudgement.Weight.HalfOfPoints,
                { } points when points > 2 && points % 2 == 0 => MistakeJudgement.Weight.HalfOfPoints,
                _ => 0,
            };
}
