using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.CatchTests;

/// <summary>A catch test of one meter with one product.</summary>
[CheckedBy(typeof(CatchTestRequestValidator))]
public sealed class CatchTestRequest : CatchTestData
{
    /// <summary>What the owner calls the meter.</summary>
    [Text(Rules.LongestName)]
    public string? Meter { get; set; }

    /// <summary>The product.</summary>
    public ProductOfTest? Product { get; set; }

    /// <summary>The scale that weighed the catches.</summary>
    [Needed]
    public ScaleOfTest? Scale { get; set; }

    /// <summary>Smallest step of the revolution counter.</summary>
    [Default(typeof(CatchTestDefaults), nameof(CatchTestDefaults.CounterResolution))]
    [Measured(0, 10, "rev")]
    public RevolutionsQuantity? CounterResolution { get; set; }

    /// <summary>
    /// The metering element that is fitted. With the bulk density of the product it says what a value can be; where neither valueInForce
    /// nor startValue is given, the start value comes from both.
    /// </summary>
    public FittedElement? FittedElement { get; set; }

    /// <summary>Conditions during the test.</summary>
    public Conditions? Conditions { get; set; }

    /// <summary>Conditions that are expected in sowing; conditions far from them are said in the headline.</summary>
    public Conditions? SowingConditions { get; set; }

    /// <summary>Pockets or flutes of the metering element that discharge one after the other in one revolution, where known.</summary>
    [Whole(1, 10_000)]
    public int? PocketsPerRevolution { get; set; }

    /// <summary>Sensor pulses per meter revolution; needed when catches give pulses or the controller takes a mass per pulse.</summary>
    [Measured]
    public PulsesPerRevolutionQuantity? PulsesPerRevolution { get; set; }

    /// <summary>Meter revolutions per turn of the crank or wheel; needed when catches give turns.</summary>
    [Measured(0.0001, 10_000, "1")]
    public RatioQuantity? MeterRevolutionsPerTurn { get; set; }

    /// <summary>The form in which the controller takes the value.</summary>
    public ControllerEntryOfTest? ControllerEntry { get; set; }

    /// <summary>The container of the catches, where known; makes overflow and a forgotten tare easier to tell.</summary>
    public ContainerOfTest? Container { get; set; }

    /// <summary>Other containers at hand, whose tare may have been taken by mistake.</summary>
    [Items(0, MostOthers)]
    public IReadOnlyList<OtherContainerOfTest?>? OtherContainers { get; set; }

    /// <summary>Other metering elements or settings of this meter and what they would give of this product.</summary>
    [Items(0, MostOthers)]
    public IReadOnlyList<OtherDeliveryOfTest?>? OtherElements { get; set; }

    /// <summary>Other products of this machine and what the fitted element would give of them.</summary>
    [Items(0, MostOthers)]
    public IReadOnlyList<OtherDeliveryOfTest?>? OtherProducts { get; set; }
}

/// <summary>The product of a catch test.</summary>
public sealed class ProductOfTest
{
    /// <summary>What the owner calls it.</summary>
    [Text(Rules.LongestName)]
    public string? Name { get; set; }

    /// <summary>How it flows: <c>free-flowing</c>, <c>small-seed</c> or <c>dusty</c> (also sticky or caking).</summary>
    [Word(typeof(ProductMaterial))]
    public string? Material { get; set; }

    /// <summary>
    /// Bulk density; needed when the controller takes a volume per revolution. With it the container and the element say what a catch can
    /// be.
    /// </summary>
    [Measured]
    public BulkDensityQuantity? BulkDensity { get; set; }

    /// <summary>Price; gives the cost of a wrong value.</summary>
    public Price? Price { get; set; }
}

/// <summary>A scale.</summary>
public sealed class ScaleOfTest
{
    /// <summary>Smallest step of the display.</summary>
    [Needed, Measured(0, 100, "kg", ExcludesLeast = true)]
    public MassQuantity? Division { get; set; }

    /// <summary>Class on the data plate of a verified scale, as OIML R 76 names it: I, II, III or IIII.</summary>
    [Word(typeof(AccuracyClass))]
    public string? AccuracyClass { get; set; }

    /// <summary>
    /// Verification interval e of the data plate. Default the division: common practice, as on most verified scales (OIML R 76).
    /// </summary>
    [Measured(0, 100, "kg", ExcludesLeast = true)]
    public MassQuantity? VerificationInterval { get; set; }

