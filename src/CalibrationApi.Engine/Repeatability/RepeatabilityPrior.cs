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

    private const double UsualCatch = 5;
    private const double UsualRevolutions = 20;
    private const double FewestRevolutions = 5;

    /// <summary>The default for a catch of this size.</summary>
    /// <param name="material">How the product flows; unknown counts as free-flowing.</param>
    /// <param name="catchKilograms">Mass of one catch, kg.</param>
    /// <param name="revolutions">Revolutions of one catch.</param>
    /// <returns>
    /// 3 % for a dusty or caking product or under 5 revolutions; 2 % under 5 kg or 20 revolutions; otherwise 1 %.
    /// </returns>
    public static RepeatabilityPrior Default(ProductMaterial? material, double catchKilograms, double revolutions)
    {
        if (material == ProductMaterial.Dusty)
            return new(0.03, DefaultDegreesOfFreedom, "default for a dusty or caking product; judgement, 4 degrees of freedom");
        if (Threshold.IsBelow(revolutions, FewestRevolutions))
            return new(0.03, DefaultDegreesOfFreedom, "default for a catch under 5 revolutions; judgement, 4 degrees of freedom");
        if (Threshold.IsBelow(catchKilograms, UsualCatch) || Threshold.IsBelow(revolutions, UsualRevolutions))
            return new(0.02, DefaultDegreesOfFreedom, "default for a small catch or small seed; judgement, 4 degrees of freedom");
        return new(0.01, DefaultDegreesOfFreedom, "default for a free-flowing product; judgement, 4 degrees of freedom");
    }

    /// <summary>The default with what the caller stated put in its place.</summary>
    public static RepeatabilityPrior From(double? relative, double? degreesOfFreedom, Func<RepeatabilityPrior> fallback)
    {
        if (relative is { } stated)
            return new(stated, degreesOfFreedom ?? DefaultDegreesOfFreedom, "stated by the caller");
        var prior = fallback();
        return degreesOfFreedom is { } nu
            ? prior with { DegreesOfFreedom = nu, Origin = prior.Origin.Replace("4 degrees", "stated degrees", StringComparison.Ordinal) }
            : prior;
    }
}
