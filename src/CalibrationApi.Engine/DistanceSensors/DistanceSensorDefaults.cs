using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.DistanceSensors;

/// <summary>What is used where a question about a distance sensor states nothing; each is listed in an answer that used it.</summary>
public static class DistanceSensorDefaults
{
    /// <summary>Degrees of freedom of the default scatter.</summary>
    public const double RepeatabilityDegreesOfFreedom = Engine.Repeatability.RepeatabilityPrior.DefaultDegreesOfFreedom;

    /// <summary>Shortest course that is not worth a word, m: 100 ft (SOURCES.md, key CORNELL-SPEED).</summary>
    public const double ShortCourse = 100 * 0.3048;

    /// <summary>
    /// Skid, of either sign, that is worth a word; judgement. A skid of 4.53 % was called tolerable (SOURCES.md, key NIRALA-2011).
    /// </summary>
    public const double LargeSkid = 0.10;

    /// <summary>Difference between the width typed in and the width covered that is worth a word; judgement.</summary>
    public const double NoticeableWidth = 0.005;

    /// <summary>Coverage probability of expanded uncertainties.</summary>
    public const double Coverage = CatchTestLimits.DefaultCoverage;

    /// <summary>Scatter of one run (standard deviation) beyond counting and marking.</summary>
    public static DefaultValue Repeatability { get; } =
        new(new Ratio(0.005), "even, firm ground; judgement, 4 degrees of freedom, no published source");

    /// <summary>How closely a machine is lined up with the marks at the ends of a course.</summary>
    public static DefaultValue DistanceResolution { get; } =
        new(new Length(0.1), "the machine is lined up with each mark to 5 cm either way; judgement, no published source");

    /// <summary>Limit of the error of the tape, common to all runs.</summary>
    public static DefaultValue TapeLimit { get; } =
        new(new Ratio(0.002), "a tape laid over uneven ground by hand, taken as rectangular; judgement, no published source");

    /// <summary>Smallest step of a count of wheel turns.</summary>
    public static DefaultValue TurnResolution => CatchTestDefaults.TurnResolution;

    /// <summary>Distance over which a controller counts pulses.</summary>
    public static DefaultValue EntryDistance { get; } =
        new(new Length(100), "a round distance that most fields have room for; judgement, no published source");

    /// <summary>Largest acceptable deviation of the value in force.</summary>
    public static DefaultValue Tolerance { get; } =
        new(new Ratio(0.02), "leaves most of the published 5 % on the rate to the metering; judgement, no published source");

    /// <summary>Largest acceptable expanded uncertainty of the result.</summary>
    public static DefaultValue WantedPrecision { get; } = new(new Ratio(0.01), "two good runs reach it; judgement, no published source");

    /// <summary>Change from which a second run has to confirm.</summary>
    public static DefaultValue SecondRunChange { get; } =
        new(
            new Ratio(CatchTestLimits.SecondTestTolerances * CatchTestLimits.DefaultTolerance),
            "twice the published 5 % on the rate, as for a catch test; judgement, no published source"
        );
}