    /// <summary>Limit of error stated by the maker or owner; goes before the class.</summary>
    [Measured(0, 1000, "kg", ExcludesLeast = true)]
    public MassQuantity? StatedAccuracy { get; set; }

    /// <summary>Span error found by a check against known masses: it is corrected, and only its uncertainty remains.</summary>
    public KnownScaleErrorOfTest? KnownError { get; set; }

    /// <summary>Largest load, container included.</summary>
    [Measured]
    public MassQuantity? Capacity { get; set; }

    /// <summary>Standard deviation of a reading of a load that swings or creeps, beyond the division.</summary>
    [Measured(0, 100, "kg")]
    public MassQuantity? ReadingScatter { get; set; }
}

/// <summary>The span error of a scale.</summary>
public sealed class KnownScaleErrorOfTest
{
    /// <summary>Largest error, per cent.</summary>
    internal const double Most = 100 * KnownScaleError.Most;

    /// <summary>Indicated minus true, divided by true: positive when the scale shows too much.</summary>
    [Needed, Measured(-Most, Most, "%")]
    public RatioQuantity? Error { get; set; }

    /// <summary>Standard uncertainty of that error, relative.</summary>
    [Needed, Measured(0, Most, "%")]
    public RatioQuantity? StandardUncertainty { get; set; }

    /// <summary>True when the scale failed that check: then nothing that it weighed is to be relied on. Default false.</summary>
    public bool? CheckFailed { get; set; }
}

/// <summary>A partial catch.</summary>
[CheckedBy(typeof(CaughtPointsOfTestValidator))]
public sealed class CaughtPointsOfTest
{
    /// <summary>Points that were caught.</summary>
    [Needed, Whole(1, 1000)]
    public int? Caught { get; set; }

    /// <summary>Points that the meter feeds.</summary>
    [Needed, Whole(1, 1000)]
    public int? Total { get; set; }

    /// <summary>Standard deviation between points, relative.</summary>
    [Default(typeof(CatchTestDefaults), nameof(CatchTestDefaults.Spread))]
    [Measured(0, 100, "%")]
    public RatioQuantity? Spread { get; set; }
}

/// <summary>A mass per revolution to compare with.</summary>
public sealed class ReferenceOfTest : MassPerRevolutionQuantity
{
    /// <summary>
    /// Its own standard uncertainty, relative, where known. Default 2 %: default of a value in force: judgement, no published source. For a
    /// start value 10 %: a predicted start value may be 20 % off; judgement, no published source.
    /// </summary>
    [Measured(0, 100, "%")]
    public RatioQuantity? RelativeUncertainty { get; set; }

    /// <summary>
    /// True when another scale, or the same one after another check, stands behind it: then no scale error cancels in the change. Default
    /// false.
    /// </summary>
    public bool? FromAnotherScale { get; set; }

    /// <summary>
    /// Error of the scale behind it that was found only after it was adopted, beyond what was corrected then: where that alone explains a
    /// change, the answer says so first.
    /// </summary>
    public KnownScaleErrorOfTest? ScaleErrorFoundLater { get; set; }

    /// <summary>
    /// For a start value that a test measured and nobody adopted: when that test was made; the answer calls it by that day.
    /// </summary>
    [Instant]
    public string? MeasuredAt { get; set; }
}

/// <summary>What another lot is expected to give.</summary>
public sealed class PredictedValueOfTest : MassPerRevolutionQuantity
{
    /// <summary>Its own standard uncertainty, relative. Default 5 %: judgement, no published source.</summary>
    [Measured(0, 100, "%")]
    public RatioQuantity? RelativeUncertainty { get; set; }
}

/// <summary>
/// An earlier test: the mass per revolution that it found, and how sure it was. Set up apart means that the container was weighed again,
/// the points were counted, element and product were looked at, and the meter was primed again.
/// </summary>
public sealed class EarlierTestOfTest : MassPerRevolutionQuantity
{
    /// <summary>Catches that counted in it.</summary>
    [Needed, Whole(1, CatchTestData.MostCatches)]
    public int? Catches { get; set; }

