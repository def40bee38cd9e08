using CalibrationApi.Engine.Repeatability;

namespace CalibrationApi.Engine.History;

/// <summary>What the past catches of a series say about the scatter of the next ones.</summary>
public static class RepeatabilityFromHistory
{
    /// <summary>Degrees of freedom from which history takes the place of the default: those that the default itself is worth.</summary>
    public const double Fewest = RepeatabilityPrior.DefaultDegreesOfFreedom;

    /// <summary>
    /// Most degrees of freedom that history is given: meters wear, so that old catches say less than their number; judgement.
    /// </summary>
    public const double Most = 15;

    /// <summary>Least repeatability that history can prove; judgement. Zero would make any two catches disagree.</summary>
    public const double Floor = 0.002;

    /// <summary>Pools the scatter of catches within tests, weighing and counting parts removed.</summary>
    /// <param name="tests">Past tests of the series.</param>
    /// <returns>Null while there are fewer than <see cref="Fewest"/> degrees of freedom.</returns>
    /// <remarks>
    /// <para>Formula: s^2 is the root of sum_j sum_i (k_ij/k_j - 1)^2 / (s^2 + v_ij) = sum_j (c_j - 1), with k_j the weighted mean of test
    /// j; with v = 0 that is the pooled standard deviation. Degrees of freedom sum(c_j - 1), at most 15.</para>
    /// <para>Range: tests with several catches; between the floor of 0.2 % and 30 %, 4 to 15 degrees of freedom.</para>
    /// <para>Source: pooling within groups, textbook; published scatter within groups in SOURCES.md, key NIST-STRD; floor and most are
    /// judgement.</para>
    /// <para>Accuracy: 1e-9 relative against pooled sums by hand (RepeatabilityFromHistoryTests); certified scatter within groups to 1e-10
    /// (RepeatabilityFromHistoryReferenceTests).</para>
    /// </remarks>
    public static RepeatabilityPrior? Of(IReadOnlyList<PastTest> tests)
    {
        PastTest[] several = [.. tests.Where(test => test.Values.Count > 1)];
        var degreesOfFreedom = several.Sum(test => test.Values.Count - 1);
        if (degreesOfFreedom < Fewest)
            return null;
        var low = Floor * Floor;
        var relative = Floor;
        if (Sum(several, low) > degreesOfFreedom)
        {
            // The sum falls as s^2 grows; a doubling finds the far side, halving the bracket finds the root.
            var high = low;
            while (Sum(several, high) > degreesOfFreedom)
                high *= 2;
            low = high / 2;
            for (var step = 0; step < 60 && high - low > 1e-14 * high; step++)
            {
                var middle = (low + high) / 2;
                if (Sum(several, middle) > degreesOfFreedom)
                    low = middle;
                else
                    high = middle;
            }

            relative = Math.Sqrt((low + high) / 2);
        }

        return new RepeatabilityPrior(
            Math.Min(RepeatabilityPrior.Most, relative),
            Math.Min(Most, degreesOfFreedom),
            $"from {several.Sum(test => test.Values.Count)} catches of {several.Length} earlier tests of this series"
        );
    }

    private static double Sum(PastTest[] tests, double between)
    {
        var total = 0.0;
        foreach (var test in tests)
        {
            double weights = 0,
                weighted = 0;
            for (var i = 0; i < test.Values.Count; i++)
            {
                var weight = 1 / (between + test.Variances[i]);
                weights += weight;
                weighted += weight * test.Values[i];
            }

            var mean = weighted / weights;
            for (var i = 0; i < test.Values.Count; i++)
            {
                var deviation = test.Values[i] / mean - 1;
                total += deviation * deviation / (between + test.Variances[i]);
            }
        }

        return total;
    }
}
