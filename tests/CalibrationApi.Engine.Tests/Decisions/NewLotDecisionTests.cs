using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.NewLots;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Tests.NewLots;

namespace CalibrationApi.Engine.Tests.Decisions;

/// <summary>Test now, at the next fill, or not: case by case. Invented cases; the rule is our own.</summary>
[Trait("Category", "Decisions")]
public sealed class NewLotDecisionTests
{
    [Theory]
    [InlineData("same lot, same coat, same density", true, false, 660.0, 660.0, 0.05, LotVerdict.NoTestNeeded)]
    [InlineData("the same, density a little off within its uncertainty", true, false, 660.0, 665.0, 0.05, LotVerdict.NoTestNeeded)]
    [InlineData("the same, a narrow tolerance", true, false, 660.0, 660.0, 0.03, LotVerdict.TestAtNextFill)]
    [InlineData("the same, a very narrow tolerance", true, false, 660.0, 660.0, 0.02, LotVerdict.TestNow)]
    [InlineData("the same lot got moist and light", true, false, 660.0, 630.0, 0.05, LotVerdict.TestNow)]
    [InlineData("the same lot got lighter, wide tolerance", true, false, 660.0, 640.0, 0.10, LotVerdict.TestAtNextFill)]
    [InlineData("the same lot, density not weighed", true, false, 660.0, null, 0.05, LotVerdict.TestAtNextFill)]
    [InlineData("the same lot, neither density weighed", true, false, null, null, 0.05, LotVerdict.TestAtNextFill)]
    [InlineData("the same lot, density not weighed, narrow tolerance", true, false, null, null, 0.03, LotVerdict.TestNow)]
    [InlineData("the same lot, density not weighed, wide tolerance", true, false, null, null, 0.30, LotVerdict.TestAtNextFill)]
    [InlineData("the same lot, treated meanwhile, density not weighed, any tolerance", true, true, null, null, 0.50, LotVerdict.TestNow)]
    [InlineData("the same lot, treated meanwhile", true, true, 660.0, 660.0, 0.05, LotVerdict.TestNow)]
    [InlineData("the same lot, treated meanwhile, wide tolerance", true, true, 660.0, 660.0, 0.10, LotVerdict.TestAtNextFill)]
    [InlineData("the same lot, treated meanwhile, any tolerance", true, true, 660.0, 660.0, 0.50, LotVerdict.TestAtNextFill)]
    [InlineData("new lot, same density", false, false, 660.0, 660.0, 0.05, LotVerdict.TestNow)]
    [InlineData("new lot, same density, wide tolerance", false, false, 660.0, 660.0, 0.10, LotVerdict.TestAtNextFill)]
    [InlineData("new lot, same density, any tolerance", false, false, 660.0, 660.0, 0.50, LotVerdict.TestAtNextFill)]
    [InlineData("new lot, 4 % lighter", false, false, 660.0, 635.0, 0.05, LotVerdict.TestNow)]
    [InlineData("new lot, other coat", false, true, 660.0, 660.0, 0.05, LotVerdict.TestNow)]
    [InlineData("new lot, densities not weighed", false, false, null, null, 0.05, LotVerdict.TestNow)]
    [InlineData("new lot, densities not weighed, any tolerance", false, false, null, null, 0.50, LotVerdict.TestNow)]
    public void Evaluate_Case_HasItsVerdict(
        string name,
        bool sameLot,
        bool treated,
        double? before,
        double? after,
        double tolerance,
        LotVerdict verdict
    )
    {
        var question = (sameLot ? Changed.Delivery(before, after) : Changed.Lot(before, after)) with { Tolerance = tolerance };

        var result = NewLotEvaluation.Evaluate(treated ? Changed.Treated(question) : question);

        Assert.True(verdict == result.Verdict, $"{name}: {result.Verdict} with a probability of {result.ProbabilityOfValueInForce}.");
        Assert.NotEmpty(result.Reasons);
    }

    [Fact]
    public void Evaluate_ValueOfUnknownUncertainty_IsTestedAtTheNextFillRatherThanNever() =>
        Assert.Equal(
            LotVerdict.TestAtNextFill,
            NewLotEvaluation.Evaluate(Changed.Delivery(660, 660) with { ValueUncertainty = null }).Verdict
        );

    // 47 and 43 g: not one lot in one coat, whatever the density says.
    [Fact]
    public void Evaluate_SameLotWithOtherKernels_IsChallenged()
    {
        var question = Changed.Lot(660, 660) with { SameLot = true };

        var result = NewLotEvaluation.Evaluate(question);

        Assert.Equal(LotVerdict.TestAtNextFill, result.Verdict);
        Assert.Equal([NewLotCodes.KernelsOfOneLotDiffer, SharedCodes.WithinTolerance], result.Reasons.Select(reason => reason.Code));
        Assert.DoesNotContain(
            NewLotCodes.KernelsOfOneLotDiffer,
            NewLotEvaluation.Evaluate(Changed.Lot(660, 660)).Reasons.Select(reason => reason.Code)
        );
        Assert.DoesNotContain(
            NewLotCodes.KernelsOfOneLotDiffer,
            NewLotEvaluation.Evaluate(Changed.Treated(question)).Reasons.Select(reason => reason.Code)
        );
    }

