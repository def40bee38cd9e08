using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>The pulses per revolution that turned pulses into revolutions are not those of this sensor.</summary>
internal sealed class PulsesPerRevolutionWrong : Mistake
{
    private static readonly Prediction[] Always = [new AnyRatio(MistakeJudgement.Broad.PulsesPerRevolution)];

    public override double RepeatChance => MistakeJudgement.Repeat.Habit;

    protected override MistakeCode Code => MistakeCodes.PulsesPerRevolutionWrong;

    protected override double WholeTestShare => 1;

    public override Prediction[] Predictions(TestAtHand test, int? at) => Always;

    public override Sentence Fit(Prediction prediction) => $"a wrong number of pulses per revolution explains that";

    protected override double WeightOf(TestAtHand test, int at) =>
        test.Context.CountedAs == CountSource.Pulses ? MistakeJudgement.Weight.PulsesPerRevolution : 0;
}

/// <summary>The turns of the motor, the crank or the wheel were counted as those of the meter, or the other way round.</summary>
internal sealed class TurnsOfAnotherShaft : Mistake
{
    public override double RepeatChance => MistakeJudgement.Repeat.Habit;

    protected override MistakeCode Code => MistakeCodes.TurnsOfAnotherShaft;

    protected override double WholeTestShare => 1;

    // Mass over turns of the meter, for mass over turns of the other shaft: the revolutions of the meter per turn of the other.
    public override Prediction[] Predictions(TestAtHand test, int? at) =>
        (test.Context.CountedAs, test.Context.MeterRevolutionsPerTurn) switch
        {
            (CountSource.Turns, { } ratio) => [new FixedRatio(1 / ratio, 0.5), new AnyRatio(MistakeJudgement.Broad.GearRatio, 0.5)],
            (CountSource.Turns, null) => [new AnyRatio(MistakeJudgement.Broad.GearRatio)],
            (_, { } ratio) => [new FixedRatio(ratio)],
            _ => [],
        };

    public override Sentence Fit(Prediction prediction) => $"turns of another shaft than the meter's explain that";

    protected override double WeightOf(TestAtHand test, int at) =>
        test.Context switch
        {
            { CountedAs: CountSource.Pulses } => 0,
            { CountedAs: not CountSource.Turns, MeterRevolutionsPerTurn: null } => 0,
            { MeterRevolutionsPerTurn: { } ratio } when Math.Abs(Math.Log(ratio)) < MistakeJudgement.SameRatio => 0,
            { MeterRevolutionsPerTurn: null } => MistakeJudgement.Factor.Unsharp * MistakeJudgement.Weight.GearRatio,
            _ => MistakeJudgement.Weight.GearRatio,
        };
}
