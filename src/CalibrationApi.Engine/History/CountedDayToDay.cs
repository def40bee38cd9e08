using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.History;

/// <summary>What of the difference between days a test of a series counts with.</summary>
/// <param name="Relative">The day-to-day standard deviation, relative.</param>
/// <param name="Finding">What is worth saying when the history shows more; null when it does not.</param>
public sealed record CountedDayToDay(double Relative, Finding? Finding)
{
    /// <summary>Largest standard deviation between days that a test is counted with, relative; judgement, no published source.</summary>
    public const double Most = 0.2;

    /// <summary>What the history says, as far as it can be counted.</summary>
    /// <param name="tests">Past tests of the series in the order of time, or in its reverse.</param>
    /// <param name="limits">What the test at hand has to show.</param>
    /// <returns>Null while the history says nothing.</returns>
    /// <remarks>
    /// <para>Formula: the smaller of <see cref="DayToDayFromHistory"/> and <see cref="CatchTestSettings.LargestDayToDay"/>, where that is
    /// above 0, and at most 20 %. Evidence is kept whatever the history says: a test is not refused because the meter is unsteady.</para>
    /// <para>Range: as of both.</para>
    /// <para>Source: judgement, no published source.</para>
    /// <para>Accuracy: exactly one of them (CountedDayToDayTests).</para>
    /// </remarks>
    public static CountedDayToDay? Of(IReadOnlyList<PastTest> tests, CatchTestLimits limits)
    {
        if (DayToDayFromHistory.Of(tests) is not { } day)
            return null;
        var most = CatchTestSettings.LargestDayToDay(limits);
        return day <= most || most == 0
            ? new CountedDayToDay(Math.Min(day, Most), null)
            : new CountedDayToDay(
                Math.Min(most, Most),
                Finding.Warning(
                    HistoryCodes.VariesFromDayToDay,
                    $"From test to test this meter has varied by {new Ratio(day):F1}; {new Ratio(most):F1} was counted, the most that a tolerance of {new Ratio(limits.Tolerance ?? CatchTestLimits.DefaultTolerance):0.##} leaves room for. Find out what differs from day to day, for example the tank level, and test again soon."
                )
            );
    }
}
