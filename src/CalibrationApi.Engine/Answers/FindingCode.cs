namespace CalibrationApi.Engine.Answers;

/// <summary>The stable codes of findings and reasons: the comment of each is its cause, <see cref="RemedyAttribute"/> what to do.</summary>
public static class FindingCode
{
    /// <summary>The meter delivers another mass per revolution than the value in force says.</summary>
    [Remedy("Type in the number that the answer gives, then adopt it, so that the record says what the controller uses."), Severities(Severity.Warning)]
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
    [Remedy("Type in the number that the answer gives, then adopt it. If the controller already holds a number, state it as valueInForce."), Severities(Severity.Note)]
    public const string NoValueInForce = "no-value-in-force";

    /// <summary>A change so large that a second catch has to confirm it.</summary>
    [Remedy("Make a second catch before typing anything in. If it agrees, the change is real."), Severities(Severity.Warning)]
    public const string LargeChange = "large-change";

    /// <summary>The interval is wider than wanted.</summary>
    [Remedy("Make as many more catches as the answer says, and send all of them together."), Severities(Severity.Warning)]
    public const string PrecisionNotReached = "precision-not-reached";

    /// <summary>The scale or the points caught, not the number of catches, keep the interval wide.</summary>
    [Remedy("Weigh on a finer or better checked scale, turn the meter longer for each catch, or ask for less precision. More catches do not help."), Severities(Severity.Warning)]
    public const string PrecisionOutOfReach = "precision-out-of-reach";

    /// <summary>The catches scatter more than the repeatability explains.</summary>
    [Remedy("Look for a cause: level in the tank, air leaks, bridging product, a slipping drive. Then catch again. Do not seed on a severity of stop."), Severities(Severity.Warning, Severity.Stop)]
    public const string CatchesScatterMoreThanExpected = "catches-scatter-more-than-expected";

    /// <summary>A mistake would explain the test.</summary>
    [Remedy("Do the check that the answer names beside the mistake, before any number of this test is used. If it was no mistake, name it under ruledOutMistakes and send the test again."), Severities(Severity.Warning, Severity.Stop)]
    public const string LikelyMistake = "likely-mistake";

    /// <summary>Several mistakes would explain the test, and mass alone does not say which.</summary>
    [Remedy("Do the checks that the answer names, one after the other. What turns out not to have happened goes under ruledOutMistakes; then send the test again."), Severities(Severity.Warning, Severity.Stop)]
    public const string CannotBeToldApart = "cannot-be-told-apart";

    /// <summary>One catch stands apart from the others.</summary>
    [Remedy("Catch once more. Exclude the stray one only if you know what went wrong with it, and give that as the reason."), Severities(Severity.Warning, Severity.Stop)]
    public const string StrayCatch = "stray-catch";

    /// <summary>The first catch is low, as when the meter was not primed.</summary>
    [Remedy("Turn the meter until the flow is steady before each first catch. Exclude the first catch with that reason, and catch once more."), Severities(Severity.Warning)]
    public const string FirstCatchLow = "first-catch-low";

    /// <summary>The catches rise or fall one after the other.</summary>
    [Remedy("Look at the tank level, at the flow to the meter, and at whether the meter was warm. Then catch again."), Severities(Severity.Warning)]
    public const string TrendOverCatches = "trend-over-catches";

    /// <summary>Something was added to every catch, whatever its size.</summary>
    [Remedy("Check the tare, product left in the line or the container, and the priming. Then catch again."), Severities(Severity.Warning)]
    public const string AdditiveOffset = "additive-offset";

    /// <summary>A catch is small for its purpose.</summary>
    [Remedy("Turn the meter longer for each catch. For small seed, state the material small-seed."), Severities(Severity.Note, Severity.Warning)]
    public const string SmallCatch = "small-catch";

    /// <summary>A catch covers few divisions of the scale.</summary>
    [Remedy("Weigh on a scale with a smaller division, or make larger catches."), Severities(Severity.Note)]
    public const string CoarseScale = "coarse-scale";

    /// <summary>A load is beyond what an instrument of the stated class can have.</summary>
    [Remedy("Read the class and the verification interval from the data plate of the scale again."), Severities(Severity.Warning)]
    public const string LoadBeyondClass = "load-beyond-class";

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
    [Remedy("Use a form or a unit with more digits if the controller has one. Do not seed when it could only take 0."), Severities(Severity.Warning, Severity.Stop)]
    public const string EntryResolutionMatters = "entry-resolution-matters";

