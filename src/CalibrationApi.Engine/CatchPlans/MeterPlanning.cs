using System.Globalization;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.CatchPlans;

/// <summary>Plans the catch of one meter: its bounds, its size, its precision.</summary>
internal sealed class MeterPlanning
{
    private readonly CatchPlanQuestion plan;
    private readonly PlannedMeter meter;
    private readonly Speed planned;
    private readonly double flow;

    /// <param name="plan">The plan, whose ground speed is the one simulated.</param>
    /// <param name="meter">The meter.</param>
    public MeterPlanning(CatchPlanQuestion plan, PlannedMeter meter)
        : this(plan, meter, plan.GroundSpeed, null) { }

    private MeterPlanning(CatchPlanQuestion plan, PlannedMeter meter, Speed planned, bool? isSmallSeed)
    {
        this.plan = plan;
        this.meter = meter;
        this.planned = planned;
        Container = meter.Container ?? plan.Container;
        Uncertainty = meter.Value.StandardUncertainty;
        flow = FlowAt(plan.GroundSpeed);
        Bounds = CatchBound.Of(meter, Container, Uncertainty, plan);
        LimitedBy = Bounds.MinBy(bound => bound.Mass.Kilograms)!;
        Revolutions = WholeRevolutions(LimitedBy.Mass.Kilograms);
        IsSmallSeed = isSmallSeed ?? (meter.Material == ProductMaterial.SmallSeed || (meter.Material is null && TooSlowForBulk));
    }

    /// <summary>The same meter at another simulated speed.</summary>
    public MeterPlanning At(Speed speed) =>
        speed == plan.GroundSpeed ? this : new(plan with { GroundSpeed = speed }, meter, planned, IsSmallSeed);

    /// <summary>The speed simulated.</summary>
    public Speed Simulated => plan.GroundSpeed;

    public MeterSpeedLimits Limits => meter.SpeedLimits;

    /// <summary>R W, kg/m.</summary>
    public double MassPerMetre => meter.TargetRate.KilogramsPerSquareMetre * meter.CoveredWidth.Metres;

    /// <summary>k / (R W), m.</summary>
    public double MetresPerRevolution => DeliveredPerRevolution / MassPerMetre;

    /// <summary>The catch that container, scale and lifting allow, however long it runs, kg.</summary>
    public double LargestMass => DeliveredPerRevolution * LargestRevolutions;

    /// <summary>Its revolutions.</summary>
    public double LargestRevolutions => WholeRevolutions(LargestBound.Mass.Kilograms);

    /// <summary>Which of container, scale and lifting acts first.</summary>
    public CatchBound LargestBound =>
        Bounds
            .Where(bound => bound.Kind is not (CatchBoundKind.LongestRun or CatchBoundKind.SharedShaft))
            .MinBy(bound => bound.Mass.Kilograms)!;

    /// <summary>
    /// The catch from which start and stop hardly matter and the rounding of the scale with a bulk product neither, as far as container,
    /// scale and lifting allow, kg.
    /// </summary>
    public double WorthwhileMass =>
        Math.Min(
            LargestMass,
            DeliveredPerRevolution
                * Math.Max(CatchSize.UsualRevolutions, IsSmallSeed ? 0 : Math.Ceiling(LeastCatch.Kilograms / DeliveredPerRevolution - 1e-9))
        );

    public Container? Container { get; }

    public double Uncertainty { get; }

    public List<CatchBound> Bounds { get; }

    public CatchBound LimitedBy { get; private set; }

    /// <summary>Revolutions to turn.</summary>
    public double Revolutions { get; private set; }

    public double DeliveredPerRevolution => meter.Value.Value.KilogramsPerRevolution;

    public double Mass => Revolutions * DeliveredPerRevolution;

    /// <summary>n = R W v / k, rev/s.</summary>
    public double MeterSpeed => flow / DeliveredPerRevolution;

    public double RunTime => Revolutions / MeterSpeed;

    /// <summary>
    /// Small seed, stated or recognised by this: at the planned speed even the longest run does not bring the least bulk catch.
    /// </summary>
    public bool IsSmallSeed { get; }

    private bool TooSlowForBulk =>
        Threshold.IsBelow(Bounds.Single(bound => bound.Kind == CatchBoundKind.LongestRun).Mass.Kilograms, LeastCatch.Kilograms);

    private Mass LeastCatch => CatchSize.Least(plan.Scale.Division, Wanted);

    private double Coverage => plan.CoverageProbability ?? CatchTestLimits.DefaultCoverage;

