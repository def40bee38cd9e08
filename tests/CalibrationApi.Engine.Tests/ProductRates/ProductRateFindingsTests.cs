using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Engine.Quantities;
using static CalibrationApi.Engine.Tests.ProductRates.Wanted;

namespace CalibrationApi.Engine.Tests.ProductRates;

/// <summary>Targets that cannot be met: the nearest rates, and what stands against them.</summary>
public sealed class ProductRateFindingsTests
{
    [Fact]
    public void NoProductHoldsIt_IsSaid_AndTheOthersAreMet()
    {
        var result = new[] { Of(NutrientForm.N, 46), Of(NutrientForm.K2O, 30) }.From(Urea).Evaluated();

        AreNear([100], result.Rates());
        Assert.Equal(TargetsVerdict.Missed, result.Verdict);
        Assert.True(result.Nutrient(NutrientForm.N).Met);
        Assert.False(result.Nutrient(NutrientForm.K2O).Met);
        Assert.Equal(
            "K2O stays at nothing in place of 30 kg/ha, because none of the products whose rates are open holds any.",
            Only(result, ProductRateCodes.NutrientWithoutSource)
        );
    }

    [Fact]
    public void EveryRateIsFixed_IsGivenAsTheReason()
    {
        var result = Of(NutrientForm.N, 30).From(Urea with { FixedRate = Rate(50) }).Evaluated();

        Assert.Equal(
            "N stays 7 kg/ha short of 30 kg/ha, because every rate is fixed.",
            Only(result, ProductRateCodes.NutrientWithoutSource)
        );
    }

    [Fact]
    public void MostRate_ThatBinds_IsNamed()
    {
        var result = Of(NutrientForm.N, 92).From(Urea with { MostRate = Rate(150) }).Evaluated();

        AreNear([150], result.Rates());
        AreNear([-23], [KilogramsPerHectare(result.Nutrients[0].Surplus!.Value)]);
        Assert.Equal(
            "N stays 23 kg/ha short of 92 kg/ha, because there may be no more than 150 kg/ha of urea.",
            Only(result, ProductRateCodes.MostRateBinds)
        );
    }

    [Fact]
    public void AtMost_OfANutrientInTheSameProduct_IsKeptAndNamed()
    {
        var result = new[] { Of(NutrientForm.P2O5, 52), Of(NutrientForm.N, 5.5, TargetKind.AtMost), Of(NutrientForm.K2O, 30) }
            .From(Phosphate, Potash with { MostRate = Rate(500) })
            .Evaluated();

        AreNear([50, 50], result.Rates());
        Assert.Equal(
            "P2O5 stays 26 kg/ha short of 52 kg/ha. What stands against it: no more than 5.5 kg/ha of N. phosphate holds P2O5 together with N.",
            Only(result, ProductRateCodes.TargetsConflict)
        );
    }

    // 100 kg/ha bring 52 of P2O5 and 11 of N. One kilogram more takes 1/100 off what is missing of P2O5 and adds 0.11/5 to what is
    // too much of N, so it does not pay beyond the exact N.
    [Fact]
    public void Exactly_OfANutrientInTheSameProduct_IsWeighedAgainstTheOther()
    {
        var result = new[] { Of(NutrientForm.P2O5, 52), Of(NutrientForm.N, 5, TargetKind.Exactly) }.From(Phosphate).Evaluated();

        AreNear([5 / 0.11], result.Rates());
        Assert.Single(result.Findings, finding => finding.Code == ProductRateCodes.TargetsConflict);
    }

