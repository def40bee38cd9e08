using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Repeatability;

namespace CalibrationApi.Engine.BulkDensities;

/// <summary>Defaults of a bulk density with their origins; each is listed in an answer that used it.</summary>
/// <remarks>
/// Judgement. What stands behind it: changing the way of filling and levelling changed the bulk density of soybean by 5 %, of
/// wheat by 10 % and of barley by 13 % from lowest to highest (SOURCES.md, key SASJ-1981).
/// </remarks>
public static class BulkDensityDefaults
{
    /// <summary>Standard deviation of one weighing of a known volume, relative.</summary>
    public static DefaultValue Repeatability { get; } =
        new(new Ratio(0.02), "one filling of a container, struck off level; judgement, 4 degrees of freedom, no published source");

    /// <summary>Largest error of a scale of which nothing is stated, as a share of the load.</summary>
    public static DefaultValue UnstatedScale { get; } =
        new(
            new Ratio(0.005),
            "largest error of a scale of which nothing is stated, as a share of the load; judgement, no published source"
        );

    /// <summary>Largest error of the volume of a container, relative.</summary>
    public static DefaultValue ContainerVolume { get; } =
        new(new Ratio(0.02), "largest error of the volume of a bucket or box; judgement, no published source");

    /// <summary>Largest error of the volume of a tank filled by eye, relative.</summary>
    public static DefaultValue TankVolume { get; } =
        new(new Ratio(0.05), "largest error of the volume of a tank filled by eye; judgement, no published source");

    /// <summary>Largest error of the mass filled into a tank, relative.</summary>
    public static DefaultValue FilledMass { get; } =
        new(new Ratio(0.01), "largest error of the mass filled into a tank; judgement, no published source");

    /// <summary>Standard uncertainty of a test weight taken for the density in a tank, relative.</summary>
    public static DefaultValue TestWeight { get; } =
        new(new Ratio(0.02), "a test weight stands for a small cleaned sample; judgement, no published source");

    /// <summary>Standard uncertainty of a stated density, relative.</summary>
    public static DefaultValue Stated { get; } = new(new Ratio(0.05), "a density that somebody stated; judgement, no published source");

    /// <summary>Standard uncertainty of one lot about a published value, relative, besides the published range.</summary>
    public static DefaultValue Published { get; } = new(new Ratio(0.05), "one lot about a published value; judgement, no published source");

    /// <summary>Share of a tank that is filled.</summary>
    public static DefaultValue Fill { get; } =
        new(new Ratio(1), "the stated volume of the tank is taken as what it holds; judgement, no published source");

    /// <summary>How far outside the published range a density is far outside, relative; judgement, no published source.</summary>
    public const double FarOutside = 0.15;

    /// <summary>Least volume, m3, that an official test weight uses: half a litre (SOURCES.md, key CGC-TW).</summary>
    public const double LeastVolume = 0.0005;

    internal static RepeatabilityPrior Prior(double? stated) =>
        new(stated ?? Repeatability.Value.Canonical, RepeatabilityPrior.DefaultDegreesOfFreedom, Repeatability.Origin);
}
