using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>What a headline that says keep or adopt must not leave out.</summary>
internal static class HeadlineQualification
{
    /// <summary>A sentence to follow the headline; null when it can stand alone.</summary>
    public static Sentence? Of(CatchTestQuestion test, CatchTestResult result)
    {
        if (result.Decision.Verdict is not (Verdict.Keep or Verdict.Adopt))
            return null;
        var conditions = Conditions(test);
        var entry = Entry(test, result);
        return (conditions, entry) switch
        {
            (null, null) => null,
            ({ } one, null) => one,
            (null, { } other) => other,
            ({ } one, { } other) => $"{one} {other}",
        };
    }

    /// <summary>Names of the conditions that were not those of sowing, as findings say in full.</summary>
    private static Sentence? Conditions(CatchTestQuestion test)
    {
        if (test.Conditions is not { } conditions)
            return null;
        string[] names = [.. conditions.NamesDifferingFrom(test.SowingConditions)];
        if (names.Length > 0)
            return $"But the {Together(names)} {(names.Length == 1 ? "was" : "were")} not as in sowing: test again near the conditions of sowing.";
        return conditions.IsNearlyEmpty(test.SowingConditions)
            ? (Sentence)$"But the tank was nearly empty: test again with more product in it."
            : null;
    }

    private static Sentence? Entry(CatchTestQuestion test, CatchTestResult result)
    {
        if (result.Decision.Verdict != Verdict.Adopt || test.ControllerEntry is not { } entry)
            return null;
        if (result.Enter is not { } enter)
            return $"But with {entry.Decimals} decimals in {entry.Unit.Symbol} the controller could only take 0: choose a form or a unit with more digits first.";
        return CatchTestFindings.RoundingMatters(enter, result.Settings)
            ? (Sentence)
                $"But the controller takes too few decimals: that is {new Ratio(Math.Abs(enter.RoundingError)):F1} {(enter.RoundingError > 0 ? "above" : "below")} the value found."
            : null;
    }

    private static string Together(string[] names) => names.Length == 1 ? names[0] : $"{string.Join(", ", names[..^1])} and {names[^1]}";
}
