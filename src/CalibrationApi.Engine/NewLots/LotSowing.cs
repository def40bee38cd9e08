using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedingRates;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.NewLots;

/// <summary>The rate for the new lot.</summary>
/// <param name="Seeds">Pure seeds per area, as with the lot before.</param>
/// <param name="SameSeeds">Mass per area that holds them now; null when the kernel mass of the new lot is unknown.</param>
/// <param name="SameStand">Mass per area that brings up as many plants as before, for the change of germination; null unless both are
/// known.</param>
public sealed record LotRate(CountPerArea Seeds, MassPerArea? SameSeeds, MassPerArea? SameStand);

/// <summary>What is sown when something stays as it was.</summary>
/// <param name="SetRate">The rate that the controller is told.</param>
/// <param name="AppliedRate">The rate that falls: set rate times k_new over the value in force.</param>
/// <param name="RateDeviation">Applied over the rate that keeps the seeds, less 1, with its interval; over the set rate where that is
/// unknown.</param>
/// <param name="Seeds">Pure seeds per area; null without kernel masses.</param>
/// <param name="SeedsDeviation">Against the seeds before, less 1.</param>
/// <param name="Plants">Plants per area; null without germination of the new lot and emergence.</param>
/// <param name="PlantsDeviation">Against the plants before, less 1; null without both germinations.</param>
/// <param name="MassOverArea">Seed too much over the area, negative when too little; null without an area.</param>
/// <param name="Cost">Money for it; null without a price.</param>
public sealed record LotEffect(
    MassPerArea SetRate,
    MassPerArea AppliedRate,
    MeasuredValue RateDeviation,
    CountPerArea? Seeds,
    double? SeedsDeviation,
    CountPerArea? Plants,
    double? PlantsDeviation,
    Mass? MassOverArea,
    double? Cost
);

/// <summary>Rates and their effects, from what is known of the two lots.</summary>
internal sealed class LotSowing
{
    private readonly NewLotQuestion question;
    private readonly LotPrediction prediction;
    private readonly MassPerArea? rateBefore;

    public LotSowing(NewLotQuestion question, LotPrediction prediction)
    {
        this.question = question;
        this.prediction = prediction;
        var (before, after) = (question.Before, question.After);
        var seeds = question.Seeds
            ?? (
                question.Rate is { } rate && before.Kernel is { } kernel
                    ? SeedingRate.SeedsIn(rate, kernel, PurityOf(before))
                    : (CountPerArea?)null
            );
        rateBefore = question.Rate
            ?? (seeds is { } sown && before.Kernel is { } old ? SeedingRate.Mass(sown, old, PurityOf(before)) : null);
        if (seeds is not { } kept)
            return;
        MassPerArea? sameSeeds = after.Kernel is { } now ? SeedingRate.Mass(kept, now, PurityOf(after)) : null;
        MassPerArea? sameStand =
            sameSeeds is { } mass && before.Germination is { } was && after.Germination is { } becomes
                ? new(mass.KilogramsPerSquareMetre * was / becomes)
                : null;
        Rate = new(kept, sameSeeds, sameStand);
    }

    /// <summary>Null when nothing says how many seeds there were.</summary>
    public LotRate? Rate { get; }

    /// <summary>The rate is set anew (where it can be), the value in force stays; null without a rate.</summary>
    public LotEffect? IfValueStays => (Rate?.SameSeeds ?? rateBefore) is { } set ? Effect(set) : null;

    /// <summary>Neither rate nor value is touched; null where that is the same, or the rate before is unknown.</summary>
    public LotEffect? IfNothingIsChanged => Rate?.SameSeeds is not null && rateBefore is { } set ? Effect(set) : null;

    private static double PurityOf(SeedLot lot) => lot.Purity ?? SownSeedDefaults.Purity.Value.Canonical;

    private LotEffect Effect(MassPerArea set)
    {
        var applied = new MassPerArea(set.KilogramsPerSquareMetre * prediction.Ratio);
        var wanted = Rate?.SameSeeds ?? set;
        var share = applied.KilogramsPerSquareMetre / wanted.KilogramsPerSquareMetre;
        var (before, after) = (question.Before, question.After);
        CountPerArea? seeds = Rate is not null && after.Kernel is { } kernel ? SeedingRate.SeedsIn(applied, kernel, PurityOf(after)) : null;
        var seedsRatio = seeds?.PerSquareMetre / Rate?.Seeds.PerSquareMetre;
        var excess = (applied.KilogramsPerSquareMetre - wanted.KilogramsPerSquareMetre) * question.Area?.SquareMetres;
        return new(
            set,
            applied,
            MeasuredValue.Create(share - 1, prediction.Uncertainty.Times(share), CatchTestLimits.DefaultCoverage),
            seeds,
            seedsRatio - 1,
            seeds is { } sown && after.Germination is { } germination && question.Emergence is { } emergence
                ? SeedingRate.Plants(sown, germination * emergence)
                : null,
            seedsRatio * after.Germination / before.Germination - 1,
            excess is { } mass ? new Mass(mass) : null,
            excess * question.PricePerKilogram
        );
    }
}
