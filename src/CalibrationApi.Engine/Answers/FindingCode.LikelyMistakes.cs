namespace CalibrationApi.Engine.Answers;

// Codes of what may stand behind a change.
public static partial class FindingCode
{
    /// <summary>
    /// A change could also come from a mistake, although none is likely: a large one from all that is listed, a smaller one from what fits
    /// it exactly.
    /// </summary>
    [
        Remedy("Do the checks that likelyMistakes names, the first ones first. What did not happen goes under ruledOutMistakes."),
        Severities(Severity.Note)
    ]
    public const string PossibleMistakes = "possible-mistakes";

    /// <summary>
    /// The value compared with was weighed on a scale whose error was found later, and that error alone explains the change.
    /// </summary>
    [
        Remedy(
            "The meter has probably not changed. Use the value of this test, and judge later tests against it; look for other values that were weighed on that scale."
        ),
        Severities(Severity.Warning)
    ]
    public const string OldScaleExplainsChange = "old-scale-explains-change";
}
