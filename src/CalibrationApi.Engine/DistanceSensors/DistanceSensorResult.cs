using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Uncertainty;
using CalibrationApi.Engine.Wheels;

namespace CalibrationApi.Engine.DistanceSensors;

/// <summary>What runs over a measured course say of a distance sensor.</summary>
public sealed record DistanceSensorResult
{
    /// <summary>One or two sentences that a tired person understands.</summary>
    public required Sentence Headline { get; init; }

    /// <summary>What to do.</summary>
    public required DistanceSensorVerdict.Decision Decision { get; init; }

    /// <summary>Why.</summary>
    public required IReadOnlyList<Finding> Reasons { get; init; }

    /// <summary>What the counts are.</summary>
    public required SensorCounts Counts { get; init; }

    /// <summary>Counts per metre with their uncertainty.</summary>
    public required RunsEstimate Estimate { get; init; }

    /// <summary>Rolling circumference under the load of the runs, m; null when the turns of the wheel are unknown.</summary>
    public MeasuredValue? RollingCircumference { get; init; }

    /// <summary>Each run in the order given.</summary>
    public required IReadOnlyList<EvaluatedRun> Runs { get; init; }

    /// <summary>How they agree.</summary>
    public required RunAgreement Agreement { get; init; }

    /// <summary>Runs that the wanted precision takes in all; null when no number reaches it.</summary>
    public int? RunsForWantedPrecision { get; init; }

    /// <summary>Skid against the reference runs: positive when the wheel turns less often at work; null without them.</summary>
    public MeasuredValue? Skid { get; init; }

    /// <summary>Width, as asked.</summary>
    public WorkingWidth? Width { get; init; }

    /// <summary>Comparison with the value in force; null without one.</summary>
    public SensorChange? Change { get; init; }

    /// <summary>What to type in; null unless the verdict is adopt and the controller's form is known.</summary>
    public SensorNumber? Enter { get; init; }

    /// <summary>What happens if the numbers in the controller stay; null when none is known.</summary>
    public DistanceEffect? Effect { get; init; }

    /// <summary>Largest acceptable deviation of the value in force.</summary>
    public required double Tolerance { get; init; }

    /// <summary>Wanted precision.</summary>
    public required double WantedPrecision { get; init; }

    /// <summary>Values used that the caller did not state, with origin.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>What the engine noticed.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}

/// <summary>One run as evaluated.</summary>
/// <param name="Distance">Distance driven.</param>
/// <param name="CountsPerMetre">Counts over distance.</param>
/// <param name="Deviation">From the pooled value, relative.</param>
/// <param name="GroundSpeed">Distance over time; null without a time.</param>
public sealed record EvaluatedRun(Length Distance, double CountsPerMetre, double Deviation, Speed? GroundSpeed);

/// <summary>Runs compared with the number in the controller.</summary>
/// <param name="Delta">K / K_in_force - 1, relative, with its interval: positive when the sensor gives more counts than the controller
/// believes.</param>
/// <param name="ProbabilityWithinTolerance">Probability that the truth lies within the tolerance of the number in force.</param>
public sealed record SensorChange(MeasuredValue Delta, double ProbabilityWithinTolerance)
{
    /// <summary>The interval of the change leaves out zero.</summary>
    public bool IsDetected => Math.Abs(Delta.Value) > Delta.ExpandedUncertainty;

