using CalibrationApi.Quantities;

namespace CalibrationApi.CatchTests;

/// <summary>A catch test of one meter with one product.</summary>
public sealed class CatchTestRequest : CatchTestData
{
    /// <summary>What the owner calls the meter.</summary>
    public string? Meter { get; init; }

    /// <summary>The product.</summary>
    public ProductOfTest? Product { get; init; }

    /// <summary>The scale that weighed the catches.</summary>
    public ScaleOfTest? Scale { get; init; }

    /// <summary>Smallest step of the revolution counter. Default 0.1 rev, judgement.</summary>
    public RevolutionsQuantity? CounterResolution { get; init; }

    /// <summary>Pockets or flutes of the metering element that discharge one after the other in one revolution, where known.</summary>
    public int? PocketsPerRevolution { get; init; }

    /// <summary>Sensor pulses per meter revolution; needed when catches give pulses or the controller takes a mass per pulse.</summary>
    public PulsesPerRevolutionQuantity? PulsesPerRevolution { get; init; }

    /// <summary>Meter revolutions per turn of the crank or wheel; needed when catches give turns.</summary>
    public RatioQuantity? MeterRevolutionsPerTurn { get; init; }

    /// <summary>The form in which the controller takes the value.</summary>
    public ControllerEntryOfTest? ControllerEntry { get; init; }
}

/// <summary>The product of a catch test.</summary>
public sealed class ProductOfTest
{
    /// <summary>What the owner calls it.</summary>
    public string? Name { get; init; }

    /// <summary>How it flows: <c>free-flowing</c>, <c>small-seed</c> or <c>dusty</c> (also sticky or caking).</summary>
    public string? Material { get; init; }

    /// <summary>Bulk density; needed when the controller takes a volume per revolution.</summary>
    public BulkDensityQuantity? BulkDensity { get; init; }

    /// <summary>Price; gives the cost of a wrong value.</summary>
    public Price? Price { get; init; }
}

/// <summary>A price per mass.</summary>
public sealed class Price
{
    /// <summary>Amount of money for one <c>per</c>.</summary>
    public double? Value { get; init; }

    /// <summary>ISO 4217 currency code, for example EUR.</summary>
    public string? Currency { get; init; }

    /// <summary>The mass that the amount buys, as a unit of mass.</summary>
    public string? Per { get; init; }
}

/// <summary>A scale.</summary>
public sealed class ScaleOfTest
{
    /// <summary>Smallest step of the display.</summary>
    public MassQuantity? Division { get; init; }

    /// <summary>Class on the data plate of a verified scale, as OIML R 76 names it: I, II, III or IIII.</summary>
    public string? AccuracyClass { get; init; }

    /// <summary>Verification interval e of the data plate. Default the division.</summary>
    public MassQuantity? VerificationInterval { get; init; }

    /// <summary>Limit of error stated by the maker or owner; goes before the class.</summary>
    public MassQuantity? StatedAccuracy { get; init; }

    /// <summary>Span error found by a check against known masses: it is corrected, and only its uncertainty remains.</summary>
    public KnownScaleErrorOfTest? KnownError { get; init; }

    /// <summary>Largest load, container included.</summary>
    public MassQuantity? Capacity { get; init; }

    /// <summary>Standard deviation of a reading of a load that swings or creeps, beyond the division.</summary>
    public MassQuantity? ReadingScatter { get; init; }
}

/// <summary>The span error of a scale.</summary>
public sealed class KnownScaleErrorOfTest
{
    /// <summary>Indicated minus true, divided by true: positive when the scale shows too much.</summary>
    public RatioQuantity? Error { get; init; }

    /// <summary>Standard uncertainty of that error, relative.</summary>
    public RatioQuantity? StandardUncertainty { get; init; }
}

/// <summary>A partial catch.</summary>
public sealed class CaughtPointsOfTest
{
    /// <summary>Points that were caught.</summary>
    public int? Caught { get; init; }

    /// <summary>Points that the meter feeds.</summary>
    public int? Total { get; init; }

    /// <summary>Standard deviation between points, relative. Default 5 %/sqrt(3), from the published limit of 5 % for each outlet.</summary>
    public RatioQuantity? Spread { get; init; }
}

/// <summary>A mass per revolution to compare with.</summary>
public sealed class ReferenceOfTest : MassPerRevolutionQuantity
{
    /// <summary>Its own standard uncertainty, relative, where known.</summary>
    public RatioQuantity? RelativeUncertainty { get; init; }

    /// <summary>True when another scale, or the same one after another check, stands behind it: then no scale error cancels in the change. Default false.</summary>
    public bool? FromAnotherScale { get; init; }
}

/// <summary>How a controller takes the value.</summary>
public sealed class ControllerEntryOfTest
{
    /// <summary>The form: mass-per-revolution, mass-per-ten-revolutions, mass-per-pulse, volume-per-revolution or mass-per-time.</summary>
    public string? Form { get; init; }

    /// <summary>Unit of the number: one of mass per revolution; of mass for ten revolutions or a pulse; of volume; or of mass per time, as the form asks.</summary>
    public string? Unit { get; init; }

    /// <summary>Decimals that the controller takes.</summary>
    public int? Decimals { get; init; }
}

/// <summary>One catch: what was weighed, as gross and tare (or the sharedTare of the test) or as net; and how far the meter turned, as exactly one of revolutions, pulses, turns, indicatedMass and runTime.</summary>
public sealed class CatchOfTest
{
    /// <summary>Mass with the container.</summary>
    public MassQuantity? Gross { get; init; }

    /// <summary>Mass of the empty container.</summary>
    public MassQuantity? Tare { get; init; }

    /// <summary>Net mass, in place of gross and tare.</summary>
    public MassQuantity? Net { get; init; }

    /// <summary>Revolutions of the meter.</summary>
    public RevolutionsQuantity? Revolutions { get; init; }

    /// <summary>Sensor pulses, a plain count.</summary>
    public double? Pulses { get; init; }

    /// <summary>Turns of a crank or wheel.</summary>
    public RevolutionsQuantity? Turns { get; init; }

    /// <summary>Mass that the machine believes to have metered.</summary>
    public MassQuantity? IndicatedMass { get; init; }

    /// <summary>Run time at the steady meter speed.</summary>
    public TimeQuantity? RunTime { get; init; }

    /// <summary>Leaves the catch out of the evaluation but in the answer.</summary>
    public Exclusion? Excluded { get; init; }
}

/// <summary>Why a catch is left out.</summary>
public sealed class Exclusion
{
    /// <summary>The reason, in the sender's words.</summary>
    public string? Reason { get; init; }
}
