using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.DriveWheelTurns;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.DriveWheelTurns;

/// <summary>A ground-driven machine, and what fell while its drive wheel was turned.</summary>
[CheckedBy(typeof(DriveWheelTurnsRequestValidator))]
public sealed class DriveWheelTurnsRequest
{
    internal const int MostTests = 50;

    /// <summary>The wheel that drives the meters.</summary>
    [Needed]
    public DriveWheelOfMachine? Wheel { get; init; }

    /// <summary>Working width: openers times spacing.</summary>
    [Needed, Measured(0.01, 200, "m")]
    public LengthQuantity? WorkingWidth { get; init; }

    /// <summary>Outlets over that width; gives the catch of each, and is needed when not all of them are caught.</summary>
    [Whole(1, 1000)]
    public int? Outlets { get; init; }

    /// <summary>
    /// Share of its turns that the wheel lacks in the field: positive when it skids and turns less often than the distance asks for, so
    /// that it puts down as much less; negative when it turns more often. Leave it out when the circumference was measured at work: it
    /// holds the skid already.
    /// </summary>
    [Default(typeof(DriveWheelDefaults), nameof(DriveWheelDefaults.Skid))]
    [Measured(-50, 90, "%")]
    public RatioQuantity? Skid { get; init; }

    /// <summary>Areas for which the turns are wanted, for example 0.1 ha or 0.05 ac.</summary>
    [Items(0, 20), Measured(0.0001, 10_000, "ha")]
    public IReadOnlyList<AreaQuantity?>? Areas { get; init; }

    /// <summary>The rate to be put down.</summary>
    [Measured]
    public MassPerAreaQuantity? TargetRate { get; init; }

    /// <summary>
    /// Meter revolutions per turn of the drive wheel. Left out, nothing is said of the meter. Default none: common practice, the wheel
    /// alone is counted.
    /// </summary>
    [Measured(0.0001, 10_000, "1")]
    public RatioQuantity? MeterRevolutionsPerTurn { get; init; }

    /// <summary>
    /// Mass per revolution of the meter over the whole width, where known; gives the rate to expect and, for a target rate, the gearing
    /// that it needs. Needs meterRevolutionsPerTurn or targetRate.
    /// </summary>
    [Measured]
    public MassPerRevolutionQuantity? MassPerRevolution { get; init; }

    /// <summary>Turn tests, all with the same setting and the same outlets.</summary>
    [Items(0, MostTests)]
    public IReadOnlyList<TurnTestOfWheel?>? TurnTests { get; init; }

    /// <summary>
    /// Outlets that were caught, the same ones each time. Default all of them, or as many as perOutlet lists: common practice.
    /// </summary>
    [Whole(1, 1000)]
    public int? OutletsCaught { get; init; }

    /// <summary>
    /// Standard deviation between outlets, relative; of use when not all were caught. Where three or more were weighed one by one, theirs
    /// is taken.
    /// </summary>
    [Default(typeof(DriveWheelDefaults), nameof(DriveWheelDefaults.Spread))]
    [Measured(0, 100, "%")]
    public RatioQuantity? OutletSpread { get; init; }

    /// <summary>
    /// The scale that weighed the catches. Default an error of 0.5 % of the load and no rounding: judgement, no published source.
    /// </summary>
    public ScaleOfTest? Scale { get; init; }

    /// <summary>Smallest step of the count of turns.</summary>
    [Default(typeof(DriveWheelDefaults), nameof(DriveWheelDefaults.TurnResolution))]
    [Measured(0, 10, "rev")]
    public RevolutionsQuantity? TurnResolution { get; init; }

    /// <summary>The setting used, as a plain number on the machine's own marks; gives the corrected one.</summary>
    [Number(0.001, 1_000_000)]
    public double? Setting { get; init; }

    /// <summary>Largest acceptable deviation of the rate from its target, and of an outlet from the mean of the outlets.</summary>
    [Default(typeof(DriveWheelDefaults), nameof(DriveWheelDefaults.Tolerance))]
    [Measured(0.1, 50, "%")]
    public RatioQuantity? Tolerance { get; init; }

    /// <summary>
    /// Repeatability of one test (standard deviation), scale and count removed. Default by the size of the catch, s^2 = (0.93 %)^2 + (14.3
    /// % rev / turns)^2 + (0.49 % kg / mass)^2: 1 % at 14 kg and 40 rev, 2 % at 0.3 kg and 20 rev, 3 % at 5 rev: judgement, 4 degrees of
    /// freedom, no published source.
    /// </summary>
    [Measured(0.01, 30, "%")]
    public RatioQuantity? Repeatability { get; init; }

    /// <summary>
    /// Degrees of freedom of the repeatability. Default 4: judgement, no published source; the stated deviation is then uncertain by about
    /// 35 % (JCGM 100:2008, G.4.2).
    /// </summary>
    [Number(1, 1000)]
    public double? RepeatabilityDegreesOfFreedom { get; init; }
}

/// <summary>A drive wheel: exactly one of circumference, measuredRun and diameter.</summary>
[CheckedBy(typeof(DriveWheelOfMachineValidator))]
public sealed class DriveWheelOfMachine
{
    /// <summary>
    /// Rolling circumference, measured under load on the ground. Default pi times the diameter, where that is given: judgement, a loaded
    /// tyre rolls shorter.
    /// </summary>
    [Measured(0.1, 30, "m")]
    public LengthQuantity? Circumference { get; init; }

    /// <summary>Distance and turns from which the rolling circumference follows.</summary>
    public RollingRun? MeasuredRun { get; init; }

    /// <summary>Diameter of the wheel; the circumference is then reckoned, and a finding warns of it.</summary>
    [Measured(0.03, 10, "m")]
    public LengthQuantity? Diameter { get; init; }

    /// <summary>Standard uncertainty of the circumference, relative; 2 % where it is reckoned from the diameter.</summary>
    [Default(typeof(DriveWheelDefaults), nameof(DriveWheelDefaults.CircumferenceUncertainty))]
    [Measured(0, 20, "%")]
    public RatioQuantity? RelativeUncertainty { get; init; }
}

/// <summary>How far a wheel rolled in how many turns.</summary>
[CheckedBy(typeof(RollingRunValidator))]
public sealed class RollingRun
{
    /// <summary>Distance rolled.</summary>
    [Needed, Measured(0.1, 10_000, "m")]
    public LengthQuantity? Distance { get; init; }

    /// <summary>Turns counted.</summary>
    [Needed, Measured(0.1, 100_000, "rev")]
    public RevolutionsQuantity? Turns { get; init; }
}

/// <summary>One turn test: turns, and what fell meanwhile, as exactly one of caught and perOutlet.</summary>
[CheckedBy(typeof(TurnTestOfWheelValidator))]
public sealed class TurnTestOfWheel
{
    /// <summary>Turns of the drive wheel.</summary>
    [Needed, Measured(0.1, 100_000, "rev")]
    public RevolutionsQuantity? Turns { get; init; }

    /// <summary>Net mass from all outlets that were caught together.</summary>
    [Measured]
    public MassQuantity? Caught { get; init; }

    /// <summary>Net mass outlet by outlet; the outlets are then compared with their mean.</summary>
    [Items(1, 1000), Measured(0, 1000, "t")]
    public IReadOnlyList<MassQuantity?>? PerOutlet { get; init; }
}
