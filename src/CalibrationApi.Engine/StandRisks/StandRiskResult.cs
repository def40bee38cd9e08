using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.StandRisks;

/// <summary>The rate for a minimum stand, what its margin costs, and how a given rate does.</summary>
public sealed record StandRiskResult
{
    /// <summary>One or two sentences that a tired person understands.</summary>
    public required Sentence Headline { get; init; }

    /// <summary>What it is good for.</summary>
    public Usability Verdict => Judgement.Of(Findings);

    /// <summary>The wanted probability.</summary>
    public required double Probability { get; init; }

    /// <summary>The rate that would just do in the mean of all seasons.</summary>
    public required SownRate AtMean { get; init; }

    /// <summary>The rate that reaches the minimum with the wanted probability; null when none sensible does.</summary>
    public required SownRate? Needed { get; init; }

    /// <summary>What the needed rate is more than the one at the mean; null without a needed rate.</summary>
    public RateMargin? Margin { get; init; }

    /// <summary>The rate that was thought of; null without one.</summary>
    public SownRate? Given { get; init; }

    /// <summary>What makes the stand uncertain, each as a relative standard deviation.</summary>
    public required IReadOnlyList<(RiskSource Source, double Relative)> Parts { get; init; }

    /// <summary>Values used that the caller did not state, with origin.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>What the engine noticed.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}

/// <summary>A rate and the stand that comes of it.</summary>
/// <param name="Seeds">Pure seeds per area.</param>
/// <param name="Mass">Mass per area; null without a kernel mass.</param>
/// <param name="ExpectedStand">Plants per area in the mean of all seasons.</param>
/// <param name="StandReached">Plants per area that are reached with the wanted probability.</param>
/// <param name="ProbabilityReached">Probability of reaching the minimum stand.</param>
public sealed record SownRate(
    CountPerArea Seeds,
    MassPerArea? Mass,
    CountPerArea ExpectedStand,
    CountPerArea StandReached,
    double ProbabilityReached
);

/// <summary>What a rate is more than the one at the mean.</summary>
/// <param name="Relative">Their ratio less 1; below 0 where a low probability lets the rate fall under the mean one.</param>
/// <param name="Seeds">Extra pure seeds per area.</param>
/// <param name="Mass">Extra mass per area; null without a kernel mass.</param>
/// <param name="CostPerSquareMetre">Money for it per m2; null without price or kernel mass.</param>
/// <param name="Cost">Money for it on the whole area; null without cost or area.</param>
public sealed record RateMargin(double Relative, CountPerArea Seeds, MassPerArea? Mass, double? CostPerSquareMetre, double? Cost)
{
    /// <summary>The margin of one rate over another.</summary>
    /// <param name="rate">The higher one.</param>
    /// <param name="over">The one at the mean.</param>
    /// <param name="pricePerKilogram">Money for a kilogram of seed; null when unknown.</param>
    /// <param name="area">Area to be sown; null when unknown.</param>
    /// <remarks>
    /// <para>Formula: relative = R / R_mean - 1; seeds and mass are differences per m2; cost = mass times price, and times area.</para>
    /// <para>Range: rates above 0; null where price, kernel mass or area is unknown.</para>
    /// <para>Source: common practice, no published source.</para>
    /// <para>Accuracy: 1e-12 relative (StandRiskTests).</para>
    /// </remarks>
    public static RateMargin Of(SownRate rate, SownRate over, double? pricePerKilogram, Area? area)
    {
        var mass = rate.Mass?.KilogramsPerSquareMetre - over.Mass?.KilogramsPerSquareMetre;
        return new RateMargin(
            rate.Seeds.PerSquareMetre / over.Seeds.PerSquareMetre - 1,
            new CountPerArea(rate.Seeds.PerSquareMetre - over.Seeds.PerSquareMetre),
            mass is { } known ? new MassPerArea(known) : null,
            mass * pricePerKilogram,
            mass * pricePerKilogram * area?.SquareMetres
        );
    }
}

/// <summary>What makes a stand uncertain before it is sown.</summary>
public enum RiskSource
{
    /// <summary>The share of seeds that become plants.</summary>
    ShareOfSeeds,

    /// <summary>The germination test, which counts some seeds only.</summary>
    GerminationTest,

    /// <summary>The mass of a kernel.</summary>
    KernelMass,

    /// <summary>What the meter puts down.</summary>
    Metering,
}
