namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>The scale showed pounds and the numbers were entered as kilograms.</summary>
internal sealed class PoundsAsKilograms : Mistake
{
    private const double KilogramsPerPound = 0.45359237;

    public override string Check => "Compare the unit on the display of the scale with the unit that was entered.";

    protected override string Code => MistakeCode.PoundsAsKilograms;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.Unit;

    public override IEnumerable<Prediction> Predictions(TestAtHand test, int? at) => [new FixedRatio(1 / KilogramsPerPound)];

    public override FormattableString Fit(Prediction prediction) => $"pounds entered as kilograms give 2.2 times";

    protected override double WeightOf(TestAtHand test, int at) => test.Context.EnteredInPounds is true ? 0 : Weight(test.Context, false);

    /// <summary>Weight of having entered masses in a unit that the scale does not show.</summary>
    public static double Weight(MistakeContext context, bool entered) => MistakeJudgement.Weight.Unit
        * (context.EnteredInPounds is null ? 0.5 : 1)
        * (context.ScaleInPounds is not { } scale ? 1 : scale == entered ? MistakeJudgement.Factor.UnitOfTheScale : MistakeJudgement.Factor.UnitOtherThanTheScale);
}

/// <summary>The scale showed kilograms and the numbers were entered as pounds.</summary>
internal sealed class KilogramsAsPounds : Mistake
{
    private const double KilogramsPerPound = 0.45359237;

    public override string Check => "Compare the unit on the display of the scale with the unit that was entered.";

    protected override string Code => MistakeCode.KilogramsAsPounds;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.Unit;

    public override IEnumerable<Prediction> Predictions(TestAtHand test, int? at) => [new FixedRatio(KilogramsPerPound)];

    public override FormattableString Fit(Prediction prediction) => $"kilograms entered as pounds give 0.45 times";

    protected override double WeightOf(TestAtHand test, int at) => test.Context.EnteredInPounds is false ? 0 : PoundsAsKilograms.Weight(test.Context, true);
}
