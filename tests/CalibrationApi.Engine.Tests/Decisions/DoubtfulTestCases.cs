using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Repeatability;
using static CalibrationApi.Engine.Tests.Decisions.DecisionCase;
using Rule = CalibrationApi.Engine.CatchTests.CatchTestVerdict.Rule;

namespace CalibrationApi.Engine.Tests.Decisions;

/// <summary>Tests that are not sure enough, or whose numbers a mistake explains better than a change.</summary>
internal static class DoubtfulTestCases
{
    public static readonly DecisionCase[] All =
    [
        // Repeat.
        new(
            "huge uncertainty, no change",
            Given.Test(Given.Net(0.72, 2, 1)).InForce(0.36),
            "Repeat",
            Rule.PrecisionOutOfReach,
            "a huge interval is never keep"
        ),
        new(
            "huge uncertainty, value in force from another scale",
            Given.Test(Given.Net(0.72, 2, 1)).InForce(0.36, 0.01, fromAnotherScale: true),
            "Repeat",
            Rule.PrecisionOutOfReach,
            "nor where nothing is known of the other scale"
        ),
        new(
            "huge uncertainty, wide tolerance",
            Given.Test(Given.Net(0.72, 2, 1)).InForce(0.36) with
            {
                Limits = new() { Tolerance = 0.9 },
            },
            "Repeat",
            Rule.PrecisionOutOfReach,
            "not even where the tolerance is wide"
        ),
        new(
            "dusty product, one catch",
            Given.Test(Given.Net(17, 47)).InForce(0.3627) with
            {
                Material = ProductMaterial.Dusty,
            },
            "Repeat",
            Rule.PrecisionNotReached,
            "3 % repeatability asks for more catches"
        ),
        new(
            "scale that cannot reach the precision",
            Given.Test(Two).InForce(0.3627) with
            {
                Scale = Given.Platform with { StatedAccuracy = new Mass(0.6) },
            },
            "Repeat",
            Rule.PrecisionOutOfReach,
            "0.6 kg on 17 kg is 2 % before any catch"
        ),
        new(
            "too few points caught",
            Given.Test(Two).InForce(24 * 0.3627) with
            {
                CaughtPoints = new CaughtPoints(1, 24, 0.04),
            },
            "Repeat",
            Rule.PrecisionOutOfReach,
            "one point of 24 says little about the others"
        ),
        new(
            "very narrow wanted precision",
            Given.Test(Two).InForce(0.3627) with
            {
                Limits = new() { WantedPrecision = 0.012 },
            },
            "Repeat",
            Rule.PrecisionNotReached,
            "more catches will do"
        ),
        // A mistake is likelier than a change.
        new(
            "twice the value in force, one catch in pounds or counted by half",
            Given.Test(Given.Net(36.0, 47)).InForce(0.36),
            "Repeat",
            Rule.MistakeNotToldApart,
            "2.13 times lies between two mistakes"
        ),
        new(
            "twice the value in force, two such catches",
            Given.Test(Given.Net(36.0, 47), Given.Net(36.1, 47)).InForce(0.36),
            "Repeat",
            Rule.MistakeNotToldApart,
            "catches that share a mistake agree"
        ),
        // Investigate.
        new(
            "pounds entered as kilograms",
            Given.Test(Given.Net(17.08 / 0.45359237, 47), Given.Net(16.94 / 0.45359237, 46.8)).InForce(0.36),
            "Investigate",
            Rule.LikelyMistake,
            "2.2 times the value in force in both catches"
        ),
        new(
            "one of three gross masses ten times too large",
            Given.Test(Given.Weighed(18.7, 1.62, 47), Given.Weighed(185.6, 1.62, 46.8), Given.Weighed(18.64, 1.62, 47)).InForce(0.36),
            "Investigate",
            Rule.LikelyMistake,
            "it is also a stray, but it has a name"
        ),
        new(
            "one of four catches 10 % off",
            Given.Test(Given.Delivering(0.36), Given.Delivering(0.361), Given.Delivering(0.396), Given.Delivering(0.359)).InForce(0.36),
            "Investigate",
            Rule.StrayCatch,
            "a stray beyond the tolerance"
        ),
        new(
            "first catch half empty",
            Given.Test(Given.Delivering(0.20), Given.Delivering(0.36), Given.Delivering(0.361)).InForce(0.36),
            "Investigate",
            Rule.StrayCatch,
            "an unprimed first catch is a stray too"
        ),
        new(
            "two catches a fifth apart",
            Given.Test(Given.Delivering(0.33), Given.Delivering(0.40)).InForce(0.36),
            "Investigate",
            Rule.WildScatter,
            "two catches cannot name the stray, but they cannot both be right"
        ),
        new(
            "wild scatter comes before an interval that is too wide",
            Given.Test(Given.Delivering(0.30), Given.Delivering(0.42)).InForce(0.36),
            "Investigate",
            Rule.WildScatter,
            "the first row that applies wins"
        ),
        new(
            "stray comes before a large change",
            Given.Test(Given.Delivering(0.36), Given.Delivering(0.361), Given.Delivering(0.41)).InForce(0.25),
            "Investigate",
            Rule.StrayCatch,
            "the first row that applies wins"
        ),
    ];
}
