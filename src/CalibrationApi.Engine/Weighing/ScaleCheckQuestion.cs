using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Weighing;

/// <summary>A scale and what it showed of known masses.</summary>
/// <param name="Scale">The scale, without a known error.</param>
/// <param name="Readings">At least one.</param>
public sealed record ScaleCheckQuestion(Scale Scale, IReadOnlyList<KnownMassReading> Readings);

/// <summary>One reading of a known mass.</summary>
/// <param name="Known">The mass, kg, above 0.</param>
/// <param name="Indicated">What the scale showed, kg.</param>
/// <param name="KnownUncertainty">Standard uncertainty of the known mass, kg; 0 when negligible.</param>
public sealed record KnownMassReading(Mass Known, Mass Indicated, Mass KnownUncertainty)
{
    /// <summary>What is said of a reading that lies too far beside its mass.</summary>
    public static Sentence Misread { get; } =
        $"The scale shows more than {new Ratio(KnownScaleError.Most):0.##} beside the known mass. Check both numbers and both units.";

    /// <summary>A reading lies so far beside its mass that it, or the mass, was written down wrong.</summary>
    /// <param name="known">The known mass m, kg; nothing is said of one that is not above 0.</param>
    /// <param name="indicated">What the scale showed i, kg.</param>
    /// <remarks>
    /// <para>Formula: |i - m| above 0.2 m (<see cref="KnownScaleError.Most"/>).</para>
    /// <para>Range: any two numbers.</para>
    /// <para>Source: judgement, no published source.</para>
    /// <para>Accuracy: the limit from both sides (ScaleCheckTests).</para>
    /// </remarks>
    public static bool IsMisread(double known, double indicated) => known > 0 && Math.Abs(indicated - known) > KnownScaleError.Most * known;
}
