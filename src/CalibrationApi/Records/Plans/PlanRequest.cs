using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Calculations.ProductRates;
using CalibrationApi.Calculations.SeedRowLimits;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.SeedRowLimits;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using CalibrationApi.Records.Describing;
using CalibrationApi.Storage.Described;

namespace CalibrationApi.Records.Plans;

/// <summary>A plan for a field: which meter puts down which product at which rate, and the catch test that goes before.</summary>
[CheckedBy(typeof(PlanRequestValidator))]
public class PlanRequest : DescribedRequest
{
    /// <summary>Id of the machine.</summary>
    [Needed, Text(64)]
    public string? Machine { get; init; }

    /// <summary>Id of the scale that will weigh the catches.</summary>
    [Needed, Text(64)]
    public string? Scale { get; init; }

    /// <summary>Id of the container for the catches.</summary>
    [Text(64)]
    public string? Container { get; init; }

    /// <summary>Planned ground speed.</summary>
    [Needed, Measured]
    public SpeedQuantity? GroundSpeed { get; init; }

    /// <summary>Ground speeds between which the field will be worked.</summary>
    public SpeedRange? WorkingSpeeds { get; init; }

    /// <summary>Area to be seeded.</summary>
    [Measured]
    public AreaQuantity? Area { get; init; }

    /// <summary>Largest acceptable expanded uncertainty of a catch test.</summary>
    [Default(typeof(CatchTestDefaults), nameof(CatchTestDefaults.WantedPrecision))]
    [Measured(0.1, 50, "%")]
    public RatioQuantity? WantedPrecision { get; init; }

    /// <summary>Longest run of one catch.</summary>
    [Default(typeof(CatchPlanDefaults), nameof(CatchPlanDefaults.LongestRun))]
    [Measured]
    public TimeQuantity? MaximumRunTime { get; init; }

    /// <summary>Shortest run of one catch, not above the longest. A drive takes some seconds to settle.</summary>
    [Default(typeof(CatchPlanDefaults), nameof(CatchPlanDefaults.ShortestRun))]
    [Measured]
    public TimeQuantity? MinimumRunTime { get; init; }

    /// <summary>How many of the container are at hand. With fewer than meters, the catch plan says so.</summary>
    [Whole(1, 1000)]
    public int? ContainersAtHand { get; init; }

    /// <summary>Mass that one person lifts, container included.</summary>
    [Default(typeof(CatchPlanDefaults), nameof(CatchPlanDefaults.LiftLimit))]
    [Measured]
    public MassQuantity? LiftLimit { get; init; }

    /// <summary>Share of the time spent working, for the area per hour.</summary>
    [Default(typeof(MeterSpeedEvaluation), nameof(MeterSpeedEvaluation.FieldEfficiency))]
    [Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? FieldEfficiency { get; init; }

    /// <summary>
    /// Nutrients wanted on this field. Products of known analysis that have no rate of their own get it from here, at least cost.
    /// </summary>
    [Items(1, 4)]
    public IReadOnlyList<WantedNutrient?>? Nutrients { get; init; }

    /// <summary>Nutrients that are there already: applied earlier, or supplied by the soil.</summary>
    [Items(0, 20)]
    public IReadOnlyList<CreditedNutrient?>? NutrientCredits { get; init; }

    /// <summary>The seed row of this field; what is placed with the seed is compared with published limits and your own.</summary>
    public SeedRowOfPlan? SeedRow { get; init; }

    /// <summary>Conditions expected while seeding; tests under others get a finding.</summary>
    public Conditions? SowingConditions { get; init; }

    /// <summary>What each meter puts down.</summary>
    [Needed, Items(1, 64)]
    public IReadOnlyList<MeterOfFieldPlan?>? Meters { get; init; }

    internal override IEnumerable<RecordReference> References()
    {
        yield return new(nameof(Machine), RecordKind.Machines, Machine!);
        yield return new(nameof(Scale), RecordKind.Scales, Scale!);
        if (Container is not null)
            yield return new(nameof(Container), RecordKind.Containers, Container);
        for (var i = 0; i < (Meters?.Count ?? 0); i++)
        {
            yield return new($"Meters[{i}].Product", RecordKind.Products, Meters![i]!.Product!);
            if (Meters[i]!.Lot is { } lot)
                yield return new($"Meters[{i}].Lot", RecordKind.Lots, lot);
        }
    }
}

/// <summary>What one meter puts down.</summary>
public sealed class MeterOfFieldPlan
{
    /// <summary>Position of the meter on the machine.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? Meter { get; init; }

