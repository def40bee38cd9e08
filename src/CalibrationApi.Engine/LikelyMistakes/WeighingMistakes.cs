using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>Product of an earlier catch, or of another product, was still in the container when a catch was weighed.</summary>
internal sealed class ResidueInContainer : Mistake
{
    private static readonly Prediction[] Always = [new RatioRange(MistakeJudgement.Range.Residue)];

    protected override MistakeCode Code => MistakeCodes.ResidueInContainer;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.Residue;

    protected override bool IsAlikeInAllCatches => false;

    public override Prediction[] Predictions(TestAtHand test, int? at) => Always;

    public override Sentence Fit(Prediction prediction) => $"product that was left in the container explains that";

    // A tare that is read anew before each catch holds the residue as well.
    protected override double WeightOf(TestAtHand test, int at) =>
        MistakeJudgement.Weight.Residue * (test.HasTareOfItsOwn(at) ? MistakeJudgement.Factor.NearlyImpossible : 1);
}

/// <summary>Wind, a hand, a rope or the frame carried part of the container while it was weighed.</summary>
internal sealed class WindOrHand : Mistake
{
    private static readonly Prediction[] Always = [new RatioRange(MistakeJudgement.Range.WindOrHand)];

    protected override MistakeCode Code => MistakeCodes.WindOrHand;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.WindOrHand;

    public override Prediction[] Predictions(TestAtHand test, int? at) => Always;

    public override Sentence Fit(Prediction prediction) => $"wind or a hand that carried part of the container explains that";

    protected override double WeightOf(TestAtHand test, int at) => MistakeJudgement.Weight.WindOrHand;
}

/// <summary>Pounds and ounces were typed as a decimal number: 12 lb 8 oz as 12.8 lb.</summary>
internal sealed class OuncesAsDecimals : Mistake
{
    private const double KilogramsPerPound = 0.45359237;
    private const int OuncesPerPound = 16;

    public override bool ReshapesTest => true;

    public override double RepeatChance => MistakeJudgement.Repeat.Habit;

    protected override MistakeCode Code => MistakeCodes.OuncesAsDecimals;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.Unit;

    protected override bool IsAlikeInAllCatches => false;

    public override Prediction[] Predictions(TestAtHand test, int? at) =>
        [new CorrectedMass(i => test.AsMetered(i, Meant(test.OnTheScale(i))!.Value - Meant(test.TareOnTheScale(i))!.Value))];

    public override Sentence Fit(Prediction prediction) => $"ounces typed as decimals of a pound explain that";

    protected override double WeightOf(TestAtHand test, int at) =>
        test.Context.EnteredInPounds is true
        && Meant(test.OnTheScale(at)) is { } gross
        && Meant(test.TareOnTheScale(at)) is { } tare
        && Math.Abs(gross - tare - test.InContainer(at)) > MistakeJudgement.SameTare * test.InContainer(at)
            ? MistakeJudgement.Weight.OuncesAsDecimals
            : 0;

    // The decimals typed, read as ounces: one decimal is 0 to 9 of them, two are 10 to 15. Null for any other number.
    private static double? Meant(double kilograms)
    {
        var pounds = Math.Round(kilograms / KilogramsPerPound, 6);
        var whole = Math.Floor(pounds);
        var hundredths = Math.Round((pounds - whole) * 100, 4);
        double? ounces =
            hundredths % 10 == 0 ? hundredths / 10
            : hundredths is >= 11 and < OuncesPerPound && hundredths % 1 == 0 ? hundredths
            : null;
        return ounces is { } meant ? (whole + meant / OuncesPerPound) * KilogramsPerPound : null;
    }
}
