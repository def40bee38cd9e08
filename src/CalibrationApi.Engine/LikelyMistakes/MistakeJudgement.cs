namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>Every number of the search for mistakes that rests on judgement; no published source was found for any of them.</summary>
public static class MistakeJudgement
{
    /// <summary>What an answer says about them.</summary>
    public const string Origin = "judgement, no published source";

    /// <summary>Probability that a test holds a mistake at all, before its numbers are looked at.</summary>
    public const double PriorOfAnyMistake = 0.03;

    /// <summary>Scale of the ordinary change of a meter since its value was found, on ln; Student t, three degrees of freedom.</summary>
    public const double OrdinaryChange = 0.04;

    /// <summary>The same with another lot of the product.</summary>
    public const double OrdinaryChangeWithNewLot = 0.08;

    /// <summary>
    /// Least standard uncertainty of a start value that states none, on ln: the fill of an element that was never tested. Wider than that
    /// of the plan, because too narrow a prediction would suspect a mistake where a prediction was wrong.
    /// </summary>
    public const double StartValueUncertainty = 0.15;

    /// <summary>Standard uncertainty of what another element or product would deliver, on ln.</summary>
    public const double OtherDeliveryUncertainty = 0.04;

    /// <summary>Posterior probability under which a mistake is not shown.</summary>
    public const double ShownFrom = 0.10;

    /// <summary>
    /// Posterior probability from which, under the limit of a second test, a mistake that fits exactly is listed without alarm; under it
    /// the mistake is negligible.
    /// </summary>
    public const double ListedFrom = 0.001;

    /// <summary>
    /// Bayes factor against an ordinary change that it takes as well; chosen by simulation (tests/CalibrationApi.Simulation/README.md,
    /// "Changes that a mistake fits"), so that few honest tests carry the note.
    /// </summary>
    public const double ListedEvidence = 3.5;

    /// <summary>
    /// Standard deviations, the ordinary change aside, beyond which a test differs visibly from what was expected, and within which a
    /// mistake leaves nothing to explain.
    /// </summary>
    internal const double VisibleDeviations = 2;

    /// <summary>Posterior probability from which one mistake stops the test.</summary>
    public const double NamedFrom = 0.50;

    /// <summary>
    /// Bayes factor against an ordinary change that it takes as well; also what one mistake needs against another to be told apart.
    /// </summary>
    public const double ClearEvidence = 10;

    /// <summary>Relative weights of the mistakes; together they share <see cref="PriorOfAnyMistake"/>.</summary>
    internal static class Weight
    {
        public const double Unit = 12;
        public const double TareNotTakenOff = 12;
        public const double TareTakenOffTwice = 6;
        public const double TareOfAnotherContainer = 8;
        public const double DecimalSlip = 12;
        public const double CountDoubled = 4;
        public const double CountHalved = 4;
        public const double NotPrimed = 10;
        public const double Overflowed = 5;
        public const double BridgedOrEmpty = 8;
        public const double Isolated = 5;
        public const double AnotherElement = 7;
        public const double AnotherProduct = 6;
        public const double PointMissed = 6;
        public const double ValueInForceWrong = 6;
        public const double StartValueWrong = 12;
        public const double ValueInAnotherUnit = 4;
        public const double HalfOfPoints = 3;
        public const double NotEmptied = 6;
        public const double NotReset = 6;
        public const double Residue = 4;
        public const double WindOrHand = 4;
        public const double OuncesAsDecimals = 4;
        public const double DigitWrong = 2;
        public const double PulsesPerRevolution = 8;
        public const double GearRatio = 4;
        public const double SomethingElse = 12;
    }

    /// <summary>How much of a mistake's weight lies on the whole test; the rest is shared by the single catches.</summary>
    internal static class WholeTest
    {
        public const double Unit = 0.9;
        public const double TareNotTakenOff = 0.6;
        public const double TareTakenOffTwice = 0.8;
        public const double TareOfAnotherContainer = 0.5;
        public const double DecimalSlip = 0.3;
        public const double Count = 0.9;
        public const double Overflowed = 0.3;
        public const double BridgedOrEmpty = 0.4;
        public const double Isolated = 0.4;
        public const double PointMissed = 0.6;
        public const double SomethingElse = 0.5;
        public const double Cumulative = 0.7;
        public const double Residue = 0.3;
        public const double WindOrHand = 0.3;
    }

