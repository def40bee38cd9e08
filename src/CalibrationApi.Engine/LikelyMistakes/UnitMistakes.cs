using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>The scale showed pounds and the numbers were entered as kilograms.</summary>
internal sealed class PoundsAsKilograms : Mistake
{
    private static readonly Prediction[] Always = [new FixedRatio(1 / KilogramsPerPound)];

    private const double KilogramsPerPound = 0.45359237;

    public override double RepeatChance => MistakeJudgement.Repeat.Habit;

    protected override MistakeCode Code => MistakeCodes.PoundsAsKilograms;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.Unit;

    public override Prediction[] Predictions(TestAtHand test, int? at) => Always;

    public override Sentence Fit(Prediction prediction) => $"pounds entered as kilograms give 2.2 times";

    protected override double WeightOf(TestAtHand test, int at) => test.Context.EnteredInPounds is true ? 0 : Weight(test.Context, false);

    /// <summary>Weight of having entered masses in a unit that the scale does not show.</summary>
    public static double Weight(MistakeContext context, bool entered) =>
        MistakeJudgement.Weight.Unit
        * (context.EnteredInPounds is null ? 0.5 : 1)
        * (
            context.ScaleInPounds is not { } scale ? 1
            : scale == entered ? MistakeJudgement.Factor.UnitOfTheScale
            : MistakeJudgement.Factor.UnitOtherThanTheScale
        );
}

/// <summary>The scale showed kilograms and the numbers were entered as pounds.</summary>
internal sealed class KilogramsAsPounds : Mistake
{
    private static readonly Prediction[] Always = [new FixedRatio(KilogramsPerPound)];

    private const double KilogramsPerPound = 0.45359237;

    public override double RepeatChance => MistakeJudgement.Repeat.Habit;

    protected override MistakeCode Code => MistakeCodes.KilogramsAsPounds;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.Unit;

    public override Prediction[] Predictions(TestAtHand test, int? at) => Always;

    public override Sentence Fit(Prediction prediction) => $"kilograms entered as pounds give 0.45 times";

    protected override double WeightOf(TestAtHand test, int at) =>
        test.Context.EnteredInPounds is false ? 0 : PoundsAsKilograms.Weight(test.Context, true);
}

/// <summary>The value compared with is a number per pound taken for one per kilogram, or the other way round.</summary>
internal sealed class ValueInAnotherUnit : Mistake
{
    private const double KilogramsPerPound = 0.45359237;

    public override double RepeatChance => MistakeJudgement.Repeat.Installed;

    protected override MistakeCode Code => MistakeCodes.ValueInAnotherUnit;

    protected override double WholeTestShare => 1;

    // What was predicted for a lot may have been made from the value in the other unit, or may stand on its own.
    public override Prediction[] Predictions(TestAtHand test, int? at)
    {
        var ratio = test.Context.ReferenceInPounds is true ? 1 / KilogramsPerPound : KilogramsPerPound;
        return test.Test.Predicted is null
            ? [new FixedRatio(ratio)]
            :
            [
                new FixedRatio(ratio, 0.5),
                new FixedRatio(ratio * test.Reference!.Value.KilogramsPerRevolution / test.Expected!.Value, 0.5),
            ];
    }

    public override Sentence Fit(Prediction prediction) =>
        $"a value to compare with that is in the other unit, pounds or kilograms, explains that";

    protected override double WeightOf(TestAtHand test, int at) =>
        test.Reference is null || test.Context.ReferenceInPounds is not { } value
            ? 0
            : MistakeJudgement.Weight.ValueInAnotherUnit
                * (
                    test.Context.EnteredInPounds is not { } masses ? 1
                    : value == masses ? MistakeJudgement.Factor.UnitOfTheScale
                    : MistakeJudgement.Factor.UnitOtherThanTheScale
                );
}
