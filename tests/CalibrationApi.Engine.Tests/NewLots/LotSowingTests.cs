using CalibrationApi.Engine.NewLots;

namespace CalibrationApi.Engine.Tests.NewLots;

public sealed class LotSowingTests
{
    private static readonly NewLotQuestion Question = Changed.Lot(660, 627) with
    {
        Rate = new(0.0150),
        Emergence = 0.85,
        Area = new(200_000),
        PricePerKilogram = 0.5,
    };

    [Fact]
    public void Rate_NewKernelMass_KeepsTheSeeds()
    {
        var rate = NewLotEvaluation.Evaluate(Question).Rate!;

        Assert.Equal(0.0150 / 47e-6, rate.Seeds.PerSquareMetre, 1e-9);
        NearlyEqual.Assert(0.0150 * 43 / 47, rate.SameSeeds!.Value.KilogramsPerSquareMetre);
        NearlyEqual.Assert(0.0150 * 43 / 47 * 0.94 / 0.96, rate.SameStand!.Value.KilogramsPerSquareMetre);
    }

    [Fact]
    public void Rate_Purity_CountsOnBothSides()
    {
        var rate = NewLotEvaluation
            .Evaluate(Question with { Before = Question.Before with { Purity = 0.98 }, After = Question.After with { Purity = 0.90 } })
            .Rate!;

        NearlyEqual.Assert(0.0150 * 43 / 47 * 0.98 / 0.90, rate.SameSeeds!.Value.KilogramsPerSquareMetre);
    }

    [Fact]
    public void Rate_FromSeeds_NeedsTheNewKernelMassOnly()
    {
        var rate = NewLotEvaluation.Evaluate(
            Question with
            {
                Rate = null,
                Seeds = new(300),
                Before = Question.Before with { Kernel = null },
            }
        );

        Assert.Equal(300 * 43e-6, rate.Rate!.SameSeeds!.Value.KilogramsPerSquareMetre, 1e-15);
        Assert.NotNull(rate.IfValueStays);
        Assert.Null(rate.IfNothingIsChanged);
    }

    // Density falls by 5 %, so the old value sows 5 % too little.
    [Fact]
    public void Effect_ValueStays_IsOffByTheMeter()
    {
        var effect = NewLotEvaluation.Evaluate(Question).IfValueStays!;

        NearlyEqual.Assert(0.0150 * 43 / 47 * 0.95, effect.AppliedRate.KilogramsPerSquareMetre);
        Assert.Equal(-0.05, effect.RateDeviation.Value, 1e-12);
        Assert.Equal(-0.05, effect.SeedsDeviation!.Value, 1e-12);
        Assert.Equal(0.95 * 0.96 / 0.94 - 1, effect.PlantsDeviation!.Value, 1e-12);
        Assert.Equal(0.0150 / 47e-6 * 0.95 * 0.96 * 0.85, effect.Plants!.Value.PerSquareMetre, 1e-9);
        Assert.Equal(-0.05 * 0.0150 * 43 / 47 * 200_000, effect.MassOverArea!.Value.Kilograms, 1e-9);
        Assert.Equal(0.5 * effect.MassOverArea.Value.Kilograms, effect.Cost!.Value, 1e-9);
        Assert.True(effect.RateDeviation.ExpandedUncertainty > 0.05);
    }

    // Neither touched: 5 % less by the meter, 47 / 43 more seeds in each kilogram.
    [Fact]
    public void Effect_NothingIsChanged_IsOffByMeterAndKernelMass()
    {
        var effect = NewLotEvaluation.Evaluate(Question).IfNothingIsChanged!;

        Assert.Equal(0.0150 * 0.95, effect.AppliedRate.KilogramsPerSquareMetre, 1e-15);
        Assert.Equal(0.95 * 47 / 43 - 1, effect.SeedsDeviation!.Value, 1e-12);
        Assert.Equal(effect.SeedsDeviation.Value, effect.RateDeviation.Value, 1e-12);
    }

    [Fact]
    public void Effect_WithoutARate_IsNone()
    {
        var result = NewLotEvaluation.Evaluate(Question with { Rate = null });

        Assert.Null(result.Rate);
        Assert.Null(result.IfValueStays);
        Assert.Null(result.IfNothingIsChanged);
        Assert.DoesNotContain(NewLotCodes.RateNotRecomputed, result.Findings.Select(finding => finding.Code));
    }

    [Theory]
    [InlineData(false, true)]
    [InlineData(true, false)]
    public void Rate_WithoutKernelMasses_IsSaidUnlessTheSeedIsTheSame(bool sameLot, bool said)
    {
        var result = NewLotEvaluation.Evaluate(
            Question with
            {
                SameLot = sameLot,
                Before = Question.Before with { Kernel = null },
                After = Question.After with { Kernel = null },
            }
        );

        Assert.Equal(said, result.Findings.Any(finding => finding.Code == NewLotCodes.RateNotRecomputed));
        Assert.Equal(0.0150 * 0.95, result.IfValueStays!.AppliedRate.KilogramsPerSquareMetre, 1e-15);
        Assert.Null(result.IfValueStays.Seeds);
        Assert.Null(result.IfNothingIsChanged);
    }
}
