using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Calculations.ProductRates;
using CalibrationApi.Calculations.SeedRowLimits;
using CalibrationApi.Contract;
using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.SeedRowLimits;
using CalibrationApi.Quantities;
using CalibrationApi.Records;
using CalibrationApi.Storage.Records;

namespace CalibrationApi.Plans;

/// <summary>A plan for a field: which meter puts down which product at which rate, and the catch test that goes before.</summary>
public class PlanRequest : DescribedRequest
{
    /// <summary>Id of the machine.</summary>
    public string? Machine { get; init; }

    /// <summary>Id of the scale that will weigh the catches.</summary>
    public string? Scale { get; init; }

    /// <summary>Id of the container for the catches.</summary>
    public string? Container { get; init; }

    /// <summary>Planned ground speed.</summary>
    public SpeedQuantity? GroundSpeed { get; init; }

    /// <summary>Ground speeds between which the field will be worked.</summary>
    public SpeedRange? WorkingSpeeds { get; init; }

    /// <summary>Area to be seeded.</summary>
    public AreaQuantity? Area { get; init; }

    /// <summary>Largest acceptable expanded uncertainty of a catch test.</summary>
    [Default(typeof(CatchTestDefaults), nameof(CatchTestDefaults.WantedPrecision))]
    public RatioQuantity? WantedPrecision { get; init; }

    /// <summary>Longest run of one catch.</summary>
    [Default(typeof(CatchPlanDefaults), nameof(CatchPlanDefaults.LongestRun))]
    public TimeQuantity? LongestRun { get; init; }

    /// <summary>Shortest run of one catch, not above the longest. A drive takes some seconds to settle.</summary>
    [Default(typeof(CatchPlanDefaults), nameof(CatchPlanDefaults.ShortestRun))]
    public TimeQuantity? ShortestRun { get; init; }

    /// <summary>How many of the container are at hand. With fewer than meters, the catch plan says so.</summary>
    public int? ContainersAtHand { get; init; }

    /// <summary>Mass that one person lifts, container included.</summary>
    [Default(typeof(CatchPlanDefaults), nameof(CatchPlanDefaults.LiftLimit))]
    public MassQuantity? LiftLimit { get; init; }

    /// <summary>Share of the time spent working, for the area per hour.</summary>
    [Default(typeof(MeterSpeedEvaluation), nameof(MeterSpeedEvaluation.FieldEfficiency))]
    public RatioQuantity? FieldEfficiency { get; init; }

    /// <summary>Nutrients wanted on this field. Products of known analysis that have no rate of their own get it from here, at least cost.</summary>
    public IReadOnlyList<WantedNutrient?>? Nutrients { get; init; }

    /// <summary>Nutrients that are there already: applied earlier, or supplied by the soil.</summary>
    public IReadOnlyList<CreditedNutrient?>? NutrientCredits { get; init; }

    /// <summary>The seed row of this field; what is placed with the seed is compared with published limits and your own.</summary>
    public SeedRowOfPlan? SeedRow { get; init; }

    /// <summary>Conditions expected while seeding; tests under others get a finding.</summary>
    public Conditions? SowingConditions { get; init; }

    /// <summary>What each meter puts down.</summary>
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
    public string? Meter { get; init; }

    /// <summary>Metering element fitted.</summary>
    public string? Element { get; init; }

    /// <summary>Setting of the meter, in the owner's words, for example a gear; none when absent.</summary>
    public string? Setting { get; init; }

    /// <summary>Id of the product.</summary>
    public string? Product { get; init; }

    /// <summary>Id of the lot.</summary>
    public string? Lot { get; init; }

    /// <summary>Target rate; for a variable rate, the one to be tested at. Leave it out where the rate follows from stand, or from the nutrients of the plan.</summary>
    public MassPerAreaQuantity? TargetRate { get; init; }

    /// <summary>The stand that is wanted; with the lot, the target rate follows from it.</summary>
    public StandOfPlan? Stand { get; init; }

    /// <summary>The product is laid in the seed row, with the seed; needs the seedRow of the plan. Default false.</summary>
    public bool? WithSeed { get; init; }

    /// <summary>A predicted mass per revolution, used while no value is in force.</summary>
    public ReferenceOfTest? StartValue { get; init; }
}

/// <summary>A stand that is wanted. Give emergence, with a lot of known germination, or survival.</summary>
public sealed class StandOfPlan
{
    /// <summary>Plants per area that are to stand.</summary>
    public CountPerAreaQuantity? Plants { get; init; }

    /// <summary>Field emergence: plants per seed that can germinate. Goes with the germination of the lot.</summary>
    public RatioQuantity? Emergence { get; init; }

    /// <summary>Plants per pure seed, germination included. Takes the place of germination and emergence.</summary>
    public RatioQuantity? Survival { get; init; }
}

/// <summary>What decides how much may be placed with the seed on a field; row spacing and opener are those of the machine.</summary>
public sealed class SeedRowOfPlan
{
    /// <summary>The crop.</summary>
    public string? Crop { get; init; }

    /// <summary>Texture of the soil; the lightest one of the field.</summary>
    public string? Soil { get; init; }

    /// <summary>Moisture of the seedbed; in doubt <c>dry</c>.</summary>
    public string? Moisture { get; init; }

    /// <summary>Where the field lies; without it limits of all regions are shown.</summary>
    public string? Region { get; init; }

    /// <summary>Loss of stand from fertilizer with the seed that you accept, for the stand-loss model.</summary>
    [Default(typeof(StandLoss), nameof(StandLoss.DefaultLoss))]
    public RatioQuantity? AcceptableStandLoss { get; init; }

    /// <summary>Limits from your own guidance, for this very crop, soil, moisture and opener. They are judged beside the published ones.</summary>
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
