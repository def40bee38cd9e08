using static CalibrationApi.Engine.Tests.Decisions.DecisionCase;
using Rule = CalibrationApi.Engine.CatchTests.CatchTestVerdict.Rule;

namespace CalibrationApi.Engine.Tests.Decisions;

/// <summary>Tests whose catches agree: with nothing, a prediction or the value in force to compare with.</summary>
internal static class ComparedTestCases
{
    public static readonly DecisionCase[] All =
    [
        // Nothing to compare with.
        new(
            "no value in force, two honest catches",
            Given.Test(Two),
            "Adopt",
            Rule.NothingInForce,
            "a first value is adopted once it is sure enough"
        ),
        new(
            "no value in force, one large catch",
            Given.Test(Given.Net(17.08, 47)),
            "Adopt",
            Rule.NothingInForce,
            "one good catch reaches the wanted precision"
        ),
        new(
            "no value in force, one small catch",
            Given.Test(Given.Net(4, 30)),
            "Repeat",
            Rule.PrecisionNotReached,
            "2 % repeatability with one catch is not within 3 %"
        ),
        new(
            "no value in force, stray catch",
            Given.Test(Given.Delivering(0.36), Given.Delivering(0.361), Given.Delivering(0.41)),
            "Investigate",
            Rule.StrayCatch,
            "row 1 holds without a value in force"
        ),
        new(
            "no value in force, tolerance at odds",
            Given.Test(Two) with
            {
                Limits = new() { Tolerance = 0.001 },
            },
            "Adopt",
            Rule.NothingInForce,
            "the tolerance is about a value in force, and there is none"
        ),
        // A start value.
        new(
            "start value near the result",
            Given.Test(Two).StartingFrom(0.355),
            "Adopt",
            Rule.NothingInForce,
            "a prediction is never kept, it is replaced by a measurement"
        ),
        new(
            "start value equal to the result",
            Given.Test(Two).StartingFrom(0.36269),
            "Adopt",
            Rule.NothingInForce,
            "even a perfect prediction is not in force"
        ),
        new(
            "start value 15 % off",
            Given.Test(Two).StartingFrom(0.315),
            "Adopt",
            Rule.NothingInForce,
            "a start value may be 20 % off: nothing to be surprised at"
        ),
        new(
            "start value 21 % off, two catches",
            Given.Test(Two).StartingFrom(0.30),
            "Repeat",
            Rule.SecondTestNeeded,
            "farther off than a prediction ordinarily is"
        ),
        new(
            "start value 21 % off, a second test agrees",
            Given.Test(Two).StartingFrom(0.30).After(0.361),
            "Adopt",
            Rule.ChangeConfirmed,
            "the prediction was wrong, and two set-ups show it"
        ),
        new(
            "start value, tolerance at odds",
            Given.Test(Two).StartingFrom(0.355) with
            {
                Limits = new() { Tolerance = 0.001 },
            },
            "Adopt",
            Rule.NothingInForce,
            "the tolerance is about a value in force, and a prediction is none"
        ),
        // Keep.
        new("no change", Given.Test(Two).InForce(0.3627), "Keep", Rule.WithinTolerance, "within 5 % with a probability above 0.95"),
        new(
            "small change, not detected",
            Given.Test(Two).InForce(0.358),
            "Keep",
            Rule.WithinTolerance,
            "1.3 % lies inside its own interval and well inside the tolerance"
        ),
        new(
            "small change, detected",
            Given.PureTest([.. Enumerable.Repeat(0.3655, 8)]).InForce(0.36, 0.001) with
            {
                Limits = new() { DayToDay = 0.001 },
            },
            "Keep",
            Rule.WithinTolerance,
            "a real change of 1.5 % still leaves the number good enough"
        ),
        new(
            "value in force from another scale, no change",
            Given.Test(Two).InForce(0.3627, 0.01, fromAnotherScale: true),
            "Keep",
            Rule.WithinTolerance,
            "whether the number is good enough does not ask where it came from"
        ),
        new(
            "value in force with unknown uncertainty, no change",
            Given.Test(Two).InForce(0.3627),
            "Keep",
            Rule.WithinTolerance,
            "the number typed in is exact"
        ),
        new(
            "wide tolerance keeps a 6 % change",
            Given.Test(Two).InForce(0.342) with
            {
                Limits = new() { Tolerance = 0.10 },
            },
            "Keep",
            Rule.WithinTolerance,
            "the tolerance is the caller's"
        ),
        // Adopt.
        new("6 % change, two catches", Given.Test(Two).InForce(0.342), "Adopt", Rule.Changed, "outside the tolerance and confirmed"),
        new(
            "6 % change, same as before but from another scale",
            Given.Test(Two).InForce(0.342, fromAnotherScale: true),
            "Adopt",
            Rule.Changed,
            "the span of a good scale is small against 6 %"
        ),
        new("6 % less", Given.Test(Two).InForce(0.386), "Adopt", Rule.Changed, "the table is the same in both directions"),
        new(
            "9.9 % change, one catch",
            Given.Test(Given.Delivering(0.3297)).InForce(0.30),
            "Adopt",
            Rule.Changed,
            "just below twice the tolerance"
        ),
        new(
            "2.8 % change, one catch",
            Given.Test(Given.Net(17.08, 47)).InForce(0.3535),
            "Adopt",
            Rule.NotShownWithinTolerance,
            "not detected, but the probability of being within 5 % is below 0.95"
        ),
        new(
            "change inside its interval, wide day to day",
            Given.Test(Two).InForce(0.35) with
            {
                Limits = new() { DayToDay = 0.019 },
            },
            "Adopt",
            Rule.NotShownWithinTolerance,
            "absence of evidence is not keep"
        ),
        new(
            "detected change from another scale that is not detected on its own",
            Given.Test(Two).InForce(0.342, 0.05, fromAnotherScale: true),
            "Adopt",
            Rule.NotShownWithinTolerance,
            "the old value's doubt hides the change, yet the number is not shown to be good"
        ),
    ];
}
