using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Weighing;
using Rule = CalibrationApi.Engine.CatchTests.CatchTestVerdict.Rule;

namespace CalibrationApi.Engine.Tests.Decisions;

/// <summary>
/// The decision table, case by case. The cases are invented; what they must lead to follows from the rules of the table,
/// which are this project's own (no published source).
/// </summary>
[Trait("Category", "Decisions")]
public sealed class CatchTestDecisionTests
{
    private const string Refused = "refused";
    private const double Pound = 0.45359237;

    private static readonly Catch[] Two = [Given.Net(17.08, 47), Given.Net(16.94, 46.8)];

    private static readonly Catch Canola = Given.Net(0.132 * 0.45359237 * 150, 150);

    private static readonly Scale FailedScale = Given.Platform with
    {
        KnownError = new KnownScaleError(0.021, 0.0005) { CheckFailed = true },
    };

    private static readonly List<Case> Table =
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

    public static TheoryData<string> Names => [.. Table.Select(each => each.Name)];

    [Fact]
    public void Table_Cases_AreAtLeastThirtyWithNamesOfTheirOwn()
    {
        Assert.True(Table.Count >= 30, $"Only {Table.Count} cases.");
        Assert.Distinct(Table.Select(each => each.Name));
    }

    [Fact]
    public void Table_Cases_ReachEveryRuleAndTheRefusal()
    {
        Assert.Equal(Enum.GetValues<Rule>().Order(), Table.Select(each => each.Rule).OfType<Rule>().Distinct().Order());
        Assert.Contains(Table, each => each.Verdict == Refused);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Evaluate_CaseOfTheTable_GivesItsVerdictByItsRule(string name)
    {
        var expected = Table.Single(each => each.Name == name);

        var outcome = CatchTestEvaluation.Evaluate(expected.Test);

        var verdict = outcome.IsAnswered ? outcome.Result.Decision.Verdict.ToString() : Refused;
        var rule = outcome.IsAnswered ? outcome.Result.Decision.Rule : (Rule?)null;
        Assert.True(
            (verdict, rule) == (expected.Verdict, expected.Rule),
            $"{name}: expected {expected.Verdict} by {expected.Rule} because {expected.Why}, but got {verdict} by {rule}."
        );
    }

    // Whatever else is asked, an interval wider than wanted never ends in keep.
    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(5)]
    public void Evaluate_GrowingCounterResolution_NeverTurnsDoubtIntoKeep(double resolution)
    {
        var outcome = CatchTestEvaluation.Evaluate(Given.Test(Given.Net(3.6, 10, resolution)).InForce(0.36));

        Assert.NotNull(outcome.Result);
        Assert.True(outcome.Result.Estimate.RelativeExpanded > 0.03);
        Assert.Equal(Verdict.Repeat, outcome.Result.Decision.Verdict);
    }

    private static ElementContent Roller(double cubicMetres, double density, ElementKind? kind = null) =>
        new(new(new Volume(cubicMetres)), new(new BulkDensity(density)), kind, "roller");

    private sealed record Case(string Name, CatchTestQuestion Test, string Verdict, Rule? Rule, string Why);
}
