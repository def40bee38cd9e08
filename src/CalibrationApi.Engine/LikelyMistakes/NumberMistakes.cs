using System.Globalization;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>A decimal point slipped by one place, rarely two, in a mass or in the count.</summary>
internal sealed class DecimalSlip : Mistake
{
    private const double One = 1 - MistakeJudgement.TwoPlaces;
    private static readonly Prediction[] OfNetMass = Slips(One / 2);
    private static readonly Prediction[] OfNetMassWithTare = Slips(One / 4);

    public override bool ReshapesTest => true;

    protected override MistakeCode Code => MistakeCodes.DecimalSlip;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.DecimalSlip;

    // With a tare the slip of a gross mass leaves the net mass a little off ten times.
    public override Prediction[] Predictions(TestAtHand test, int? at) =>
        test.HasTare(at ?? 0)
            ?
            [
                .. OfNetMassWithTare,
                new CorrectedMass(i => test.Gross(i) / 10 - test.TareTakenOff(i), 0.1, One / 5),
                new CorrectedMass(i => test.Gross(i) * 10 - test.TareTakenOff(i), 10, One / 5),
                new CorrectedMass(i => test.Gross(i) - test.TareTakenOff(i) / 10, 1, One / 20),
                new CorrectedMass(i => test.Gross(i) - test.TareTakenOff(i) * 10, 1, One / 20),
            ]
            : OfNetMass;

    public override Sentence Fit(Prediction prediction) => $"a decimal point in the wrong place explains that";

    protected override double WeightOf(TestAtHand test, int at) => MistakeJudgement.Weight.DecimalSlip;

    private static Prediction[] Slips(double byOnePlace) =>
        [
            new FixedRatio(100, MistakeJudgement.TwoPlaces / 2),
            new FixedRatio(0.01, MistakeJudgement.TwoPlaces / 2),
            new FixedRatio(10, byOnePlace),
            new FixedRatio(0.1, byOnePlace),
        ];
}

/// <summary>Two neighbouring digits of a mass or of the count changed places, or one of the first two was read or typed wrong.</summary>
internal sealed class DigitWrong : Mistake
{
    private const int WrongDigits = 2;
    private const int MostDecimals = 3;
    private const double LeastOff = 0.02;
    private const double ShareOfMass = 0.7;
    private const double KilogramsPerPound = 0.45359237;

    protected override MistakeCode Code => MistakeCodes.DigitWrong;

    protected override double WholeTestShare => 0;

    public override Prediction[] Predictions(TestAtHand test, int? at)
    {
        var one = at ?? 0;
        var unit = test.Context.EnteredInPounds is true ? KilogramsPerPound : 1;
        var off = test.Off(one);
        if (Math.Abs(off) < LeastOff)
            return [];
        var predictions = new List<Prediction>();
        foreach (var (meant, share) in Others(test.OnTheScale(one) / unit))
        {
            if (Helps(off, (meant * unit - test.TareOnTheScale(one)) / test.InContainer(one)))
                predictions.Add(new CorrectedMass(i => test.AsMetered(i, meant * unit - test.TareOnTheScale(i)), 1, ShareOfMass * share));
        }

        foreach (var (meant, share) in Others(test.Turns(one)))
        {
            if (Helps(off, test.Turns(one) / meant))
                predictions.Add(new CorrectedTurns(_ => meant, (1 - ShareOfMass) * share));
        }

        return [.. predictions];
    }

    public override Sentence Fit(Prediction prediction) => $"two digits that changed places, or one that is wrong, explain that";

    protected override double WeightOf(TestAtHand test, int at) => MistakeJudgement.Weight.DigitWrong;

    // A number that would put the catch as far off as it is, or farther, explains nothing; most digits need not be weighed.
    private static bool Helps(double off, double factor) => factor > 0 && Math.Abs(off + Math.Log(factor)) < Math.Abs(off);

    // What may have been meant: most of the weight on swapped neighbours, the rest on a wrong first or second digit.
    private static List<(double Meant, double Share)> Others(double typed)
    {
        var digits = Math.Round(typed, MostDecimals).ToString("0.###", CultureInfo.InvariantCulture);
        var swapped = new List<double>();
        var wrong = new List<double>();
        for (var (i, seen) = (0, 0); i < digits.Length; i++)
        {
            if (digits[i] == '.')
                continue;
            var next = i + 1 < digits.Length && digits[i + 1] == '.' ? i + 2 : i + 1;
            if (next < digits.Length && digits[next] != digits[i])
                swapped.Add(With(digits, i, digits[next], next, digits[i]));
            for (var other = '0'; seen < WrongDigits && other <= '9'; other++)
            {
                if (other != digits[i])
                    wrong.Add(With(digits, i, other, i, other));
            }

            seen++;
        }

        var ofSwapped = swapped.Count == 0 ? 0 : MistakeJudgement.SwappedDigits;
        return
        [
            .. swapped.Select(each => (each, ofSwapped / swapped.Count)),
            .. wrong.Select(each => (each, (1 - ofSwapped) / wrong.Count)),
        ];
    }

    private static double With(string digits, int first, char one, int second, char other)
    {
        var changed = digits.ToCharArray();
        (changed[first], changed[second]) = (one, other);
        return double.Parse(changed, CultureInfo.InvariantCulture);
    }
}

/// <summary>The count shows twice the revolutions, as when both edges of a sensor are counted.</summary>
internal sealed class CountDoubled : Mistake
{
    private static readonly Prediction[] Always = [new FixedRatio(0.5)];

    public override double RepeatChance => MistakeJudgement.Repeat.Habit;

    protected override MistakeCode Code => MistakeCodes.CountDoubled;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.Count;

    public override Prediction[] Predictions(TestAtHand test, int? at) => Always;

    public override Sentence Fit(Prediction prediction) => $"a count that shows twice the revolutions explains that";

    protected override double WeightOf(TestAtHand test, int at) => MistakeJudgement.Weight.CountDoubled;
}

/// <summary>The count shows half the revolutions, as when every second pulse is lost.</summary>
internal sealed class CountHalved : Mistake
{
    private static readonly Prediction[] Always = [new FixedRatio(2)];

    public override double RepeatChance => MistakeJudgement.Repeat.Habit;

    protected override MistakeCode Code => MistakeCodes.CountHalved;

    protected override double WholeTestShare => MistakeJudgement.WholeTest.Count;

    public override Prediction[] Predictions(TestAtHand test, int? at) => Always;

    public override Sentence Fit(Prediction prediction) => $"a count that shows half the revolutions explains that";

    protected override double WeightOf(TestAtHand test, int at) => MistakeJudgement.Weight.CountHalved;
}
