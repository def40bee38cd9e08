using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;
using static CalibrationApi.Engine.Tests.Decisions.DecisionCase;
using Rule = CalibrationApi.Engine.CatchTests.CatchTestVerdict.Rule;

namespace CalibrationApi.Engine.Tests.Decisions;

/// <summary>
/// Tests that cannot be believed whatever their catches agree on: beyond what an element holds, or from a scale that failed.
/// </summary>
internal static class ImpossibleTestCases
{
    public static readonly DecisionCase[] All =
    [
        // Physically impossible: whatever the catches agree on.
        new(
            "canola on an element of 0.03 L, three times what it holds",
            Given.Test(Canola, Canola) with
            {
                Element = Roller(0.03e-3, 660),
            },
            "Investigate",
            Rule.Impossible,
            "0.132 lb per revolution from an element that holds 0.044"
        ),
        new(
            "the same, in force before",
            Given.Test(Canola, Canola).InForce(0.132 * 0.45359237) with
            {
                Element = Roller(0.03e-3, 660),
            },
            "Investigate",
            Rule.Impossible,
            "an old number does not make it possible"
        ),
        new(
            "the same with the right element",
            Given.Test(Canola, Canola) with
            {
                Element = Roller(0.1e-3, 660),
            },
            "Adopt",
            Rule.NothingInForce,
            "90 % of 0.1 L is what such an element gives"
        ),
        new(
            "130 % of closed pockets",
            Given.Test(Two) with
            {
                Element = Roller(0.3627 / 620 / 1.3, 620, ElementKind.ClosedPockets),
            },
            "Investigate",
            Rule.Impossible,
            "pockets that are struck off give no more than they hold"
        ),
        new(
            "130 % of open flutes, 6 % more than in force",
            Given.Test(Two).InForce(0.342) with
            {
                Element = Roller(0.3627 / 620 / 1.3, 620, ElementKind.OpenFlutes),
            },
            "Adopt",
            Rule.Changed,
            "a layer beyond the flutes is dragged along: a finding, no more"
        ),
        new(
            "130 % of open flutes, nothing in force",
            Given.Test(Two) with
            {
                Element = Roller(0.3627 / 620 / 1.3, 620, ElementKind.OpenFlutes),
            },
            "Repeat",
            Rule.SecondTestNeeded,
            "44 % more than such an element usually gives: a second test has to agree"
        ),
        new(
            "20 kg of wheat in a container of 10 L",
            Given.Test(Given.Net(20, 55), Given.Net(20.1, 55)).InForce(0.3627) with
            {
                Context = new() { ContainerCapacity = new Mass(7.7) },
            },
            "Investigate",
            Rule.Impossible,
            "heaped up it holds 9.2 kg"
        ),
        new(
            "a heap on a container of 22 L",
            Given.Test(Two).InForce(0.3627) with
            {
                Context = new() { ContainerCapacity = new Mass(16.9) },
            },
            "Keep",
            Rule.WithinTolerance,
            "17 kg on 16.9 kg of room is a small heap"
        ),
        new(
            "13 kg on a scale of 5 kg",
            Given.Test(Given.Net(13, 36), Given.Net(13, 36)).InForce(0.3627) with
            {
                Scale = Given.Platform with { Capacity = new Mass(5) },
            },
            "Investigate",
            Rule.Impossible,
            "a scale shows nothing so far beyond its capacity"
        ),
        new(
            "20 kg gross on a scale of 15 kg",
            Given.Test(Given.Weighed(20, 6, 38.6), Given.Weighed(20, 6, 38.6)).InForce(0.3627) with
            {
                Scale = Given.Platform with { Capacity = new Mass(15) },
            },
            "Investigate",
            Rule.Impossible,
            "the net mass alone would fit"
        ),
        new(
            "15.1 kg gross on a scale of 15 kg",
            Given.Test(Given.Weighed(15.1, 0.6, 40), Given.Weighed(15.1, 0.6, 40)).InForce(0.3625) with
            {
                Scale = Given.Platform with { Capacity = new Mass(15) },
            },
            "Keep",
            Rule.WithinTolerance,
            "nine divisions beyond the capacity are still shown"
        ),
        new(
            "impossible only in a catch that does not count",
            Given.Test([.. Two, Given.Net(60, 165, excludedBecause: "typed wrongly")]).InForce(0.3627) with
            {
                Scale = Given.Platform with { Capacity = new Mass(50) },
            },
            "Keep",
            Rule.WithinTolerance,
            "it was left out with a reason"
        ),
        // A scale that failed its check.
        new(
            "no change, on a scale that failed its last check",
            Given.Test(Two).InForce(0.3627) with
            {
                Scale = FailedScale,
            },
            "Repeat",
            Rule.ScaleFailed,
            "nobody knows whether its error stayed the same: catch again on a good scale"
        ),
        new(
            "6 % change, on a scale that failed its last check",
            Given.Test(Two).InForce(0.342) with
            {
                Scale = FailedScale,
            },
            "Repeat",
            Rule.ScaleFailed,
            "never adopt what it weighed"
        ),
        new(
            "no value in force, on a scale that failed its last check",
            Given.Test(Two) with
            {
                Scale = FailedScale,
            },
            "Repeat",
            Rule.ScaleFailed,
            "a first value neither"
        ),
        new(
            "a stray on a scale that failed its last check",
            Given.Test(Given.Delivering(0.36), Given.Delivering(0.361), Given.Delivering(0.41)).InForce(0.36) with
            {
                Scale = FailedScale,
            },
            "Investigate",
            Rule.StrayCatch,
            "what went wrong in the test has to be found first"
        ),
    ];
}
