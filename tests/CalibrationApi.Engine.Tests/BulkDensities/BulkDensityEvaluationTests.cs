using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.BulkDensities;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.BulkDensities;

/// <summary>A density beside what is published, and what a tank holds of it.</summary>
public sealed class BulkDensityEvaluationTests
{
    [Fact]
    public void Density_FilledTank_IsMassOverVolumeWithRectangularErrors()
    {
        var density = Of(new FilledTank(new Mass(1240), new Volume(2), 0.01, 0.04)).Density;

        NearlyEqual.Assert(620, density.Value);
        NearlyEqual.Assert(620 * Math.Sqrt((0.0001 + 0.0016) / 3), density.StandardUncertainty);
        NearlyEqual.Assert(1.959963984540054, density.CoverageFactor, 1e-9);
    }

    [Theory]
    [InlineData("lb/bu-us", 60, 772.3)]
    [InlineData("lb/bu-imp", 60, 748.3)]
    [InlineData("kg/hL", 78, 780)]
    public void Density_TestWeight_IsTakenByItsBushel(string unit, double number, double expected) =>
        Assert.Equal(expected, Of(Read(number, unit, isTestWeight: true)).Density.Value, 0.05);

    // The middle of the printed 44 to 48 lb/ft3; the range counts as rectangular, a lot scatters by 5 %.
    [Fact]
    public void Density_PublishedOnly_IsTheMiddleOfTheRange()
    {
        var result = Of(new PublishedDensity(ReferenceMaterial.UreaGranular));

        NearlyEqual.Assert(46 * UnitTable.Get("lb/ft3").ToSi.Value, result.Density.Value);
        NearlyEqual.Assert(Math.Sqrt(Math.Pow(2.0 / 46, 2) / 3 + 0.05 * 0.05), result.Density.StandardUncertainty / result.Density.Value);
        Assert.Equal(DensityBasis.Published, result.Basis);
        Assert.Equal(ReferenceMaterial.UreaGranular, result.Comparison!.Material);
        Assert.Contains(result.Findings, finding => finding.Code == BulkDensityCodes.PublishedDensityOnly);
    }

    // Measured 780 stays 780, whatever is published.
    [Fact]
    public void Density_MeasuredBesideAReference_IsNotPulledTowardsIt() =>
        NearlyEqual.Assert(620, Of(new FilledTank(new Mass(1240), new Volume(2)), ReferenceMaterial.UreaGranular).Density.Value);