    [Theory]
    [InlineData("coat", " Coat ", true)]
    [InlineData(null, null, true)]
    [InlineData(null, "coat", false)]
    [InlineData("coat", "another coat", false)]
    public void SameTreatment_Words_DecideWithoutCase(string? before, string? after, bool same)
    {
        var question = Changed.Lot(660, 660);

        Assert.Equal(
            same,
            (
                question with
                {
                    Before = question.Before with { Treatment = before },
                    After = question.After with { Treatment = after },
                }
            ).SameTreatment
        );
    }

    [Fact]
    public void Reasons_EachChange_IsNamed()
    {
        var result = NewLotEvaluation.Evaluate(Changed.Treated(Changed.Lot(660, 620)));

        Assert.Equal(
            [NewLotCodes.DensityDiffers, NewLotCodes.OtherLot, NewLotCodes.TreatmentChanged, SharedCodes.WithinToleranceNotShown],
            result.Reasons.Select(reason => reason.Code)
        );
        Assert.Contains(result.Cautions, caution => caution.Code == CautionCodes.TreatedSeed);
        var unknown = NewLotEvaluation.Evaluate(Changed.Lot(660, null));
        Assert.Contains(
            "The bulk density of the new lot is not known.",
            DisplayUnits.Metric.Write(unknown.Reasons[0].Detail),
            StringComparison.Ordinal
        );
        var same = NewLotEvaluation.Evaluate(Changed.Delivery(660, 660));
        Assert.Equal([NewLotCodes.NothingChanged, SharedCodes.WithinTolerance], same.Reasons.Select(reason => reason.Code));
        Assert.Empty(same.Cautions);
    }

    // 10 kg/hL written as 10 kg/m3 and the like.
    [Theory]
    [InlineData(660, 66, true)]
    [InlineData(660, 826, true)]
    [InlineData(660, 824, false)]
    [InlineData(660, 530, false)]
    public void Densities_HardToBelieve_AreChallenged(double before, double after, bool challenged) =>
        Assert.Equal(
            challenged,
            NewLotEvaluation.Evaluate(Changed.Lot(before, after)).Findings.Any(finding => finding.Code == NewLotCodes.DensitiesFarApart)
        );

    // A value to type in or to plan with must not stand alone where the number behind it is doubted.
    [Fact]
    public void Headline_NumbersInDoubt_AsksToCheckThemFirst()
    {
        var slip = NewLotEvaluation.Evaluate(Changed.Lot(660, 66));
        var kernels = NewLotEvaluation.Evaluate(Changed.Lot(660, 660) with { SameLot = true, Rate = new(0.015) });

        Assert.StartsWith(
            "Check the bulk densities first: 66 kg/m3 is far from 660 kg/m3. Test now",
            DisplayUnits
                .Metric.Write(slip.Headline)
                .Replace("6.6 kg/hL", "66 kg/m3", StringComparison.Ordinal)
                .Replace("66 kg/hL", "660 kg/m3", StringComparison.Ordinal),
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            "Check the kernel masses before you change the rate.",
            DisplayUnits.Metric.Write(kernels.Headline),
            StringComparison.Ordinal
        );
    }

    // 94.8 % must not read as the 95 % that are asked.
    [Theory]
    [InlineData(660, 0.0525, "with a probability of 94 %")]
    [InlineData(660, 0.5, "with a probability of over 99 %")]
    [InlineData(66, 0.05, "with a probability of under 1 %")]
    public void Headline_Probability_IsRoundedDown(double after, double tolerance, string words)
    {
        var result = NewLotEvaluation.Evaluate(Changed.Delivery(660, after) with { ValueUncertainty = 0.0205, Tolerance = tolerance });

        Assert.Contains(words, DisplayUnits.Metric.Write(result.Headline), StringComparison.Ordinal);
    }

    [Fact]
    public void Assumptions_EveryValueNotStated_IsListedAndNoOther()
    {
        var none = NewLotEvaluation.Evaluate(Changed.Lot(null, null) with { ValueUncertainty = null }).Assumptions.Select(one => one.Name);
        var both = NewLotEvaluation
            .Evaluate(Changed.Treated(Changed.Lot(660, 660) with { Rate = new(0.015) }))
            .Assumptions.Select(one => one.Name);

        Assert.Equal(["valueInForce/relativeUncertainty", "unknownDensityChange", "dayToDay", "fillChangeOfLot", "tolerance"], none);
        Assert.Equal(
            [
                "lotBefore/bulkDensity/relativeUncertainty",
                "newLot/bulkDensity/relativeUncertainty",
                "dayToDay",
                "fillChangeOfLot",
                "fillChangeOfTreatment",
                "tolerance",
                "lotBefore/purity",
                "newLot/purity",
            ],
            both
        );
    }
}
