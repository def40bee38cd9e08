using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.MeterSpeeds;

/// <summary>What the air stream carries, and where the fan may stand.</summary>
public sealed record FanResult
{
    /// <summary>Fan speeds that all products allow; null when no product states any.</summary>
    public CommonWindow<RotationalSpeed>? FanSpeeds { get; init; }

    /// <summary>Air flows that all products allow; null when no product states any.</summary>
    public CommonWindow<VolumeFlow>? AirFlows { get; init; }

    /// <summary>Lowest and highest rates at slowest and fastest ground speed.</summary>
    public required IReadOnlyList<AirLoad> Loads { get; init; }

    /// <summary>One sentence that a tired person understands.</summary>
    public required Sentence Headline { get; init; }

    /// <summary>Whether a setting of the fan suits all products, and the planned one is such.</summary>
    public FanVerdict Verdict =>
        !Fits ? FanVerdict.NoneSuits
        : Findings.Any(finding => finding.Code == MeterSpeedCodes.OutsideFanWindow) ? FanVerdict.Change
        : FanVerdict.Suits;

    private bool Fits => FanSpeeds is not { Exists: false } && AirFlows is not { Exists: false };

    /// <summary>What was noticed.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}

/// <summary>Whether the air suits all products.</summary>
public enum FanVerdict
{
    /// <summary>What is planned suits all products; without a plan, at least one setting does, as far as limits are stated.</summary>
    Suits,

    /// <summary>The planned setting does not suit all products, but another one does.</summary>
    Change,

    /// <summary>No setting suits all products.</summary>
    NoneSuits,
}

/// <summary>What the limits of several products leave in common.</summary>
/// <param name="Minimum">Highest of the minima; null without any.</param>
/// <param name="MinimumOf">The product that it is of.</param>
/// <param name="Maximum">Lowest of the maxima; null without any.</param>
/// <param name="MaximumOf">The product that it is of.</param>
public sealed record CommonWindow<T>(T? Minimum, string? MinimumOf, T? Maximum, string? MaximumOf)
    where T : struct, IQuantity<T>
{
    /// <summary>At least one setting suits all products.</summary>
    public bool Exists => !(Minimum is { } minimum && Maximum is { } maximum && Threshold.IsAbove(minimum.Canonical, maximum.Canonical));
}

/// <summary>What the air stream carries at one ground speed.</summary>
/// <param name="GroundSpeed">The ground speed v.</param>
/// <param name="HighestRates">All products at their highest rate; otherwise at their lowest above 0.</param>
/// <param name="Total">All products together.</param>
/// <param name="Products">Each product.</param>
public sealed record AirLoad(
    Speed GroundSpeed,
    bool HighestRates,
    CarriedMass Total,
    IReadOnlyList<(string Name, CarriedMass Carried)> Products
);

/// <summary>A mass flow in an air stream.</summary>
/// <param name="Flow">R W v.</param>
/// <param name="PerAir">Mass flow over air flow, kg of product per m3 of air; null without a planned air flow.</param>
public sealed record CarriedMass(MassFlow Flow, BulkDensity? PerAir);
