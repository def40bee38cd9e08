namespace CalibrationApi.Engine.Answers;

/// <summary>The stable codes of findings and reasons: the comment of each is its cause, <see cref="RemedyAttribute"/> what to do.</summary>
public static partial class FindingCode
{
    /// <summary>The meter delivers another mass per revolution than the value in force says.</summary>
    [
        Remedy("Type in the number that the answer gives, then adopt it, so that the record says what the controller uses."),
        Severities(Severity.Warning)
    ]
    public const string ChangeDetected = "change-detected";

    /// <summary>The change is smaller than its uncertainty and well inside the tolerance.</summary>
    [Remedy("Nothing to do: keep the value in force."), Severities(Severity.Note)]
    public const string NoPracticalChange = "no-practical-change";

    /// <summary>The value in force is good enough although a small change was detected.</summary>
    [Remedy("Nothing to do: keep the value in force, or type in the new number if you like."), Severities(Severity.Note)]
    public const string WithinTolerance = "within-tolerance";

    /// <summary>No change was detected, but neither was it shown that the value in force is within tolerance.</summary>
    [Remedy("Make another catch, or type in the number that the answer gives."), Severities(Severity.Warning)]
    public const string WithinToleranceNotShown = "within-tolerance-not-shown";

    /// <summary>There is no value in force to compare with.</summary>
    [
        Remedy(
            "Type in the number that the answer gives, then adopt it. If the controller already holds a number, state it as valueInForce."
        ),
        Severities(Severity.Note)
    ]
    public const string NoValueInForce = "no-value-in-force";

    /// <summary>The interval is wider than wanted.</summary>
    [Remedy("Make as many more catches as the answer says, and send all of them together."), Severities(Severity.Warning)]
    public const string PrecisionNotReached = "precision-not-reached";

    /// <summary>The scale or the points caught, not the number of catches, keep the interval wide.</summary>
    [
        Remedy(
            "Weigh on a finer or better checked scale, turn the meter longer for each catch, or ask for less precision. More catches do not help."
        ),
        Severities(Severity.Warning)
    ]
    public const string PrecisionOutOfReach = "precision-out-of-reach";

    /// <summary>The catches scatter more than the repeatability explains.</summary>
    [
        Remedy(
            "Look for a cause: level in the tank, air leaks, bridging product, a slipping drive. Then catch again. Do not seed on a severity of stop."
        ),
        Severities(Severity.Warning, Severity.Stop)
    ]
    public const string CatchesScatterMoreThanExpected = "catches-scatter-more-than-expected";

    /// <summary>A mistake would explain the test.</summary>
    [
        Remedy(
            "Do the check that the answer names beside the mistake, before any number of this test is used. If it was no mistake, name it under ruledOutMistakes and send the test again."
        ),
        Severities(Severity.Warning, Severity.Stop)
    ]
    public const string LikelyMistake = "likely-mistake";

    /// <summary>Several mistakes would explain the test, and mass alone does not say which.</summary>
    [
        Remedy(
            "Do the checks that the answer names, one after the other. What turns out not to have happened goes under ruledOutMistakes; then send the test again."
        ),
        Severities(Severity.Warning, Severity.Stop)
    ]
    public const string CannotBeToldApart = "cannot-be-told-apart";

    /// <summary>One catch stands apart from the others.</summary>
    [
        Remedy("Catch once more. Exclude the stray one only if you know what went wrong with it, and give that as the reason."),
        Severities(Severity.Warning, Severity.Stop)
    ]
    public const string StrayCatch = "stray-catch";

    /// <summary>The first catch is low, as when the meter was not primed.</summary>
    [
        Remedy(
            "Turn the meter until the flow is steady before each first catch. Exclude the first catch with that reason, and catch once more."
        ),
        Severities(Severity.Warning)
    ]
    public const string FirstCatchLow = "first-catch-low";

    /// <summary>The catches rise or fall one after the other.</summary>
    [
        Remedy("Look at the tank level, at the flow to the meter, and at whether the meter was warm. Then catch again."),
        Severities(Severity.Warning)
    ]
    public const string TrendOverCatches = "trend-over-catches";

    /// <summary>Something was added to every catch, whatever its size.</summary>
    [Remedy("Check the tare, product left in the line or the container, and the priming. Then catch again."), Severities(Severity.Warning)]
    public const string AdditiveOffset = "additive-offset";

