using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.MeterSpeeds;

/// <summary>Meter speeds, windows and the order of the elements.</summary>
public sealed record MeterSpeedResult
{
    /// <summary>One sentence that a tired person understands.</summary>
    public required Sentence Headline { get; init; }

    /// <summary>Whether the best element and the fan serve.</summary>
    public MeterSpeedVerdict Verdict =>
        Elements is not [{ Fits: true }, ..] ? MeterSpeedVerdict.NoneFits
        : Fan is { Verdict: not FanVerdict.Suits } ? MeterSpeedVerdict.FanUnsuited
        : MeterSpeedVerdict.Fits;

    /// <summary>The elements, best first.</summary>
    public required IReadOnlyList<ElementResult> Elements { get; init; }

    /// <summary>Field capacity at each ground speed, in the order given.</summary>
    public required IReadOnlyList<CapacityAt> Capacity { get; init; }

    /// <summary>The air stream; null when none was asked about.</summary>
    public FanResult? Fan { get; init; }

    /// <summary>What can hurt somebody on the way; empty without a fan.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }

    /// <summary>Values used that the caller did not state, with origin.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>What the engine noticed.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}

/// <summary>Whether an element serves.</summary>
public enum MeterSpeedVerdict
{
    /// <summary>The best element serves every rate at every ground speed, and so does the fan where one was asked about.</summary>
    Fits,

    /// <summary>The best element does, but the fan has to be set otherwise, or no setting of it suits all products.</summary>
    FanUnsuited,

    /// <summary>No element serves every rate at every ground speed.</summary>
    NoneFits,
}

/// <summary>One element against the rates and ground speeds.</summary>
public sealed record ElementResult
{
    /// <summary>The element.</summary>
    public required MeteringElement Element { get; init; }

    /// <summary>Room to the nearer limit: min(ln(n_low / n_min), ln(n_max / n_high)); infinity without limits.</summary>
    public required double Margin { get; init; }

    /// <summary>The margin as a ratio: 0.25 says that the nearer limit is a factor of 1.25 away.</summary>
    /// <remarks>
    /// <para>Formula: exp(margin) - 1, with the margin a logarithm.</para>
    /// <para>Range: -1 to infinity: below 0 outside the limits, infinity without limits.</para>
    /// <para>Source: our own derivation.</para>
    /// <para>Accuracy: 1e-12 relative (ElementChoiceTests).</para>
    /// </remarks>
    public double Room => Math.Exp(Margin) - 1;

    /// <summary>The element serves every corner.</summary>
    public bool Fits => Corners.All(corner => corner.Within);

    /// <summary>What is wrong at the slow side, as a sentence about the worst corner; null when nothing is.</summary>
    public Sentence? TooSlow { get; init; }

    /// <summary>
    /// What is wrong at the fast side, as a sentence about the worst corner: the rate will not be reached; null when nothing is.
    /// </summary>
    public Sentence? TooFast { get; init; }

    /// <summary>Lowest and highest rate at lowest and highest ground speed.</summary>
    public required IReadOnlyList<Corner> Corners { get; init; }

    /// <summary>For each rate, the ground speeds inside the limits.</summary>
    public required IReadOnlyList<SpeedWindow> SpeedWindows { get; init; }

    /// <summary>For each ground speed, the rates inside the limits.</summary>
    public required IReadOnlyList<RateWindow> RateWindows { get; init; }
}

/// <summary>One combination of rate and ground speed.</summary>
/// <param name="Rate">Rate R.</param>
/// <param name="GroundSpeed">Ground speed v.</param>
/// <param name="MeterSpeed">n = R W v / k(n).</param>
/// <param name="Within">Inside the limits of the element.</param>
/// <param name="DischargeSpacing">Ground between two discharges, v / (n pockets); null when the pockets are unknown.</param>
public sealed record Corner(MassPerArea Rate, Speed GroundSpeed, RotationalSpeed MeterSpeed, bool Within, Length? DischargeSpacing);

/// <summary>The ground speeds at which a rate can be put down.</summary>
/// <param name="Rate">The rate.</param>
/// <param name="Minimum">Slowest; null without a lower limit of the meter.</param>
/// <param name="Maximum">Fastest; null without an upper limit of the meter.</param>
public sealed record SpeedWindow(MassPerArea Rate, Speed? Minimum, Speed? Maximum);

/// <summary>The rates that can be put down at a ground speed.</summary>
/// <param name="GroundSpeed">The ground speed.</param>
/// <param name="Minimum">Lowest; null without a lower limit of the meter.</param>
/// <param name="Maximum">Highest; null without an upper limit of the meter.</param>
public sealed record RateWindow(Speed GroundSpeed, MassPerArea? Minimum, MassPerArea? Maximum);
