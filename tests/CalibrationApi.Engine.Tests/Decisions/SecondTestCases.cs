using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using static CalibrationApi.Engine.Tests.Decisions.DecisionCase;
using Rule = CalibrationApi.Engine.CatchTests.CatchTestVerdict.Rule;

namespace CalibrationApi.Engine.Tests.Decisions;

/// <summary>Tests with a change so large that a second one, set up anew, has to bear it out.</summary>
internal static class SecondTestCases
{
    public static readonly DecisionCase[] All =
    [
        // Mistakes that catches of one set-up share, or that build up over them.
        new(
            "5/6 of the mass at six points",
            Given.Test(Given.Delivering(0.3), Given.Delivering(0.301)).InForce(0.36) with
            {
                Context = new() { CatchPoints = 6 },
            },
            "Repeat",
            Rule.SecondTestNeeded,
            "a missed point, adopted, would over-apply 20 % on every hectare"
        ),
        new(
            "5/6 of the mass at six points, a second test agrees",
            Given.Test(Given.Delivering(0.3), Given.Delivering(0.301)).InForce(0.36).After(0.3005) with
            {
                Context = new() { CatchPoints = 6 },
            },
            "Adopt",
            Rule.ChangeConfirmed,
            "a point missed twice is possible and listed, but less likely than the change"
        ),
        new(
            "tare of 0 against the container's on record",
            Given.Test(Given.Weighed(18.52, 0, 47), Given.Weighed(18.56, 0, 47)).InForce(0.36) with
            {
                Context = new() { ContainerTare = new Mass(1.6) },
            },
            "Repeat",
            Rule.MistakeNotToldApart,
            "9.8 % more is just what the container weighs"
        ),
        new(
            "tare of 0 against the container's on record, no change",
            Given.Test(Given.Weighed(16.92, 0, 47), Given.Weighed(16.95, 0, 47)).InForce(0.36) with
            {
                Context = new() { ContainerTare = new Mass(1.6) },
            },
            "Keep",
            Rule.WithinTolerance,
            "the scale was set to zero: the mass would show the container"
        ),
        new(
            "container not emptied",
            Given.Test(Given.Net(16.95, 47), Given.Net(33.9, 47), Given.Net(50.7, 47)).InForce(0.36),
            "Investigate",
            Rule.LikelyMistake,
            "each mass holds the ones before it"
        ),
        new(
            "counter not set to zero",
            Given.Test(Given.Net(16.95, 47), Given.Net(16.9, 94), Given.Net(17, 141)).InForce(0.36),
            "Investigate",
            Rule.LikelyMistake,
            "each count holds the ones before it"
        ),
        new(
            "pulses per revolution a fifth too few",
            Given.Test(Given.Delivering(0.432), Given.Delivering(0.433)).InForce(0.36) with
            {
                Context = new() { CountedAs = CountSource.Pulses },
            },
            "Repeat",
            Rule.SecondTestNeeded,
            "a wrong number of pulses per revolution is in every catch"
        ),
        // A second test: catches of one set-up share its tare, points, element, unit and product.
        new(
            "large change, one catch",
            Given.Test(Given.Net(17.08, 47)).InForce(0.324),
            "Repeat",
            Rule.SecondTestNeeded,
            "12 % needs a second test"
        ),
        new(
            "12 % less, two agreeing catches",
            Given.Test(Two).InForce(0.412),
            "Repeat",
            Rule.SecondTestNeeded,
            "catches of one set-up share its mistakes"
        ),
        new(
            "20 % less, two agreeing catches",
            Given.Test(Two).InForce(0.4534),
            "Repeat",
            Rule.SecondTestNeeded,
            "one point of six was missed, or the meter has changed"
        ),
        new(
            "12 % more, fifty agreeing catches",
            Given.Test([.. Enumerable.Repeat(Two, 25).SelectMany(pair => pair)]).InForce(0.324),
            "Repeat",
            Rule.SecondTestNeeded,
            "more catches of the same set-up add nothing"
        ),
        new(
            "change exactly at twice the tolerance",
            Given.Test(Given.Delivering(0.33)).InForce(0.30),
            "Repeat",
            Rule.SecondTestNeeded,
            "10 % is reached, whatever binary fractions make of it"
        ),
        new(
            "own limit of 20 %, 12 % change",
            Given.Test(Two).InForce(0.324) with
            {
                Limits = new() { SecondTestChange = 0.20 },
            },
            "Adopt",
            Rule.Changed,
            "the limit is the caller's"
        ),
        new(
            "tolerance of 8 %, 12 % change",
            Given.Test(Two).InForce(0.324) with
            {
                Limits = new() { Tolerance = 0.08 },
            },
            "Adopt",
            Rule.Changed,
            "the limit follows the tolerance: 16 %"
        ),
        new(
            "12 % change, a second test agrees",
            Given.Test(Two).InForce(0.324).After(0.360),
            "Adopt",
            Rule.ChangeConfirmed,
            "two set-ups agree within their scatter and days"
        ),
        new(
            "30 % less, a second test agrees",
            Given.Test(Two).InForce(0.518).After(0.366),
            "Adopt",
            Rule.ChangeConfirmed,
            "in both directions"
        ),
        new(
            "12 % change, a second test from another scale agrees",
            Given.Test(Two).InForce(0.324).After(0.360, fromAnotherScale: true),
            "Adopt",
            Rule.ChangeConfirmed,
            "another scale is the better witness"
        ),
        new(
            "12 % change, the earlier test saw none",
            Given.Test(Two).InForce(0.324).After(0.325),
            "Repeat",
            Rule.SecondTestNeeded,
            "two tests that differ by 11 % do not agree"
        ),
        new(
            "12 % change, the earlier test saw as much less",
            Given.Test(Two).InForce(0.324).After(0.29),
            "Repeat",
            Rule.SecondTestNeeded,
            "they do not agree"
        ),
        new(
            "12 % change, the earlier test is blind",
            Given.Test(Two).InForce(0.324) with
            {
                Earlier = new()
                {
                    Value = new(0.345),
                    Catches = 1,
                    Scatter = 0.03,
                    DegreesOfFreedom = 4,
                },
            },
            "Repeat",
            Rule.SecondTestNeeded,
            "an interval of 8 % that holds no change confirms none"
        ),
        new(
            "6 % change, the earlier test saw none",
            Given.Test(Two).InForce(0.342).After(0.343),
            "Adopt",
            Rule.Changed,
            "under twice the tolerance this test decides alone"
        ),
        new(
            "new lot, 12 % more than in force, 2 % more than predicted",
            Given.Test(Two).InForce(0.324) with
            {
                Predicted = new(new(0.356)),
            },
            "Adopt",
            Rule.Changed,
            "a lighter lot delivers another value: nothing to be surprised at"
        ),
        new(
            "new lot, as in force, 12 % less than predicted",
            Given.Test(Two).InForce(0.3627) with
            {
                Predicted = new(new(0.412)),
            },
            "Repeat",
            Rule.SecondTestNeeded,
            "for this lot the old value would be the surprise"
        ),
    ];
}
