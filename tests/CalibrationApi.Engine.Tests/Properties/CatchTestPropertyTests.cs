using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;
using FsCheck.Xunit;

namespace CalibrationApi.Engine.Tests.Properties;

/// <summary>What must hold for every catch test.</summary>
[Properties(Arbitrary = [typeof(RandomCatchTests)], MaxTest = 200, Replay = "20260117,1")]
public sealed class CatchTestPropertyTests
{
    private const double Accuracy = 1e-12;

    [Property]
    public void Evaluate_SameTestInAnotherUnit_ChangesNothing(RandomTest random)
    {
        var expected = random.InKilograms.Evaluated();

        foreach (var mass in UnitTable.Of(Dimension.Mass))
        {
            foreach (var perRevolution in UnitTable.Of(Dimension.MassPerRevolution))
                AssertSame(expected, random.In(mass, perRevolution).Evaluated());
        }
    }

    [Property]
    public void Evaluate_AllMassesScaledTogether_ScalesTheValueOnly(RandomTest random)
    {
        // The default repeatability asks for kilograms; everything else is a ratio.
        const double Factor = 3.7;
        var limits = new CatchTestLimits { Repeatability = 0.011 };
        var test = random.InKilograms with { Limits = limits };

        var expected = test.Evaluated();
        var actual = Scaled(test, Factor).Evaluated();

        NearlyEqual.Assert(expected.Estimate.Value.Value * Factor, actual.Estimate.Value.Value, Accuracy);
        NearlyEqual.Assert(expected.Estimate.RelativeExpanded, actual.Estimate.RelativeExpanded, Accuracy);
        Assert.Equal(expected.Change!.Delta.Value, actual.Change!.Delta.Value, Accuracy);
        AssertSameDecision(expected, actual);
    }

    [Property]
    public void Evaluate_CatchesInAnotherOrder_GiveTheSameEstimate(RandomTest random)
    {
        var expected = random.InKilograms.Evaluated();
        var reversed = (random with { Readings = [.. random.Readings.Reverse()] }).InKilograms.Evaluated();
        var rotated = (random with { Readings = [.. random.Readings.Skip(1), random.Readings[0]] }).InKilograms.Evaluated();

        foreach (var actual in (CatchTestResult[])[reversed, rotated])
        {
            AssertSame(expected.Estimate, actual.Estimate);
            Assert.Equal(expected.Agreement.Q, actual.Agreement.Q, Accuracy * Math.Max(1, expected.Agreement.Q));
            NearlyEqual.Assert(expected.Agreement.FarthestDeviation, actual.Agreement.FarthestDeviation, 1e-9);
        }
    }

    // Equal revolutions, so that the new catch is known as well as the others.
    [Property]
    public void Evaluate_OneMoreCatchEqualToTheEstimate_NeverWidensTheInterval(RandomTest random)
    {
        var turns = random.Readings[0].TenthsOfRevolution;
        var equal = random with
        {
            Readings = [.. random.Readings.Select(one => one with { TenthsOfRevolution = turns, NetDivisions = Whole(one, turns) })],
        };
        var test = equal.InKilograms with
        {
            Limits = new CatchTestLimits { Repeatability = 0.01 },
            Scale = new Scale { Division = new Mass(random.Division), KnownError = new KnownScaleError(0, 0.001) },
        };
        var before = test.Evaluated().Estimate;

        var one = Given.Net(before.Value.Value * turns / 10, turns / 10.0);
        var after = (test with { Catches = [.. test.Catches, one] }).Evaluated().Estimate;

        Assert.True(
            after.RelativeExpanded <= before.RelativeExpanded * (1 + Accuracy),
            $"{before.RelativeExpanded:R} became {after.RelativeExpanded:R}."
        );
    }

    [Property]
    public void Evaluate_ExcludedCatches_NeverChangeTheEstimate(RandomTest random, RandomTest others)
    {
        var test = random.InKilograms;
        var excluded = others.InKilograms.Catches.Select(one => Catch.Net(one.IndicatedNet, one.Revolutions, "left out")).ToArray();

        var expected = test.Evaluated();
        var actual = (test with { Catches = [.. excluded, .. test.Catches, .. excluded] }).Evaluated();

        Assert.Equal(expected.Estimate, actual.Estimate);
        // What was left out never changes a number; that it contradicts what counts may be asked about.
        if (actual.Decision.Rule != CatchTestVerdict.Rule.ExclusionDecides)
            AssertSameDecision(expected, actual);
        Assert.Equal(test.Catches.Count + 2 * excluded.Length, actual.Catches.Count);
    }

    [Property]
    public void Evaluate_EveryProbability_IsOne(RandomTest random)
    {
        var result = random.InKilograms.Evaluated();
        var agreement = result.Agreement;

        Assert.All(
            [
                result.Change!.ProbabilityWithinTolerance,
                agreement.QProbability,
                agreement.FarthestProbability,
                agreement.FirstLowProbability,
                agreement.TrendProbability,
                agreement.OffsetProbability,
            ],
            probability => Assert.InRange(probability, 0, 1)
        );
    }