    /// <summary>A meter would have to turn slower or faster than it may.</summary>
    [Remedy("Choose another metering element, another ground speed, or another rate."), Severities(Severity.Warning)]
    public const string OutsideMeterWindow = "outside-meter-window";

    /// <summary>A meter turns close to one of its limits.</summary>
    [Remedy("Leave room: a slightly different speed or element keeps the meter inside its limits on slopes and turns."), Severities(Severity.Note)]
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

    /// <summary>Two meters have to be stopped within a few seconds of each other.</summary>
    [Remedy("Have somebody at each of these meters, or run them one after the other."), Severities(Severity.Note)]
    public const string StopsCloseTogether = "stops-close-together";

    /// <summary>The conditions of a test differ from those stated for sowing.</summary>
    [Remedy("Test again under the conditions of sowing, or correct the conditions that were stated."), Severities(Severity.Warning)]
    public const string ConditionsDiffer = "conditions-differ";

    /// <summary>A meter has varied so much from day to day that no test can show that a value holds within the tolerance.</summary>
    [Remedy("Find out what differs from day to day, for example the tank level. Until then test again soon."), Severities(Severity.Warning)]
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
    [Remedy("Enter this test once more, superseding this record, to have its masses corrected by that check."), Severities(Severity.Warning)]
    public const string ScaleCheckChanged = "scale-check-changed";

    /// <summary>The value that a test was compared with is no longer the one that was in force at its time.</summary>
    [Remedy("Enter this test once more, superseding this record, to have it compared with the right value."), Severities(Severity.Warning)]
    public const string ValueInForceChanged = "value-in-force-changed";

    /// <summary>The value in force rests on a test that was superseded.</summary>
    [Remedy("Adopt the value of the test that took its place. If that one is of another meter, element, setting or product, test again."), Severities(Severity.Warning, Severity.Stop)]
    public const string BasisSuperseded = "basis-superseded";

    /// <summary>The lot or its treatment is another than when the value in force was adopted.</summary>
    [Remedy("Make a catch test with the lot that is in the tank now."), Severities(Severity.Note)]
    public const string OtherLot = "other-lot";

    /// <summary>The number adopted is not the one that the test gave.</summary>
    [Remedy("Check the number in the controller. If it was typed in wrongly, correct it and adopt again, superseding this record."), Severities(Severity.Warning)]
    public const string AdoptedOtherwise = "adopted-otherwise";

    /// <summary>A bulk density lies outside what is published for its material.</summary>
    [Remedy("Weigh a known volume again, and check mass, volume and their units. On a severity of note nothing needs to be done: lots differ, and a measured density goes before a published one."), Severities(Severity.Note, Severity.Warning)]
    public const string DensityUnlikeReference = "density-unlike-reference";

    /// <summary>A bulk density rests on published values alone.</summary>
    [Remedy("Weigh a known volume of the lot."), Severities(Severity.Note)]
    public const string PublishedDensityOnly = "published-density-only";

    /// <summary>Weighings of one volume differ more than filling it anew explains.</summary>
    [Remedy("Fill and strike off the container the same way each time. Look for a slip in one of the weighings, and weigh once more."), Severities(Severity.Warning)]
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
    [Remedy("Check the unit of the value, the element that is fitted, its displacement, and the bulk density."), Severities(Severity.Warning)]
    public const string MoreThanTheElementHolds = "more-than-the-element-holds";

    /// <summary>A mass per revolution is far from what displacement, density and fill efficiency let expect.</summary>
    [Remedy("Check the element, its displacement, the density and the units. If all are right, the value stands: learn the fill efficiency from it."), Severities(Severity.Warning)]
    public const string FillUnlikeExpected = "fill-unlike-expected";

    /// <summary>A field efficiency is outside what was published for drills and planters.</summary>
    [Remedy("Check it against the area and the hours of an earlier day. If they agree, the number is yours."), Severities(Severity.Note)]
    public const string UnusualFieldEfficiency = "unusual-field-efficiency";

