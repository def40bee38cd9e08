using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Engine.Quantities;
using static CalibrationApi.Engine.Tests.ProductRates.Wanted;

namespace CalibrationApi.Engine.Tests.ProductRates;

/// <summary>Questions small enough for paper.</summary>
public sealed class ProductRateTests
{
    [Fact]
    public void Evaluate_OneProductAndOneTarget_IsAmountOverShare()
    {
        var result = Of(NutrientForm.N, 92).From(Urea).Evaluated();

        AreNear([200], result.Rates());
        Assert.Equal(TargetsVerdict.Met, result.Verdict);
        Assert.Equal(0, result.Nutrients[0].Surplus!.Value.KilogramsPerSquareMetre);
    }

    [Fact]
    public void Evaluate_ElementWanted_OxideOnTheLabel_IsConverted()
    {
        var result = Of(NutrientForm.P, 20).From(Phosphate).Evaluated();

        AreNear([20 * NutrientForm.P.To(NutrientForm.P2O5) / 0.52], result.Rates());
        Assert.Equal(NutrientForm.P, result.Products[0].Supplies[1].Form);
        Assert.Contains(result.Assumptions, assumption =>
            assumption.Name == "nutrient"
            && assumption.Origin.StartsWith("1 kg of P2O5 counts as 0.4364 kg of P,", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Evaluate_WithCredits_TheyAreTakenOffInAnyForm()
    {
        var result = Of(NutrientForm.P2O5, 50).From(Phosphate).Less(NutrientForm.P2O5, 10).Less(NutrientForm.P, 5).Evaluated();

        AreNear([(40 - 5 * NutrientForm.P.To(NutrientForm.P2O5)) / 0.52], result.Rates());
        AreNear([50], [KilogramsPerHectare(result.Nutrient(NutrientForm.P2O5).Total)]);
    }

    [Fact]
    public void Evaluate_CreditsThatCoverTheTarget_NothingIsApplied()
    {
        var result = Of(NutrientForm.N, 50).From(Urea.At(480)).Less(NutrientForm.N, 51).Evaluated();

        AreNear([0], result.Rates());
        Assert.Equal(TargetsVerdict.Met, result.Verdict);
        Assert.Equal(0, result.Nutrients[0].NextKilogram);
        Assert.StartsWith("Nothing needs to be applied", DisplayUnits.Metric.Write(result.Headline), StringComparison.Ordinal);
    }

    [Fact]
    public void Evaluate_FixedRate_CountsAsCreditAndCosts()
    {
        var starter = Product("starter", (NutrientForm.N, 15), (NutrientForm.P2O5, 15)).At(500) with { FixedRate = Rate(60) };
        var result = new[] { Of(NutrientForm.N, 55), Of(NutrientForm.P2O5, 9) }.From(starter, Urea.At(460)).Evaluated();

        AreNear([60, 100], result.Rates());
        AreNear([9], [KilogramsPerHectare(result.Nutrient(NutrientForm.N).FromFixed)]);
        AreNear([60 * 0.5 + 100 * 0.46], [result.CostPerSquareMetre!.Value * 10_000]);
        Assert.Equal([NutrientForm.N], result.Blend.Select(one => one.Form));
    }

    [Fact]
    public void Evaluate_TwoSources_TakesTheCheaper()
    {
        // 480 / 0.46 is 1043 a tonne of nitrogen, 290 / 0.21 is 1381; with sulfur wanted too, the sulfate is worth it.
        AreNear([200, 0], Of(NutrientForm.N, 92).From(Urea.At(480), Sulfate.At(290)).Evaluated().Rates());
        AreNear(
            [(92 - 21) / 0.46, 100],
            new[] { Of(NutrientForm.N, 92), Of(NutrientForm.S, 24) }.From(Urea.At(480), Sulfate.At(290)).Evaluated().Rates()
        );
    }

    [Fact]
    public void Evaluate_NoPrices_TakesTheLeastMass()
    {
        var result = Of(NutrientForm.N, 42).From(Sulfate, Urea).Evaluated();

        AreNear([0, 42 / 0.46], result.Rates());
        Assert.Null(result.CostPerSquareMetre);
        Assert.Contains(result.Assumptions, assumption => assumption.Name == "price");
    }

    [Fact]
    public void Evaluate_EqualCost_TakesTheLeastMassThenTheFirst()
    {
        var thin = Product("thin", (NutrientForm.N, 23)).At(240);
        var twin = Urea.At(480) with { Name = "twin" };

        AreNear([0, 200], Of(NutrientForm.N, 92).From(thin, Urea.At(480)).Evaluated().Rates());
        AreNear([200, 0], Of(NutrientForm.N, 92).From(twin, Urea.At(480)).Evaluated().Rates());
        AreNear([200, 0], Of(NutrientForm.N, 92).From(Urea.At(480), twin).Evaluated().Rates());
        AreNear([120, 80], Of(NutrientForm.N, 92).From(Urea.At(480) with { MostRate = Rate(120) }, twin).Evaluated().Rates());
    }

    [Fact]
    public void Evaluate_ProductsThatCostNothing_TakesTheLeastMass() =>
        AreNear([0, 200], Of(NutrientForm.N, 92).From(Product("thin", (NutrientForm.N, 23)).At(0), Urea.At(0)).Evaluated().Rates());

    [Fact]
    public void Evaluate_LeastRate_IsKeptEvenWhereItIsDear() =>
        AreNear(
            [50, (92 - 10.5) / 0.46],
            Of(NutrientForm.N, 92).From(Sulfate.At(900) with { LeastRate = Rate(50) }, Urea.At(480)).Evaluated().Rates()
        );

    [Fact]
    public void Evaluate_MostOfANutrient_IsKept()
    {
        NutrientTarget[] targets = [Of(NutrientForm.N, 40), Of(NutrientForm.S, 20, TargetKind.AtLeast, 30)];

        // Sulfate is cheap enough to bring all the nitrogen, but then 45.7 kg/ha of sulfur come with it.
        AreNear([0, 40 / 0.21], Of(NutrientForm.N, 40).From(Urea.At(480), Sulfate.At(200)).Evaluated().Rates());
        AreNear([(40 - 0.21 * 125) / 0.46, 125], targets.From(Urea.At(480), Sulfate.At(200)).Evaluated().Rates());
    }

    [Fact]
    public void Evaluate_Exactly_LeavesNoSurplus()
    {
        NutrientTarget[] targets = [Of(NutrientForm.P2O5, 52, TargetKind.Exactly), Of(NutrientForm.N, 20, TargetKind.Exactly)];
        var result = targets.From(Phosphate.At(700), Urea.At(480)).Evaluated();

        AreNear([100, 9 / 0.46], result.Rates());
        Assert.Equal(TargetsVerdict.Met, result.Verdict);
    }

    [Fact]
    public void Evaluate_BanOfANutrient_IsATargetOfNothing()
    {
        NutrientTarget[] targets = [Of(NutrientForm.N, 42), Of(NutrientForm.S, 0, TargetKind.AtMost)];

        AreNear([0, 42 / 0.46], targets.From(Sulfate.At(1), Urea.At(480)).Evaluated().Rates());
        AreNear([0], Of(NutrientForm.N, 0, TargetKind.AtMost).From(Urea).Evaluated().Rates());
    }

    [Fact]
    public void Evaluate_Area_GivesTotalsAndWholePackages()
    {
        var question = Of(NutrientForm.N, 46).From(Urea.At(480) with { Package = new Mass(600) }) with { Area = new Area(480_000) };
        var line = question.Evaluated().Products[0];

        NearlyEqual.Assert(4800, line.Total!.Value.Kilograms);
        Assert.Equal(8, line.Packages);
        NearlyEqual.Assert(4800 * 0.48, line.TotalCost!.Value);
        Assert.Equal(9, (question with { Area = new Area(480_001) }).Evaluated().Products[0].Packages);
        Assert.Equal(0, (question with { Credits = [new NutrientCredit(NutrientForm.N, Rate(60))] }).Evaluated().Products[0].Packages);
    }

    [Fact]
    public void Blend_OfTheComputedRates_HoldsTheirNutrients()
    {
        var blend = new[] { Of(NutrientForm.P2O5, 52), Of(NutrientForm.K2O, 60) }.From(Phosphate, Potash).Evaluated().Blend;

        Assert.Equal([NutrientForm.N, NutrientForm.P2O5, NutrientForm.K2O], blend.Select(one => one.Form));
        AreNear([5.5, 26, 30], [.. blend.Select(one => one.Share * 100)]);
    }

    [Fact]
    public void NextKilogram_IsWhatRaisingTheTargetCosts()
    {
        NutrientTarget[] targets =
        [
            Of(NutrientForm.N, 80),
            Of(NutrientForm.P2O5, 40),
            Of(NutrientForm.S, 15, TargetKind.AtMost),
            Of(NutrientForm.K2O, 20, TargetKind.Exactly),
        ];
        OfferedProduct[] products = [Urea.At(480), Phosphate.At(700), Sulfate.At(200), Potash.At(410)];
        var result = targets.From(products).Evaluated();

        foreach (var j in (int[])[0, 1, 3])
            Assert.Equal(
                CostOfOneMore(targets, j, target => target with { Amount = OneMore(target.Amount) }, products),
                result.Nutrient(targets[j].Form).NextKilogram!.Value,
                1e-9
            );
        var sulfur = result.Nutrient(NutrientForm.S);
        Assert.Null(sulfur.NextKilogram);
        Assert.Equal(
            -CostOfOneMore(targets, 2, target => target with { Amount = OneMore(target.Amount) }, products),
            sulfur.KilogramOfLimit!.Value,
            1e-9
        );
        Assert.True(sulfur.KilogramOfLimit > 0, "More sulfur allowed would save urea.");
    }

    // Sulfate brings the cheap nitrogen until its sulfur reaches the most; the least of sulfur is then far below what is given.
    [Fact]
    public void NextKilogram_LimitOfTheSameNutrientBinds_IsApartFromWhatTheLimitCosts()
    {
        NutrientTarget[] targets = [Of(NutrientForm.N, 80), Of(NutrientForm.S, 5, most: 15)];
        OfferedProduct[] products = [Urea.At(480), Sulfate.At(200)];
        var sulfur = targets.From(products).Evaluated().Nutrient(NutrientForm.S);

        Assert.Equal(15, KilogramsPerHectare(sulfur.Total), 1e-9);
        Assert.Equal(0, sulfur.NextKilogram);
        // A kilogram of sulfur brings 21/24 kg of nitrogen for 200/240 of money, in place of urea.
        Assert.Equal(21.0 / 24 * 0.480 / 0.46 - 0.200 / 0.24, sulfur.KilogramOfLimit!.Value, 1e-9);
    }

    [Fact]
    public void NextKilogram_TargetOnItsOwnMost_CannotBeRaisedAndTheLimitHasItsPrice()
    {
        NutrientTarget[] targets = [Of(NutrientForm.N, 80), Of(NutrientForm.S, 15, most: 15)];
        var sulfur = targets.From(Urea.At(480), Sulfate.At(200)).Evaluated().Nutrient(NutrientForm.S);

        Assert.Null(sulfur.NextKilogram);
        Assert.Equal(21.0 / 24 * 0.480 / 0.46 - 0.200 / 0.24, sulfur.KilogramOfLimit!.Value, 1e-9);
    }

    [Fact]
    public void NextKilogram_CreditsThatJustCoverTheTarget_IsThatOfTheProduct() =>
        Assert.Equal(
            0.480 / 0.46,
            Of(NutrientForm.N, 50).From(Urea.At(480)).Less(NutrientForm.N, 50).Evaluated().Nutrients[0].NextKilogram!.Value,
            1e-9
        );

    [Fact]
    public void KilogramOfLimit_LimitThatDoesNotBindOrIsNotThere_IsNothingOrAbsent()
    {
        var result = new[] { Of(NutrientForm.N, 80, most: 90), Of(NutrientForm.K2O, 20) }.From(Urea.At(480), Potash.At(410)).Evaluated();

        Assert.Equal(0, result.Nutrient(NutrientForm.N).KilogramOfLimit);
        Assert.Null(result.Nutrient(NutrientForm.K2O).KilogramOfLimit);
    }

    [Fact]
    public void NextKilogram_WhereNoMoreCanBeHad_IsAbsent() =>
        Assert.Null(Of(NutrientForm.N, 46).From(Urea.At(480) with { MostRate = Rate(100) }).Evaluated().Nutrients[0].NextKilogram);

    [Fact]
    public void Cautions_SeveralProducts_SpeakOfMixing()
    {
        var one = Of(NutrientForm.N, 46).From(Urea).Evaluated().Cautions.Select(caution => caution.Code).ToArray();
        var two = new[] { Of(NutrientForm.N, 46), Of(NutrientForm.K2O, 46) }
            .From(Urea, Potash)
            .Evaluated()
            .Cautions.Select(caution => caution.Code);

        Assert.Equal([ProductRateCodes.SoilTestFirst, ProductRateCodes.SeedRowHasItsOwnLimit], one);
        Assert.Equal([.. one, ProductRateCodes.NotAllProductsMix], two);
    }

    public static TheoryData<string, ProductRateQuestion> Impossible =>
        new()
        {
            { "no target", Array.Empty<NutrientTarget>().From(Urea) },
            { "no product", Of(NutrientForm.N, 46).From() },
            { "one nutrient twice", new[] { Of(NutrientForm.P, 9), Of(NutrientForm.P2O5, 46) }.From(Phosphate) },
            { "limit below target", Of(NutrientForm.N, 46, TargetKind.AtLeast, 45).From(Urea) },
            { "nothing in it", Of(NutrientForm.N, 46).From(Product("sand", (NutrientForm.N, 0))) },
            { "more than a whole", Of(NutrientForm.N, 46).From(Product("too much", (NutrientForm.N, 46), (NutrientForm.P2O5, 54.1))) },
            { "one price", Of(NutrientForm.N, 46).From(Urea.At(480), Sulfate) },
            { "rates crossed", Of(NutrientForm.N, 46).From(Urea with { LeastRate = Rate(2), MostRate = Rate(1) }) },
        };

    [Theory]
    [MemberData(nameof(Impossible))]
    public void Evaluate_ImpossibleQuestion_Throws(string what, ProductRateQuestion question)
    {
        Assert.NotEmpty(what);
        Assert.Throws<ArgumentException>(() => question.Evaluated());
    }

    // Potassium metaphosphate KPO3 is K2O and P2O5 and nothing else; pure sulfur is 250 % of SO3.
    [Fact]
    public void IsMoreThanAWhole_DensestProducts_AreNot()
    {
        var (k, p) = (2 * AtomicWeights.Potassium + AtomicWeights.Oxygen, 2 * AtomicWeights.Phosphorus + 5 * AtomicWeights.Oxygen);

        Assert.False(
            NutrientShare.IsMoreThanAWhole([
                new NutrientShare(NutrientForm.K2O, k / (k + p)),
                new NutrientShare(NutrientForm.P2O5, p / (k + p)),
            ])
        );
        Assert.False(NutrientShare.IsMoreThanAWhole([new NutrientShare(NutrientForm.SO3, NutrientForm.S.To(NutrientForm.SO3))]));
        Assert.True(NutrientShare.IsMoreThanAWhole([new NutrientShare(NutrientForm.P, 0.5)]));
    }

    private static double CostOfOneMore(
        NutrientTarget[] targets,
        int at,
        Func<NutrientTarget, NutrientTarget> more,
        OfferedProduct[] products
    )
    {
        NutrientTarget[] raised = [.. targets.Select((target, k) => k == at ? more(target) : target)];
        return (raised.From(products).Evaluated().CostPerSquareMetre - targets.From(products).Evaluated().CostPerSquareMetre)!.Value
            * 10_000;
    }

    private static MassPerArea OneMore(MassPerArea amount) => new(amount.KilogramsPerSquareMetre + 1e-4);
}
