using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using CalibrationApi.Records.Describing;

namespace CalibrationApi.Records.Machines;

/// <summary>A seeding machine with its tanks, meters and what a test disturbs on it.</summary>
[CheckedBy(typeof(MachineRequestValidator))]
public class MachineRequest : DescribedRequest
{
    /// <summary>
    /// Time zone by its IANA name, for example Europe/Vienna: days and months in answers are those of this zone. Default Etc/UTC.
    /// </summary>
    [Text(64)]
    public string? TimeZone { get; init; }

    /// <summary>Width that the machine works.</summary>
    [Measured(0, 200, "m", ExcludesLeast = true)]
    public LengthQuantity? WorkingWidth { get; init; }

    /// <summary>Distance between two rows.</summary>
    [Measured(0, 5, "m", ExcludesLeast = true)]
    public LengthQuantity? RowSpacing { get; init; }

    /// <summary>Its openers.</summary>
    [Word(typeof(Opener))]
    public string? Opener { get; init; }

    /// <summary>Width over which an opener spreads seed and fertilizer, measured in the field; at most the row spacing.</summary>
    [Measured(0, 5, "m", ExcludesLeast = true)]
    public LengthQuantity? SeedRowWidth { get; init; }

    /// <summary>How its meters are driven: <c>separate</c> drives (the default) or a <c>shared-shaft</c>.</summary>
    [Word(typeof(MeterDrive))]
    public string? Drive { get; init; }

    /// <summary>Its tanks.</summary>
    [Items(0, 64)]
    public IReadOnlyList<TankOfMachine?>? Tanks { get; init; }

    /// <summary>Its meters, each under one position.</summary>
    [Needed, Items(1, 64)]
    public IReadOnlyList<MeterOfMachine?>? Meters { get; init; }

    /// <summary>What a test disturbs on this machine and has to be put back, in the owner's words.</summary>
    [Items(0, 200)]
    public IReadOnlyList<RestorePoint?>? RestorePoints { get; init; }
}

/// <summary>A tank.</summary>
public sealed class TankOfMachine
{
    /// <summary>What the owner calls it.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? Name { get; init; }

    /// <summary>Its volume.</summary>
    [Measured]
    public VolumeQuantity? Volume { get; init; }
}

/// <summary>A meter at its place on the machine.</summary>
public sealed class MeterOfMachine
{
    /// <summary>Where it is, in the owner's words, for example front; unique on the machine.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? Position { get; init; }

    /// <summary>Name of the tank that feeds it.</summary>
    [Text(Rules.LongestName)]
    public string? Tank { get; init; }

    /// <summary>Width that it covers.</summary>
    [Needed, Measured(0, 200, "m", ExcludesLeast = true)]
    public LengthQuantity? CoveredWidth { get; init; }

    /// <summary>Outlets that it feeds.</summary>
    [Whole(1, 500)]
    public int? Outlets { get; init; }

    /// <summary>
    /// Metering elements it can be fitted with; names are unique within the meter. At most 1280 on all meters of the machine together.
    /// </summary>
    [Needed, Items(1, 50)]
    public IReadOnlyList<ElementOfMachine?>? Elements { get; init; }

    /// <summary>Limits of its speed, for elements that do not name their own.</summary>
    public RotationLimits? SpeedLimits { get; init; }

    /// <summary>Smallest step of its revolution counter.</summary>
    [Default(typeof(CatchTestDefaults), nameof(CatchTestDefaults.CounterResolution))]
    [Measured(0, 10, "rev")]
    public RevolutionsQuantity? CounterResolution { get; init; }

    /// <summary>Sensor pulses per revolution.</summary>
    [Measured]
    public PulsesPerRevolutionQuantity? PulsesPerRevolution { get; init; }

    /// <summary>Meter revolutions per turn of the crank or wheel.</summary>
    [Measured(0.0001, 10_000, "1")]
    public RatioQuantity? MeterRevolutionsPerTurn { get; init; }

    /// <summary>The form in which its controller takes the value.</summary>
    public ControllerEntryOfTest? ControllerEntry { get; init; }
}

/// <summary>A metering element: a roller, an auger.</summary>
public sealed class ElementOfMachine
{
    /// <summary>What the owner calls it.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? Name { get; init; }

    /// <summary>
    /// How it carries product, and with it which volume its displacement means: <c>closed-pockets</c> that are struck off (their volume; no
    /// more can come out), <c>open-flutes</c> (their volume; a layer beyond them is dragged along) or an <c>auger</c> (the volume between
    /// shaft and edge of the flight over one turn). Default not known.
    /// </summary>
    [Word(typeof(ElementKind))]
    public string? Kind { get; init; }

    /// <summary>Volume that one revolution displaces.</summary>
    [Measured(0, 1, "m3", ExcludesLeast = true)]
    public VolumeQuantity? DisplacementPerRevolution { get; init; }

    /// <summary>Limits of its speed.</summary>
    public RotationLimits? SpeedLimits { get; init; }

    /// <summary>Pockets or flutes that discharge one after the other in one revolution.</summary>
    [Whole(1, 10_000)]
    public int? PocketsPerRevolution { get; init; }

    /// <summary>What one revolution can hold of a product; null when displacement or density is not known.</summary>
    internal static ElementContent? Content(ElementOfMachine element, BulkDensityQuantity? density) =>
        element.DisplacementPerRevolution is { } displacement && density is not null
            ? new ElementContent(new(displacement.Read()), new(density.Read()), Words.Read<ElementKind>(element.Kind), element.Name)
            : null;
}

/// <summary>A machine as stored.</summary>
public sealed class MachineAnswer : MachineRequest, IRecordAnswer
{
    /// <inheritdoc/>
    public new required string Id { get; init; }

    /// <inheritdoc/>
    public required long Revision { get; init; }

    /// <inheritdoc/>
    public required DateTimeOffset CreatedAt { get; init; }

    /// <inheritdoc/>
    public required DateTimeOffset UpdatedAt { get; init; }
}
