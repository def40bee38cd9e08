using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.NewLots;
using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedRowLimits;

namespace CalibrationApi.Engine.FieldSetUps;

/// <summary>Rates and set-up of a field.</summary>
public sealed record FieldSetUpResult
{
    /// <summary>A few sentences that a tired person understands: the worst obstacle, or what is open.</summary>
    public required Sentence Headline { get; init; }

    /// <summary>The part that the headline speaks of; null where it has no quantities.</summary>
    public SetUpPart? HeadlineAbout { get; init; }

    /// <summary>Whether the field can be begun.</summary>
    public SetUpVerdict Verdict =>
        Obstacles.Count > 0 ? SetUpVerdict.Blocked
        : Missing.Count > 0 ? SetUpVerdict.Incomplete
        : SetUpVerdict.Ready;

    /// <summary>What stands against going on, the worst first.</summary>
    public required IReadOnlyList<Obstacle> Obstacles { get; init; }

    /// <summary>The meters, in the order of the question.</summary>
    public required IReadOnlyList<MeterSetUp> Meters { get; init; }

    /// <summary>How the products supply the nutrients; null when none are wanted, or a rate or an analysis is open.</summary>
    public ProductRateResult? Nutrients { get; init; }

    /// <summary>What lies with the seed against published limits; null when nothing does, or something that it needs is open.</summary>
    public SeedRowResult? SeedRow { get; init; }

    /// <summary>The meters whose products were counted there, in their order; empty without a result.</summary>
    public IReadOnlyList<MeterRate> InSeedRow { get; init; } = [];

    /// <summary>Where the fan may stand; null when no product put down states its fan speeds, or no meter can be set up yet.</summary>
    public FanResult? Fan { get; init; }

    /// <summary>What could not be computed, and what to add.</summary>
    public required IReadOnlyList<OpenPoint> Missing { get; init; }

    /// <summary>What can hurt people or the crop.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }
}

/// <summary>Whether a field can be begun.</summary>
public enum SetUpVerdict
{
    /// <summary>
    /// Every meter has a rate and a mass per revolution, its element serves that rate at the planned ground speeds, all that lies with the
    /// seed has a limit and is within it, the fan suits all products, the nutrients are met, no lot asks for a test first, and nothing is
    /// missing.
    /// </summary>
    Ready,

    /// <summary>Nothing is known to stand in the way, but something is missing.</summary>
    Incomplete,

    /// <summary>Something stands in the way.</summary>
    Blocked,
}

/// <summary>Something that stands against going on.</summary>
/// <param name="About">The part of the set-up that found it.</param>
/// <param name="Detail">What it is, and what to do.</param>
/// <param name="Meter">Position of the meter; null when it is about the field.</param>
public sealed record Obstacle(SetUpPart About, Sentence Detail, string? Meter = null);

/// <summary>Rates and set-up of one meter.</summary>
/// <param name="Rate">Its rate, and where that comes from.</param>
/// <param name="Values">The masses per revolution of its elements, as far as something is known.</param>
/// <param name="MeterSpeed">Meter speeds, windows and the best element; null without a rate or a value, and at a rate of zero.</param>
/// <param name="NewLot">What another lot means for the value in force; null when it is the same or unknown, and at a rate of zero.</param>
public sealed record MeterSetUp(MeterRate Rate, IReadOnlyList<KnownValue> Values, MeterSpeedResult? MeterSpeed, NewLotResult? NewLot);