    /// <summary>Compares.</summary>
    /// <param name="estimate">The value of the runs.</param>
    /// <param name="inForce">Counts per metre in force, above 0; exact, because it was typed in.</param>
    /// <param name="tolerance">Largest acceptable deviation.</param>
    /// <param name="coverage">Coverage probability.</param>
    /// <remarks>
    /// <para>Formula: delta = K / K_in_force - 1, with the relative uncertainty of K times that ratio, and the probability that K /
    /// K_in_force lies within 1 - tolerance and 1 + tolerance.</para>
    /// <para>Range: counts per metre above 0, tolerance above 0.</para>
    /// <para>Source: JCGM 106:2012, 7.2 to 7.4 (SOURCES.md, key JCGM-106). The tape enters whole: the old number may rest on another
    /// one.</para>
    /// <para>Accuracy: delta and its uncertainty within 1e-12 (SensorChangeTests); the probability within 1e-3 of one by hand
    /// (DistanceSensorVerdictTests).</para>
    /// </remarks>
    public static SensorChange Of(RunsEstimate estimate, double inForce, double tolerance, double coverage)
    {
        var ratio = estimate.CountsPerMetre.Value / inForce;
        var uncertainty = estimate.Relative.Times(ratio);
        return new(
            MeasuredValue.Create(ratio - 1, uncertainty, coverage),
            Conformance.Probability(ratio, uncertainty, 1 - tolerance, 1 + tolerance)
        );
    }
}

/// <summary>What wrong numbers in the controller do to the rate.</summary>
/// <param name="RateChange">Rate applied over rate set, less 1, with the interval of the runs.</param>
/// <param name="DistanceFactor">Distance counted over distance driven, K / K_set; null when no number in force is known.</param>
/// <param name="WidthFactor">Width typed in over width covered; null without a width.</param>
/// <param name="AreaFactor">Area counted over area covered: the product of the two.</param>
/// <param name="Application">Rate, mass and money; null without a target rate.</param>
/// <remarks>Accuracy: 1e-12 relative against mass over ground of a machine driven by hand (DistanceEffectTests).</remarks>
public sealed record DistanceEffect(
    MeasuredValue RateChange,
    double? DistanceFactor,
    double? WidthFactor,
    double AreaFactor,
    EffectOnApplication? Application
)
{
    /// <summary>Rate applied over rate set.</summary>
    /// <param name="countsPerMetre">Counts per metre that the sensor gives K.</param>
    /// <param name="inForce">Counts per metre that the controller believes in K_set.</param>
    /// <param name="width">Width of the machine; null leaves it out.</param>
    /// <param name="drive">What turns the meters.</param>
    /// <remarks>
    /// <para>Formula: (K / K_set) (W_set / W_effective) under a controller, W_nominal / W_effective where a wheel turns the meters; widths
    /// in m. A controller takes counts / K_set for the distance and meters for that distance times W_set. With more counts in force than
    /// the sensor gives, it counts too little distance and too little speed, and applies too little. Meters that a wheel turns follow the
    /// ground whatever is typed in: only the overlap of passes changes what a field gets.</para>
    /// <para>Range: all above 0; without a width its part is 1.</para>
    /// <para>Source: our own derivation; no published source.</para>
    /// </remarks>
    public static double RateFactor(
        double countsPerMetre,
        double inForce,
        WorkingWidth? width = null,
        MeterDrive drive = MeterDrive.RateControlled
    ) => drive == MeterDrive.GroundDriven ? OfWidth(width, drive) : AreaCounted(countsPerMetre, inForce, width);

    /// <summary>Area counted over area covered: (K / K_set) (W_set / W_effective).</summary>
    /// <inheritdoc cref="RateFactor"/>
    /// <remarks>
    /// <para>Formula: (K / K_set) (W_set / W_effective), widths in m.</para>
    /// <para>Range: all above 0; without a width its part is 1.</para>
    /// <para>Source: our own derivation; no published source.</para>
    /// </remarks>
    public static double AreaCounted(double countsPerMetre, double inForce, WorkingWidth? width = null) =>
        countsPerMetre / inForce * (width?.RateFactor ?? 1);

    /// <summary>What the width alone does to the rate: the factor of <see cref="RateFactor"/> where the distance is right.</summary>
    internal static double OfWidth(WorkingWidth? width, MeterDrive drive) =>
        width is null ? 1
        : drive == MeterDrive.GroundDriven ? width.Nominal.Metres / width.Effective.Metres
        : width.RateFactor;
}