    /// <summary>The fan or its air flow is outside what a product may have.</summary>
    [Remedy("Set the fan inside the common window that the answer gives. Where it has none, see there."), Severities(Severity.Warning)]
    public const string OutsideFanWindow = "outside-fan-window";

    /// <summary>The fan or its air flow is close to a limit of a product.</summary>
    [Remedy("Move the fan away from that limit if the window allows it, and look at the outlets while it runs."), Severities(Severity.Note)]
    public const string NearFanLimit = "near-fan-limit";

    /// <summary>No setting of the fan suits all products of one air stream.</summary>
    [Remedy("Check the limits of the two products that the sentence names. If they are right, put them down in two passes or through two air streams."), Severities(Severity.Warning)]
    public const string NoCommonFanWindow = "no-common-fan-window";

    /// <summary>A limit of the fan is stated in one measure and the fan is planned in the other.</summary>
    [Remedy("State the planned fan speed for limits of the fan speed, and the planned air flow for limits of the air flow."), Severities(Severity.Note)]
    public const string FanLimitNotChecked = "fan-limit-not-checked";
    /// <summary>The runs over a course give another number of pulses per distance than the value in force.</summary>
    [Remedy("Type in the number that the answer gives. Until then the count of distance and of area is off, and so is the rate."), Severities(Severity.Warning)]
    public const string DistanceChanged = "distance-changed";

    /// <summary>A change of the pulses per distance so large that a second run has to confirm it.</summary>
    [Remedy("Drive one more run before typing anything in. If it agrees, look for a cause: tyre pressure, another tyre, a new sensor."), Severities(Severity.Warning)]
    public const string LargeDistanceChange = "large-distance-change";

    /// <summary>The interval of the pulses per distance is wider than wanted.</summary>
    [Remedy("Drive as many more runs as the answer says, and send all of them together."), Severities(Severity.Warning)]
    public const string MoreRunsNeeded = "more-runs-needed";

    /// <summary>No practical number of runs like these reaches the wanted precision.</summary>
    [Remedy("Measure the course with a better tape, drive a longer one, or ask for less precision."), Severities(Severity.Warning)]
    public const string RunsOutOfReach = "runs-out-of-reach";

    /// <summary>The runs scatter more than expected of runs over one course.</summary>
    [Remedy("Check the counts and the distances, then drive again. Do not seed on a severity of stop."), Severities(Severity.Warning, Severity.Stop)]
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
    [Remedy("Use the value measured at work, on the ground that is seeded. Where it slips much, count distance in another way."), Severities(Severity.Note, Severity.Warning)]
    public const string WheelSlips = "wheel-slips";

    /// <summary>The width in the controller is not the width that each pass covers anew.</summary>
    [Remedy("Correct the spacing of the passes first, then the width in the controller. Never make up for it with the value of a meter."), Severities(Severity.Warning)]
    public const string WidthDiffers = "width-differs";

    /// <summary>A rate is far outside of what seeding machines put down.</summary>
    [Remedy("Check units, turns, width and circumference: one of them is wrong by a factor."), Severities(Severity.Warning, Severity.Stop)]
    public const string RateImplausible = "rate-implausible";

    /// <summary>The rate of a turn test is outside the tolerance of the target.</summary>
    [Remedy("Correct the setting as the answer says, and make another turn test: settings are seldom proportional."), Severities(Severity.Warning)]
    public const string RateOffTarget = "rate-off-target";

    /// <summary>Neither that a rate is within tolerance nor that it is outside is sure enough.</summary>
    [Remedy("Make another turn test with the same setting, and send all of them together."), Severities(Severity.Warning)]
    public const string RateNotShown = "rate-not-shown";

    /// <summary>An outlet delivers more or less than the others by more than the limit.</summary>
    [Remedy("Look at its meter and hose: worn parts, blockage, a flute that is set differently."), Severities(Severity.Warning)]
    public const string OutletOffMean = "outlet-off-mean";

    /// <summary>A correction is so large that proportion is a poor guide.</summary>
    [Remedy("Take the corrected setting as a first step only, and test again. A change of gears may be needed."), Severities(Severity.Warning)]
    public const string LargeCorrection = "large-correction";

    /// <summary>The circumference of a wheel was reckoned from its diameter.</summary>
    [Remedy("Mark the wheel and measure how far the loaded machine rolls in ten turns on the field."), Severities(Severity.Warning)]
    public const string CircumferenceFromDiameter = "circumference-from-diameter";

