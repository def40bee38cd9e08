namespace CalibrationApi.Engine.Answers;

/// <summary>The stable codes of findings and reasons.</summary>
public static class FindingCode
{
    /// <summary>The meter delivers another mass per revolution than the value in force says.</summary>
    public const string ChangeDetected = "change-detected";

    /// <summary>The change is smaller than its uncertainty and well inside the tolerance.</summary>
    public const string NoPracticalChange = "no-practical-change";

    /// <summary>The value in force is good enough although a small change was detected.</summary>
    public const string WithinTolerance = "within-tolerance";

    /// <summary>No change was detected, but neither was it shown that the value in force is within tolerance.</summary>
    public const string WithinToleranceNotShown = "within-tolerance-not-shown";

    /// <summary>There is no value in force to compare with.</summary>
    public const string NoValueInForce = "no-value-in-force";

    /// <summary>A change so large that a second catch has to confirm it.</summary>
    public const string LargeChange = "large-change";

    /// <summary>The interval is wider than wanted.</summary>
    public const string PrecisionNotReached = "precision-not-reached";

    /// <summary>The scale or the points caught, not the number of catches, keep the interval wide.</summary>
    public const string PrecisionOutOfReach = "precision-out-of-reach";

    /// <summary>The catches scatter more than the repeatability explains.</summary>
    public const string CatchesScatterMoreThanExpected = "catches-scatter-more-than-expected";

    /// <summary>A mistake would explain the test.</summary>
    public const string LikelyMistake = "likely-mistake";

    /// <summary>Several mistakes would explain the test, and mass alone does not say which.</summary>
    public const string CannotBeToldApart = "cannot-be-told-apart";

    /// <summary>One catch stands apart from the others.</summary>
    public const string StrayCatch = "stray-catch";

    /// <summary>The first catch is low, as when the meter was not primed.</summary>
    public const string FirstCatchLow = "first-catch-low";

    /// <summary>The catches rise or fall one after the other.</summary>
    public const string TrendOverCatches = "trend-over-catches";

    /// <summary>Something was added to every catch, whatever its size.</summary>
    public const string AdditiveOffset = "additive-offset";

    /// <summary>A catch is small for its purpose.</summary>
    public const string SmallCatch = "small-catch";

    /// <summary>A catch covers few divisions of the scale.</summary>
    public const string CoarseScale = "coarse-scale";

    /// <summary>A load is beyond what an instrument of the stated class can have.</summary>
    public const string LoadBeyondClass = "load-beyond-class";

    /// <summary>The scale, not the catches, makes most of the uncertainty.</summary>
    public const string ScaleDominates = "scale-dominates";

    /// <summary>The default repeatability carries most of the uncertainty.</summary>
    public const string DefaultRepeatabilityUsed = "default-repeatability-used";

    /// <summary>A catch was left out by the caller.</summary>
    public const string CatchExcluded = "catch-excluded";

    /// <summary>Masses that come from one scale were given in more than one unit.</summary>
    public const string MixedMassUnits = "mixed-mass-units";

    /// <summary>The resolution of the controller costs a noticeable part of the tolerance.</summary>
    public const string EntryResolutionMatters = "entry-resolution-matters";

    /// <summary>A meter would have to turn slower or faster than it may.</summary>
    public const string OutsideMeterWindow = "outside-meter-window";

    /// <summary>A meter turns close to one of its limits.</summary>
    public const string NearMeterLimit = "near-meter-limit";

    /// <summary>The container is nearly full at the planned mass.</summary>
    public const string ContainerNearlyFull = "container-nearly-full";

    /// <summary>The catch that is wanted at least is larger than the largest one possible.</summary>
    public const string BoundsCross = "bounds-cross";

    /// <summary>Speeds in the field differ so much that one catch speed does not stand for all.</summary>
    public const string WideSpeedRange = "wide-speed-range";

    /// <summary>A meter would turn at a speed at which its mass per revolution was not measured.</summary>
    public const string OutsideMeasuredSpeeds = "outside-measured-speeds";

    /// <summary>Two meters have to be stopped within a few seconds of each other.</summary>
    public const string StopsCloseTogether = "stops-close-together";

    /// <summary>The conditions of a test differ from those stated for sowing.</summary>
    public const string ConditionsDiffer = "conditions-differ";

    /// <summary>A meter has varied so much from day to day that no test can show that a value holds within the tolerance.</summary>
    public const string VariesFromDayToDay = "varies-from-day-to-day";

    /// <summary>The scale has never been checked, or its check is overdue.</summary>
    public const string ScaleCheckOverdue = "scale-check-overdue";

    /// <summary>The scale failed its last check before a test.</summary>
    public const string ScaleCheckFailed = "scale-check-failed";

    /// <summary>The scale failed its first check after a test.</summary>
    public const string ScaleCheckFailedLater = "scale-check-failed-later";

    /// <summary>The check that a test was corrected by is no longer the last one before it.</summary>
    public const string ScaleCheckChanged = "scale-check-changed";

    /// <summary>The value that a test was compared with is no longer the one that was in force at its time.</summary>
    public const string ValueInForceChanged = "value-in-force-changed";

    /// <summary>The value in force rests on a test that was superseded.</summary>
    public const string BasisSuperseded = "basis-superseded";

    /// <summary>The lot or its treatment is another than when the value in force was adopted.</summary>
    public const string OtherLot = "other-lot";

    /// <summary>The number adopted is not the one that the test gave.</summary>
    public const string AdoptedOtherwise = "adopted-otherwise";
}