    // With 26 of P2O5 and 2 of S wanted, both from a product of 26 % and 2 %, a kilogram takes 1/100 off each and adds 0.012/1 of N:
    // now the exact N gives way.
    [Fact]
    public void Exactly_AgainstTwoTargets_GivesWayWhereThatIsLess()
    {
        var both = Product("phosphate with sulfur", (NutrientForm.N, 1.2), (NutrientForm.P2O5, 26), (NutrientForm.S, 2));
        var result = new[] { Of(NutrientForm.P2O5, 26), Of(NutrientForm.S, 2), Of(NutrientForm.N, 1, TargetKind.Exactly) }
            .From(both)
            .Evaluated();

        AreNear([100], result.Rates());
        Assert.StartsWith(
            "N goes 0.2 kg/ha over 1 kg/ha. What stands against it:",
            Only(result, ProductRateCodes.TargetsConflict),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Limit_GoesBeforeTargets_EvenWhereItsShareIsSmall()
    {
        // Going 1 % over the limit of nitrogen would save half of the phosphate; the limit is kept all the same.
        var result = new[] { Of(NutrientForm.N, 100, TargetKind.AtMost), Of(NutrientForm.P2O5, 10) }
            .From(Phosphate)
            .Less(NutrientForm.N, 99)
            .Evaluated();

        AreNear([1 / 0.11], result.Rates());
        Assert.True(result.Nutrient(NutrientForm.N).Met);
    }

    [Fact]
    public void Credits_AboveALimit_AreSaid()
    {
        var result = Of(NutrientForm.N, 40, TargetKind.AtMost).From(Urea).Less(NutrientForm.N, 55).Evaluated();

        AreNear([0], result.Rates());
        Assert.Equal(
            "N goes 15 kg/ha over 40 kg/ha, because credits and fixed rates alone bring more.",
            Only(result, ProductRateCodes.CreditsAboveTarget)
        );
    }

    [Fact]
    public void LeastRate_ThatBinds_IsNamed()
    {
        var result = Of(NutrientForm.N, 40, TargetKind.Exactly).From(Urea with { LeastRate = Rate(100) }).Evaluated();

        AreNear([100], result.Rates());
        Assert.Equal(
            "N goes 6 kg/ha over 40 kg/ha, because there has to be no less than 100 kg/ha of urea.",
            Only(result, ProductRateCodes.LeastRateBinds)
        );
    }

    [Fact]
    public void SeveralCauses_EachTargetHasItsOwn()
    {
        var result = new[] { Of(NutrientForm.N, 92), Of(NutrientForm.K2O, 10), Of(NutrientForm.S, 20, TargetKind.AtMost) }
            .From(Sulfate, Urea with { MostRate = Rate(50) })
            .Evaluated();

        Assert.Equal(
            [ProductRateCodes.TargetsConflict, ProductRateCodes.NutrientWithoutSource],
            result.Findings.Select(finding => finding.Code)
        );
        Assert.Contains(
            "no more than 50 kg/ha of urea and no more than 20 kg/ha of S",
            DisplayUnits.Metric.Write(result.Findings[0].Detail),
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "No rates of these products meet every target. The nearest are",
            DisplayUnits.Metric.Write(result.Headline),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Nearest_AmongEqualDeviations_IsTheCheapest()
    {
        // Nothing holds K2O; what is left is the least cost for nitrogen.
        AreNear(
            [0, 200],
            new[] { Of(NutrientForm.N, 92), Of(NutrientForm.K2O, 30) }.From(Sulfate.At(290), Urea.At(480)).Evaluated().Rates()
        );
    }

    [Fact]
    public void Surplus_OfMoreThanAFifth_IsANote()
    {
        NutrientTarget[] targets = [Of(NutrientForm.P2O5, 52), Of(NutrientForm.N, 9)];

        Assert.Equal(
            "2 kg/ha of N more than asked are given or there already, 22 % of the target.",
            Only(targets.From(Phosphate).Evaluated(), ProductRateCodes.LargeSurplus)
        );
        Assert.Empty(new[] { targets[0], Of(NutrientForm.N, 9.5) }.From(Phosphate).Evaluated().Findings);
    }

    [Fact]
    public void Rate_OfMoreThanATonne_IsDoubted()
    {
        Assert.Single(Of(NutrientForm.N, 92).From(Product("urea", (NutrientForm.N, 4.6))).Evaluated().Findings, finding =>
            finding.Code == ProductRateCodes.UnusualProductRate
        );
        Assert.Empty(Of(NutrientForm.N, 460).From(Urea).Evaluated().Findings);
    }

    // Pure potassium chloride is 52.44 % potassium: Virginia Tech, SPES-201.
    [Theory]
    [InlineData(60, true)]
    [InlineData(52.4, false)]
    public void Potassium_AsTheElement_AboveThePureSalt_IsDoubted(double percent, bool isDoubted)
    {
        var result = Of(NutrientForm.K, 30).From(Product("potash", (NutrientForm.K, percent))).Evaluated();

        Assert.Equal(isDoubted, result.Findings.Any(finding => finding.Code == ProductRateCodes.ElementOrOxide));
    }

    private static string Only(ProductRateResult result, FindingCode code) =>
        DisplayUnits.Metric.Write(Assert.Single(result.Findings, finding => finding.Code == code).Detail);
}