    /// <summary>
    /// Relative standard uncertainty from its catches: the part <c>catches</c> of its uncertaintyParts. Default the repeatability of this
    /// test over the root of its number of catches.
    /// </summary>
    [Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? CatchesUncertainty { get; set; }

    /// <summary>
    /// Degrees of freedom of that part. Default those of the repeatability of this test, and one for each catch but the first.
    /// </summary>
    [Number(1, 1000 + CatchTestData.MostCatches)]
    public double? DegreesOfFreedom { get; set; }

    /// <summary>
    /// Relative standard uncertainty of a tare that its catches shared: the part <c>shared-tare</c> of its uncertaintyParts. Default none.
    /// </summary>
    [Measured(0, 100, "%")]
    public RatioQuantity? SharedTareUncertainty { get; set; }

    /// <summary>
    /// Relative standard uncertainty of its scale: the part <c>scale</c> of its uncertaintyParts. Default that of this test.
    /// </summary>
    [Measured(0, 100, "%")]
    public RatioQuantity? ScaleUncertainty { get; set; }

    /// <summary>
    /// True when another scale weighed it, or the same one after another check: then no scale error cancels between the two. Default false.
    /// </summary>
    public bool? FromAnotherScale { get; set; }

    /// <summary>When it was made; the answer calls it by that day.</summary>
    [Instant]
    public string? OccurredAt { get; set; }

    /// <summary>What it is called: the id of its record, or the owner's own name for it.</summary>
    [Text(Rules.LongestName)]
    public string? Test { get; set; }
}

/// <summary>How a controller takes the value.</summary>
[CheckedBy(typeof(ControllerEntryOfTestValidator))]
public sealed class ControllerEntryOfTest
{
    /// <summary>The form: mass-per-revolution, mass-per-revolutions, mass-per-pulse, volume-per-revolution or mass-per-time.</summary>
    [Needed, Word(typeof(ControllerForm))]
    public string? Form { get; set; }

    /// <summary>
    /// Unit of the number: one of mass per revolution; of mass, for stated revolutions or a pulse; of volume; or of mass per time, as the
    /// form asks.
    /// </summary>
    [Needed, ToldWord(typeof(ControllerUnits), nameof(ControllerUnits.All))]
    public string? Unit { get; set; }

    /// <summary>Decimals that the controller takes.</summary>
    [Needed, Whole(0, ControllerEntry.MostDecimals)]
    public int? Decimals { get; set; }

    /// <summary>Revolutions that the number stands for: needed with the form mass-per-revolutions, and only with it.</summary>
    [Whole(1, ControllerEntry.MostRevolutions)]
    public int? Revolutions { get; set; }
}

/// <summary>
/// One catch: what was weighed, as gross and tare (or the sharedTare of the test) or as net; and how far the meter turned, as exactly one
/// of revolutions, pulses, turns, indicatedMass and runTime.
/// </summary>
public sealed class CatchOfTest
{
    /// <summary>Mass with the container.</summary>
    [Measured]
    public MassQuantity? Gross { get; set; }

    /// <summary>Mass of the empty container.</summary>
    [Measured(0, 1000, "t")]
    public MassQuantity? Tare { get; set; }

    /// <summary>Net mass, in place of gross and tare.</summary>
    // A net mass, revolutions, pulses or turns at or below zero get their own codes and sentences.
    [Measured(-1000, 1000, "t", TellsWidest = true)]
    public MassQuantity? Net { get; set; }

    /// <summary>Revolutions of the meter.</summary>
    [Measured(-1_000_000, 1_000_000, "rev", TellsWidest = true)]
    public RevolutionsQuantity? Revolutions { get; set; }

    /// <summary>Sensor pulses, a plain count.</summary>
    [PositiveNumber(1e12)]
    public double? Pulses { get; set; }

    /// <summary>Turns of a crank or wheel.</summary>
    [Measured(-1_000_000, 1_000_000, "rev", TellsWidest = true)]
    public RevolutionsQuantity? Turns { get; set; }

    /// <summary>Mass that the machine believes to have metered.</summary>
    [Measured]
    public MassQuantity? IndicatedMass { get; set; }

    /// <summary>Run time at the steady meter speed.</summary>
    [Measured]
    public TimeQuantity? RunTime { get; set; }

    /// <summary>Leaves the catch out of the evaluation but in the answer.</summary>
    public Exclusion? Excluded { get; set; }
}

/// <summary>Why a catch is left out.</summary>
public sealed class Exclusion
{
    /// <summary>The reason, in the sender's words.</summary>
    [Needed, Text(500)]
    public string? Reason { get; set; }
}
