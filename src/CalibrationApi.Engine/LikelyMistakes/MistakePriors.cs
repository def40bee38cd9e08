namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>How probable each mistake is before the masses are looked at.</summary>
internal static class MistakePriors
{
    /// <summary>Every mistake at every place where it can have happened, with its prior probability; ruled out ones have none.</summary>
    /// <param name="test">The test.</param>
    /// <param name="isBorneOut">A second test, set up apart, agrees: what is in the whole test was then done twice.</param>
    public static List<MistakeSearch.Hypothesis> Of(TestAtHand test, bool isBorneOut = false)
    {
        var kinds = MistakeCatalog.All;
        var end = test.Count == 1 ? 0 : test.Count;
        // Row 0 is the whole test, row i + 1 the counted catch i.
        var weights = new double[(test.Count + 1) * kinds.Length];
        Span<double> ofCatches = stackalloc double[test.Count];
        for (var kind = 0; kind < kinds.Length; kind++)
        {
            // Without a value to compare with, the whole test is asked only what its catches show against each other.
            var ofAll = kinds[kind].Weigh(test, ofCatches);
            weights[kind] = test.Reference is not null || kinds[kind].ShowsWithoutReference ? ofAll : 0;
            for (var at = 0; at < test.Count; at++)
                weights[(at + 1) * kinds.Length + kind] = ofCatches[at];
        }

        var total = 0.0;
        var most = 0;
        foreach (var weight in weights.AsSpan(0, (end + 1) * kinds.Length))
        {
            total += weight;
            most += weight > 0 ? 1 : 0;
        }

        var hypotheses = new List<MistakeSearch.Hypothesis>(most);
        var ruledOut = Array.ConvertAll(kinds, test.IsRuledOut);
        for (var at = -1; at < end; at++)
        {
            int? place = at < 0 ? null : at;
            for (var kind = 0; kind < kinds.Length; kind++)
            {
                if (weights[(at + 1) * kinds.Length + kind] is > 0 and var weight && !ruledOut[kind])
                    hypotheses.Add(
                        new MistakeSearch.Hypothesis(
                            kinds[kind],
                            place,
                            at < 0
                                ? PriorOfAll(test, kinds[kind], weight / total, isBorneOut)
                                : MistakeJudgement.PriorOfAnyMistake * weight / total
                        )
                    );
            }
        }

        return hypotheses;
    }

    // What contradicts the record adds to the probability of any mistake, as a factor of its odds; it takes nothing from the others.
    private static double PriorOfAll(TestAtHand test, Mistake mistake, double share, bool madeTwice)
    {
        var prior = MistakeJudgement.PriorOfAnyMistake * share;
        if (mistake.RaisedBy(test) is not 1 and var raised)
            prior = raised * prior / (1 + (raised - 1) * prior);
        return madeTwice ? mistake.RepeatChance * prior : prior;
    }
}
