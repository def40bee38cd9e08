namespace CalibrationApi.Engine.Weighing;

/// <summary>The span error of a scale found by a check against known masses.</summary>
/// <param name="Relative">Indicated minus true, divided by true; above -0.5 and below 0.5. Positive when the scale shows too much.</param>
/// <param name="StandardUncertainty">Standard uncertainty of that error, relative, 0 to 0.5; all that remains once the error is
/// corrected.</param>
public sealed record KnownScaleError(double Relative, double StandardUncertainty)
{
    /// <summary>
    /// Largest error, and largest uncertainty of one, that a test is corrected by, relative. A scale further off is not measured but
    /// misread, most often pounds as kilograms; judgement, no published source.
    /// </summary>
    public const double Most = 0.2;

    /// <summary>The check that found it failed: nobody knows whether the error stayed what it was then.</summary>
    public bool CheckFailed { get; init; }

    /// <inheritdoc cref="KnownScaleError(double, double)"/>
    public double Relative { get; } =
        Math.Abs(Relative) < 0.5
            ? Relative
            : throw new ArgumentOutOfRangeException(nameof(Relative), Relative, "A scale error of half the load is no scale.");

    /// <inheritdoc cref="KnownScaleError(double, double)"/>
    public double StandardUncertainty { get; } =
        StandardUncertainty is >= 0 and < 0.5
            ? StandardUncertainty
            : throw new ArgumentOutOfRangeException(nameof(StandardUncertainty), StandardUncertainty, "0 to 0.5 is needed.");
}
