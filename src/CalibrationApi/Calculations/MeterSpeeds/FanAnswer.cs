using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.MeterSpeeds;

/// <summary>Where the fan may stand for all products, and what its air carries.</summary>
public sealed class FanAnswer
{
    /// <summary>Where to set the fan, in a sentence that can be shown as it is.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>
    /// <c>suits</c> when the planned setting, or without a plan at least one, suits all products; <c>change</c> when another than the
    /// planned one does; <c>none-suits</c> when no setting does.
    /// </summary>
    [KnownWords(typeof(FanVerdict))]
    public required string Verdict { get; init; }

    /// <summary>Fan speeds that all products allow; absent when no product states any.</summary>
    public FanSpeedWindow? FanSpeeds { get; init; }

    /// <summary>Air flows that all products allow; absent when no product states any.</summary>
    public AirFlowWindow? AirFlows { get; init; }

    /// <summary>What the air carries at the lowest and the highest rates and ground speeds.</summary>
    public required IReadOnlyList<AirLoadAnswer> Loads { get; init; }
}

/// <summary>The fan speeds that the limits of all products leave.</summary>
public sealed class FanSpeedWindow
{
    /// <summary>At least one fan speed suits all products; when false, the minimum of one lies above the maximum of another.</summary>
    public required bool Exists { get; init; }

    /// <summary>Slowest: the highest of the minima; absent without any.</summary>
    public RotationQuantity? Minimum { get; init; }

    /// <summary>The product that sets it.</summary>
    public string? MinimumOf { get; init; }

    /// <summary>Fastest: the lowest of the maxima; absent without any.</summary>
    public RotationQuantity? Maximum { get; init; }

    /// <summary>The product that sets it.</summary>
    public string? MaximumOf { get; init; }
}

/// <summary>The air flows that the limits of all products leave.</summary>
public sealed class AirFlowWindow
{
    /// <summary>At least one air flow suits all products; when false, the minimum of one lies above the maximum of another.</summary>
    public required bool Exists { get; init; }

    /// <summary>Least: the highest of the minima; absent without any.</summary>
    public VolumePerTimeQuantity? Minimum { get; init; }

    /// <summary>The product that sets it.</summary>
    public string? MinimumOf { get; init; }

    /// <summary>Most: the lowest of the maxima; absent without any.</summary>
    public VolumePerTimeQuantity? Maximum { get; init; }

    /// <summary>The product that sets it.</summary>
    public string? MaximumOf { get; init; }
}

/// <summary>What the air carries at one ground speed.</summary>
public sealed class AirLoadAnswer
{
    /// <summary>The ground speed.</summary>
    public required SpeedQuantity GroundSpeed { get; init; }

    /// <summary>Which of its rates each product has: the <c>lowest</c> above zero or the <c>highest</c>.</summary>
    [KnownWords("lowest", "highest")]
    public required string Rates { get; init; }

    /// <summary>Mass flow of all products together.</summary>
    public required MassPerTimeQuantity MassFlow { get; init; }

    /// <summary>Mass of all products in a volume of air; absent without a planned air flow.</summary>
    public BulkDensityQuantity? MassPerAir { get; init; }

    /// <summary>Each product.</summary>
    public required IReadOnlyList<ProductLoadAnswer> Products { get; init; }
}

/// <summary>What the air carries of one product.</summary>
public sealed class ProductLoadAnswer
{
    /// <summary>The product.</summary>
    public required string Name { get; init; }

    /// <summary>Its mass flow: rate times width times ground speed.</summary>
    public required MassPerTimeQuantity MassFlow { get; init; }

    /// <summary>Its mass in a volume of air; absent without a planned air flow.</summary>
    public BulkDensityQuantity? MassPerAir { get; init; }
}