    /// <summary>A skid is stated beside a circumference that was measured on the ground.</summary>
    [Remedy("If the wheel was driving the meters on that run, the circumference holds the skid already: leave skid out."), Severities(Severity.Note)]
    public const string SkidCountedTwice = "skid-counted-twice";
    /// <summary>More lies with the seed than a published limit allows, or a limit that was stated.</summary>
    [Remedy("Place less with the seed, or put the rest away from the seed row. If the limit is of another region than yours, ask for the one of your own."), Severities(Severity.Warning, Severity.Stop)]
    public const string AbovePublishedLimit = "above-published-limit";

    /// <summary>No source that is held has a number for this crop, soil, moisture, opener and region.</summary>
    [Remedy("Ask local guidance, and state its limit under localLimits. No number is not a permission."), Severities(Severity.Warning)]
    public const string NoPublishedLimit = "no-published-limit";

    /// <summary>A part of what lies with the seed is counted by no limit that has a number for this case.</summary>
    [Remedy("Ask local guidance about that nutrient, and state its limit under localLimits, or put that product away from the seed row."), Severities(Severity.Warning)]
    public const string NutrientWithoutLimit = "nutrient-without-limit";

    /// <summary>Sources print different limits for the same case.</summary>
    [Remedy("Go by the stricter one, unless your own region's guidance says otherwise."), Severities(Severity.Warning)]
    public const string SourcesDisagree = "sources-disagree";

    /// <summary>No region was stated, so limits of several regions are shown.</summary>
    [Remedy("State the region. Say elsewhere if it is not among the words."), Severities(Severity.Warning)]
    public const string RegionNotStated = "region-not-stated";

    /// <summary>The form of nitrogen in a product was not stated, so that it counts as urea.</summary>
    [Remedy("State nitrogenForm for that product; the label names it."), Severities(Severity.Warning)]
    public const string NitrogenFormNotStated = "nitrogen-form-not-stated";

    /// <summary>The opener and its rows lie between, or beyond, those for which the source prints a limit.</summary>
    [Remedy("Nothing to do: the stricter printed limit was taken. The answer names the printed ones."), Severities(Severity.Note)]
    public const string BetweenPublishedLimits = "between-published-limits";

    /// <summary>A limit was reduced as its source states for such a seedbed.</summary>
    [Remedy("Nothing to do: the reduced limit was used."), Severities(Severity.Note)]
    public const string LimitReduced = "limit-reduced";

    /// <summary>The spread is much wider than a source pairs with such an opener.</summary>
    [Remedy("Measure the spread of seed and fertilizer in the field, and check its unit."), Severities(Severity.Note)]
    public const string SpreadUnusual = "spread-unusual";
    /// <summary>None of the products whose rates are open holds a nutrient that is still wanted.</summary>
    [Remedy("Add a product that holds it, or take the target out."), Severities(Severity.Warning)]
    public const string NutrientWithoutSource = "nutrient-without-source";

    /// <summary>What is there already goes over an exact or at-most target.</summary>
    [Remedy("Check the credits and the fixed rates. If they are right, nothing more of this nutrient should be applied."), Severities(Severity.Warning)]
    public const string CreditsAboveTarget = "credits-above-target";

    /// <summary>A nutrient stays short because products may not be applied at a higher rate.</summary>
    [Remedy("Raise the most rate if it may be raised, add another source of the nutrient, or apply the rest apart."), Severities(Severity.Warning)]
    public const string MostRateBinds = "most-rate-binds";

    /// <summary>A nutrient goes over its target because products have to be applied at no lower rate.</summary>
    [Remedy("Lower the least rate or leave it out, or raise the target."), Severities(Severity.Warning)]
    public const string LeastRateBinds = "least-rate-binds";

    /// <summary>A target cannot be met together with another one, because products hold both nutrients.</summary>
    [Remedy("Add a product that holds the nutrient by itself, or loosen one of the targets that the sentence names, for example from exactly to at-least."), Severities(Severity.Warning)]
    public const string TargetsConflict = "targets-conflict";

    /// <summary>Much more of a nutrient is given than was asked for.</summary>
    [Remedy("Nothing to do if it does no harm. Otherwise state a most for this nutrient, or add a product that holds less of it."), Severities(Severity.Note)]
    public const string LargeSurplus = "large-surplus";