    /// <summary>A catch is small for its purpose.</summary>
    [
        Remedy("Turn the meter longer for each catch. For small seed, state the material small-seed."),
        Severities(Severity.Note, Severity.Warning)
    ]
    public const string SmallCatch = "small-catch";

    /// <summary>A catch covers few divisions of the scale.</summary>
    [Remedy("Weigh on a scale with a smaller division, or make larger catches."), Severities(Severity.Note)]
    public const string CoarseScale = "coarse-scale";

    /// <summary>A load is beyond what an instrument of the stated class can have.</summary>
    [Remedy("Read the class and the verification interval from the data plate of the scale again."), Severities(Severity.Warning)]
    public const string LoadBeyondClass = "load-beyond-class";

    /// <summary>A catch is more than its container can hold.</summary>
    [
        Remedy(
            "Check gross and its unit, which container it was, its volume, and the bulk density. A container that was emptied in the course of a catch cannot be named as its container."
        ),
        Severities(Severity.Stop)
    ]
    public const string MoreThanTheContainerHolds = "more-than-the-container-holds";

    /// <summary>A load is more than its scale can show.</summary>
    [Remedy("Check gross and its unit, which scale it was, and its capacity on the data plate."), Severities(Severity.Stop)]
    public const string LoadBeyondCapacity = "load-beyond-capacity";

    /// <summary>The scale, not the catches, makes most of the uncertainty.</summary>
    [Remedy("Check the scale against known masses. That helps more than another catch."), Severities(Severity.Note)]
    public const string ScaleDominates = "scale-dominates";

    /// <summary>The default repeatability carries most of the uncertainty.</summary>
    [Remedy("Make more catches, or state the repeatability of this meter if you know it."), Severities(Severity.Note)]
    public const string DefaultRepeatabilityUsed = "default-repeatability-used";

    /// <summary>A catch was left out by the caller.</summary>
    [Remedy("Nothing to do, if the reason given is right."), Severities(Severity.Note)]
    public const string CatchExcluded = "catch-excluded";

    /// <summary>Masses that come from one scale were given in more than one unit.</summary>
    [Remedy("Check the unit of every mass of the test. One scale shows one unit."), Severities(Severity.Warning)]
    public const string MixedMassUnits = "mixed-mass-units";

    /// <summary>The resolution of the controller costs a noticeable part of the tolerance.</summary>
    [
        Remedy("Use a form or a unit with more digits if the controller has one. Do not seed when it could only take 0."),
        Severities(Severity.Warning, Severity.Stop)
    ]
    public const string EntryResolutionMatters = "entry-resolution-matters";

    /// <summary>A meter would have to turn slower or faster than it may.</summary>
    [
        Remedy(
            "Choose another metering element, another ground speed, or another rate. On a severity of note nothing needs to be done: another element of the machine serves."
        ),
        Severities(Severity.Note, Severity.Warning)
    ]
    public const string OutsideMeterWindow = "outside-meter-window";

    /// <summary>A meter turns close to one of its limits.</summary>
    [
        Remedy("Leave room: a slightly different speed or element keeps the meter inside its limits on slopes and turns."),
        Severities(Severity.Note)
    ]
    public const string NearMeterLimit = "near-meter-limit";

    /// <summary>The container is nearly full at the planned mass.</summary>
    [Remedy("Take a larger container, or empty it between catches."), Severities(Severity.Warning)]
    public const string ContainerNearlyFull = "container-nearly-full";

    /// <summary>The catch that is wanted at least is larger than the largest one possible.</summary>
    [Remedy("Take a larger container, lift with two persons, allow a longer run, or use a finer scale."), Severities(Severity.Warning)]
    public const string BoundsCross = "bounds-cross";

    /// <summary>Speeds in the field differ so much that one catch speed does not stand for all.</summary>
    [Remedy("Make a check catch at the slowest and at the fastest speed as well."), Severities(Severity.Note)]
    public const string WideSpeedRange = "wide-speed-range";

    /// <summary>A meter would turn at a speed at which its mass per revolution was not measured.</summary>
    [Remedy("Catch at that meter speed too, and add it to the points measured."), Severities(Severity.Note)]
    public const string OutsideMeasuredSpeeds = "outside-measured-speeds";

    /// <summary>A catch is full before its drive has settled, and no simulated speed mends that.</summary>
    [Remedy("Use the container that the answer names, or make as many catches as it says."), Severities(Severity.Warning)]
    public const string ShortRun = "short-run";

