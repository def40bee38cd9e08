using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.BulkDensities;

/// <summary>A bulk density with its interval, compared with what is published.</summary>
public sealed record BulkDensityResult
{
    /// <summary>One or two sentences that a tired person understands.</summary>
    public required Sentence Headline { get; init; }

    /// <summary>What it is good for.</summary>
    public Usability Verdict => Judgement.Of(Findings);

    /// <summary>What the density is known from.</summary>
    public required DensityBasis Basis { get; init; }

    /// <summary>The density with its interval, kg/m3.</summary>
    public required MeasuredValue Density { get; init; }

    /// <summary>Parts of the relative standard uncertainty by their source.</summary>
    public required IReadOnlyList<(string Source, double Relative)> Parts { get; init; }

    /// <summary>The single weighings; empty without any.</summary>
    public required IReadOnlyList<DensityReading> Readings { get; init; }

    /// <summary>How it compares with published values; null when no material was named.</summary>
    public ReferenceComparison? Comparison { get; init; }

    /// <summary>The loose density behind an official Canadian test weight; null where there is none.</summary>
    public BulkDensity? LooseDensity { get; init; }

    /// <summary>What a tank holds; null when none was named.</summary>
    public TankLoad? Tank { get; init; }

    /// <summary>What can hurt somebody on the way.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }

    /// <summary>Values used that the caller did not state, with origin.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>What the engine noticed.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}

/// <summary>One weighing of a known volume.</summary>
/// <param name="Net">Net mass, a known error of the scale corrected.</param>
/// <param name="Density">Its density.</param>
public sealed record DensityReading(Mass Net, BulkDensity Density);

/// <summary>What a tank holds.</summary>
/// <param name="Mass">Mass of a fill.</param>
/// <param name="Least">Mass at the lower end of the interval of the density.</param>
/// <param name="Most">Mass at the upper end.</param>
/// <param name="Area">Area that the mass covers; null without a rate.</param>
public sealed record TankLoad(Mass Mass, Mass Least, Mass Most, Area? Area);

/// <summary>A density beside the published ones.</summary>
/// <param name="Material">The material.</param>
/// <param name="Published">The published values, each with its source.</param>
/// <param name="Lightest">The lightest that they let expect, single figures widened.</param>
/// <param name="Densest">The densest that they let expect.</param>
/// <param name="Beyond">How far the density is outside, relative to the nearer end: above 0 denser, below 0 lighter, 0 inside.</param>
/// <param name="Moisture">Studies of how the density of the material changes with moisture; information only.</param>
public sealed record ReferenceComparison(
    ReferenceMaterial Material,
    IReadOnlyList<ReferenceDensity> Published,
    BulkDensity Lightest,
    BulkDensity Densest,
    double Beyond,
    IReadOnlyList<MoistureEffect> Moisture
)
{
    /// <summary>Compares a density, kg/m3, with the published values for a material.</summary>
    /// <param name="material">The material.</param>
    /// <param name="density">Density, kg/m3, above 0.</param>
    /// <remarks>
    /// <para>Formula: beyond = rho / end - 1 outside the published range, 0 inside; the range is
    /// <see cref="ReferenceDensities.RangeOf"/>.</para>
    /// <para>Range: a density on an end is inside, in whatever unit it was read.</para>
    /// <para>Source: the published densities of <see cref="ReferenceDensities"/> (SOURCES.md, key FERT-BD and others named there);
    /// comparing is our own derivation.</para>
    /// <para>Accuracy: 1e-12 at and beyond both ends (ReferenceDensitiesTests).</para>
    /// </remarks>
    public static ReferenceComparison Of(ReferenceMaterial material, double density)
    {
        var (lightest, densest) = ReferenceDensities.RangeOf(material);
        return new(
            material,
            ReferenceDensities.Of(material),
            lightest,
            densest,
            Outside(density, lightest, densest),
            MoistureEffect.Of(material)
        );
    }

    // A value that stands on an end in one unit stands on it in every unit.
    internal static double Outside(double density, BulkDensity lightest, BulkDensity densest) =>
        Threshold.IsAbove(density, densest.KilogramsPerCubicMetre) ? density / densest.KilogramsPerCubicMetre - 1
        : Threshold.IsBelow(density, lightest.KilogramsPerCubicMetre) ? density / lightest.KilogramsPerCubicMetre - 1
        : 0;
}
