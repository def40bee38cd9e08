using CalibrationApi.Engine.NewLots;
using CalibrationApi.Engine.Quantities;
using MathNet.Numerics.Distributions;
using StudentT = CalibrationApi.Engine.Statistics.StudentT;

namespace CalibrationApi.Engine.Tests.NewLots;

public sealed class LotPredictionTests
{
    [Fact]
    public void Value_BothDensities_GoesWithTheirRatio()
    {
        var result = NewLotEvaluation.Evaluate(Changed.Lot(660, 635));

        Assert.Equal(0.36 * 635 / 660, result.Prediction.Value.KilogramsPerRevolution, 1e-15);
        Assert.Equal(635.0 / 660 - 1, result.Prediction.Change, 1e-12);
        Assert.True(result.Prediction.DensitiesKnown);
    }

    // 1.2, 1 and 1 % known, 1 % from day to day, 4 % of fill with 3 degrees of freedom; the two kinds expanded each with its own factor.
    [Fact]
    public void Uncertainty_NewLot_AddsInQuadrature()
    {
        var prediction = NewLotEvaluation.Evaluate(Changed.Lot(660, 635)).Prediction;

        var known = 0.012 * 0.012 + 3 * 0.01 * 0.01;
        Assert.Equal(Math.Sqrt(known + 0.04 * 0.04), prediction.Uncertainty.StandardUncertainty, 1e-15);
        var t = StudentT.CoverageFactor(0.95, 3) * 0.04;
        var z = StudentT.CoverageFactor(0.95, double.PositiveInfinity) * Math.Sqrt(known);
        NearlyEqual.Assert(Math.Sqrt(t * t + z * z) * prediction.Value.KilogramsPerRevolution, prediction.Interval.ExpandedUncertainty);
        Assert.Equal(
            prediction.Uncertainty.StandardUncertainty * prediction.Uncertainty.StandardUncertainty,
            prediction.Parts.Sum(part => part.Relative * part.Relative),
            1e-15
        );
    }

    [Fact]
    public void Uncertainty_EachChange_WidensThePrediction()
    {
        var same = Of(Changed.Lot(660, 660) with { SameLot = true });
        var treated = Of(Changed.Treated(Changed.Lot(660, 660) with { SameLot = true }));
        var other = Of(Changed.Lot(660, 660));
        var otherTreated = Of(Changed.Treated(Changed.Lot(660, 660)));
        var unknown = Of(Changed.Lot(660, null));
        var unknownSame = Of(Changed.Lot(660, null) with { SameLot = true });

        Assert.True(same < treated && same < other && other < otherTreated && otherTreated < unknown);
        Assert.True(same < unknownSame && unknownSame < unknown);
        static double Of(NewLotQuestion question) => NewLotEvaluation.Evaluate(question).Prediction.Uncertainty.Expanded(0.95);
    }

    // 8 % of an ordinary change with a new lot; with the same lot only what may differ in moisture and packing.
    [Fact]
    public void Uncertainty_UnknownDensity_IsThatOfAnOrdinaryChange()
    {
        Assert.Equal(0.08, Scale(Changed.Lot(null, null)), 0.001);
        Assert.Equal(0.02, Scale(Changed.Lot(null, null) with { SameLot = true }), 1e-12);
        static double Scale(NewLotQuestion question) => Math.Sqrt(NewLotEvaluation.Evaluate(question).Prediction.Uncertainty.Estimated);
    }

    [Theory]
    [InlineData(null, 635.0)]
    [InlineData(660.0, null)]
    [InlineData(null, null)]
    public void Value_ADensityUnknown_StaysAtTheValueInForce(double? before, double? after)
    {
        var prediction = NewLotEvaluation.Evaluate(Changed.Lot(before, after)).Prediction;

        Assert.Equal(0.36, prediction.Value.KilogramsPerRevolution);
        Assert.False(prediction.DensitiesKnown);
        Assert.Contains(prediction.Parts, part => part.Source == LotUncertaintySource.UnknownDensity);
        Assert.DoesNotContain(prediction.Parts, part => part.Source == LotUncertaintySource.DensityOfNewLot);
    }

    // 1 % each: a ratio beyond exp(1.96 x 0.01414) = 1.0281 is another density.
    [Theory]
    [InlineData(678, false)]
    [InlineData(679, true)]
    [InlineData(642, false)]
    [InlineData(641, true)]
    public void Density_BeyondItsUncertainty_Differs(double after, bool differs) =>
        Assert.Equal(differs, NewLotEvaluation.Evaluate(Changed.Lot(660, after)).Prediction.DensityDiffers);

    [Fact]
    public void Probability_OfAnyQuestion_IsHighestForThePrediction()
    {
        var result = NewLotEvaluation.Evaluate(Changed.Lot(660, 635));

        Assert.InRange(result.ProbabilityOfValueInForce, 0.3, 0.7);
        Assert.True(result.ProbabilityOfPrediction > result.ProbabilityOfValueInForce);
    }

    // Another delivery of a lot: nothing is judged, so that the probabilities are those of the library's normal distribution.
    [Theory]
    [InlineData(660, 660)]
    [InlineData(660, 640)]
    [InlineData(640, 670)]
    public void Probability_NothingJudged_IsThatOfTheNormalDistribution(double before, double after)
    {
        var prediction = NewLotEvaluation.Evaluate(Changed.Delivery(before, after)).Prediction;
        var (ratio, uncertainty) = (after / before, Math.Sqrt(0.012 * 0.012 + 3 * 0.01 * 0.01));
        double Between(double centre) => Normal.CDF(centre, centre * uncertainty, 1.04) - Normal.CDF(centre, centre * uncertainty, 0.96);

        Assert.Equal(Between(ratio), prediction.ProbabilityOfValueInForce(0.04), 1e-12);
        Assert.Equal(Between(1), prediction.ProbabilityOfPrediction(0.04), 1e-12);
    }
}

/// <summary>Changes of lots to start from; invented.</summary>
internal static class Changed
{
    /// <summary>A new lot of these bulk densities, kg/m3; 0.36 kg/rev known to 1.2 %.</summary>
    public static NewLotQuestion Lot(double? before, double? after) =>
        new()
        {
            ValueInForce = new(0.36),
            ValueUncertainty = 0.012,
            Before = new()
            {
                Kernel = new(47e-6),
                Germination = 0.94,
                Density = Density(before),
            },
            After = new()
            {
                Kernel = new(43e-6),
                Germination = 0.96,
                Density = Density(after),
            },
        };

    /// <summary>Another delivery of the lot before.</summary>
    public static NewLotQuestion Delivery(double? before, double? after)
    {
        var question = Lot(before, after);
        return question with { SameLot = true, After = question.After with { Kernel = question.Before.Kernel } };
    }

    public static NewLotQuestion Treated(NewLotQuestion question) => question with { After = question.After with { Treatment = "coat" } };

    private static BulkDensity? Density(double? value) => value is { } known ? new BulkDensity(known) : null;
}