    /// <summary>A product rate is higher than seeding machines usually put down.</summary>
    [Remedy("Check the analysis and the targets, number and unit."), Severities(Severity.Warning)]
    public const string UnusualProductRate = "unusual-product-rate";

    /// <summary>A share stated as the element is higher than any usual product holds; it may be that of the oxide.</summary>
    [Remedy("Look on the label whether it says K or K2O, and state that form."), Severities(Severity.Warning)]
    public const string ElementOrOxide = "element-or-oxide";
    /// <summary>A rate comes from dividing by 10 where exact units divide by 10.413, and so reads 4.13 % high.</summary>
    [Remedy("Use the rate of the answer, which is in exact units."), Severities(Severity.Warning)]
    public const string ShortcutReadsHigh = "shortcut-reads-high";

    /// <summary>A rate from elsewhere differs from the one that these numbers give.</summary>
    [Remedy("Compare kernel mass, germination, emergence and purity behind the two, and use the rate whose numbers are those of your lot."), Severities(Severity.Warning)]
    public const string StatedRateDiffers = "stated-rate-differs";

    /// <summary>Few seeds were counted for a kernel mass.</summary>
    [Remedy("Count 100 seeds several times and give the sum of counts and masses."), Severities(Severity.Note)]
    public const string SmallSample = "small-sample";

    /// <summary>The kernel mass lies outside what is published for the crop.</summary>
    [Remedy("Check the count, the mass and the unit. If they are right, use them: your lot goes before any range."), Severities(Severity.Note)]
    public const string KernelMassUnusual = "kernel-mass-unusual";

    /// <summary>Germination is below what a seed law asks for.</summary>
    [Remedy("Have the lot tested again, or take another one."), Severities(Severity.Warning)]
    public const string GerminationLow = "germination-low";

    /// <summary>Emergence or survival lies outside what is published for the crop.</summary>
    [Remedy("Check whether the figure already holds germination. Counts from your own fields go before any range."), Severities(Severity.Note)]
    public const string EmergenceUnusual = "emergence-unusual";

    /// <summary>More seeds per area than a publisher sees a gain from.</summary>
    [Remedy("Check the stand wanted and its unit."), Severities(Severity.Note)]
    public const string SeedsAbovePublished = "seeds-above-published";

    /// <summary>The bulk density of a lot is not known, so nothing says what the meter delivers of it.</summary>
    [Remedy("Weigh a known volume of each lot, and ask again; or make a catch test."), Severities(Severity.Warning)]
    public const string DensityUnknown = "density-unknown";

    /// <summary>The new lot has another bulk density than the one behind the value in force.</summary>
    [Remedy("Start the catch plan from the predicted value, and adopt what the catch test finds."), Severities(Severity.Warning)]
    public const string DensityDiffers = "density-differs";

    /// <summary>Two lots of one product have bulk densities that are hard to believe beside each other.</summary>
    [Remedy("Check both numbers and their units; kg/hL, kg/m3 and the bushels differ by factors."), Severities(Severity.Warning)]
    public const string DensitiesFarApart = "densities-far-apart";

    /// <summary>The new lot has another treatment than the one behind the value in force.</summary>
    [Remedy("Make a catch test with the treated seed; a coating changes how it flows and what a kernel weighs."), Severities(Severity.Warning)]
    public const string TreatmentChanged = "treatment-changed";

    /// <summary>Nothing that changes the flow has changed.</summary>
    [Remedy("Nothing to do."), Severities(Severity.Note)]
    public const string NothingChanged = "nothing-changed";

    /// <summary>The new lot germinates otherwise than the one before, so the same seeds bring up another stand.</summary>
    [Remedy("Choose between the rate for the same seeds and the rate for the same stand; the answer gives both."), Severities(Severity.Note)]
    public const string GerminationChanged = "germination-changed";

    /// <summary>A rate for the new lot takes kernel masses that were not given.</summary>
    [Remedy("Count and weigh a sample of each lot, and give their thousand-kernel masses. Fertilizer needs none."), Severities(Severity.Note)]
    public const string RateNotRecomputed = "rate-not-recomputed";
    /// <summary>A hoop or frame is not as large as it is called.</summary>
    [Remedy("Measure the hoop inside, or the frame, and send its size. Do not multiply by a factor made for another size."), Severities(Severity.Note, Severity.Warning)]
    public const string SampleAreaMiscalled = "sample-area-miscalled";

