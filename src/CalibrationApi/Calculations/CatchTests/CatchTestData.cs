using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.History;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.CatchTests;

// Members can be set for the same reason as those of a quantity: reading a test is a large part of answering it.

/// <summary>What is read at the machine during a catch test, and how it is to be judged.</summary>
[CheckedBy(typeof(CatchTestDataValidator))]
public abstract class CatchTestData
{
    internal const int MostCatches = 50;
    internal const int MostOthers = 20;
    internal const double MostRepeatability = 100 * RepeatabilityPrior.Most;
    internal const double MostDayToDay = 100 * CountedDayToDay.Most;

    /// <summary>
    /// How the empty container was taken into account: <c>each</c> catch has its own tare reading, one reading is <c>shared</c> by all, or
    /// the scale was <c>zeroed</c> with the empty container on it. Default: each, or shared when sharedTare is given.
    /// </summary>
    [Word(typeof(TareReading))]
    public string? TareReading { get; set; }

    /// <summary>The one tare reading that serves all catches.</summary>
    [Measured]
    public MassQuantity? SharedTare { get; set; }

    /// <summary>
    /// Where a count begins within its smallest step: <c>free</c> (anywhere, the default) or <c>on-edge</c> of the sensor.
    /// </summary>
    [Word(typeof(CountStart))]
    public string? CountStart { get; set; }

    /// <summary>Smallest step of the count of turns.</summary>
    [Default(typeof(CatchTestDefaults), nameof(CatchTestDefaults.TurnResolution))]
    [Measured(0, 10, "rev")]
    public RevolutionsQuantity? TurnResolution { get; set; }

    /// <summary>Steady meter speed; needed when catches give a run time or the controller takes a mass per time.</summary>
    [Measured]
    public RotationQuantity? MeterSpeed { get; set; }

    /// <summary>Smallest step of the run time.</summary>
    [Default(typeof(CatchTestDefaults), nameof(CatchTestDefaults.TimeResolution))]
    [Measured(0, 60, "s")]
    public TimeQuantity? TimeResolution { get; set; }

    /// <summary>The value that was typed into the controller while it indicated a mass; default the value in force.</summary>
    [Measured]
    public MassPerRevolutionQuantity? ValueTypedIn { get; set; }

    /// <summary>Smallest step of the indicated mass.</summary>
    [Default(typeof(CatchTestDefaults), nameof(CatchTestDefaults.IndicatedMassResolution))]
    [Measured(0, 100, "kg")]
    public MassQuantity? IndicatedMassResolution { get; set; }

    /// <summary>Only some of the points that the meter feeds were caught, the same ones each time.</summary>
    public CaughtPointsOfTest? CaughtPoints { get; set; }

    /// <summary>The mass per revolution that the controller uses now: the number typed in.</summary>
    [Measured]
    public ReferenceOfTest? ValueInForce { get; set; }

    /// <summary>A predicted value to compare with where none is in force yet.</summary>
    [Measured]
    public ReferenceOfTest? StartValue { get; set; }

    /// <summary>
    /// What another lot is expected to give where that is not the value in force, for example the prediction for a new lot: the limit
    /// secondTestChange then counts from it, and mistakes are judged against it.
    /// </summary>
    [Measured]
    public PredictedValueOfTest? PredictedValue { get; set; }

    /// <summary>
    /// An earlier test of the same meter, element, setting, product and lot, set up apart from this one since the value in force was
    /// adopted. A change of at least secondTestChange is adopted when the two agree. A test before the last adoption is not combined.
    /// </summary>
    [Measured]
    public EarlierTestOfTest? EarlierTest { get; set; }

    /// <summary>The rate to be applied; gives the effect of a wrong value.</summary>
    [Measured]
    public MassPerAreaQuantity? TargetRate { get; set; }

    /// <summary>The area still to be seeded; gives mass and cost.</summary>
    [Measured]
    public AreaQuantity? Area { get; set; }

    /// <summary>The catches in the order in which they were made.</summary>
    [Needed, Items(1, MostCatches)]
    public IReadOnlyList<CatchOfTest?>? Catches { get; set; }

    /// <summary>
    /// The product is of another lot than the one behind the value compared with: a larger change is then ordinary. Default false.
    /// </summary>
    public bool? NewLot { get; set; }

    /// <summary>Points or outlets whose product is meant to fall into the container; tells what one missed point would look like.</summary>
    [Whole(1, 1000)]
    public int? CatchPoints { get; set; }

    /// <summary>Codes of likely mistakes that somebody has checked and that did not happen; they are left out of the judgement.</summary>
    [Items(0, MostOthers), Word(typeof(MistakeCodes), nameof(MistakeCodes.All))]
    public IReadOnlyList<string?>? RuledOutMistakes { get; set; }

    /// <summary>
    /// Repeatability of one catch (standard deviation), scale and counter parts removed. Default by the size of the catch, s^2 = (0.93 %)^2
    /// + (14.3 % rev / turns)^2 + (0.49 % kg / mass)^2: 1 % at 14 kg and 40 rev, 2 % at 0.3 kg and 20 rev, 3 % at 5 rev; with 2.9 % in
    /// place of 0.93 % for dusty or caking products: judgement, 4 degrees of freedom, no published source.
    /// </summary>
    [Measured(0.01, MostRepeatability, "%")]
    public RatioQuantity? Repeatability { get; set; }

    /// <summary>
    /// Degrees of freedom of the repeatability. Default 4: judgement, no published source; the stated deviation is then uncertain by about
    /// 35 % (JCGM 100:2008, G.4.2).
    /// </summary>
    [Number(1, 1000)]
    public double? RepeatabilityDegreesOfFreedom { get; set; }

    /// <summary>Standard deviation from day to day beyond the scatter of catches.</summary>
    [Default(typeof(CatchTestDefaults), nameof(CatchTestDefaults.DayToDay))]
    [Measured(0, MostDayToDay, "%")]
    public RatioQuantity? DayToDay { get; set; }

    /// <summary>Largest acceptable deviation of the value in force from the truth.</summary>
    [Default(typeof(CatchTestDefaults), nameof(CatchTestDefaults.Tolerance))]
    [Measured(0.1, 50, "%")]
    public RatioQuantity? Tolerance { get; set; }

    /// <summary>Largest acceptable expanded uncertainty of the result.</summary>
    [Default(typeof(CatchTestDefaults), nameof(CatchTestDefaults.WantedPrecision))]
    [Measured(0.1, 50, "%")]
    public RatioQuantity? WantedPrecision { get; set; }

    /// <summary>Probability with which the number of further catches that a repeat asks for reaches the wanted precision.</summary>
    [Default(typeof(CatchTestDefaults), nameof(CatchTestDefaults.PrecisionProbability))]
    [Measured(50, 99, "%")]
    public RatioQuantity? PrecisionProbability { get; set; }

    /// <summary>
    /// Change from what was expected, from which a second test, set up anew, has to agree before anything is adopted. Default twice the
    /// tolerance.
    /// </summary>
    [Default(typeof(CatchTestDefaults), nameof(CatchTestDefaults.SecondTestChange))]
    [Measured(0.1, 100, "%")]
    public RatioQuantity? SecondTestChange { get; set; }

    /// <summary>
    /// Coverage probability of expanded uncertainties. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM
    /// 100:2008.
    /// </summary>
    [Number(0.5, 0.9999)]
    public double? CoverageProbability { get; set; }
}