    [Property]
    public void Evaluate_Value_LiesBetweenTheSmallestAndTheLargestCatch(RandomTest random)
    {
        var result = random.InKilograms.Evaluated();
        var values = result.Catches.Select(one => one.MassPerRevolution.KilogramsPerRevolution).ToArray();

        foreach (
            var value in (double[])
                [
                    result.Estimate.Value.Value,
                    result.TotalMassOverTotalRevolutions.KilogramsPerRevolution,
                    result.MeanOfRatios.KilogramsPerRevolution,
                ]
        )
            Assert.InRange(value, values.Min() * (1 - Accuracy), values.Max() * (1 + Accuracy));
    }

    [Property]
    public void Evaluate_SameTestTwice_IsTheSameToTheLastBit(RandomTest random)
    {
        var first = random.InKilograms.Evaluated();
        var second = random.InKilograms.Evaluated();

        Assert.Equal(first.Estimate, second.Estimate);
        Assert.Equal(first.Agreement, second.Agreement);
        Assert.Equal(first.Change, second.Change);
        Assert.Equal(first.Headline.InMetric(), second.Headline.InMetric());
    }

    [Property]
    public void Evaluate_Keep_IsNeverSaidOfAWideInterval(RandomTest random)
    {
        var result = random.InKilograms.Evaluated();

        if (result.Decision.Verdict == Verdict.Keep)
            Assert.True(result.Estimate.RelativeExpanded <= result.Settings.WantedPrecision);
        else
            Assert.False(result.Decision.Rule == CatchTestVerdict.Rule.WithinTolerance);
    }

    private static void AssertSameDecision(CatchTestResult expected, CatchTestResult actual)
    {
        Assert.Equal(expected.Decision with { ExpectedPrecision = null }, actual.Decision with { ExpectedPrecision = null });
        if (expected.Decision.ExpectedPrecision is { } precision)
            NearlyEqual.Assert(precision, actual.Decision.ExpectedPrecision!.Value, Accuracy);
    }

    private static int Whole(Reading one, int turns) =>
        Math.Max(20, (int)Math.Round((double)one.NetDivisions * turns / one.TenthsOfRevolution));

    private static CatchTestQuestion Scaled(CatchTestQuestion test, double factor) =>
        test with
        {
            Catches =
            [
                .. test.Catches.Select(one =>
                    Catch.Weighed(
                        new Mass((one.IndicatedNet.Kilograms + one.Tare!.Value.Kilograms) * factor),
                        new Mass(one.Tare.Value.Kilograms * factor),
                        one.Revolutions
                    )
                ),
            ],
            Scale = test.Scale with
            {
                Division = new Mass(test.Scale.Division.Kilograms * factor),
                StatedAccuracy = test.Scale.StatedAccuracy is { } stated ? new Mass(stated.Kilograms * factor) : null,
            },
            Reference = test.Reference! with { Value = new MassPerRevolution(test.Reference.Value.KilogramsPerRevolution * factor) },
        };

    private static void AssertSame(CatchTestResult expected, CatchTestResult actual)
    {
        AssertSame(expected.Estimate, actual.Estimate);
        Assert.Equal(expected.Agreement.Q, actual.Agreement.Q, Accuracy * Math.Max(1, expected.Agreement.Q));
        Assert.Equal(expected.Agreement.QProbability, actual.Agreement.QProbability, Accuracy);
        Assert.Equal(expected.Change!.Delta.Value, actual.Change!.Delta.Value, Accuracy);
        NearlyEqual.Assert(expected.Change.Delta.StandardUncertainty, actual.Change.Delta.StandardUncertainty, Accuracy);
        Assert.Equal(expected.Change.ProbabilityWithinTolerance, actual.Change.ProbabilityWithinTolerance, Accuracy);
        AssertSameDecision(expected, actual);
        Assert.Equal(expected.Findings.Select(finding => finding.Code), actual.Findings.Select(finding => finding.Code));
    }

    private static void AssertSame(MassPerRevolutionEstimate expected, MassPerRevolutionEstimate actual)
    {
        NearlyEqual.Assert(expected.Value.Value, actual.Value.Value, Accuracy);
        NearlyEqual.Assert(expected.Value.StandardUncertainty, actual.Value.StandardUncertainty, Accuracy);
        NearlyEqual.Assert(expected.Value.DegreesOfFreedom, actual.Value.DegreesOfFreedom, Accuracy);
        NearlyEqual.Assert(expected.Value.CoverageFactor, actual.Value.CoverageFactor, Accuracy);
        NearlyEqual.Assert(expected.Span, actual.Span, Accuracy);
        NearlyEqual.Assert(expected.SharedTare, actual.SharedTare, Accuracy);
    }
}
