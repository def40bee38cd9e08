using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>What the engine notices beyond the verdict, and when it keeps quiet.</summary>
public sealed class CatchTestFindingsTests
{
    private static readonly CatchTestQuestion TwoCatches = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8));

    [Fact]
    public void Evaluate_OrdinaryTest_OnlyRemindsOfTheDefaultRepeatability()
    {
        var finding = Assert.Single(TwoCatches.InForce(0.342).Evaluated().Findings);

        Assert.Equal(CatchTestCodes.DefaultRepeatabilityUsed, finding.Code);
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.StartsWith("Two catches say little about scatter", finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void DefaultRepeatabilityUsed_OneCatch_SaysNothingAboutScatter() =>
        Assert.StartsWith(
            "One catch says nothing about scatter",
            Detail(Given.Test(Given.Net(17, 47)), CatchTestCodes.DefaultRepeatabilityUsed),
            StringComparison.Ordinal
        );

    [Fact]
    public void DefaultRepeatabilityUsed_RepeatabilityStatedOrManyCatches_IsQuiet()
    {
        AssertQuiet(TwoCatches with { Limits = new CatchTestLimits { Repeatability = 0.01 } }, CatchTestCodes.DefaultRepeatabilityUsed);
        AssertQuiet(Given.Test([.. Enumerable.Repeat(Given.Net(17, 47), 5)]), CatchTestCodes.DefaultRepeatabilityUsed);
    }

    [Fact]
    public void SmallCatch_FewRevolutions_Warns()
    {
        var finding = Only(Given.Test(Given.Net(7, 19)), SharedCodes.SmallCatch);

        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Contains("19 rev", finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void SmallCatch_FewKilogramsInManyRevolutions_IsQuiet() => AssertQuiet(Given.Test(Given.Net(4, 130)), SharedCodes.SmallCatch);

    // 500 divisions as the difference of two readings in pounds are a rounding away from 500 divisions.
    [Fact]
    public void CoarseScale_ExactlyTheLeastCatch_IsQuietWhateverTheTare()
    {
        var pound = UnitTable.Get("lb");
        var scale = Given.Platform with { Division = new Mass(pound.Canonical(0.03)) };
        foreach (var tare in (double[])[1.6, 2.2, 3.5, 4.3, 0.7])
        {
            var one = Catch.Weighed(new Mass(pound.Canonical(tare + 15)), new Mass(pound.Canonical(tare)), Given.Turns(40));
            AssertQuiet(Given.Test(one) with { Scale = scale }, SharedCodes.CoarseScale);
        }
    }

    // 17 kg are 850 divisions of 20 g: enough for 3 %, and for 0.9 % 907 are asked for.
    [Fact]
    public void CoarseScale_FinePrecisionWanted_AsksForMoreDivisions()
    {
        var test = Given.Test(Given.Net(17, 47));

        AssertQuiet(test, SharedCodes.CoarseScale);
        Assert.Contains(
            "only 850 divisions of 0.02 kg; 907 or more are better, a catch of 18.14 kg",
            Detail(
                test with
                {
                    Limits = new CatchTestLimits { WantedPrecision = 0.009, Tolerance = 0.02 },
                },
                SharedCodes.CoarseScale
            ),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void CoarseScale_FewDivisions_IsNotedWithTheirNumber() =>
        Assert.Contains(
            "only 340 divisions of 0.05 kg",
            Detail(
                Given.Test(Given.Net(17, 47)) with
                {
                    Scale = Given.Platform with { Division = new Mass(0.05) },
                },
                SharedCodes.CoarseScale
            ),
            StringComparison.Ordinal
        );

    [Fact]
    public void CoarseScale_FiveHundredDivisions_IsQuiet() =>
        AssertQuiet(Given.Test(Given.Weighed(16.1, 6.1, 27)), SharedCodes.CoarseScale);

    [Fact]
    public void LoadBeyondClass_MoreIntervalsThanTheClassCanHave_Warns()
    {
        var scale = new Scale { Division = new Mass(0.005), AccuracyClass = AccuracyClass.IIII };

        Assert.Equal(Severity.Warning, Only(Given.Test(Given.Net(17, 47)) with { Scale = scale }, CatchTestCodes.LoadBeyondClass).Severity);
    }

    [Fact]
    public void LoadBeyondClass_ScaleJudgedByItsCheck_IsQuiet()
    {
        var scale = new Scale
        {
            Division = new Mass(0.005),
            AccuracyClass = AccuracyClass.IIII,
            KnownError = new KnownScaleError(0, 0.001),
        };

        AssertQuiet(Given.Test(Given.Net(17, 47)) with { Scale = scale }, CatchTestCodes.LoadBeyondClass);
    }

    [Fact]
    public void ScaleDominates_SpanWiderThanTheCatches_IsNoted()
    {
        var scale = Given.Platform with { StatedAccuracy = new Mass(0.4) };

        Assert.Equal(Severity.Note, Only(TwoCatches with { Scale = scale }, CatchTestCodes.ScaleDominates).Severity);
    }

    [Fact]
    public void EntryResolutionMatters_RoundingCostsAFifthOfTheTolerance_Warns()
    {
        var test = TwoCatches.InForce(0.342) with { ControllerEntry = ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), 1) };

        Assert.Contains("0.4 kg/rev, which is 10.3 % above", Detail(test, SharedCodes.EntryResolutionMatters), StringComparison.Ordinal);
    }

    [Fact]
    public void EntryResolutionMatters_FineEntry_IsQuiet() =>
        AssertQuiet(
            TwoCatches.InForce(0.342) with
            {
                ControllerEntry = ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), 3),
            },
            SharedCodes.EntryResolutionMatters
        );

    // A controller with too few decimals would be told zero and apply nothing, so nothing is offered for typing in.
    [Fact]
    public void EntryResolutionMatters_ValueRoundsToZero_OffersNoNumberAndStops()
    {
        var test = Given.Test(Given.Net(4, 130)) with
        {
            ControllerEntry = ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), 1),
            Material = ProductMaterial.SmallSeed,
        };
        var result = (test with { Limits = new CatchTestLimits { WantedPrecision = 0.2 } }).Evaluated();

        Assert.Equal(Verdict.Adopt, result.Decision.Verdict);
        Assert.Null(result.Enter);
        var finding = Assert.Single(result.Findings, each => each.Code == SharedCodes.EntryResolutionMatters);
        Assert.Equal(Severity.Stop, finding.Severity);
        Assert.Contains("could only take 0", finding.Detail.InMetric(), StringComparison.Ordinal);
        Assert.Contains("Adopt 0.03077 kg/rev", result.Headline.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void FirstCatchLow_LowFirstCatch_WarnsAndSaysHowFar() =>
        Assert.Contains(
            "4.0 % below the others",
            Detail(Given.PureTest(0.3456, 0.36, 0.3601, 0.3599), CatchTestCodes.FirstCatchLow),
            StringComparison.Ordinal
        );

    // The verdict already names a stray beyond the tolerance; a smaller one is a finding.
    [Fact]
    public void StrayCatch_WithinTheTolerance_IsAFindingAndNotTheVerdict()
    {
        var result = Given.PureTest(0.36, 0.36, 0.36, 0.36, 0.3425).Evaluated();

        Assert.True(result.Agreement.HasStray);
        Assert.NotEqual(Verdict.Investigate, result.Decision.Verdict);
        Assert.Contains(
            "Catch 5 stands apart",
            Assert.Single(result.Findings, each => each.Code == CatchTestCodes.StrayCatch).Detail.InMetric(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void CatchesScatterMoreThanExpected_WideCatches_Warns() =>
        Assert.Contains(
            "more than a repeatability of 1 % explains",
            Detail(Given.PureTest(0.98, 1.02), SharedCodes.CatchesScatterMoreThanExpected),
            StringComparison.Ordinal
        );

    [Fact]
    public void TrendOverCatches_RisingCatches_WarnsWithTheDirection()
    {
        Assert.Contains(
            "rise by 2.0 %",
            Detail(Given.PureTest(0.96, 0.98, 1.00, 1.02, 1.04), CatchTestCodes.TrendOverCatches),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "fall by 2.0 %",
            Detail(Given.PureTest(1.04, 1.02, 1.00, 0.98, 0.96), CatchTestCodes.TrendOverCatches),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void AdditiveOffset_MassMissingFromEveryCatch_WarnsWithItsSize()
    {
        var test = new CatchTestQuestion
        {
            Catches = [.. ((double[])[20, 40, 60]).Select(n => Given.Net(0.36 * n - 0.5, n, Given.NoResolution))],
            Scale = Given.Perfect,
            Limits = Given.OnePercent,
        };

        Assert.Contains("0.5 kg missing in each", Detail(test, CatchTestCodes.AdditiveOffset), StringComparison.Ordinal);
    }

    private static Finding Only(CatchTestQuestion test, FindingCode code) =>
        Assert.Single(test.Evaluated().Findings, finding => finding.Code == code);

    private static string Detail(CatchTestQuestion test, FindingCode code) => Only(test, code).Detail.InMetric();

    private static void AssertQuiet(CatchTestQuestion test, FindingCode code) =>
        Assert.DoesNotContain(test.Evaluated().Findings, finding => finding.Code == code);
}