    /// <summary>
    /// The planned ground speed takes a meter beyond its limits, or leaves too short a run or too small a catch, so that another one is
    /// simulated.
    /// </summary>
    [
        Remedy(
            "Simulate the speed that the answer gives. Where the meter can turn at the planned speed too, make a short check catch there."
        ),
        Severities(Severity.Note)
    ]
    public const string SimulatedSpeedMoved = "simulated-speed-moved";

    /// <summary>No simulated speed keeps all meters of a run within their limits.</summary>
    [
        Remedy("Run the meters one after the other, and look for elements that can turn together in the field."),
        Severities(Severity.Warning)
    ]
    public const string MetersRunApart = "meters-run-apart";

    /// <summary>More containers are needed at the same time than are at hand.</summary>
    [Remedy("Get more containers, or plan the meters in several runs."), Severities(Severity.Warning)]
    public const string TooFewContainers = "too-few-containers";

    /// <summary>Two meters have to be stopped within a few seconds of each other.</summary>
    [Remedy("Have somebody at each of these meters, or run them one after the other."), Severities(Severity.Note)]
    public const string StopsCloseTogether = "stops-close-together";

    /// <summary>The conditions of a test differ from those stated for sowing.</summary>
    [Remedy("Test again under the conditions of sowing, or correct the conditions that were stated."), Severities(Severity.Warning)]
    public const string ConditionsDiffer = "conditions-differ";

    /// <summary>A meter has varied so much from day to day that no test can show that a value holds within the tolerance.</summary>
    [
        Remedy("Find out what differs from day to day, for example the tank level. Until then test again soon."),
        Severities(Severity.Warning)
    ]
    public const string VariesFromDayToDay = "varies-from-day-to-day";

    /// <summary>The scale has never been checked, or its check is overdue.</summary>
    [Remedy("Check the scale against known masses and record the check."), Severities(Severity.Note, Severity.Warning)]
    public const string ScaleCheckOverdue = "scale-check-overdue";

    /// <summary>The scale failed its last check before a test.</summary>
    [Remedy("Repair or replace the scale, check it again, and repeat the test."), Severities(Severity.Stop)]
    public const string ScaleCheckFailed = "scale-check-failed";

    /// <summary>The scale failed its first check after a test.</summary>
    [Remedy("Test again with a good scale: the masses of this test may be off by as much as the scale was."), Severities(Severity.Warning)]
    public const string ScaleCheckFailedLater = "scale-check-failed-later";

    /// <summary>The check that a test was corrected by is no longer the last one before it.</summary>
    [
        Remedy("Enter this test once more, superseding this record, to have its masses corrected by that check."),
        Severities(Severity.Warning)
    ]
    public const string ScaleCheckChanged = "scale-check-changed";

    /// <summary>The value that a test was compared with is no longer the one that was in force at its time.</summary>
    [Remedy("Enter this test once more, superseding this record, to have it compared with the right value."), Severities(Severity.Warning)]
    public const string ValueInForceChanged = "value-in-force-changed";

    /// <summary>The value in force rests on a test that was superseded.</summary>
    [
        Remedy(
            "Adopt the value of the test that took its place. If that one is of another meter, element, setting or product, test again."
        ),
        Severities(Severity.Warning, Severity.Stop)
    ]
    public const string BasisSuperseded = "basis-superseded";

    /// <summary>Meter, product, element, setting or lot of a test are not those of its plan.</summary>
    [
        Remedy(
            "Check what was tested. If it was meant so, change the plan; otherwise test what the plan says, or enter the test once more with the right names, superseding this record."
        ),
        Severities(Severity.Warning)
    ]
    public const string DiffersFromPlan = "differs-from-plan";

    /// <summary>The lot or its treatment is another than when the value in force was adopted.</summary>
    [Remedy("Make a catch test with the lot that is in the tank now."), Severities(Severity.Note)]
    public const string OtherLot = "other-lot";

    /// <summary>The number adopted is not the one that the test gave.</summary>
    [
        Remedy("Check the number in the controller. If it was typed in wrongly, correct it and adopt again, superseding this record."),
        Severities(Severity.Warning)
    ]
    public const string AdoptedOtherwise = "adopted-otherwise";

    /// <summary>A number was adopted although something spoke against it, with a reason.</summary>
    [
        Remedy("Read the reason. If it does not hold, test again and adopt the right number, superseding this record."),
        Severities(Severity.Warning, Severity.Stop)
    ]
    public const string AdoptedDespite = "adopted-despite";
}
