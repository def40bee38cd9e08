using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.CatchPlans;

/// <summary>Defaults of a catch plan; each is listed in an answer that used it.</summary>
public static class CatchPlanDefaults
{
    /// <summary>Share of a container's volume that is filled; judgement, no published source.</summary>
    public const double ContainerFill = 0.90;

    /// <summary>Mass one person lifts, container included, kg; judgement, local rules first.</summary>
    public const double LiftLimitKilograms = 25;

    /// <summary>Longest run of one catch, s; judgement, no published source.</summary>
    public const double LongestRunSeconds = 300;

    /// <summary>
    /// Shortest run of one catch, s: a drive takes some seconds to settle, and what it delivers meanwhile has to be a small part;
    /// judgement, no published source.
    /// </summary>
    public const double ShortestRunSeconds = 20;

    /// <summary>A simulated speed that is moved keeps this factor away from the limits of a meter; judgement.</summary>
    public const double ClearOfLimits = 1.05;

    /// <summary>
    /// A simulated speed is raised by this factor at most to make a catch larger: far from the planned speed a meter may deliver otherwise;
    /// judgement.
    /// </summary>
    public const double LargestRaise = 2;

    /// <summary>Stops closer than this are one group: nobody is at two meters at once; judgement, s.</summary>
    public const double CloseStopsSeconds = 10;

    /// <summary>Ratio of highest to lowest working speed from which one catch speed does not stand for all; judgement.</summary>
    public const double WideSpeedRange = 1.5;

    /// <summary>Share of the volume that may be full in the worst case before it is worth a word; judgement.</summary>
    public const double NearlyFull = 0.95;

    /// <summary>Default of the share of a container's volume that may be filled.</summary>
    public static DefaultValue Fill { get; } =
        new(new Ratio(ContainerFill), "share of the volume that is filled; judgement, no published source");

    /// <summary>Default of the mass that one person lifts.</summary>
    public static DefaultValue LiftLimit { get; } =
        new(new Mass(LiftLimitKilograms), "mass one person lifts, container included; judgement, local rules first");

    /// <summary>Default of the longest run of one catch.</summary>
    public static DefaultValue LongestRun { get; } = new(new Duration(LongestRunSeconds), "default; judgement, no published source");

    /// <summary>Default of the shortest run of one catch.</summary>
    public static DefaultValue ShortestRun { get; } =
        new(new Duration(ShortestRunSeconds), "a drive takes some seconds to settle; judgement, no published source");
}
