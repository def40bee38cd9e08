using System.Globalization;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Statistics;
using CalibrationApi.Engine.Uncertainty;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.BulkDensities;

/// <summary>Weighings of one container of known volume, each filled anew and struck off level.</summary>
/// <remarks>
/// rho_i = m_i / V. The weighings are pooled (<see cref="PooledRatio"/>), with a prior on the scatter between
/// fillings; the span of the scale, a shared tare and the volume are common to all: u_rel^2 = 1 / sum(w) + u_s^2 + u_t^2 + u_V^2,
/// where only the scatter has the degrees of freedom nu0 + c - 1 (<see cref="TwoPartUncertainty"/>).
/// </remarks>
public sealed record WeighedVolume : DensityEvidence
{
    // Scatter this improbable by chance is worth a word.
    private const double Rare = 0.01;

    /// <summary>Volume of the container V, above 0.</summary>
    public required Volume Volume { get; init; }

    /// <summary>Indicated net masses, at least one, all above 0.</summary>
    public required IReadOnlyList<Mass> IndicatedNet { get; init; }

    /// <summary>Largest error of the volume, relative; null takes the default.</summary>
    public double? VolumeTolerance { get; init; }

    /// <summary>The scale; null where nothing is known of it.</summary>
    public Scale? Scale { get; init; }

    /// <summary>How the empty container was taken into account.</summary>
    public TareReading TareReading { get; init; } = TareReading.Each;

    /// <summary>Mass of the empty container beside each weighing; null where there is only one reading or none.</summary>
    public IReadOnlyList<Mass>? Tares { get; init; }

    /// <summary>How the rounding of the tare enters: equal readings are worth one, shared by all weighings, as in a catch test.</summary>
    public TareReading TareRounding =>
        TareReading == TareReading.Each && Tares is { Count: > 1 } tares && tares.All(tare => tare == tares[0])
            ? TareReading.Shared
            : TareReading;

    /// <summary>Standard deviation of one filling, relative; null takes the default.</summary>
    public double? Repeatability { get; init; }

    /// <inheritdoc/>
    public override DensityBasis Basis => DensityBasis.Weighed;

    internal override DensityEstimate Estimate()
    {
        double[] masses = [.. IndicatedNet.Select(net => Scale?.Corrected(net.Kilograms) ?? net.Kilograms)];
        double[] variances = [.. masses.Select(mass => Scale is null ? 0 : Square(Scale.RandomUncertainty(TareRounding) / mass))];
        var prior = BulkDensityDefaults.Prior(Repeatability);
        var densities = new ObservedRatios(
            masses,
            [.. masses.Select(_ => Volume.CubicMetres)],
            variances,
            prior.Relative * prior.Relative,
            prior.DegreesOfFreedom
        );
        var pooled = densities.Pool();
        var mean = pooled.Value;
        var load = new Mass(mean * Volume.CubicMetres);
        var span = Scale?.RelativeSpanUncertainty(load) ?? FromLargestError(BulkDensityDefaults.UnstatedScale.Value.Canonical);
        var tare = (Scale?.SharedTareUncertainty(TareRounding) ?? 0) / load.Kilograms;
        var scale = Math.Sqrt(span * span + tare * tare);
        var volume = FromLargestError(VolumeTolerance ?? BulkDensityDefaults.ContainerVolume.Value.Canonical);
        var known = Math.Max(0, pooled.RelativeVariance - pooled.BetweenShare) + scale * scale + volume * volume;
        return new DensityEstimate(mean, new TwoPartUncertainty(pooled.BetweenShare, pooled.DegreesOfFreedom, known))
        {
            Parts = [("weighings", Math.Sqrt(pooled.RelativeVariance)), ("scale", scale), ("volume", volume)],
            Assumptions = [.. Assumptions(load)],
            Findings = [.. Findings(densities, mean)],
            Readings = [.. masses.Select((mass, i) => new DensityReading(new Mass(mass), new BulkDensity(densities.Values[i])))],
        };
    }

    private IEnumerable<Assumption> Assumptions(Mass load)
    {
        if (Repeatability is null)
            yield return BulkDensityDefaults.Repeatability.Assumed("weighed/repeatability");
        if (VolumeTolerance is null)
            yield return BulkDensityDefaults.ContainerVolume.Assumed("weighed/volumeTolerance");
        if (TareRounding != TareReading)
            yield return TareAssumption.EqualTares("weighed/sharedTare");
        yield return Scale?.SpanAssumption(load, "weighed/scale")
            ?? new(
                "weighed/scale",
                null,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"not stated, so {BulkDensityDefaults.UnstatedScale.Value.Canonical:0.# %} of the load: {BulkDensityDefaults.UnstatedScale.Origin}"
                )
            );
    }

    private IEnumerable<Finding> Findings(ObservedRatios densities, double mean)
    {
        var values = densities.Values;
        if (values.Length > 1 && ChiSquared.UpperTail(densities.Scatter().Q, values.Length - 1) < Rare)
            yield return Finding.Warning(
                BulkDensityCodes.WeighingsScatter,
                $"The lightest and the densest weighing differ by {new Ratio((values.Max() - values.Min()) / mean):0.#}, more than filling a container anew usually does. Fill and strike off the same way each time, and look for a slip in one of them."
            );
        if (Threshold.IsBelow(Volume.CubicMetres, BulkDensityDefaults.LeastVolume))
            yield return Finding.Note(
                BulkDensityCodes.SmallVolume,
                $"{Volume} is little: official test weights take half a litre or more, because in a small cup the wall holds kernels apart. Weigh a larger volume."
            );
    }

    private static double Square(double x) => x * x;
}
