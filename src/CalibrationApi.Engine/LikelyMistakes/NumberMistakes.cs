namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>A decimal point slipped by one place, rarely two, in a mass or in the count.</summary>
internal sealed class DecimalSlip : Mistake
{
    public override string Check => "Compare the masses and the count that were entered with what was written down at the machine.";

    public override bool ReshapesTest => true;

    protected override string Code => MistakeCode.DecimalSlip;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.DecimalSlip;

    public override IEnumerable<Prediction> Predictions(TestAtHand test, int? at)
    {
        const double Two = MistakeJudgement.TwoPlaces / 2;
        yield return new FixedRatio(100, Two);
        yield return new FixedRatio(0.01, Two);
        const double One = 1 - MistakeJudgement.TwoPlaces;
        if (!test.HasTare(at ?? 0))
        {
            yield return new FixedRatio(10, One / 2);
            yield return new FixedRatio(0.1, One / 2);
            yield break;
        }

        // With a tare the slip of a gross mass leaves the net mass a little off ten times.
        yield return new FixedRatio(10, One / 4);
        yield return new FixedRatio(0.1, One / 4);
        yield return new CorrectedMass(i => test.Gross(i) / 10 - test.TareTakenOff(i), 0.1, One / 5);
        yield return new CorrectedMass(i => test.Gross(i) * 10 - test.TareTakenOff(i), 10, One / 5);
        yield return new CorrectedMass(i => test.Gross(i) - test.TareTakenOff(i) / 10, 1, One / 20);
        yield return new CorrectedMass(i => test.Gross(i) - test.TareTakenOff(i) * 10, 1, One / 20);
    }

    public override FormattableString Fit(Prediction prediction) => $"a decimal point in the wrong place explains that";

    protected override double WeightOf(TestAtHand test, int at) => MistakeJudgement.Weight.DecimalSlip;
}

/// <summary>The count shows twice the revolutions, as when both edges of a sensor are counted.</summary>
internal sealed class CountDoubled : Mistake
{
    public override string Check => "Turn the meter by hand, say ten times, and compare with the count.";

    protected override string Code => MistakeCode.CountDoubled;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.Count;

    public override IEnumerable<Prediction> Predictions(TestAtHand test, int? at) => [new FixedRatio(0.5)];

    public override FormattableString Fit(Prediction prediction) => $"a count that shows twice the revolutions explains that";

    protected override double WeightOf(TestAtHand test, int at) => MistakeJudgement.Weight.CountDoubled;
}

/// <summary>The count shows half the revolutions, as when every second pulse is lost.</summary>
internal sealed class CountHalved : Mistake
{
    public override string Check => "Turn the meter by hand, say ten times, and compare with the count.";

    protected override string Code => MistakeCode.CountHalved;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.Count;

    public override IEnumerable<Prediction> Predictions(TestAtHand test, int? at) => [new FixedRatio(2)];

    public override FormattableString Fit(Prediction prediction) => $"a count that shows half the revolutions explains that";

    protected override double WeightOf(TestAtHand test, int at) => MistakeJudgement.Weight.CountHalved;
}