    /// <summary>Metering element fitted.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? Element { get; init; }

    /// <summary>Setting of the meter, in the owner's words, for example a gear; none when absent.</summary>
    [Text(Rules.LongestName)]
    public string? Setting { get; init; }

    /// <summary>Id of the product.</summary>
    [Needed, Text(64)]
    public string? Product { get; init; }

    /// <summary>Id of the lot.</summary>
    [Text(64)]
    public string? Lot { get; init; }

    /// <summary>
    /// Target rate; for a variable rate, the one to be tested at. Leave it out where the rate follows from stand, or from the nutrients of
    /// the plan.
    /// </summary>
    [Measured]
    public MassPerAreaQuantity? TargetRate { get; init; }

    /// <summary>The stand that is wanted; with the lot, the target rate follows from it.</summary>
    public StandOfPlan? Stand { get; init; }

    /// <summary>The product is laid in the seed row, with the seed; needs the seedRow of the plan. Default false.</summary>
    public bool? WithSeed { get; init; }

    /// <summary>A predicted mass per revolution, used while no value is in force.</summary>
    [Measured]
    public ReferenceOfTest? StartValue { get; init; }
}

/// <summary>A stand that is wanted. Give emergence, with a lot of known germination, or survival.</summary>
[CheckedBy(typeof(StandOfPlanValidator))]
public sealed class StandOfPlan
{
    /// <summary>Plants per area that are to stand.</summary>
    [Needed, Measured]
    public CountPerAreaQuantity? Plants { get; init; }

    /// <summary>Field emergence: plants per seed that can germinate. Goes with the germination of the lot.</summary>
    [Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? Emergence { get; init; }

    /// <summary>Plants per pure seed, germination included. Takes the place of germination and emergence.</summary>
    [Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? Survival { get; init; }
}

/// <summary>What decides how much may be placed with the seed on a field; row spacing and opener are those of the machine.</summary>
public sealed class SeedRowOfPlan
{
    /// <summary>The crop.</summary>
    [Needed, Word(typeof(Crop))]
    public string? Crop { get; init; }

    /// <summary>Texture of the soil; the lightest one of the field.</summary>
    [Needed, Word(typeof(SoilTexture))]
    public string? Soil { get; init; }

    /// <summary>Moisture of the seedbed; in doubt <c>dry</c>.</summary>
    [Needed, Word(typeof(SeedbedMoisture))]
    public string? Moisture { get; init; }

    /// <summary>Where the field lies; without it limits of all regions are shown.</summary>
    [Word(typeof(Region))]
    public string? Region { get; init; }

    /// <summary>Loss of stand from fertilizer with the seed that you accept, for the stand-loss model.</summary>
    [Default(typeof(StandLoss), nameof(StandLoss.DefaultLoss))]
    [Measured(0, 50, "%", ExcludesLeast = true)]
    public RatioQuantity? AcceptableStandLoss { get; init; }

    /// <summary>
    /// Limits from your own guidance, for this very crop, soil, moisture and opener. They are judged beside the published ones.
    /// </summary>
    [Items(1, 20)]
    public IReadOnlyList<LocalLimitWithSeed?>? LocalLimits { get; init; }
}

/// <summary>A plan as stored.</summary>
public sealed class PlanAnswer : PlanRequest, IRecordAnswer
{
    /// <inheritdoc/>
    public new required string Id { get; init; }

    /// <inheritdoc/>
    public required long Revision { get; init; }

    /// <inheritdoc/>
    public required DateTimeOffset CreatedAt { get; init; }

    /// <inheritdoc/>
    public required DateTimeOffset UpdatedAt { get; init; }
}
