using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedingRates;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace CalibrationApi.Engine.Tests.Properties;

/// <summary>A lot and a stand in whole numbers.</summary>
public sealed record RandomSowing(
    int PlantsPerHectare,
    int MicrogramsPerKernel,
    int GerminationPerMille,
    int EmergencePerMille,
    int PurityPerMille,
    int RowMillimetres
)
{
    public Establishment Apart => Establishment.Tested(GerminationPerMille / 1000.0, emergence: EmergencePerMille / 1000.0);

    public Establishment Folded => Establishment.Folded(GerminationPerMille / 1000.0 * EmergencePerMille / 1000.0);

    public SeedingRateQuestion ForStand =>
        new()
        {
            Stand = new(PlantsPerHectare / 10_000.0),
            Kernel = new(MicrogramsPerKernel * 1e-9),
            Purity = PurityPerMille / 1000.0,
            Establishment = Apart,
            RowSpacing = new(RowMillimetres / 1000.0),
        };
}

public static class RandomSowings
{
    public static Arbitrary<RandomSowing> Sowings() =>
        Arb.From(
            from plants in Gen.Choose(20_000, 40_000_000)
            from kernel in Gen.Choose(100, 600_000)
            from germination in Gen.Choose(1, 1000)
            from emergence in Gen.Choose(1, 1000)
            from purity in Gen.Choose(1, 1000)
            from row in Gen.Choose(20, 1500)
            select new RandomSowing(plants, kernel, germination, emergence, purity, row)
        );
}

/// <summary>What must hold for every seeding rate.</summary>
[Properties(Arbitrary = [typeof(RandomSowings)], MaxTest = 500, Replay = "20260401,1")]
public sealed class SeedingRatePropertyTests
{
    [Property]
    public void Evaluate_StandToRateAndBack_IsTheStand(RandomSowing random)
    {
        var there = SeedingRateEvaluation.Evaluate(random.ForStand);

        var back = SeedingRateEvaluation.Evaluate(random.ForStand with { Stand = null, Rate = there.Rate });

        NearlyEqual.Assert(random.ForStand.Stand!.Value.PerSquareMetre, back.Plants!.Value.PerSquareMetre);
        NearlyEqual.Assert(there.Seeds.PerSquareMetre, back.Seeds.PerSquareMetre);
    }

    [Property]
    public void Evaluate_RateToStandAndBack_IsTheRate(RandomSowing random)
    {
        var rate = new MassPerArea(random.PlantsPerHectare * 1e-9);
        var there = SeedingRateEvaluation.Evaluate(random.ForStand with { Stand = null, Rate = rate });

        var back = SeedingRateEvaluation.Evaluate(random.ForStand with { Stand = there.Plants });

        NearlyEqual.Assert(rate.KilogramsPerSquareMetre, back.Rate.KilogramsPerSquareMetre);
    }

    [Property]
    public void Evaluate_SeedsOfARowAndOfAnArea_AreTheSameSeeds(RandomSowing random)
    {
        var there = SeedingRateEvaluation.Evaluate(random.ForStand);

        NearlyEqual.Assert(
            there.Seeds.PerSquareMetre,
            SeedingRate.PerArea(there.SeedsPerRow!.Value, random.ForStand.RowSpacing!.Value).PerSquareMetre
        );
    }

    [Property]
    public void Evaluate_GerminationApartOrFolded_GivesTheSameRate(RandomSowing random) =>
        NearlyEqual.Assert(
            SeedingRateEvaluation.Evaluate(random.ForStand).Rate.KilogramsPerSquareMetre,
            SeedingRateEvaluation.Evaluate(random.ForStand with { Establishment = random.Folded }).Rate.KilogramsPerSquareMetre
        );

    [Property]
    public void Evaluate_KernelBySeedsPerMass_IsTheSame(RandomSowing random)
    {
        var kernel = random.ForStand.Kernel;

        NearlyEqual.Assert(kernel.KilogramsPerKernel, SeedingRate.Kernel(SeedingRate.SeedsPerMass(kernel)).KilogramsPerKernel);
    }
}