    private double Wanted => plan.WantedPrecision ?? CatchTestLimits.DefaultWantedPrecision;

    private RepeatabilityPrior Prior =>
        RepeatabilityPrior.From(meter.Repeatability, null, () => RepeatabilityPrior.Default(meter.Material, Mass, Revolutions));

    /// <summary>A meter on the same shaft is full first: this one turns no longer.</summary>
    public void StopAt(double seconds)
    {
        if (seconds >= RunTime)
            return;
        Revolutions = MeterSpeed * seconds;
        LimitedBy = new CatchBound(CatchBoundKind.SharedShaft, new Mass(Mass));
        Bounds.Add(LimitedBy);
    }

    public MeterPlan Result()
    {
        var (catches, precision) = Precision();
        return new MeterPlan
        {
            Meter = meter,
            CatchMass = new Mass(Mass),
            Revolutions = new Revolutions(Revolutions),
            RunTime = new Duration(RunTime),
            SimulatedSpeed = Simulated,
            MeterSpeed = new RotationalSpeed(MeterSpeed),
            SpeedChecks = [.. WorkingSpeeds().Select(Check)],
            WithinLimits = meter.SpeedLimits.Allow(MeterSpeed),
            ContainerFill = Fill() is { } fill ? new Ratio(fill) : null,
            SimulatedArea = new Area(Mass / meter.TargetRate.KilogramsPerSquareMetre),
            Catches = catches,
            ExpectedPrecision = new Ratio(precision),
            ContainerForLongRun = IsTooShort ? ContainerFor(MassOfShortestRun) : null,
            CatchesForLongRun = IsTooShort ? CatchesForShortestRun : null,
            LimitedBy = LimitedBy,
            Bounds = Bounds,
        };
    }

    /// <summary>What was assumed of this meter.</summary>
    /// <param name="place">Its place among the meters of the question.</param>
    public IEnumerable<Assumption> Assumptions(int place) =>
        OfMeter()
            .Select(one =>
                one with
                {
                    Meter = meter.Name,
                    Member = string.Create(CultureInfo.InvariantCulture, $"meters/{place}/{one.Member}"),
                }
            )
            .Append(plan.Scale.SpanAssumption(new Mass(Mass)) with { Meter = meter.Name });

    private IEnumerable<Assumption> OfMeter()
    {
        if (meter.Container is { Volume: not null, Fill: null })
            yield return CatchPlanDefaults.Fill.Assumed("container/fill");
        if (meter.Value.RelativeUncertainty is null)
            yield return new(
                "valueInForce/relativeUncertainty",
                new Ratio(Uncertainty),
                ReferenceValue.UncertaintyOf(meter.Value.Kind).Origin
            );
        if (meter.Repeatability is null)
            yield return new("repeatability", new Ratio(Prior.Relative), Prior.Origin);
        if (meter.Material is null && IsSmallSeed)
            yield return new(
                "material",
                null,
                "taken as small seed, because the longest run does not bring the least catch of a bulk product"
            )
            {
                Word = "small-seed",
            };
    }