    [Theory]
    [InlineData(1220)]
    [InlineData(1320)]
    public void Findings_ParticleDensityOfUrea_IsChallengedWithItsReason(double density)
    {
        var result = Of(Read(density, "kg/m3"), ReferenceMaterial.UreaGranular);

        var finding = Assert.Single(result.Findings, finding => finding.Code == BulkDensityCodes.DensityUnlikeReference);
        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Contains("particle density", finding.Detail.InMetric(), StringComparison.Ordinal);
        Assert.Contains("check it before you use it", result.Headline.InMetric(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(60, "kg/hL", "lb/bu-us in place of kg/hL", ReferenceMaterial.Wheat)]
    [InlineData(46, "kg/hL", "lb/ft3 in place of kg/hL", ReferenceMaterial.UreaGranular)]
    [InlineData(7.7, "kg/hL", "decimal point", ReferenceMaterial.Wheat)]
    public void Findings_SlipOfTheUnit_IsNamed(double number, string unit, string expected, ReferenceMaterial material)
    {
        var finding = Assert.Single(Of(Read(number, unit), material).Findings, finding =>
            finding.Code == BulkDensityCodes.DensityUnlikeReference
        );

        Assert.Contains(expected, finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_PoundsTakenAsKilograms_AreNamed()
    {
        var finding = Assert.Single(
            Of(new FilledTank(new Mass(730 * 2 / 0.45359237), new Volume(2)), ReferenceMaterial.UreaGranular).Findings,
            finding => finding.Code == BulkDensityCodes.DensityUnlikeReference
        );

        Assert.Contains("pounds taken as kilograms", finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(620, false)]
    [InlineData(640, false)]
    [InlineData(690, false)]
    [InlineData(720, true)]
    public void Findings_NearThePublishedRange_AreNotedOnlyBeyondTheInterval(double density, bool expected)
    {
        // A test weight of 2 % has an interval of 3.9 %; what is published for barley lets expect 558 to 682 kg/m3.
        var findings = Of(Read(density, "kg/m3", isTestWeight: true), ReferenceMaterial.Barley)
            .Findings.Where(finding => finding.Code == BulkDensityCodes.DensityUnlikeReference)
            .ToArray();

        Assert.Equal(expected, findings.Length == 1);
        Assert.All(findings, finding => Assert.Equal(Severity.Note, finding.Severity));
    }

    [Theory]
    [InlineData(2500, true)]
    [InlineData(1400, false)]
    [InlineData(120, true)]
    public void Findings_NoMaterialNamed_ChallengesOnlyWhatNoMaterialHas(double density, bool expected) =>
        Assert.Equal(expected, Of(Read(density, "kg/m3")).Findings.Any(finding => finding.Code == BulkDensityCodes.DensityUnlikeReference));

    [Fact]
    public void Findings_StatedWithoutAReference_SaysThatNothingWasCompared()
    {
        Assert.Equal(BulkDensityCodes.DensityNotCompared, Assert.Single(Of(Read(1320, "kg/m3")).Findings).Code);
        Assert.DoesNotContain(Of(Read(740, "kg/m3"), ReferenceMaterial.UreaGranular).Findings, finding =>
            finding.Code == BulkDensityCodes.DensityNotCompared
        );
        Assert.DoesNotContain(Of(new FilledTank(new Mass(1240), new Volume(2))).Findings, finding =>
            finding.Code == BulkDensityCodes.DensityNotCompared
        );
    }

    [Fact]
    public void Findings_PoundsPerBushel_TellTheOtherBushel()
    {
        var finding = Assert.Single(Of(Read(60, "lb/bu-us", isTestWeight: true)).Findings, finding =>
            finding.Code == BulkDensityCodes.OtherBushel
        );

        Assert.Contains(
            "60 lb in a US (Winchester) bushel. If an imperial (Avery) bushel was meant",
            finding.Detail.InMetric(),
            StringComparison.Ordinal
        );
        Assert.Contains("3.21 %", finding.Detail.InMetric(), StringComparison.Ordinal);
        Assert.DoesNotContain(Of(Read(78, "kg/hL", isTestWeight: true)).Findings, other => other.Code == BulkDensityCodes.OtherBushel);
    }

    [Theory]
    [InlineData("lb/bu-imp", 62.5, true)]
    [InlineData("kg/hL", 78, true)]
    [InlineData("lb/bu-us", 60, false)]
    public void LooseDensity_CanadianTestWeight_IsLessThanIt(string unit, double number, bool expected)
    {
        var result = Of(Read(number, unit, isTestWeight: true), ReferenceMaterial.Wheat);

        Assert.Equal(expected, result.LooseDensity is not null);
        if (result.LooseDensity is { } loose)
            Assert.InRange(loose.KilogramsPerCubicMetre / result.Density.Value, 0.95, 0.99);
        Assert.Equal(expected, result.Findings.Any(finding => finding.Code == BulkDensityCodes.TestWeightSettled));
    }

    // The equation puts half a litre of such soybeans and corn above their test weight: loose grain is never denser than settled grain.
    [Theory]
    [InlineData(ReferenceMaterial.Soybean, 72)]
    [InlineData(ReferenceMaterial.Corn, 72)]
    public void LooseDensity_EquationThatMakesLooseGrainDenser_IsNotSaid(ReferenceMaterial material, double number)
    {
        var result = Of(Read(number, "kg/hL", isTestWeight: true), material);

        Assert.True(CanadianTestWeight.Loose(material, new BulkDensity(10 * number)).KilogramsPerCubicMetre > 10 * number);
        Assert.Null(result.LooseDensity);
        Assert.DoesNotContain(result.Findings, finding => finding.Code == BulkDensityCodes.TestWeightSettled);
        Assert.DoesNotContain(result.Findings, finding => finding.Code == BulkDensityCodes.DensityUnlikeReference);
    }

    [Fact]
    public void LooseDensity_MaterialWithoutAnEquation_IsNotSaid() =>
        Assert.Null(Of(Read(78, "kg/hL", isTestWeight: true), ReferenceMaterial.Pea).LooseDensity);

    // 5000 L of wheat at 60 lb per US bushel, put down at 120 kg/ha.
    [Fact]
    public void Tank_VolumeAndRate_GiveMassAndArea()
    {
        var result = BulkDensityEvaluation.Evaluate(
            new BulkDensityQuestion
            {
                Evidence = Read(60, "lb/bu-us", isTestWeight: true),
                Tank = new TankToFill(new Volume(5), Rate: new MassPerArea(0.012)),
            }
        );

        Assert.Equal(3862, result.Tank!.Mass.Kilograms, 0.5);
        Assert.Equal(32.2, result.Tank.Area!.Value.SquareMetres / 10_000, 0.05);
        NearlyEqual.Assert(5 * result.Density.ExpandedUncertainty, result.Tank.Most.Kilograms - result.Tank.Mass.Kilograms, 1e-9);
        Assert.Contains(result.Assumptions, assumption => assumption.Name == "tank/fill");
        Assert.Contains(result.Cautions, caution => caution.Code == CautionCodes.TankEntry);
    }

    [Fact]
    public void Moisture_SugarBeet_FallsByMoreThanOnePercentForEachPoint()
    {
        var moisture = Assert.Single(Of(Read(430, "kg/m3"), ReferenceMaterial.SugarBeet).Comparison!.Moisture);

        new PrintedNumber("-6.5").AssertReproducedBy(100 * moisture.Change);
        NearlyEqual.Assert(moisture.Change / 5.61, moisture.ChangePerPoint, 1e-9);
    }

    private static BulkDensityResult Of(DensityEvidence evidence, ReferenceMaterial? material = null) =>
        BulkDensityEvaluation.Evaluate(new BulkDensityQuestion { Evidence = evidence, Material = material });

    private static ReadDensity Read(double number, string unit, bool isTestWeight = false) =>
        new(new BulkDensity(UnitTable.Get(unit).Canonical(number)), UnitTable.Get(unit), isTestWeight);
}
