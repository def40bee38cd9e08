namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>How probable each mistake is at each place of a test, before the masses are looked at.</summary>
internal sealed class MistakePriors
{
    private readonly double[] ofWhole = new double[MistakeCatalog.All.Length];

    // Weight of each kind in each counted catch: most are as likely in one as in another.
    private readonly double[] ofEach = new double[MistakeCatalog.All.Length];
    private readonly double[]?[] ofCatches = new double[MistakeCatalog.All.Length][];
    private readonly double[] sums;
    private readonly double[] largest;
    private readonly double sumOfAlike;
    private readonly double largestOfAlike;
    private readonly double perWeight;

    /// <summary>Every mistake at every place where it can have happened; ruled out ones have no prior.</summary>
    /// <param name="test">The test.</param>
    /// <param name="isBorneOut">A second test, set up apart, agrees: what is in the whole test was then done twice.</param>
    public MistakePriors(TestAtHand test, bool isBorneOut = false)
    {
        var kinds = MistakeCatalog.All;
        (sums, largest) = (new double[test.Count], new double[test.Count]);
        Span<double> each = stackalloc double[test.Count];
        var total = 0.0;
        for (var kind = 0; kind < kinds.Length; kind++)
        {
            var weight = kinds[kind].Weigh(test, each);
            // Without a value to compare with, the whole test is asked only what its catches show against each other.
            var ofAll = test.Reference is not null || kinds[kind].ShowsWithoutReference ? weight.OfWhole : 0;
            total += ofAll + (weight.OfEach is { } alike ? alike * test.Count : Sum(each));
            // It keeps its share of the prior of all, which goes to the ordinary change.
            if (test.IsRuledOut(kinds[kind]))
                continue;
            ofWhole[kind] = ofAll;
            if (weight.OfEach is { } one)
            {
                ofEach[kind] = one;
                sumOfAlike += one;
                largestOfAlike = Math.Max(largestOfAlike, one);
            }
            else if (each.ContainsAnyExcept(0))
            {
                ofCatches[kind] = each.ToArray();
                Add(each);
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
    public double Of(int kind, int at) => perWeight * (ofCatches[kind] is { } each ? each[at] : ofEach[kind]);

    /// <summary>Of any kind in one counted catch.</summary>
    public double SumIn(int at) => perWeight * (sumOfAlike + sums[at]);

    /// <summary>Of the likeliest kind in one counted catch.</summary>
    public double LargestIn(int at) => perWeight * Math.Max(largestOfAlike, largest[at]);

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

    private static double Sum(ReadOnlySpan<double> weights)
    {
        var sum = 0.0;
        foreach (var weight in weights)
            sum += weight;
        return sum;
    }

    private void Add(ReadOnlySpan<double> weights)
    {
        for (var at = 0; at < weights.Length; at++)
        {
            sums[at] += weights[at];
            if (weights[at] > largest[at])
                largest[at] = weights[at];
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