    public IEnumerable<Finding> Findings()
    {
        if (
            meter.Element?.FindingOf(
                $"{meter.Called}: the {(meter.Value.Kind == ReferenceKind.ValueInForce ? "value in force" : "start value")}",
                meter.Value.Value,
                Uncertainty
            ) is
            { } beyond
        )
            yield return beyond with
            {
                Meter = meter.Name,
            };
        var division = plan.Scale.Division;
        var divisions = Mass / division.Kilograms;
        var wantedDivisions = LeastCatch.Kilograms / division.Kilograms;
        if (!IsSmallSeed && Threshold.IsBelow(LimitedBy.Mass.Kilograms, LeastCatch.Kilograms))
            yield return Finding.Warning(
                CatchPlanCodes.BoundsCross,
                $"{meter.Called}: at least {LeastCatch} are wanted, {wantedDivisions:F0} divisions of {division}, but {BoundWords(LimitedBy.Kind)} allows only {LimitedBy.Mass}. Use a finer scale. Otherwise: {Remedy(LeastCatch.Kilograms)}",
                meter.Name
            );
        else if (Threshold.IsBelow(Mass, LeastCatch.Kilograms))
            yield return Finding.Note(
                SharedCodes.CoarseScale,
                $"{meter.Called}: a catch of {new Mass(Mass)} covers only {Math.Floor(divisions):F0} divisions of {division}; {wantedDivisions:F0} or more are better.",
                meter.Name
            );
        if (IsTooShort)
            yield return Finding.Warning(
                CatchPlanCodes.ShortRun,
                $"{meter.Called}: the catch takes only {new Duration(RunTime):F0}, and a drive takes some seconds to settle; at least {new Duration(plan.ShortestRunSeconds):F0} are wanted. {Remedy(MassOfShortestRun)}{OrMoreCatches()}",
                meter.Name
            );
        if (Threshold.IsBelow(Revolutions, CatchSize.UsualRevolutions))
            yield return Finding.Warning(
                SharedCodes.SmallCatch,
                $"{meter.Called}: {Revolutions:0.#} revolutions are few; from {CatchSize.UsualRevolutions:F0} on, start and stop hardly matter. {Remedy(CatchSize.UsualRevolutions * DeliveredPerRevolution)}",
                meter.Name
            );
        if (Precision().Catches is null)
            yield return Finding.Warning(
                SharedCodes.PrecisionOutOfReach,
                CatchCount.OutOfReach(Wanted, Common(), Coverage)
                    ? $"{meter.Called}: {new Ratio(Wanted):0.##} cannot be reached with this scale and a catch of {new Mass(Mass)}. Make the catch larger, use a finer scale, or check this one against known masses."
                    : (Sentence)
                        $"{meter.Called}: not even {CatchCount.Most} catches reach {new Ratio(Wanted):0.##}, because single catches scatter too much. Make each catch longer, count finer, or ask for less.",
                meter.Name
            );
        if (
            Container is { Volume: { } volume }
            && meter.BulkDensity is { } density
            && Mass * (1 + 2 * Uncertainty)
                > CatchPlanDefaults.NearlyFull * (1 + 1e-9) * volume.CubicMetres * density.KilogramsPerCubicMetre
        )
            yield return Finding.Warning(
                CatchPlanCodes.ContainerNearlyFull,
                $"{meter.Called}: if the meter delivers more than planned, the container may be full to the brim. Plan less or watch it.",
                meter.Name
            );
        foreach (var finding in SpeedFindings())
            yield return finding;
    }

