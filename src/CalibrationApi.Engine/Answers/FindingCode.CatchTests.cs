namespace CalibrationApi.Engine.Answers;

// Codes of what a catch test still lacks before its number is used.
public static partial class FindingCode
{
    /// <summary>
    /// The change from what was expected is so large that one set-up does not show it: its catches share tare, points, element, unit and
    /// product.
    /// </summary>
    [
        Remedy(
            "Set the test up anew and test again: weigh the empty container, count the points, look at element and product, prime the meter. Send the first test as earlierTest; stored tests find it themselves."
        ),
        Severities(Severity.Warning)
    ]
    public const string SecondTestNeeded = "second-test-needed";

    /// <summary>An earlier test, set up apart, does not bear this one out.</summary>
    [
        Remedy("Find out what differed between the two tests. Set the test up anew and test once more; the two that agree count."),
        Severities(Severity.Warning)
    ]
    public const string TestsDisagree = "tests-disagree";

    /// <summary>
    /// A change that a second test, set up apart, bears out. An earlier test is combined with this one only when it is later than the last
    /// adoption.
    /// </summary>
    [
        Remedy("Type in the number that the answer gives, then adopt it, so that the record says what the controller uses."),
        Severities(Severity.Warning)
    ]
    public const string ChangeConfirmed = "change-confirmed";

    /// <summary>A catch stands apart beyond the tolerance, though not surely enough to stop the test.</summary>
    [
        Remedy("Weigh that catch again if it is still in its container, or make one more catch and send all together."),
        Severities(Severity.Warning)
    ]
    public const string CatchApart = "catch-apart";

    /// <summary>A catch that was left out fits what was expected, and those that count do not outweigh it.</summary>
    [
        Remedy("Make one more catch: it shows which of the two was wrong. Leave out only what you know went wrong."),
        Severities(Severity.Warning)
    ]
    public const string ExclusionDecides = "exclusion-decides";

    /// <summary>A catch was left out although it agrees with those that count.</summary>
    [Remedy("Let it count, if nothing was wrong with it: one more good catch makes the answer surer."), Severities(Severity.Note)]
    public const string ExcludedCatchAgrees = "excluded-catch-agrees";

    /// <summary>Two catches have the same readings to the last digit.</summary>
    [Remedy("Look whether one row was typed twice. If so, take it out and send the test again."), Severities(Severity.Warning)]
    public const string CatchTypedTwice = "catch-typed-twice";

    /// <summary>
    /// The number to type in lies between what the test found and the number in force, which has tests behind it as well.
    /// </summary>
    [
        Remedy("Nothing to do: type in the number that the answer gives. What the test alone found stands beside it."),
        Severities(Severity.Note)
    ]
    public const string DrawnTowardsOldNumber = "drawn-towards-old-number";
}
