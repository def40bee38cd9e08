using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.History;

/// <summary>What other records say by now about a test that was kept.</summary>
public sealed record KnownSince
{
    /// <summary>
    /// Error of the scale, relative, that its first check after the test failed with; null when that passed, or there was none.
    /// </summary>
    public double? ErrorOfFailedCheck { get; init; }

    /// <summary>Another check of the scale is the last before the test than the one that was used.</summary>
    public bool IsScaleCheckChanged { get; init; }

    /// <summary>The earlier test that was put beside this one was superseded.</summary>
    public bool IsEarlierTestSuperseded { get; init; }

    /// <summary>The last test, which this one was compared with, was superseded.</summary>
    public bool IsStartSuperseded { get; init; }

    /// <summary>What happened to the value in force that the change is counted from.</summary>
    public SinceThenInForce InForce { get; init; }

    /// <summary>Each as a finding.</summary>
    public IReadOnlyList<Finding> Findings() => [.. All()];

    private IEnumerable<Finding> All()
    {
        if (ErrorOfFailedCheck is { } error)
            yield return Finding.Warning(
                HistoryCodes.ScaleCheckFailedLater,
                $"The scale failed its first check after this test: it was {new Ratio(error):F2} off. The masses of this test may be off by as much; test again with a good scale."
            );
        if (IsScaleCheckChanged)
            yield return Finding.Warning(
                HistoryCodes.ScaleCheckChanged,
                $"A check of the scale from before this test was entered or corrected after it. Enter this test once more, superseding this record, to have its masses corrected by that check."
            );
        if (IsEarlierTestSuperseded)
            yield return Finding.Warning(
                HistoryCodes.BasisSuperseded,
                $"The earlier test that was put beside this one has since been superseded. Enter this test once more, superseding this record, to have it judged anew."
            );
        if (IsStartSuperseded)
            yield return Finding.Warning(
                HistoryCodes.BasisSuperseded,
                $"The last test, which this one was compared with, has since been superseded. Enter this test once more, superseding this record, to have it judged anew."
            );
        if (InForce == SinceThenInForce.Entered)
            yield return Finding.Warning(
                HistoryCodes.ValueInForceChanged,
                $"A value in force at the time of this test was entered after it: the change that this test found is from another number. Enter this test once more, superseding this record, to have it compared anew."
            );
        if (InForce == SinceThenInForce.Changed)
            yield return Finding.Warning(
                HistoryCodes.ValueInForceChanged,
                $"The value in force at the time of this test was entered or corrected after it: the change that this test found is from another number. Enter this test once more, superseding this record, to have it compared anew."
            );
        if (InForce == SinceThenInForce.BasisSuperseded)
            yield return Finding.Warning(
                HistoryCodes.BasisSuperseded,
                $"The value in force that this test was compared with rests on a test that has since been superseded."
            );
    }
}

/// <summary>What happened, after a test was kept, to the value in force at its time.</summary>
public enum SinceThenInForce
{
    /// <summary>Nothing.</summary>
    Same,

    /// <summary>None was known; one was entered.</summary>
    Entered,

    /// <summary>It was corrected, or another one entered.</summary>
    Changed,

    /// <summary>The test behind it was superseded.</summary>
    BasisSuperseded,
}