    public static Sentence BoundWords(CatchBoundKind kind) =>
        kind switch
        {
            CatchBoundKind.Container => $"the container",
            CatchBoundKind.ScaleCapacity => $"the capacity of the scale",
            CatchBoundKind.LiftLimit => $"what one person lifts",
            CatchBoundKind.LongestRun => $"the longest run",
            CatchBoundKind.SharedShaft => $"the first full meter on the shaft",
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

    private bool IsTooShort => Threshold.IsBelow(RunTime, plan.ShortestRunSeconds);

    private double MassOfShortestRun => flow * plan.ShortestRunSeconds;

    // Beyond what anybody would make it is no remedy.
    private int? CatchesForShortestRun =>
        Math.Ceiling(plan.ShortestRunSeconds / RunTime - 1e-9) is var catches && catches <= CatchCount.Most ? (int)catches : null;

    private Sentence OrMoreCatches() =>
        CatchesForShortestRun is { } catches
            ? (Sentence)$" Otherwise make at least {new CountInWords(catches)} catches, which run that long together."
            : $"";

    // What makes room for a catch of that mass. The simulated speed is as high as the limits of the meter allow already.
    private Sentence Remedy(double mass) =>
        LimitedBy.Kind switch
        {
            CatchBoundKind.Container => ContainerFor(mass) is { } volume
                ? (Sentence)$"Use a container of at least {volume:G3}."
                : $"Use a larger container, with a scale and a lift that carry it.",
            CatchBoundKind.ScaleCapacity => $"Use a scale with more capacity or a lighter container.",
            CatchBoundKind.LiftLimit => $"Lift with two persons or a hoist and state that as liftLimit.",
            CatchBoundKind.LongestRun when OwnSpeedFor(mass) is { } own => $"Catch this meter in a run of its own, at a simulated {own}.",
            CatchBoundKind.LongestRun => meter.SpeedLimits.Maximum is null
                ? (Sentence)
                    $"Allow a run of {new Duration(mass / flow):F0}, or state the highest speed of the meter, so that a higher ground speed can be simulated."
                : $"Allow a run of {new Duration(mass / flow):F0}, or use an element that delivers more per revolution.",
            CatchBoundKind.SharedShaft => $"Catch this meter in a run of its own.",
            _ => throw new InvalidOperationException($"{LimitedBy.Kind} is no bound."),
        };

    // The speed that suits this meter where the common one was slowed down for others; null where it would not bring that mass either.
    private Speed? OwnSpeedFor(double mass) =>
        plan.Meters.Count > 1
        && RunSpeed.For(planned, [At(planned)], plan.ShortestRunSeconds, plan.LongestRunSeconds) is { } own
        && Threshold.IsAbove(own.MetresPerSecond, Simulated.MetresPerSecond)
        && !Threshold.IsBelow(At(own).Mass, mass)
            ? own
            : null;

    // Null where the container does not act, or scale and lifting would not carry such a catch.
    private Volume? ContainerFor(double mass)
    {
        if (
            LimitedBy.Kind != CatchBoundKind.Container
            || meter.BulkDensity is not { } density
            || Bounds.Any(bound =>
                bound.Kind is CatchBoundKind.ScaleCapacity or CatchBoundKind.LiftLimit && Threshold.IsBelow(bound.Mass.Kilograms, mass)
            )
        )
            return null;
        return new Volume(
            mass * (1 + 2 * Uncertainty) / (density.KilogramsPerCubicMetre * (Container!.Fill ?? CatchPlanDefaults.ContainerFill))
        );
    }

    // Whole revolutions are what a person can stop at. The tiny allowance keeps 47.999999999 from becoming 47.
    private double WholeRevolutions(double mass) => Math.Floor(mass / DeliveredPerRevolution + 1e-9);

    private double FlowAt(Speed groundSpeed) =>
        meter.TargetRate.KilogramsPerSquareMetre * meter.CoveredWidth.Metres * groundSpeed.MetresPerSecond;

    private (int? Catches, double Precision) Precision()
    {
        var prior = Prior;
        var between = prior.Relative * prior.Relative;
        var common = Common();
        var resolution = (plan.CounterResolution ?? CountDefaults.CounterResolution).Count;
        var variance = CatchVariance.Of(
            plan.Scale.RandomUncertainty(TareRounding) / Mass,
            CatchVariance.OfCount(resolution, plan.CountStart, meter.PocketsPerRevolution) / Revolutions
        );
        var scatter = new ExpectedScatter(between, prior.DegreesOfFreedom, 0, variance, common);
        var catches = CatchCount.Promised(
            Wanted,
            1,
            scatter,
            Coverage,
            plan.PrecisionProbability ?? CatchTestLimits.DefaultPrecisionProbability
        );
        return (catches, scatter.Precision(catches ?? 1, Coverage));
    }

    // A plan has one container, whose reading is rounded the same way each time.
    private TareReading TareRounding => plan.TareReading == TareReading.Each ? TareReading.Shared : plan.TareReading;

    // What all catches on this scale have in common, relative.
    private double Common()
    {
        var tare = plan.Scale.SharedTareUncertainty(TareRounding) / Mass;
        var span = plan.Scale.RelativeSpanUncertainty(new Mass(Mass));
        return Math.Sqrt(span * span + tare * tare);
    }

    private double? Fill() =>
        Container is { Volume: { } volume } && meter.BulkDensity is { } density
            ? Mass / (volume.CubicMetres * density.KilogramsPerCubicMetre)
            : null;

    private IEnumerable<Speed> WorkingSpeeds()
    {
        if (plan.LowestWorkingSpeed is { } lowest)
            yield return lowest;
        if (plan.HighestWorkingSpeed is { } highest)
            yield return highest;
    }

    private SpeedCheck Check(Speed groundSpeed)
    {
        var n = FlowAt(groundSpeed) / DeliveredPerRevolution;
        return new SpeedCheck(groundSpeed, new RotationalSpeed(n), meter.SpeedLimits.Allow(n));
    }

    private IEnumerable<Finding> SpeedFindings()
    {
        foreach (var speed in WorkingSpeeds().Prepend(planned).Distinct())
        {
            var n = FlowAt(speed) / DeliveredPerRevolution;
            if (meter.SpeedLimits.Minimum is { } minimum && Threshold.IsBelow(n, minimum.RevolutionsPerSecond))
                yield return Finding.Warning(
                    SharedCodes.OutsideMeterWindow,
                    $"{meter.Called}: at {speed} the meter turns {new RotationalSpeed(n):F1}, under its least {minimum:F1}, where it turns unevenly.",
                    meter.Name
                );
            if (meter.SpeedLimits.Maximum is { } maximum && Threshold.IsAbove(n, maximum.RevolutionsPerSecond))
                yield return Finding.Warning(
                    SharedCodes.OutsideMeterWindow,
                    $"{meter.Called}: at {speed} the meter would have to turn {new RotationalSpeed(n):F1}, above its highest {maximum:F1}: the rate will not be reached.",
                    meter.Name
                );
        }
    }
}
