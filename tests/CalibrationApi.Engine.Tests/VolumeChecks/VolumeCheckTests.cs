using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.VolumeChecks;

namespace CalibrationApi.Engine.Tests.VolumeChecks;

/// <summary>k = rho V eta on the logarithmic scale.</summary>
public sealed class VolumeCheckTests
{
    private const double Z = 1.959963984540054;

    [Fact]
    public void Expected_NothingKnownOfTheFill_IsTheDefaultOfItsVolume()
    {
        var expected = Of(Question()).Expected;

        NearlyEqual.Assert(0.61e-3 * 620 * 0.9, expected.Median.KilogramsPerRevolution);
        NearlyEqual.Assert(Math.Sqrt(0.03 * 0.03 + 0.02 * 0.02 + 0.15 * 0.15), expected.Spread);
        NearlyEqual.Assert(
            expected.Median.KilogramsPerRevolution * Math.Exp(-Z * expected.Spread),
            expected.Lower.KilogramsPerRevolution,
            1e-9
        );
        NearlyEqual.Assert(
            expected.Median.KilogramsPerRevolution * Math.Exp(Z * expected.Spread),
            expected.Upper.KilogramsPerRevolution,
            1e-9
        );
    }

    [Fact]
    public void Expected_ClosedPockets_EndsWhereTheyAreFull()
    {
        var result = Of(Certain() with { Kind = ElementKind.ClosedPockets });

        // 1.05 of the volume is the most that closed pockets deliver; the usual 0.9 with 15 % of spread would reach 1.21.
        NearlyEqual.Assert(0.61e-3 * 620 * 1.05, result.Expected.Upper.KilogramsPerRevolution, 1e-9);
        NearlyEqual.Assert(1.05, result.FillEfficiency.Upper.Fraction, 1e-9);
        Assert.True(Of(Certain()).FillEfficiency.Upper.Fraction > 1.05);
    }

    [Fact]
    public void Expected_FullerThanPossible_KeepsItsIntervalBesideTheFinding()
    {
        var result = Of(Certain() with { Kind = ElementKind.ClosedPockets, Fill = new StatedFill(1.2, 0.05) });

        NearlyEqual.Assert(1.2 * Math.Exp(Z * 0.05), result.FillEfficiency.Upper.Fraction, 1e-9);
        Assert.Contains(result.Findings, finding => finding.Code == ElementCodes.MoreThanTheElementHolds);
    }

    [Fact]
    public void Assumptions_NothingStated_AreAllListed() =>
        Assert.Equal(
            [
                "bulkDensity/relativeUncertainty",
                "displacement/relativeUncertainty",
                "fillEfficiency",
                "fillEfficiencySpread",
                "massPerRevolution/relativeUncertainty",
            ],
            Of(Question() with { Checked = new(new MassPerRevolution(0.342)) }).Assumptions.Select(assumption => assumption.Name)
        );

    [Fact]
    public void Expected_OwnFillEfficiency_TakesItAndItsSpread()
    {
        var result = Of(Certain() with { Fill = new StatedFill(0.8, 0.05) });

        NearlyEqual.Assert(0.61e-3 * 620 * 0.8, result.Expected.Median.KilogramsPerRevolution);
        NearlyEqual.Assert(0.05, result.Expected.Spread);
        Assert.Empty(result.Assumptions);
    }

    // The displacement cancels: k = k0 rho / rho0, however wrong it is stated.
    [Theory]
    [InlineData(0.61e-3)]
    [InlineData(0.45e-3)]
    public void Expected_LearnedFromAnotherProduct_ScalesWithDensity(double displacement)
    {
        var result = Of(
            Question() with
            {
                Displacement = new(new Volume(displacement), 0.5),
                Density = new(new BulkDensity(960), 0.01),
                Fill = new LearnedFill(new(new MassPerRevolution(0.342), 0.012), new(new BulkDensity(620), 0.02), 0.04),
            }
        );

        NearlyEqual.Assert(0.342 * 960 / 620, result.Expected.Median.KilogramsPerRevolution);
        NearlyEqual.Assert(Math.Sqrt(0.01 * 0.01 + 0.012 * 0.012 + 0.02 * 0.02 + 0.04 * 0.04), result.Expected.Spread);
        NearlyEqual.Assert(0.342 / (displacement * 620), result.FillEfficiency.Median.Fraction);
        Assert.True(result.FillEfficiency.Spread > 0.5);
    }

    [Fact]
    public void Checked_Value_IsComparedOnTheLogarithmicScale()
    {
        var result = Of(Question() with { Checked = new(new MassPerRevolution(0.40), 0.012) });
        var expected = result.Expected;

        NearlyEqual.Assert(0.40 / expected.Median.KilogramsPerRevolution, result.Checked!.Ratio);
        NearlyEqual.Assert(
            Math.Log(result.Checked.Ratio) / Math.Sqrt(expected.Spread * expected.Spread + 0.012 * 0.012),
            result.Checked.Deviations!.Value
        );
        NearlyEqual.Assert(0.40 / (0.61e-3 * 620), result.Checked.FillEfficiency.Median.Fraction);
        NearlyEqual.Assert(Math.Sqrt(0.03 * 0.03 + 0.02 * 0.02 + 0.012 * 0.012), result.Checked.FillEfficiency.Spread);
    }

    // Twice as much and half as much are equally far away.
    [Fact]
    public void Deviations_TwiceAndHalf_AreEquallyFar()
    {
        var median = Of(Question()).Expected.Median.KilogramsPerRevolution;
        var twice = Of(Question() with { Checked = new(new MassPerRevolution(2 * median)) }).Checked!.Deviations!.Value;
        var half = Of(Question() with { Checked = new(new MassPerRevolution(median / 2)) }).Checked!.Deviations!.Value;

        NearlyEqual.Assert(twice, -half, 1e-12);
    }

