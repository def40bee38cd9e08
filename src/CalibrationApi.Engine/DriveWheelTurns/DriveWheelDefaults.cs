using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.DriveWheelTurns;

/// <summary>What is used where a question about turns of a drive wheel states nothing; each is listed in an answer that used it.</summary>
public static class DriveWheelDefaults
{
    /// <summary>
    /// Standard uncertainty of a circumference reckoned from a diameter, relative; a tyre under load rolls some percent shorter. Judgement.
    /// </summary>
    public const double UncertaintyFromDiameter = 0.02;

    /// <summary>
    /// Rates below this are hardly put down by any machine, kg/m2: 0.5 kg/ha; judgement. Published examples of ours run from 4 to 310
    /// kg/ha.
    /// </summary>
    public const double LeastRate = 0.5e-4;

    /// <summary>Rates above this are hardly put down by a seeding machine, kg/m2: 2000 kg/ha; judgement.</summary>
    public const double MostRate = 2000e-4;

    /// <summary>Correction beyond which proportion is a poor guide, as a factor either way; judgement.</summary>
    public const double LargeCorrection = 1.5;

    /// <summary>Coverage probability of expanded uncertainties.</summary>
    public const double Coverage = CatchTestLimits.DefaultCoverage;

    /// <summary>Standard uncertainty of a circumference that was measured on the ground.</summary>
    public static DefaultValue CircumferenceUncertainty { get; } =
        new(new Ratio(0.005), "measured on the ground; judgement, no published source");

    /// <summary>Skid where none is stated.</summary>
    public static DefaultValue Skid { get; } =
        new(
            new Ratio(0),
            "none is reckoned with unless it is stated, although a wheel that skids puts down as much less; judgement, no published source"
        );

    /// <summary>Smallest step of a count of turns.</summary>
    public static DefaultValue TurnResolution => CatchTestDefaults.TurnResolution;

    /// <summary>Largest acceptable deviation of the rate from its target, and of an outlet from the mean of the outlets.</summary>
    public static DefaultValue Tolerance => CatchTestDefaults.Tolerance;

    /// <summary>Standard deviation between outlets where not all were caught.</summary>
    public static DefaultValue Spread => CatchTestDefaults.Spread;
}
