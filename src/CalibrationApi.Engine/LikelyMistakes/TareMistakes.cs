using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>The empty container is still in the mass: true mass = mass entered - tare.</summary>
internal sealed class TareNotTakenOff : Mistake
{
    public override bool ReshapesTest => true;

    protected override MistakeCode Code => MistakeCodes.TareNotTakenOff;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.TareNotTakenOff;

    protected override bool IsAlikeInAllCatches => false;

    public override Prediction[] Predictions(TestAtHand test, int? at) =>
        test.ContainerTare(at ?? 0) is null
            ? [new RatioRange(MistakeJudgement.Range.TareInside)]
            : [new CorrectedMass(i => test.Mass(i) - test.ContainerTare(i)!.Value)];

    public override Sentence Fit(Prediction prediction) => $"the empty container left in the mass explains that";

    public override double RaisedBy(TestAtHand test) => test.TareIsZeroAgainstTheRecord ? MistakeJudgement.Factor.AgainstTheRecord : 1;

    protected override double WeightOf(TestAtHand test, int at) =>
        MistakeJudgement.Weight.TareNotTakenOff
        * (
            test.HasTare(at) ? MistakeJudgement.Factor.NearlyImpossible
            : test.ContainerTare(at) is null ? MistakeJudgement.Factor.Unsharp
            : test.HasAnyTare ? MistakeJudgement.Factor.OnlyOneWithoutTare
            : 1
        );
}

/// <summary>The container was subtracted from a mass that was net already: true mass = mass entered + tare.</summary>
internal sealed class TareTakenOffTwice : Mistake
{
    public override bool ReshapesTest => true;

    protected override MistakeCode Code => MistakeCodes.TareTakenOffTwice;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.TareTakenOffTwice;

    protected override bool IsAlikeInAllCatches => false;

    public override Prediction[] Predictions(TestAtHand test, int? at) =>
        [new CorrectedMass(i => test.Mass(i) + (test.ContainerTare(i) ?? 0))];

    public override Sentence Fit(Prediction prediction) => $"taking the empty container off twice explains that";

    protected override double WeightOf(TestAtHand test, int at) =>
        test.ContainerTare(at) is null ? 0 : MistakeJudgement.Weight.TareTakenOffTwice;
}

/// <summary>The tare belongs to another container: true mass = gross - tare of the other.</summary>
internal sealed class TareOfAnotherContainer : Mistake
{
    public override bool ReshapesTest => true;

    protected override MistakeCode Code => MistakeCodes.TareOfAnotherContainer;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.TareOfAnotherContainer;

    protected override bool IsAlikeInAllCatches => false;

    public override Prediction[] Predictions(TestAtHand test, int? at)
    {
        if (test.Context.OtherContainers.Count == 0)
            return [Unknown(test, at ?? 0)];
        var others = Others(test, at).ToArray();
        return
        [
            .. others.Select(other => new CorrectedMass(
                i => test.Gross(i) - test.AsMetered(i, other.Tare),
                1,
                1.0 / others.Length,
                other.Name
            )),
        ];
    }

    public override Sentence Fit(Prediction prediction) =>
        prediction.Name is { } name
            ? (Sentence)$"the container {name} with the tare of another explains that"
            : $"the tare of another container explains that";

    protected override double WeightOf(TestAtHand test, int at) =>
        !test.HasTare(at) ? 0
        : test.Context.OtherContainers.Count == 0 ? MistakeJudgement.Factor.Unsharp * MistakeJudgement.Weight.TareOfAnotherContainer
        : Others(test, at).Any() ? MistakeJudgement.Weight.TareOfAnotherContainer
        : 0;

    // One that weighs the same cannot have made a difference: in the whole test, not in any of its catches. Else the container
    // that most catches were weighed in would explain one wrong tare as a mistake in all of them.
    private static IEnumerable<OtherContainer> Others(TestAtHand test, int? at) =>
        test.Context.OtherContainers.Where(other =>
            at is { } one ? Differs(test, one, other) : Enumerable.Range(0, test.Count).All(each => Differs(test, each, other))
        );

    private static bool Differs(TestAtHand test, int at, OtherContainer other) =>
        Math.Abs(test.AsMetered(at, other.Tare) - test.TareTakenOff(at)) > MistakeJudgement.SameTare * test.Mass(at);

    private static RatioRange Unknown(TestAtHand test, int at)
    {
        var (mass, tare) = (test.Mass(at), test.TareTakenOff(at));
        var (low, high) = MistakeJudgement.Range.OtherTare;
        // However heavy the container really was, at least a tenth of the mass entered was product.
        var least = Math.Max(mass - (high - 1) * tare, mass / 10);
        return new RatioRange(mass / (mass + (1 - low) * tare), mass / least);
    }
}
