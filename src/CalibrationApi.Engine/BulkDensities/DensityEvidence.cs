using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.BulkDensities;

/// <summary>What a bulk density is known from, best first.</summary>
public enum DensityBasis
{
    /// <summary>Weighings of a known volume.</summary>
    Weighed,

    /// <summary>The mass that filled a tank.</summary>
    FilledTank,

    /// <summary>A test weight.</summary>
    TestWeight,

    /// <summary>A number that somebody stated.</summary>
    Stated,

    /// <summary>Nothing but published values.</summary>
    Published,
}

/// <summary>What a bulk density is known from.</summary>
public abstract record DensityEvidence
{
    private protected DensityEvidence() { }

    /// <summary>What kind of evidence it is.</summary>
    public abstract DensityBasis Basis { get; }

    internal abstract DensityEstimate Estimate();

    // Half width of a rectangular distribution to its standard uncertainty; JCGM 100:2008, 4.3.7.
    private protected static double FromLargestError(double largest) => largest / Math.Sqrt(3);
}

/// <summary>A mass filled into a tank of known volume.</summary>
/// <param name="Mass">Mass filled, above 0.</param>
/// <param name="Volume">Volume it took, above 0.</param>
/// <param name="MassTolerance">Largest error of the mass, relative; null takes the default.</param>
/// <param name="VolumeTolerance">Largest error of the volume, relative; null takes the default.</param>
public sealed record FilledTank(Mass Mass, Volume Volume, double? MassTolerance = null, double? VolumeTolerance = null) : DensityEvidence
{
    /// <inheritdoc/>
    public override DensityBasis Basis => DensityBasis.FilledTank;

    internal override DensityEstimate Estimate()
    {
        var mass = FromLargestError(MassTolerance ?? BulkDensityDefaults.FilledMass.Value.Canonical);
        var volume = FromLargestError(VolumeTolerance ?? BulkDensityDefaults.TankVolume.Value.Canonical);
        return new DensityEstimate(
            Mass.Kilograms / Volume.CubicMetres,
            new TwoPartUncertainty(0, double.PositiveInfinity, mass * mass + volume * volume)
        )
        {
            Parts = [("mass", mass), ("volume", volume)],
            Assumptions =
            [
                .. MassTolerance is null ? [BulkDensityDefaults.FilledMass.Assumed("filledTank/massTolerance")] : Array.Empty<Assumption>(),
                .. VolumeTolerance is null
                    ? [BulkDensityDefaults.TankVolume.Assumed("filledTank/volumeTolerance")]
                    : Array.Empty<Assumption>(),
            ],
        };
    }
}

/// <summary>A test weight, or another density read or heard, in the unit in which it was given.</summary>
/// <param name="Density">The density, above 0.</param>
/// <param name="Unit">The unit in which it was given; a slip is looked for with it.</param>
/// <param name="IsTestWeight">It was found as a test weight; otherwise somebody stated it.</param>
/// <param name="RelativeUncertainty">Its standard uncertainty, relative; null takes the default.</param>
public sealed record ReadDensity(BulkDensity Density, Unit Unit, bool IsTestWeight, double? RelativeUncertainty = null) : DensityEvidence
{
    /// <inheritdoc/>
    public override DensityBasis Basis => IsTestWeight ? DensityBasis.TestWeight : DensityBasis.Stated;

    internal override DensityEstimate Estimate()
    {
        var fallback = IsTestWeight ? BulkDensityDefaults.TestWeight : BulkDensityDefaults.Stated;
        var uncertainty = RelativeUncertainty ?? fallback.Value.Canonical;
        return new DensityEstimate(
            Density.KilogramsPerCubicMetre,
            new TwoPartUncertainty(0, double.PositiveInfinity, uncertainty * uncertainty)
        )
        {
            Parts = [(IsTestWeight ? "test-weight" : "stated", uncertainty)],
            Assumptions = RelativeUncertainty is null
                ? [fallback.Assumed(IsTestWeight ? "testWeight/relativeUncertainty" : "statedDensity/relativeUncertainty")]
                : [],
        };
    }
}

/// <summary>Nothing but the published values for a material: a value to start from.</summary>
/// <param name="Material">The material.</param>
/// <param name="RelativeUncertainty">Standard uncertainty of one lot about a published value, relative; null takes the default.</param>
/// <remarks>
/// The middle of the range that the published values let expect; it counts as rectangular, and one lot scatters about it.
/// </remarks>
public sealed record PublishedDensity(ReferenceMaterial Material, double? RelativeUncertainty = null) : DensityEvidence
{
    /// <inheritdoc/>
    public override DensityBasis Basis => DensityBasis.Published;

    internal override DensityEstimate Estimate()
    {
        var (lightest, densest) = ReferenceDensities.RangeOf(Material);
        var middle = (lightest.KilogramsPerCubicMetre + densest.KilogramsPerCubicMetre) / 2;
        var range = FromLargestError((densest.KilogramsPerCubicMetre - lightest.KilogramsPerCubicMetre) / (2 * middle));
        var lot = RelativeUncertainty ?? BulkDensityDefaults.Published.Value.Canonical;
        return new DensityEstimate(middle, new TwoPartUncertainty(0, double.PositiveInfinity, range * range + lot * lot))
        {
            Parts = [("published-range", range), ("lot", lot)],
            Assumptions = RelativeUncertainty is null ? [BulkDensityDefaults.Published.Assumed("lotToLot")] : [],
        };
    }
}

/// <summary>A bulk density with its uncertainty taken apart.</summary>
/// <param name="Density">kg/m3.</param>
/// <param name="Relative">Relative uncertainty.</param>
internal sealed record DensityEstimate(double Density, TwoPartUncertainty Relative)
{
    /// <summary>Parts of the relative standard uncertainty by their source.</summary>
    public required IReadOnlyList<(string Source, double Relative)> Parts { get; init; }

    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    public IReadOnlyList<Finding> Findings { get; init; } = [];

    public IReadOnlyList<DensityReading> Readings { get; init; } = [];
}