    /// <summary>A stated stand fits plants per m2 divided by 10 and called plants per ft2.</summary>
    [Remedy("Divide by 10.764 instead, or send the number with its own unit."), Severities(Severity.Warning)]
    public const string DivideByTenShortcut = "divide-by-ten-shortcut";

    /// <summary>A stated stand is not what the counts give.</summary>
    [Remedy("Check the factor it was made with and the size of the samples."), Severities(Severity.Note)]
    public const string StatedStandDiffers = "stated-stand-differs";

    /// <summary>No plant was found at any spot.</summary>
    [Remedy("Check whether the crop is up yet, and whether it was sown there."), Severities(Severity.Warning)]
    public const string NoPlantsFound = "no-plants-found";

    /// <summary>There is one count only, so that nothing shows how the stand differs from spot to spot.</summary>
    [Remedy("Count at four more spots at least, chosen without looking."), Severities(Severity.Warning)]
    public const string SingleCount = "single-count";

    /// <summary>There are fewer counts than extension services ask for.</summary>
    [Remedy("Count at more spots, spread over the field."), Severities(Severity.Note)]
    public const string FewCounts = "few-counts";

    /// <summary>The wanted precision takes more counts.</summary>
    [Remedy("Count at as many spots as the answer says, and send all counts together."), Severities(Severity.Note)]
    public const string MoreCountsNeeded = "more-counts-needed";

    /// <summary>The counts vary much more from spot to spot than chance explains.</summary>
    [Remedy("Look for skips, plugged openers, residue or wet spots, and judge such places by themselves."), Severities(Severity.Warning)]
    public const string StronglyClumped = "strongly-clumped";

    /// <summary>Several counts are from one row, so that they share what its opener does.</summary>
    [Remedy("Count in other rows too."), Severities(Severity.Note)]
    public const string CountsInSameRow = "counts-in-same-row";

    /// <summary>More plants were counted than seeds were sown.</summary>
    [Remedy("Check the rate sown, the kernel mass, the germination and the row spacing, and look for volunteers among the plants."), Severities(Severity.Warning)]
    public const string MorePlantsThanSeeds = "more-plants-than-seeds";

    /// <summary>A learned share rests more on what was believed before than on the counts.</summary>
    [Remedy("Nothing to do, if the prior is well founded. More counts give the field more say."), Severities(Severity.Note)]
    public const string PriorOutweighsCounts = "prior-outweighs-counts";

    /// <summary>The stand is, or may be, below the stated minimum.</summary>
    [Remedy("Count at more spots before you decide, and ask local advice about reseeding."), Severities(Severity.Note, Severity.Warning)]
    public const string StandBelowMinimum = "stand-below-minimum";

    /// <summary>A rate misses the wanted probability of the minimum stand.</summary>
    [Remedy("Sow the rate that the answer gives, or accept the risk that it tells."), Severities(Severity.Warning)]
    public const string StandAtRisk = "stand-at-risk";

    /// <summary>The rate that would be needed is above the stated maximum.</summary>
    [Remedy("Accept a lower probability or a lower minimum stand, or improve what keeps seeds from coming up."), Severities(Severity.Warning)]
    public const string RateAboveMaximum = "rate-above-maximum";

    /// <summary>So much survival is in doubt that no sensible rate reaches the wanted probability.</summary>
    [Remedy("Ask for a lower probability, or find out why so few seeds may come up: more seed does not make up for it."), Severities(Severity.Warning)]
    public const string ProbabilityOutOfReach = "probability-out-of-reach";

    /// <summary>The spread of a share comes from one stand, which says nothing about how seasons differ.</summary>
    [Remedy("Add seasonSpread, from several of your own seasons if you have them."), Severities(Severity.Warning)]
    public const string SeasonSpreadMissing = "season-spread-missing";

    /// <summary>A share of seeds is outside what published surveys report.</summary>
    [Remedy("Check the number. If it is right, nothing is to be done."), Severities(Severity.Note)]
    public const string UnusualShareOfSeeds = "unusual-share-of-seeds";
}