    /// <summary>How probable it is that a mistake made in one test is made again in a second one, set up anew.</summary>
    internal static class Repeat
    {
        /// <summary>A slip of the moment.</summary>
        public const double Slip = 0.1;

        /// <summary>What somebody does the same way each time: points, unit, pulses per revolution, gear ratio.</summary>
        public const double Habit = 0.5;

        /// <summary>What is fitted, filled in or in force stays as it is.</summary>
        public const double Installed = 1;
    }

    /// <summary>How context changes a weight.</summary>
    internal static class Factor
    {
        /// <summary>A mistake that the readings all but rule out.</summary>
        public const double NearlyImpossible = 0.02;

        /// <summary>Masses were entered in the unit of the scale.</summary>
        public const double UnitOfTheScale = 0.3;

        /// <summary>Masses were entered in another unit than that of the scale.</summary>
        public const double UnitOtherThanTheScale = 3;

        /// <summary>The mass is close to what the container holds.</summary>
        public const double NearCapacity = 3;

        /// <summary>A catch without a tare beside catches that have one.</summary>
        public const double OnlyOneWithoutTare = 5;

        /// <summary>A tare of zero was typed although the empty mass of the container is on record.</summary>
        public const double AgainstTheRecord = 400;

        /// <summary>Nothing is known that would sharpen the prediction.</summary>
        public const double Unsharp = 0.5;
    }

    /// <summary>Ranges of what a one-sided mistake leaves of the true ratio; equally probable on ln within.</summary>
    internal static class Range
    {
        public static readonly (double Low, double High) NotPrimed = (0.4, 0.98);
        public static readonly (double Low, double High) Overflowed = (0.5, 0.98);
        public static readonly (double Low, double High) BridgedOrEmpty = (0.02, 0.9);
        public static readonly (double Low, double High) Isolated = (0.05, 0.95);
        public static readonly (double Low, double High) PointMissed = (0.5, 0.97);
        public static readonly (double Low, double High) Residue = (1.01, 1.2);
        public static readonly (double Low, double High) WindOrHand = (0.8, 0.99);
        public static readonly (double Low, double High) TareInside = (1.03, 1.4);

        /// <summary>An unknown other container weighs between these multiples of the tare that was used.</summary>
        public static readonly (double Low, double High) OtherTare = (0.4, 2.5);
    }

    /// <summary>Half width on ln of the broad predictions (Cauchy): half of them lie within.</summary>
    internal static class Broad
    {
        public const double ValueInForce = 0.35;
        public const double StartValue = 0.5;
        public const double PulsesPerRevolution = 0.25;
        public const double GearRatio = 0.7;
        public const double SomethingElse = 0.7;
    }

    /// <summary>Load of the container from which an overflow is likelier.</summary>
    internal const double NearlyFull = 0.85;

    /// <summary>Load of the container under which nothing overflows.</summary>
    internal const double FarFromFull = 0.6;

    /// <summary>
    /// Difference of two tares, relative to the catch, up to which they may be those of one container: half of what a good catch
    /// repeats, and more than the rounding and the error of a scale move a reading.
    /// </summary>
    internal const double SameTare = 0.005;

    /// <summary>Share of the probability of the likeliest mistake under which another is not listed.</summary>
    internal const double LeastOfTheLikeliest = 1e-3;

    /// <summary>Most mistakes that a list of what could explain a large change holds; the rest is rarer still.</summary>
    internal const int MostListed = 10;

    /// <summary>The same for a change so small that a longer list would only alarm.</summary>
    internal const int MostListedUnderTheLimit = 3;

    /// <summary>Two gear ratios this near on ln are one.</summary>
    internal const double SameRatio = 0.005;

    /// <summary>
    /// Standard deviation on ln from catch to catch that product which hangs, or a meter that stands still now and then, adds.
    /// </summary>
    internal const double FlowScatter = 0.25;

    /// <summary>Share of such tests in which every catch lacks the same share.</summary>
    internal const double EvenFlow = 0.1;

    /// <summary>Share of swapped digits among the wrong ones.</summary>
    internal const double SwappedDigits = 0.6;

    /// <summary>Share of the decimal slips that go two places.</summary>
    internal const double TwoPlaces = 0.1;
}
