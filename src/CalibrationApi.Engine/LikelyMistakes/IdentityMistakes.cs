using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;

namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>Another metering element of this machine was fitted than the one stated.</summary>
internal sealed class AnotherElement : Mistake
{
    public override double RepeatChance => MistakeJudgement.Repeat.Installed;

    protected override MistakeCode Code => MistakeCodes.AnotherElement;

    protected override double WholeTestShare => 1;

    public override Prediction[] Predictions(TestAtHand test, int? at) => OtherDeliveries.Predictions(test, test.Context.OtherElements);

    public override Sentence Fit(Prediction prediction) =>
        prediction.Name is { } name
            ? (Sentence)$"the metering element {name} would deliver that"
            : $"another metering element of this machine would deliver that";

    protected override double WeightOf(TestAtHand test, int at) =>
        test.Reference is null || test.Context.OtherElements.Count == 0 ? 0 : MistakeJudgement.Weight.AnotherElement;
}

/// <summary>Another product of this machine was in the tank than the one stated.</summary>
internal sealed class AnotherProduct : Mistake
{
    public override double RepeatChance => MistakeJudgement.Repeat.Installed;

    protected override MistakeCode Code => MistakeCodes.AnotherProduct;

    protected override double WholeTestShare => 1;

    public override Prediction[] Predictions(TestAtHand test, int? at) => OtherDeliveries.Predictions(test, test.Context.OtherProducts);

    public override Sentence Fit(Prediction prediction) =>
        prediction.Name is { } name
            ? (Sentence)$"{name} in place of the product stated would deliver that"
            : $"another product of this machine would deliver that";

    protected override double WeightOf(TestAtHand test, int at) =>
        test.Reference is null || test.Context.OtherProducts.Count == 0 ? 0 : MistakeJudgement.Weight.AnotherProduct;
}

/// <summary>The value compared with is wrong: not the number in the controller, of another meter or product, or a poor guess.</summary>
internal sealed class ReferenceWrong : Mistake
{
    public override IEnumerable<MistakeCode> Codes => [MistakeCodes.ValueInForceWrong, MistakeCodes.StartValueWrong];

    public override double RepeatChance => MistakeJudgement.Repeat.Installed;

    protected override MistakeCode Code => MistakeCodes.ValueInForceWrong;

    protected override double WholeTestShare => 1;

    public override MistakeCode CodeFor(TestAtHand test) => IsStart(test) ? MistakeCodes.StartValueWrong : MistakeCodes.ValueInForceWrong;

    public override Prediction[] Predictions(TestAtHand test, int? at) =>
        [new AnyRatio(IsStart(test) ? MistakeJudgement.Broad.StartValue : MistakeJudgement.Broad.ValueInForce)];

    public override Sentence Fit(Prediction prediction) => $"a wrong number to compare with explains that";

    protected override double WeightOf(TestAtHand test, int at) =>
        test.Reference is null ? 0
        : IsStart(test) ? MistakeJudgement.Weight.StartValueWrong
        : MistakeJudgement.Weight.ValueInForceWrong;

    private static bool IsStart(TestAtHand test) => test.Reference is { Kind: ReferenceKind.StartValue };
}

/// <summary>None of the mistakes that have a name.</summary>
internal sealed class SomethingElse : Mistake
{
    private static readonly Prediction[] Always = [new AnyRatio(MistakeJudgement.Broad.SomethingElse)];

    protected override MistakeCode Code => MistakeCodes.SomethingElse;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.SomethingElse;

    public override Prediction[] Predictions(TestAtHand test, int? at) => Always;

    public override Sentence Fit(Prediction prediction) => $"no ordinary change and no single mistake that has a name explains that";

    protected override double WeightOf(TestAtHand test, int at) => MistakeJudgement.Weight.SomethingElse;
}

internal static class OtherDeliveries
{
    public static Prediction[] Predictions(TestAtHand test, IReadOnlyList<OtherDelivery> others) =>
        [
            .. others.Select(other => new FixedRatio(
                other.MassPerRevolution.KilogramsPerRevolution / test.Expected!.Value,
                1.0 / others.Count,
                IsUncertain: true,
                other.Name
            )),
        ];
}
