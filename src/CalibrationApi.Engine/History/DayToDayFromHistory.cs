namespace CalibrationApi.Engine.History;

/// <summary>What the past tests of a series say about the difference between days.</summary>
public static class DayToDayFromHistory
{
    /// <summary>Tests from which history takes the place of the default.</summary>
    public const int FewestTests = 5;

    /// <summary>Least day-to-day component that history can prove; judgement.</summary>
    public const double Floor = 0.001;

    /// <summary>The day-to-day standard deviation, relative.</summary>
    /// <param name="tests">Past tests of the series in the order of time.</param>
    /// <returns>Null while there are fewer than five tests or fewer than four pairs of neighbours of one lot.</returns>
    /// <remarks>
    /// <para>Formula: mean square successive difference: half the mean of (ln k_i - ln k_(i-1))^2 less the mean random variance of the
    /// tests. Neighbours share a slow drift almost wholly, so that a meter that wears does not look like one that jumps from day to day.
    /// Pairs of different lots are left out.</para>
    /// <para>Range: values above 0, in the order of time; no less than the floor of 0.1 %.</para>
    /// <para>Source: von Neumann et al., Ann. Math. Stat. 12 (1941) 153 (SOURCES.md, key NEUMANN-1941; from memory).</para>
    /// <para>Accuracy: 1e-10 relative against sums by hand (DayToDayFromHistoryTests); a published series within 1e-11
    /// (DayToDayFromHistoryReferenceTests).</para>
    /// </remarks>
    public static double? Of(IReadOnlyList<PastTest> tests)
    {
        if (tests.Count < FewestTests)
            return null;
        double squares = 0,
            known = 0;
        var pairs = 0;
        for (var i = 1; i < tests.Count; i++)
        {
            if (tests[i].Lot != tests[i - 1].Lot)
                continue;
            var difference = Math.Log(tests[i].Value / tests[i - 1].Value);
            squares += difference * difference;
            known +=
                tests[i].RandomUncertainty * tests[i].RandomUncertainty + tests[i - 1].RandomUncertainty * tests[i - 1].RandomUncertainty;
            pairs++;
        }

        return pairs < FewestTests - 1 ? null : Math.Sqrt(Math.Max(Floor * Floor, (squares - known) / (2 * pairs)));
    }
}
