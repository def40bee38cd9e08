namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>How probable each mistake is at each place of a test, before the masses are looked at.</summary>
internal sealed class MistakePriors
{
    private readonly double[] ofWhole = new double[MistakeCatalog.All.Length];

    // Of each kind one after the other: its weight in each counted catch.
    private readonly double[] ofCatches;
    private readonly double[] sums;
    private readonly double[] largest;
    private readonly double perWeight;

    /// <summary>Every mistake at every place where it can have happened; ruled out ones have no prior.</summary>
    /// <param name="test">The test.</param>
    /// <param name="isBorneOut">A second test, set up apart, agrees: what is in the whole test was then done twice.</param>
    public MistakePriors(TestAtHand test, bool isBorneOut = false)
    {
        var kinds = MistakeCatalog.All;
        ofCatches = new double[kinds.Length * test.Count];
        (sums, largest) = (new double[test.Count], new double[test.Count]);
        var total = 0.0;
        for (var kind = 0; kind < kinds.Length; kind++)
        {
            var each = ofCatches.AsSpan(kind * test.Count, test.Count);
            // Without a value to compare with, the whole test is asked only what its catches show against each other.
            var all = kinds[kind].Weigh(test, each);
            ofWhole[kind] = test.Reference is not null || kinds[kind].ShowsWithoutReference ? all : 0;
            total += ofWhole[kind];
            foreach (var weight in each)
                total += weight;
            // It keeps its share of the prior of all, which goes to the ordinary change.
            if (test.IsRuledOut(kinds[kind]))
            {
                ofWhole[kind] = 0;
                each.Clear();
            }

            for (var at = 0; at < each.Length; at++)
            {
                sums[at] += each[at];
                if (each[at] > largest[at])
                    largest[at] = each[at];
            }
        }

        perWeight = MistakeJudgement.PriorOfAnyMistake / total;
        for (var kind = 0; kind < kinds.Length; kind++)
            ofWhole[kind] = ofWhole[kind] > 0 ? PriorOfAll(test, kinds[kind], perWeight * ofWhole[kind], isBorneOut) : 0;
    }

    /// <summary>Of the whole test, in the order of <see cref="MistakeCatalog.All"/>; 0 where it cannot have happened.</summary>
    public ReadOnlySpan<double> OfWhole => ofWhole;

    /// <summary>Counted catches that a mistake can be in alone; a test of one catch is that catch.</summary>
    public int Catches => sums.Length == 1 ? 0 : sums.Length;

    /// <summary>Of one kind in one counted catch; 0 where it cannot have happened.</summary>
    public double Of(int kind, int at) => perWeight * ofCatches[kind * sums.Length + at];

    /// <summary>Of any kind in one counted catch.</summary>
    public double SumIn(int at) => perWeight * sums[at];

    /// <summary>Of the likeliest kind in one counted catch.</summary>
    public double LargestIn(int at) => perWeight * largest[at];

    /// <summary>Every mistake at every place where it can have happened; those of the whole test come first.</summary>
    public IEnumerable<MistakeSearch.Hypothesis> Hypotheses()
    {
        for (var kind = 0; kind < ofWhole.Length; kind++)
        {
            if (ofWhole[kind] > 0)
                yield return new(MistakeCatalog.All[kind], null, ofWhole[kind]);
        }

        for (var at = 0; at < Catches; at++)
        {
            for (var kind = 0; kind < ofWhole.Length; kind++)
            {
                if (Of(kind, at) is > 0 and var prior)
                    yield return new(MistakeCatalog.All[kind], at, prior);
            }
        }
    }

    // What contradicts the record adds to the probability of any mistake, as a factor of its odds; it takes nothing from the others.
    private static double PriorOfAll(TestAtHand test, Mistake mistake, double prior, bool madeTwice)
    {
        if (mistake.RaisedBy(test) is not 1 and var raised)
            prior = raised * prior / (1 + (raised - 1) * prior);
        return madeTwice ? mistake.RepeatChance * prior : prior;
    }
}
