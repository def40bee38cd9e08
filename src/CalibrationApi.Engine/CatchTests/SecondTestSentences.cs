using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>What is said about a large change and a second test.</summary>
internal static class SecondTestSentences
{
    private const string Anew =
        "Set the test up anew: weigh the empty container again, count the points, look at element and product, and prime the meter. Then test again before you type anything in.";

    public static Sentence Needed(CatchTestResult result) =>
        result.SecondTest is { } second
            ? (Sentence)$"{Change(result)}, and {Called(second)} does not bear it out. {Anew}"
            : $"{Change(result)}. One set-up does not show such a change. {Anew}";

    public static Finding WhyNeeded(CatchTestResult result)
    {
        var expected = result.FromExpected!;
        return result.SecondTest is { } second
            ? Finding.Warning(
                CatchTestCodes.TestsDisagree,
                second.Agrees
                    ? (Sentence)
                        $"{Called(second, begins: true)} found {second.Earlier.Value}, this one {Found(result)}. They are not far apart, but the two together do not show a change: at least one of them fits what was expected."
                    : $"{Called(second, begins: true)} found {second.Earlier.Value}, this one {Found(result)}: they differ by {new Ratio(Math.Abs(second.Difference)):F1}, and two honest tests like these by no more than {new Ratio(second.LargestHonestDifference):F1}."
            )
            : Finding.Warning(
                CatchTestCodes.SecondTestNeeded,
                $"A change of {new Ratio(Math.Abs(expected.Delta)):F1} reaches the {new Ratio(expected.Limit):0.##} from which a second test, set up anew, has to agree. More catches of this set-up would share its mistakes."
            );
    }

    public static Sentence Confirmed(CatchTestResult result, Sentence adopt) =>
        $"{Change(result)}, and {Called(result.SecondTest!)} agrees. {adopt}";

    public static Finding WhyConfirmed(CatchTestResult result)
    {
        var second = result.SecondTest!;
        return Finding.Warning(
            CatchTestCodes.ChangeConfirmed,
            $"{Called(second, begins: true)} found {second.Earlier.Value}, this one {Found(result)}: they differ by {new Ratio(Math.Abs(second.Difference)):F1}, no more than two honest tests do. Both together give {new MassPerRevolution(second.Combined.Value)} within {new Ratio(second.Combined.ExpandedUncertainty / second.Combined.Value):F1}. An earlier test counts only when it is later than the last adoption."
        );
    }

    private static MassPerRevolution Found(CatchTestResult result) => new(result.Estimate.Value.Value);

    private static Sentence Change(CatchTestResult result)
    {
        var expected = result.FromExpected!;
        var source = expected.IsPredicted ? (Sentence)$"is expected of this lot" : $"{result.Change!.Reference.Called} says";
        return expected.Delta >= 0
            ? (Sentence)$"The meter delivers {new Ratio(expected.Delta):F1} more per revolution than {source}"
            : $"The meter delivers {new Ratio(-expected.Delta):F1} less per revolution than {source}";
    }

    private static Sentence Called(SecondTest second, bool begins = false) =>
        second.Earlier switch
        {
            { OccurredAt: { } at } => $"{(begins ? "The" : "the")} test of {at.Split('T')[0]}",
            { Name: { } name } => $"{(begins ? "The" : "the")} test {name}",
            _ => $"{(begins ? "The" : "the")} earlier test",
        };
}
