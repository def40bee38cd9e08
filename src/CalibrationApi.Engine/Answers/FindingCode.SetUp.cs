namespace CalibrationApi.Engine.Answers;

// Codes of set-up: bulk densities, volumes, distance, drive wheels, speeds and the fan.
public static partial class FindingCode
{
    /// <summary>A bulk density lies outside what is published for its material.</summary>
    [
        Remedy(
            "Weigh a known volume again, and check mass, volume and their units. On a severity of note nothing needs to be done: lots differ, and a measured density goes before a published one."
        ),
        Severities(Severity.Note, Severity.Warning)
    ]
    public const string DensityUnlikeReference = "density-unlike-reference";

    /// <summary>A stated bulk density was not compared with published ones, because no reference was named.</summary>
    [Remedy("Name the reference that the product is nearest to, or weigh a known volume."), Severities(Severity.Note)]
    public const string DensityNotCompared = "density-not-compared";

    /// <summary>A bulk density rests on published values alone.</summary>
    [Remedy("Weigh a known volume of the lot."), Severities(Severity.Note)]
    public const string PublishedDensityOnly = "published-density-only";

    /// <summary>Weighings of one volume differ more than filling it anew explains.</summary>
    [
        Remedy("Fill and strike off the container the same way each time. Look for a slip in one of the weighings, and weigh once more."),
        Severities(Severity.Warning)
    ]
    public const string WeighingsScatter = "weighings-scatter";

    /// <summary>The volume that was weighed is smaller than what official test weights take.</summary>
    [Remedy("Weigh a larger volume, at best some litres."), Severities(Severity.Note)]
    public const string SmallVolume = "small-volume";

    /// <summary>A test weight is in pounds per bushel, of which there are two.</summary>
    [Remedy("Make sure which bushel is meant: the US (Winchester) or the imperial (Avery) one."), Severities(Severity.Note)]
    public const string OtherBushel = "other-bushel";

    /// <summary>A test weight allows for grain that settles, so that loose grain is lighter.</summary>
    [Remedy("For a tank that was just filled take the loose density, or weigh a known volume."), Severities(Severity.Note)]
    public const string TestWeightSettled = "test-weight-settled";

    /// <summary>A mass per revolution would need more product than the element holds.</summary>
    [
        Remedy(
            "Check the unit of the value, the element that is fitted, its displacement, and the bulk density. On a severity of stop the value cannot be: use none of it before the reason is found."
        ),
        Severities(Severity.Warning, Severity.Stop)
    ]
    public const string MoreThanTheElementHolds = "more-than-the-element-holds";

    /// <summary>A mass per revolution is far from what displacement, density and fill efficiency let expect.</summary>
    [
        Remedy(
            "Check the element, its displacement, the density and the units. If all are right, the value stands: learn the fill efficiency from it."
        ),
        Severities(Severity.Warning)
    ]
    public const string FillUnlikeExpected = "fill-unlike-expected";

    /// <summary>A mass per revolution does not fit what the same element delivers of other products.</summary>
    [
        Remedy("Check which product and which element it was, the bulk densities and the count. If all are right, the value stands."),
        Severities(Severity.Warning)
    ]
    public const string UnlikeOtherProducts = "unlike-other-products";

    /// <summary>A number that nobody measured is the one that is in force for another product on the same element.</summary>
    [
        Remedy("Check which product was meant. If the number is right for this one too, a catch test shows it."),
        Severities(Severity.Note, Severity.Warning)
    ]
    public const string FitsOtherProduct = "fits-other-product";

    /// <summary>
    /// A value in force stated beside a test is far from what the records have: the value adopted, the last test, or other products.
    /// </summary>
    [
        Remedy(
            "Look at what the controller shows. If it is the number stated, adopt it, so that the record says so; otherwise enter the test once more with the right number, superseding this record."
        ),
        Severities(Severity.Warning)
    ]
    public const string StatedUnlikeRecords = "stated-unlike-records";

    /// <summary>No displacement keeps a meter inside its speeds at all rates and ground speeds.</summary>
    [
        Remedy(
            "Drive within a narrower range of speeds, put down a narrower range of rates, or use two elements. The answer says how narrow, and at which rate to change over."
        ),
        Severities(Severity.Warning)
    ]
    public const string NoDisplacementServes = "no-displacement-serves";

    /// <summary>The meter may leave its speeds, because density and fill efficiency are only roughly known.</summary>
    [
        Remedy(
            "Make a catch test with the element, let a volume check find its fill efficiency, and state that with its spread. Or take an element nearer to the middle of the window."
        ),
        Severities(Severity.Warning)
    ]
    public const string FitNotSure = "fit-not-sure";

    /// <summary>A field efficiency is outside what was published for drills and planters.</summary>
    [Remedy("Check it against the area and the hours of an earlier day. If they agree, the number is yours."), Severities(Severity.Note)]
    public const string UnusualFieldEfficiency = "unusual-field-efficiency";

    /// <summary>The fan or its air flow is outside what a product may have.</summary>
    [Remedy("Set the fan inside the common window that the answer gives. Where it has none, see there."), Severities(Severity.Warning)]
    public const string OutsideFanWindow = "outside-fan-window";

    /// <summary>The fan or its air flow is close to a limit of a product.</summary>
    [
        Remedy("Move the fan away from that limit if the window allows it, and look at the outlets while it runs."),
        Severities(Severity.Note)
    ]
    public const string NearFanLimit = "near-fan-limit";

    /// <summary>No setting of the fan suits all products of one air stream.</summary>
    [
        Remedy(
            "Check the limits of the two products that the sentence names. If they are right, put them down in two passes or through two air streams."
        ),
        Severities(Severity.Warning)
    ]
    public const string NoCommonFanWindow = "no-common-fan-window";

