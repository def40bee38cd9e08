using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.BulkDensities;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.BulkDensities;

/// <summary>Bulk density from weighings of a known volume: rho = m / V with its interval.</summary>
public sealed class WeighedVolumeTests
{
    [Fact]
    public void Density_OneWeighing_IsMassOverVolume() => NearlyEqual.Assert(620, Weighed(6.2).Density.Value);

    [Fact]
    public void Density_EqualVolumes_IsTheirMean() => NearlyEqual.Assert(620, Weighed(6.1, 6.2, 6.3).Density.Value);

    // One filling: its scatter is the prior of 2 %; a perfect scale; a volume within 1 % is rectangular.
    [Fact]
    public void Parts_OneWeighing_AreThePriorTheScaleAndTheVolume()
    {
        var parts = Weighed(6.2).Parts.ToDictionary(part => part.Source, part => part.Relative);

        NearlyEqual.Assert(0.02, parts["weighings"], 1e-9);
        NearlyEqual.Assert(0.01 / Math.Sqrt(3), parts["volume"], 1e-12);
        Assert.True(parts["scale"] < 1e-8);
    }

    [Fact]
    public void Density_StandardUncertainty_IsTheRootOfTheSquaresOfItsParts()
    {
        var result = Weighed(6.1, 6.2, 6.3);

        NearlyEqual.Assert(
            Math.Sqrt(result.Parts.Sum(part => part.Relative * part.Relative)),
            result.Density.StandardUncertainty / result.Density.Value,
            1e-12
        );
    }

    // One container on one scale is rounded the same way each time: equal readings are worth one, as in a catch test.
    [Fact]
    public void Density_EqualTareReadings_AreWorthOneAndSaid()
    {
        var scale = new Scale { Division = new Mass(0.5), StatedAccuracy = new Mass(1e-9) };
        var evidence = Evidence(6.1, 6.2, 6.3) with { Scale = scale };
        var equal = BulkDensityEvaluation.Evaluate(
            new BulkDensityQuestion { Evidence = evidence with { Tares = [new(1), new(1), new(1)] } }
        );
        var shared = BulkDensityEvaluation.Evaluate(
            new BulkDensityQuestion { Evidence = evidence with { TareReading = TareReading.Shared } }
        );
        var differing = BulkDensityEvaluation.Evaluate(
            new BulkDensityQuestion { Evidence = evidence with { Tares = [new(1), new(1), new(1.5)] } }
        );

        Assert.Equal(shared.Density, equal.Density);
        Assert.NotEqual(shared.Density, differing.Density);
        Assert.Contains(
            "equal tare readings",
            Assert.Single(equal.Assumptions, one => one.Name == "weighed/sharedTare").Origin,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("weighed/sharedTare", shared.Assumptions.Concat(differing.Assumptions).Select(one => one.Name));
    }

    [Fact]
    public void Density_MoreWeighings_NarrowTheInterval() =>
        Assert.True(Weighed(6.2, 6.2, 6.2).Density.ExpandedUncertainty < Weighed(6.2).Density.ExpandedUncertainty);

    // 4 degrees of freedom of the prior and one for each further weighing; volume and scale do not count where they are nothing.
    [Fact]
    public void Density_DegreesOfFreedom_AreThoseOfPriorAndWeighings()
    {
        var result = BulkDensityEvaluation.Evaluate(
            new BulkDensityQuestion { Evidence = Evidence(6.1, 6.2, 6.3) with { VolumeTolerance = 0 } }
        );

        NearlyEqual.Assert(6, result.Density.DegreesOfFreedom, 1e-6);
    }

    [Fact]
    public void Density_KnownScaleError_IsCorrected()
    {
        var scale = new Scale { Division = new Mass(1e-9), KnownError = new KnownScaleError(0.01, 0.001) };
        var result = BulkDensityEvaluation.Evaluate(new BulkDensityQuestion { Evidence = Evidence(6.262) with { Scale = scale } });

        NearlyEqual.Assert(620, result.Density.Value);
        NearlyEqual.Assert(6.2, result.Readings[0].Net.Kilograms);
        NearlyEqual.Assert(0.001, result.Parts.Single(part => part.Source == "scale").Relative);
    }

    [Fact]
    public void Assumptions_NothingStated_AreAllListed()
    {
        var names = BulkDensityEvaluation
            .Evaluate(
                new BulkDensityQuestion
                {
                    Evidence = new WeighedVolume { Volume = new Volume(0.010), IndicatedNet = [new Mass(6.2)] },
                }
            )
            .Assumptions.Select(assumption => assumption.Name);

        Assert.Equal(["weighed/repeatability", "weighed/volumeTolerance", "weighed/scale"], names);
    }

    [Fact]
    public void Findings_WeighingsFarApart_AreWarnedOf()
    {
        Assert.Contains(Weighed(6.2, 5.2, 6.9).Findings, finding =>
            finding.Code == BulkDensityCodes.WeighingsScatter && finding.Severity == Severity.Warning
        );
        Assert.DoesNotContain(Weighed(6.1, 6.2, 6.3).Findings, finding => finding.Code == BulkDensityCodes.WeighingsScatter);
    }

    [Theory]
    [InlineData(0.4, true)]
    [InlineData(0.5, false)]
    [InlineData(10, false)]
    public void Findings_SmallVolume_IsNotedBelowHalfALitre(double litres, bool expected)
    {
        var result = BulkDensityEvaluation.Evaluate(
            new BulkDensityQuestion
            {
                Evidence = new WeighedVolume { Volume = new Volume(litres / 1000), IndicatedNet = [new Mass(0.62 * litres)] },
            }
        );

        Assert.Equal(expected, result.Findings.Any(finding => finding.Code == BulkDensityCodes.SmallVolume));
    }

    [Theory]
    [InlineData(1, "one weighing of")]
    [InlineData(3, "three weighings of")]
    public void Headline_Weighings_AreCounted(int count, string expected) =>
        Assert.Contains(expected, Weighed([.. Enumerable.Repeat(6.2, count)]).Headline.InMetric(), StringComparison.Ordinal);

    private static BulkDensityResult Weighed(params double[] kilograms) =>
        BulkDensityEvaluation.Evaluate(new BulkDensityQuestion { Evidence = Evidence(kilograms) });

    private static WeighedVolume Evidence(params double[] kilograms) =>
        new()
        {
            Volume = new Volume(0.010),
            VolumeTolerance = 0.01,
            Scale = Given.Perfect,
            IndicatedNet = [.. kilograms.Select(one => new Mass(one))],
        };
}
