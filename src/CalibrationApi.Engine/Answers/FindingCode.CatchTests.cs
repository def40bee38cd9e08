namespace CalibrationApi.Engine.Answers;

// Codes of what a catch test still lacks before its number is used.
public static partial class FindingCode
{
    /// <summary>The change from what was expected is so large that one set-up does not show it: its catches share tare, points, element, unit and product.</summary>
    [Remedy("Set the test up anew and test again: weigh the empty container, count the points, look at element and product, prime the meter. Send the first test as earlierTest; stored tests find it themselves."), Severities(Severity.Warning)]
    public const string SecondTestNeeded = "second-test-needed";

    /// <summary>An earlier test, set up apart, does not bear this one out.</summary>
    [Remedy("Find out what differed between the two tests. Set the test up anew and test once more; the two that agree count."), Severities(Severity.Warning)]
    public const string TestsDisagree = "tests-disagree";

    /// <summary>A large change that a second test, set up apart, bears out.</summary>
    [Remedy("Type in the number that the answer gives, then adopt it, so that the record says what the controller uses."), Severities(Severity.Warning)]
    public const string ChangeConfirmed = "change-confirmed";
}