    [Fact]
    public void Deviations_NoUncertaintyAnywhere_AreNotSaid() =>
        Assert.Null(
            Of(Certain() with { Fill = new StatedFill(0.9, 0), Checked = new(new MassPerRevolution(0.34), 0) }).Checked!.Deviations
        );

    [Fact]
    public void Findings_UsualValue_AreNone() => Assert.Empty(Of(Question() with { Checked = new(new MassPerRevolution(0.342)) }).Findings);

    [Theory]
    [InlineData(0.342 / 0.45359237, "pounds taken as kilograms")]
    [InlineData(3.42, "decimal point")]
    [InlineData(0.342 * 1.2872, "lb/bu-us stated as kg/hL")]
    public void Findings_MoreThanTheElementHolds_NameWhatWouldFit(double value, string expected)
    {
        var result = Of(Question() with { Kind = ElementKind.ClosedPockets, Checked = new(new MassPerRevolution(value)) });

        var finding = Assert.Single(result.Findings);
        Assert.Equal((ElementCodes.MoreThanTheElementHolds, Severity.Stop), ((WarningOrStopCode)finding.Code, finding.Severity));
        Assert.Contains(expected, finding.Detail.InMetric(), StringComparison.Ordinal);
        Assert.Contains("more than it holds", result.Headline.InMetric(), StringComparison.Ordinal);
    }

    // 116 % of the volume: too much for pockets, a little much for an element that is not known, whose edge is 160 %.
    [Theory]
    [InlineData(ElementKind.ClosedPockets, 1.16, "more-than-the-element-holds", Severity.Stop)]
    [InlineData(ElementKind.OpenFlutes, 1.16, "fill-unlike-expected", Severity.Warning)]
    [InlineData(null, 1.16, "fill-unlike-expected", Severity.Warning)]
    [InlineData(null, 1.70, "fill-unlike-expected", Severity.Warning)]
    [InlineData(null, 1.75, "more-than-the-element-holds", Severity.Stop)]
    public void Findings_FullerThanUsual_FollowTheKindOfTheElement(ElementKind? kind, double fill, string code, Severity severity)
    {
        var finding = Assert.Single(
            Of(Question() with { Kind = kind, Checked = new(new MassPerRevolution(0.61e-3 * 620 * fill)) }).Findings
        );

        Assert.Equal((code, severity), (finding.Code.Word, finding.Severity));
    }

    // A density given in lb/ft3 cannot have been meant in kg/hL and stated as kg/hL.
    // 106 % of the volume is a sixth above what is expected: that is no unit of the density.
    [Fact]
    public void Findings_LittleMoreThanTheElementHolds_NameNoSlip()
    {
        var finding = Assert.Single(
            Of(Question() with { Checked = new(new MassPerRevolution(0.4)), DensityUnit = UnitTable.Get("kg/hL") }).Findings
        );

        Assert.Equal(ElementCodes.FillUnlikeExpected, finding.Code);
        Assert.DoesNotContain("would fit", finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(342, "grams taken as kilograms")]
    [InlineData(0.000342, "kilograms taken as grams")]
    public void Findings_GramsAndKilogramsMixedUp_AreNamed(double value, string expected) =>
        Assert.Contains(
            expected,
            Assert.Single(Of(Question() with { Checked = new(new MassPerRevolution(value)) }).Findings).Detail.InMetric(),
            StringComparison.Ordinal
        );

    [Fact]
    public void Findings_SlipOfTheDensity_StartsFromTheUnitThatWasStated()
    {
        var result = Of(Question() with { DensityUnit = UnitTable.Get("lb/ft3"), Checked = new(new MassPerRevolution(0.342 * 1.2872)) });

        Assert.DoesNotContain("stated as kg/hL", Assert.Single(result.Findings).Detail.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_MuchLessThanExpected_AreWarnedOf()
    {
        var finding = Assert.Single(Of(Question() with { Checked = new(new MassPerRevolution(0.342 * 0.45359237)) }).Findings);

        Assert.Equal(ElementCodes.FillUnlikeExpected, finding.Code);
        Assert.Contains("kilograms taken as pounds", finding.Detail.InMetric(), StringComparison.Ordinal);
        Assert.Contains("bridges", finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    // 105 % is the edge of pockets and of what is usual, 160 % that of any element; a value on an edge is not above it.
    [Theory]
    [InlineData(ElementKind.ClosedPockets, 1.05, null)]
    [InlineData(ElementKind.ClosedPockets, 1.06, "more-than-the-element-holds")]
    [InlineData(null, 1.05, null)]
    [InlineData(null, 1.06, "fill-unlike-expected")]
    [InlineData(null, 1.60, "fill-unlike-expected")]
    [InlineData(null, 1.61, "more-than-the-element-holds")]
    public void Findings_FillEfficiencyThatIsTooHighItself_AreWarnedOf(ElementKind? kind, double fill, string? expected) =>
        Assert.Equal(
            expected is null ? [] : [expected],
            Of(Question() with { Kind = kind, Fill = new StatedFill(fill, 0.05) }).Findings.Select(finding => finding.Code.Word)
        );

    private static VolumeCheckQuestion Question() =>
        new()
        {
            Element = "coarse roller",
            Displacement = new(new Volume(0.61e-3)),
            Density = new(new BulkDensity(620)),
            DensityUnit = UnitTable.Get("kg/hL"),
        };

    private static VolumeCheckQuestion Certain() =>
        Question() with
        {
            Displacement = new(new Volume(0.61e-3), 0),
            Density = new(new BulkDensity(620), 0),
        };

    private static VolumeCheckResult Of(VolumeCheckQuestion question) => VolumeCheckEvaluation.Evaluate(question);
}
