using CalibrationApi.Engine.Statistics;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.Catches;

/// <summary>The mass per revolution of a test with its uncertainty taken apart.</summary>
/// <remarks>
/// <para>Formula: u_rel^2 = 1 / sum(w) + u_tare^2 + u_points^2 + u_span^2, the first of them Catches^2; relative expanded uncertainty U /
/// k.</para>
/// <para>Range: at least one catch; every part at least 0, relative.</para>
/// <para>Source: JCGM 100:2008, 5.1.2 (SOURCES.md, key GUM), with the two parts of <see cref="TwoPartUncertainty"/>.</para>
/// <para>Accuracy: 1e-12 relative against the parts by hand (MassPerRevolutionEstimateTests).</para>
/// </remarks>
public sealed record MassPerRevolutionEstimate
{
    /// <summary>The pooled value with its interval, kg per revolution.</summary>
    public required MeasuredValue Value { get; init; }

    /// <summary>Pooling of the catches behind it.</summary>
    public required PooledRatio Pooled { get; init; }

    /// <summary>Span error of the scale, common to all catches, relative standard uncertainty.</summary>
    public required double Span { get; init; }

    /// <summary>Rounding of a tare that all catches have in common, relative standard uncertainty; 0 where each has its own.</summary>
    public required double SharedTare { get; init; }

    /// <summary>Points that were not caught, relative standard uncertainty; 0 when all were.</summary>
    public required double Points { get; init; }

    /// <summary>Scatter of catches, weighing and counting, relative standard uncertainty.</summary>
    public double Catches => Math.Sqrt(Pooled.RelativeVariance);

    /// <summary>Relative variance of everything but the span of the scale.</summary>
    public double VarianceWithoutSpan => Pooled.RelativeVariance + SharedTare * SharedTare + Points * Points;

    /// <summary>Relative standard uncertainty of everything but the span of the scale.</summary>
    public double WithoutSpan => Math.Sqrt(VarianceWithoutSpan);

    /// <summary>Relative variance of the whole.</summary>
    public double RelativeVariance => VarianceWithoutSpan + Span * Span;

    /// <summary>Relative expanded uncertainty.</summary>
    public double RelativeExpanded => Value.ExpandedUncertainty / Value.Value;

    /// <summary>
    /// The uncertainty behind a relative variance that holds the between-catch part of this estimate and otherwise only
    /// parts known without doubt.
    /// </summary>
    public TwoPartUncertainty UncertaintyOf(double relativeVariance) =>
        new(Pooled.BetweenShare, Pooled.DegreesOfFreedom, Math.Max(0, relativeVariance - Pooled.BetweenShare));

    /// <summary>Pools the readings and adds what is common to all catches.</summary>
    /// <remarks>
    /// u_rel^2 = 1 / sum(w) + u_s^2. A part common to all catches is averaged with the same weights as the masses but
    /// does not shrink: u_s = sum(w_i a_i / (sqrt(3) m_i)) / sum(w). Only the share of the scatter carries nu0 + c - 1 degrees of
    /// freedom, the rest is known: <see cref="TwoPartUncertainty"/>.
    /// </remarks>
    internal static MassPerRevolutionEstimate From(CatchReadings readings, CaughtPoints? points, double coverage)
    {
        var pooled = readings.Ratios.Pool();
        double span = 0,
            tare = 0;
        for (var i = 0; i < readings.Count; i++)
        {
            var share = 1 / (pooled.Scatter * readings.Believed[i] + readings.Variances[i]) / pooled.SumOfWeights;
            span += share * readings.SpanUncertainties[i];
            tare += share * readings.TareUncertainties[i];
        }

        var pointShare = points?.RelativeUncertainty ?? 0;
        var variance = pooled.RelativeVariance + span * span + tare * tare + pointShare * pointShare;
        var uncertainty = new TwoPartUncertainty(pooled.BetweenShare, pooled.DegreesOfFreedom, Math.Max(0, variance - pooled.BetweenShare));
        return new MassPerRevolutionEstimate
        {
            Value = MeasuredValue.Create(pooled.Value, uncertainty.Times(pooled.Value), coverage),
            Pooled = pooled,
            Span = span,
            SharedTare = tare,
            Points = pointShare,
        };
    }
}
