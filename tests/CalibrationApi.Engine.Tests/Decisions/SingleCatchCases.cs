using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Weighing;
using static CalibrationApi.Engine.Tests.Decisions.DecisionCase;
using Rule = CalibrationApi.Engine.CatchTests.CatchTestVerdict.Rule;

namespace CalibrationApi.Engine.Tests.Decisions;

/// <summary>Tests in which one catch stands apart or was left out, and settings that leave no room.</summary>
internal static class SingleCatchCases
{
    public static readonly DecisionCase[] All =
    [
        // Not to be mistaken for a stray.
        new(
            "three equal readings",
            Given.Test(Given.Delivering(0.36), Given.Delivering(0.36), Given.Delivering(0.36)).InForce(0.36),
            "Keep",
            Rule.WithinTolerance,
            "a scatter of nothing is luck, and no reason for doubt"
        ),
        new(
            "two equal readings and a low third, no value in force",
            Given.Test(Given.Delivering(0.36), Given.Delivering(0.36), Given.Delivering(0.3546)),
            "Adopt",
            Rule.NothingInForce,
            "the third lies 1.5 % low, not stray"
        ),
        new(
            "two equal readings and an honest third",
            Given.Test(Given.Delivering(0.36), Given.Delivering(0.36), Given.Delivering(0.3636)).InForce(0.36),
            "Keep",
            Rule.WithinTolerance,
            "equal readings do not condemn the third"
        ),
        new(
            "two equal readings and a third 1.5 % off",
            Given.Test(Given.Delivering(0.36), Given.Delivering(0.36), Given.Delivering(0.3654)).InForce(0.36),
            "Keep",
            Rule.WithinTolerance,
            "1.5 % is ordinary with a repeatability of 1 %"
        ),
        new(
            "stray inside the tolerance",
            Given.PureTest(0.36, 0.36, 0.36, 0.36, 0.3425).InForce(0.36),
            "Keep",
            Rule.WithinTolerance,
            "it is said in a finding and costs nothing"
        ),
        // A catch that stands apart, though not surely.
        new(
            "two equal readings and a third 5.3 % off",
            Given.PureTest(0.36, 0.3605, 0.3795).InForce(0.345),
            "Repeat",
            Rule.CatchApart,
            "beyond the tolerance, and honest catches do so in fewer than 5 tests of 100"
        ),
        new(
            "the same, no value in force",
            Given.PureTest(0.36, 0.3605, 0.3795),
            "Repeat",
            Rule.CatchApart,
            "a first value is not adopted with it either"
        ),
        new(
            "the same, the value in force holds",
            Given.PureTest(0.36, 0.3605, 0.3795).InForce(0.362),
            "Keep",
            Rule.WithinTolerance,
            "leaving the number costs nothing; the headline names the catch"
        ),
        new(
            "two catches 6 % apart",
            Given.PureTest(0.35, 0.3715).InForce(0.338) with
            {
                Limits = Given.OnePercent with { WantedPrecision = 0.05, Tolerance = 0.055 },
            },
            "Repeat",
            Rule.CatchApart,
            "nobody can say which of two is off"
        ),
        new(
            "a stray as heavy as the container",
            Given.Test(Given.Net(42.3 * Pound, 51), Given.Net(44.75 * Pound, 51), Given.Net(42.35 * Pound, 51)).InForce(0.83 * Pound),
            "Investigate",
            Rule.StrayCatch,
            "the tare was left in one of three catches"
        ),
        new(
            "dusty product, a catch 6 % off",
            Given
                .Test([.. ((double[])[0.36, 0.362, 0.384, 0.358, 0.361, 0.359, 0.36, 0.362]).Select(value => Given.Delivering(value))])
                .InForce(0.345) with
            {
                Material = ProductMaterial.Dusty,
            },
            "Adopt",
            Rule.Changed,
            "catches of a dusty product ordinarily differ so much"
        ),
        // Left out by the caller.
        new(
            "the good catch left out, the bad one kept",
            Given.Test(Given.Delivering(0.385), Given.Delivering(0.361, excludedBecause: "it looked odd")).InForce(0.36),
            "Repeat",
            Rule.ExclusionDecides,
            "leaving out decides, not the test"
        ),
        new(
            "first value, one of two catches left out that differ",
            Given.Test(Given.Delivering(0.385), Given.Delivering(0.361, excludedBecause: "it looked odd")),
            "Repeat",
            Rule.ExclusionDecides,
            "nothing says which of the two is right"
        ),
        new(
            "two agreeing catches kept, a low one left out",
            Given
                .Test(Given.Delivering(0.382), Given.Delivering(0.3815), Given.Delivering(0.361, excludedBecause: "spilled"))
                .InForce(0.36),
            "Adopt",
            Rule.Changed,
            "two outweigh one"
        ),
        new(
            "a catch left out that agrees",
            Given.Test(Given.Delivering(0.382), Given.Delivering(0.381, excludedBecause: "spilled")).InForce(0.36),
            "Adopt",
            Rule.Changed,
            "it says the same"
        ),
        new(
            "stray excluded with a reason",
            Given
                .Test(Given.Delivering(0.36), Given.Delivering(0.361), Given.Delivering(0.41, excludedBecause: "overflowed"))
                .InForce(0.36),
            "Keep",
            Rule.WithinTolerance,
            "it no longer counts"
        ),
        new(
            "second catch excluded, large change",
            Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8, excludedBecause: "spilled")).InForce(0.324),
            "Repeat",
            Rule.SecondTestNeeded,
            "an excluded catch confirms nothing"
        ),
        // Settings.
        new(
            "tolerance and wanted precision at odds",
            Given.Test(Two).InForce(0.342) with
            {
                Limits = new() { Tolerance = 0.03 },
            },
            Refused,
            null,
            "3 % cannot be shown by a test wanted to 3 %"
        ),
        new(
            "day to day alone exceeds the tolerance",
            Given.Test(Two).InForce(0.342) with
            {
                Limits = new() { DayToDay = 0.05 },
            },
            Refused,
            null,
            "no test of one day can show it"
        ),
        new(
            "checked scale",
            Given.Test(Two).InForce(0.3627) with
            {
                Scale = Given.Platform with { KnownError = new KnownScaleError(0.002, 0.0005) },
            },
            "Keep",
            Rule.WithinTolerance,
            "0.2 % of span error is corrected"
        ),
    ];
}