    /// <summary>A limit of the fan is stated in one measure and the fan is planned in the other.</summary>
    [
        Remedy("State the planned fan speed for limits of the fan speed, and the planned air flow for limits of the air flow."),
        Severities(Severity.Note)
    ]
    public const string FanLimitNotChecked = "fan-limit-not-checked";

    /// <summary>The runs over a course give another number of pulses per distance than the value in force.</summary>
    [
        Remedy("Type in the number that the answer gives. Until then the count of distance and of area is off, and so is the rate."),
        Severities(Severity.Warning)
    ]
    public const string DistanceChanged = "distance-changed";

    /// <summary>A change of the pulses per distance so large that a second run has to confirm it.</summary>
    [
        Remedy(
            "Where one more run is asked for, drive it before typing anything in. If the runs agree, find the cause first: length of the course, units, how the controller counts, another tyre, a new sensor."
        ),
        Severities(Severity.Warning)
    ]
    public const string LargeDistanceChange = "large-distance-change";

    /// <summary>The interval of the pulses per distance is wider than wanted.</summary>
    [Remedy("Drive as many more runs as the answer says, and send all of them together."), Severities(Severity.Warning)]
    public const string MoreRunsNeeded = "more-runs-needed";

    /// <summary>No practical number of runs like these reaches the wanted precision.</summary>
    [Remedy("Measure the course with a better tape, drive a longer one, or ask for less precision."), Severities(Severity.Warning)]
    public const string RunsOutOfReach = "runs-out-of-reach";

    /// <summary>The runs scatter more than expected of runs over one course.</summary>
    [
        Remedy("Check the counts and the distances, then drive again. Do not seed on a severity of stop."),
        Severities(Severity.Warning, Severity.Stop)
    ]
    public const string RunsScatterMoreThanExpected = "runs-scatter-more-than-expected";

    /// <summary>Runs there and runs back give different values.</summary>
    [Remedy("Drive as many runs one way as the other, or find a level course."), Severities(Severity.Warning)]
    public const string DirectionsDiffer = "directions-differ";

    /// <summary>A course is shorter than advised.</summary>
    [Remedy("Measure out a longer course, 100 m if there is room."), Severities(Severity.Note)]
    public const string ShortCourse = "short-course";

    /// <summary>There is a single run, so that its scatter is not known.</summary>
    [Remedy("Drive a second run, best the other way."), Severities(Severity.Note)]
    public const string OneRunOnly = "one-run-only";

    /// <summary>The tape, not the runs, makes most of the uncertainty.</summary>
    [Remedy("Measure the course with a better tape, and state its limit of error."), Severities(Severity.Note)]
    public const string TapeDominates = "tape-dominates";

    /// <summary>A wheel turns more or less often at work than on the reference.</summary>
    [
        Remedy("Use the value measured at work, on the ground that is seeded. Where it slips much, count distance in another way."),
        Severities(Severity.Note, Severity.Warning)
    ]
    public const string WheelSlips = "wheel-slips";

    /// <summary>The width in the controller is not the width that each pass covers anew.</summary>
    [
        Remedy(
            "Correct the spacing of the passes first, then the width in the controller. Never make up for it with the value of a meter."
        ),
        Severities(Severity.Warning)
    ]
    public const string WidthDiffers = "width-differs";

    /// <summary>A rate is far outside of what seeding machines put down.</summary>
    [Remedy("Check units, turns, width and circumference: one of them is wrong by a factor."), Severities(Severity.Warning, Severity.Stop)]
    public const string RateImplausible = "rate-implausible";

    /// <summary>The rate of a turn test, or the one reckoned from the meter, is outside the tolerance of the target.</summary>
    [
        Remedy(
            "Correct the setting as the answer says, and make another turn test: settings are seldom proportional. Of a reckoned rate check gearing and mass per revolution first."
        ),
        Severities(Severity.Warning)
    ]
    public const string RateOffTarget = "rate-off-target";

    /// <summary>Neither that a rate is within tolerance nor that it is outside is sure enough.</summary>
    [
        Remedy(
            "Do what the headline says: make another turn test with the same setting and send all of them together, or catch more outlets, or measure wheel or mass better."
        ),
        Severities(Severity.Warning)
    ]
    public const string RateNotShown = "rate-not-shown";

    /// <summary>Nothing fell from an outlet during turn tests.</summary>
    [
        Remedy("Clear the way from meter to outlet: shutter, hose, boot. Test again before the setting is changed."),
        Severities(Severity.Warning, Severity.Stop)
    ]
    public const string OutletGaveNothing = "outlet-gave-nothing";

    /// <summary>An outlet delivers more or less than the others by more than the limit.</summary>
    [Remedy("Look at its meter and hose: worn parts, blockage, a flute that is set differently."), Severities(Severity.Warning)]
    public const string OutletOffMean = "outlet-off-mean";

    /// <summary>A correction is so large that proportion is a poor guide.</summary>
    [
        Remedy("Take the corrected setting as a first step only, and test again. A change of gears may be needed."),
        Severities(Severity.Warning)
    ]
    public const string LargeCorrection = "large-correction";

    /// <summary>The circumference of a wheel was reckoned from its diameter.</summary>
    [Remedy("Mark the wheel and measure how far the loaded machine rolls in ten turns on the field."), Severities(Severity.Warning)]
    public const string CircumferenceFromDiameter = "circumference-from-diameter";

    /// <summary>A skid is stated beside a circumference that was measured on the ground.</summary>
    [
        Remedy("If the wheel was driving the meters on that run, the circumference holds the skid already: leave skid out."),
        Severities(Severity.Note)
    ]
    public const string SkidCountedTwice = "skid-counted-twice";
}
