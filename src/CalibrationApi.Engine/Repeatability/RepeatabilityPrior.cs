using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Repeatability;

/// <summary>What is believed about the scatter of catches before any are made: scale and counter parts removed.</summary>
/// <param name="Relative">Standard deviation of one catch, relative to the value; above 0.</param>
/// <param name="DegreesOfFreedom">How much that is worth, as if it came from this many plus one catches; at least 1.</param>
/// <param name="Origin">Where it comes from, in words.</param>
/// <remarks>
/// The defaults are judgement; no published source was found. The meaning of the degrees of freedom is that of
/// JCGM 100:2008, G.4.2 (SOURCES.md, key GUM): 4 says that the stated standard deviation is uncertain by about 35 %.
/// </remarks>
public sealed record RepeatabilityPrior(double Relative, double DegreesOfFreedom, string Origin)
{
    /// <summary>Degrees of freedom of every default.</summary>
    public const double DefaultDegreesOfFreedom = 4;

    // a, b and d: through 1 % at 14 kg and 40 rev, 2 % at 0.3 kg and 20 rev, 3 % at 14 kg and 5 rev; a of a dusty product alone.
    private const double FlowPart = 0.0093;
    private const double DustyFlowPart = 0.029;
    private const double RevolutionPart = 0.143;
    private const double KilogramPart = 0.0049;

    /// <summary>
    /// Largest standard deviation of one catch that is believed, relative; judgement. A mass that slipped by orders of magnitude says
    /// nothing of how well the meter repeats.
    /// </summary>
    public const double Most = 0.30;

    /// <summary>The default for a catch of this size.</summary>
    /// <param name="material">How the product flows; unknown counts as free-flowing.</param>
    /// <param name="catchKilograms">Mass of one catch m, kg, above 0.</param>
    /// <param name="revolutions">Revolutions of one catch N, above 0.</param>
    /// <returns>
    /// s0^2 = a^2 + (b / N)^2 + (d / m)^2 with a = 0.93 % (2.9 % for a dusty or caking product), b = 14.3 % rev, d = 0.49 % kg: a part of
    /// the flow itself, one of start and stop, one of the single grains and the handling. Smooth, so that no reading just above or below
    /// some limit changes what is believed. At most 30 %.
    /// </returns>
    /// <remarks>
    /// <para>Formula: s0^2 = a^2 + (b / N)^2 + (d / m)^2, at most 30 %, with m in kg and N in revolutions.</para>
    /// <para>Range: m and N above 0; a mass or count near 0 gives the 30 %.</para>
    /// <para>Source: judgement; no published source was found.</para>
    /// <para>Accuracy: meets the points that were judged within 0.02 percentage points and has no step (RepeatabilityPriorTests).</para>
    /// </remarks>
    public static RepeatabilityPrior Default(ProductMaterial? material, double catchKilograms, double revolutions)
    {
        var words = material == ProductMaterial.Dusty ? "a dusty or caking product" : "a free-flowing product";
        return new(
            DefaultRelative(material, catchKilograms, revolutions),
            DefaultDegreesOfFreedom,
            $"default for {words} in catches of this size; judgement, 4 degrees of freedom"
        );
    }

    /// <summary>The standard deviation of <see cref="Default"/> alone.</summary>
    internal static double DefaultRelative(ProductMaterial? material, double catchKilograms, double revolutions)
    {
        var flow = material == ProductMaterial.Dusty ? DustyFlowPart : FlowPart;
        var (turns, mass) = (RevolutionPart / revolutions, KilogramPart / catchKilograms);
        return Math.Min(Most, Math.Sqrt(flow * flow + turns * turns + mass * mass));
    }

    /// <summary>What stands in for a scatter that was not stated, or not stated how well it is known; null where both were.</summary>
    /// <param name="relative">The scatter stated; null for none.</param>
    /// <param name="degreesOfFreedom">How much that is worth; null when not stated.</param>
    /// <param name="called">What the caller calls it.</param>
    internal Assumption? Assumed(double? relative, double? degreesOfFreedom, string called = "repeatability") =>
        relative is null ? new("repeatability", new Ratio(Relative), Origin)
        : degreesOfFreedom is null
            ? new(
                "repeatabilityDegreesOfFreedom",
                null,
                $"default: the stated {called} counts as known with 4 degrees of freedom; judgement, no published source"
            )
            {
                Number = 4,
            }
        : null;

    /// <summary>The default with what the caller stated put in its place.</summary>
    public static RepeatabilityPrior From(double? relative, double? degreesOfFreedom, Func<RepeatabilityPrior> fallback)
    {
        if (relative is { } stated)
            return new(stated, degreesOfFreedom ?? DefaultDegreesOfFreedom, "stated by the caller");
        var prior = fallback();
        return degreesOfFreedom is { } nu
            ? prior with
            {
                DegreesOfFreedom = nu,
                Origin = prior.Origin.Replace("4 degrees", "stated degrees", StringComparison.Ordinal),
            }
            : prior;
    }
}
