using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.DriveWheelTurns;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.DriveWheelTurns;

/// <summary>The scenario is invented: a drill of 3 m with 20 outlets and a target of 160 kg/ha.</summary>
public sealed class DriveWheelEvaluationTests
{
    // 58 turns of 2.315 m on 3 m are 402.81 m2; 160 kg/ha on them are 6.44496 kg.
    private const double OnTarget = 6.44496;

    private static DriveWheelQuestion Drill(params double[] caught) =>
        new()
        {
            Wheel = new WheelMeasure(new Length(2.315), WheelOrigin.Circumference),
            Width = new Length(3),
            Outlets = 20,
            TargetRate = new MassPerArea(0.016),
            Areas = [new Area(1000)],
            Tests = [.. caught.Select(mass => TurnTest.Together(58, new Mass(mass)))],
        };

    [Fact]
    public void Turns_ForATenthOfAHectare_ComeWithTheCatchToExpect()
    {
        var turns = Assert.Single(DriveWheelEvaluation.Evaluate(Drill()).Turns);

        NearlyEqual.Assert(1000 / (2.315 * 3), turns.Turns);
        NearlyEqual.Assert(1000.0 / 3, turns.Distance.Metres);
        NearlyEqual.Assert(16, turns.Total!.Value.Kilograms);
        NearlyEqual.Assert(0.8, turns.PerOutlet!.Value.Kilograms);
        Assert.Equal(144, turns.WholeTurns);
        NearlyEqual.Assert(144 * 2.315 * 3 * 0.016, turns.TotalOfWholeTurns!.Value.Kilograms);
    }

    [Fact]
    public void Turns_OfATinyArea_AreAtLeastOneWhole() =>
        Assert.Equal(1, DriveWheelEvaluation.Evaluate(Drill() with { Areas = [new Area(1)] }).Turns[0].WholeTurns);

    [Theory]
    [InlineData(new[] { OnTarget, OnTarget, OnTarget }, DriveWheelVerdict.Keep, "within-tolerance")]
    [InlineData(new[] { OnTarget * 1.045 }, DriveWheelVerdict.Repeat, "rate-not-shown")]
    [InlineData(new[] { OnTarget * 1.08, OnTarget * 1.08 }, DriveWheelVerdict.Correct, "rate-off-target")]
    [InlineData(new[] { OnTarget * 0.8 }, DriveWheelVerdict.Correct, "rate-off-target")]
    [InlineData(new[] { OnTarget * 100 }, DriveWheelVerdict.Investigate, "rate-implausible")]
    public void TurnTests_AgainstTheirTarget_AreDecided(double[] caught, DriveWheelVerdict verdict, string reason)
    {
        var result = DriveWheelEvaluation.Evaluate(Drill(caught));

        Assert.Equal(verdict, result.Verdict);
        Assert.Equal(reason, Assert.Single(result.Reasons).Code.Word);
    }

    [Fact]
    public void TurnTest_WithoutATarget_SaysSo()
    {
        var result = DriveWheelEvaluation.Evaluate(Drill(OnTarget) with { TargetRate = null });

        Assert.Equal(DriveWheelVerdict.NoTarget, result.Verdict);
        Assert.Empty(result.Reasons);
        NearlyEqual.Assert(0.016, result.Rate!.Value);
    }

    // The wheel is to a turn test what the meter is to a catch test, so the mass per turn has the uncertainty of a catch test;
    // an exact circumference adds nothing.
    [Fact]
    public void Rate_OfAnExactWheel_HasTheUncertaintyOfTheCatchTest()
    {
        var question = Drill(6.4, 6.5) with
        {
            Scale = Given.Platform,
            Wheel = new WheelMeasure(new Length(2.315), WheelOrigin.Circumference, 0),
        };
        var rate = DriveWheelEvaluation.Evaluate(question).Rate!;
        var caught = new CatchTestQuestion { Catches = [Given.Net(6.4, 58), Given.Net(6.5, 58)], Scale = Given.Platform }
            .Evaluated()
            .Estimate;

        NearlyEqual.Assert(caught.Value.Value / (2.315 * 3), rate.Value);
        NearlyEqual.Assert(caught.RelativeExpanded, rate.ExpandedUncertainty / rate.Value, 1e-9);
    }

    [Fact]
    public void Rate_OfAWheelReckonedFromItsDiameter_IsLessSureAndWarnedOf()
    {
        var measured = DriveWheelEvaluation.Evaluate(Drill(OnTarget));
        var reckoned = DriveWheelEvaluation.Evaluate(Drill(OnTarget) with { Wheel = WheelMeasure.OfDiameter(new Length(2.315 / Math.PI)) });

        NearlyEqual.Assert(measured.Rate!.Value, reckoned.Rate!.Value);
        Assert.True(reckoned.Rate.ExpandedUncertainty > measured.Rate.ExpandedUncertainty);
        Assert.Contains(reckoned.Findings, finding => finding.Code == DriveWheelCodes.CircumferenceFromDiameter);
        Assert.Contains(reckoned.Assumptions, assumption => assumption.Name == "wheel/circumference");
        Assert.DoesNotContain(measured.Findings, finding => finding.Code == DriveWheelCodes.CircumferenceFromDiameter);
    }

    [Fact]
    public void Rate_OfAWheelThatSkids_IsLowerInTheField()
    {
        var skidding = DriveWheelEvaluation.Evaluate(Drill(OnTarget) with { Skid = 0.0453 });

        NearlyEqual.Assert(0.016 * 0.9547, skidding.Rate!.Value);
        NearlyEqual.Assert(1 / 0.9547, skidding.Correction!.Factor);
    }

    [Fact]
    public void Skid_BesideAMeasuredRun_IsAskedAbout()
    {
        var question = Drill() with { Wheel = WheelMeasure.OfRun(new Length(46.3), 20), Skid = 0.04 };

        Assert.Contains(DriveWheelEvaluation.Evaluate(question).Findings, finding => finding.Code == DriveWheelCodes.SkidCountedTwice);
        Assert.DoesNotContain(DriveWheelEvaluation.Evaluate(question with { Skid = 0 }).Findings, finding =>
            finding.Code == DriveWheelCodes.SkidCountedTwice
        );
    }

    [Fact]
    public void SomeOutlets_StandForAllAndWidenTheInterval()
    {
        var all = DriveWheelEvaluation.Evaluate(Drill(OnTarget));
        var five = DriveWheelEvaluation.Evaluate(Drill(OnTarget / 4) with { OutletsCaught = 5 });

        NearlyEqual.Assert(all.Rate!.Value, five.Rate!.Value);
        NearlyEqual.Assert(OnTarget, five.Tests[0].Metered.Kilograms);
        Assert.True(five.Rate.ExpandedUncertainty > all.Rate.ExpandedUncertainty);
    }

    [Fact]
    public void Outlets_OfWhichNobodySaysHowManyWereCaught_AreAssumedToBeAll()
    {
        Assert.Contains(DriveWheelEvaluation.Evaluate(Drill(OnTarget)).Assumptions, assumption => assumption.Name == "outletsCaught");
        Assert.DoesNotContain(DriveWheelEvaluation.Evaluate(Drill(OnTarget) with { OutletsCaught = 20 }).Assumptions, assumption =>
            assumption.Name == "outletsCaught"
        );
    }

    [Fact]
    public void Outlets_WeighedApart_AreComparedWithTheirMean()
    {
        var question = Drill() with
        {
            OutletsCaught = 4,
            Tests =
            [
                TurnTest.Apart(58, [new Mass(0.32), new Mass(0.325), new Mass(0.31), new Mass(0.29)]),
                TurnTest.Apart(58, [new Mass(0.32), new Mass(0.325), new Mass(0.32), new Mass(0.28)]),
            ],
        };
        var result = DriveWheelEvaluation.Evaluate(question);

        Assert.Equal([true, true, true, false], result.Outlets.Select(outlet => outlet.Within));
        NearlyEqual.Assert(0.57 / 0.6225 - 1, result.Outlets[3].Deviation, 1e-9);
        Assert.Contains(
            "outlet 4",
            Assert.Single(result.Findings, finding => finding.Code == DriveWheelCodes.OutletOffMean).Detail.InMetric(),
            StringComparison.Ordinal
        );
    }

    // 19 of 20 outlets were not caught and are said to differ by 20 %: the rate found is right on target, and nobody knows.
    [Fact]
    public void TurnTest_OfOneOutletThatMayNotStandForTheOthers_ChangesNothingAndAsksForMoreOutlets()
    {
        var result = DriveWheelEvaluation.Evaluate(Drill(OnTarget / 20) with { OutletsCaught = 1, OutletSpread = 0.2 });

        Assert.True(result.Acceptance!.Probability < 0.5);
        Assert.Equal(DriveWheelVerdict.Repeat, result.Verdict);
        Assert.Equal(TestObstacle.Outlets, result.Obstacle);
        Assert.Contains("catch from more outlets", result.Headline.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void TurnTests_ThatDoNotShowADeviation_DoNotMoveTheSetting()
    {
        var result = DriveWheelEvaluation.Evaluate(Drill(OnTarget * 1.13, OnTarget * 0.99));

        Assert.True(result.Acceptance!.Probability < 0.5);
        Assert.True(Math.Abs(result.Acceptance.Deviation.Value) < result.Acceptance.Deviation.ExpandedUncertainty);
        Assert.Equal(DriveWheelVerdict.Repeat, result.Verdict);
        Assert.Null(result.Obstacle);
        Assert.Contains("make another turn test", result.Headline.InMetric(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.03, 0.001, TestObstacle.Wheel)]
    [InlineData(0.001, 0.4, TestObstacle.Scale)]
    public void Obstacle_IsWhatAllTestsHaveInCommon(double wheel, double accuracy, TestObstacle obstacle)
    {
        var question = Drill(OnTarget, OnTarget) with
        {
            Wheel = new WheelMeasure(new Length(2.315), WheelOrigin.Circumference, wheel),
            Scale = new Scale { Division = new Mass(0.001), StatedAccuracy = new Mass(accuracy) },
        };

        Assert.Equal(obstacle, DriveWheelEvaluation.Evaluate(question).Obstacle);
    }

    [Fact]
    public void Outlet_ThatGaveNothing_IsToBeClearedBeforeTheSettingIsChanged()
    {
        var question = Drill() with
        {
            OutletsCaught = 4,
            Tests = [TurnTest.Apart(58, [new Mass(0.32), new Mass(0), new Mass(0.32), new Mass(0.32)])],
        };
        var result = DriveWheelEvaluation.Evaluate(question);

        Assert.Equal(DriveWheelVerdict.Investigate, result.Verdict);
        Assert.Equal(DriveWheelCodes.OutletGaveNothing, Assert.Single(result.Reasons).Code);
        Assert.StartsWith("Outlet 2 of those caught gave nothing.", result.Headline.InMetric(), StringComparison.Ordinal);
        // The mean is that of three; the others are not to blame.
        Assert.DoesNotContain(result.Findings, finding => finding.Code == DriveWheelCodes.OutletOffMean);
        var bare = DriveWheelEvaluation.Evaluate(question with { TargetRate = null });
        Assert.Contains(bare.Findings, finding => finding.Code == DriveWheelCodes.OutletGaveNothing);
    }

    [Fact]
    public void Outlets_OfWhichManyAreOff_AreToldInOneSentence()
    {
        var question = Drill() with
        {
            OutletsCaught = 4,
            Tests = [TurnTest.Apart(58, [new Mass(0.30), new Mass(0.36), new Mass(0.32), new Mass(0.32)])],
        };
        var finding = Assert.Single(DriveWheelEvaluation.Evaluate(question).Findings, one => one.Code == DriveWheelCodes.OutletOffMean);

        Assert.StartsWith(
            "2 of 4 outlets are beyond the limit of 5 %; furthest off, outlet 2 of those caught gives 10.8 % more",
            finding.Detail.InMetric(),
            StringComparison.Ordinal
        );
    }

    // 20 readings of a division of 20 g: their roundings add to sqrt(20) 20 g sqrt(1/6), one of the sum would be 20 g sqrt(1/6).
    [Fact]
    public void Outlets_WeighedApart_CarryTheRoundingOfEveryReading()
    {
        var question = Drill() with
        {
            Wheel = new WheelMeasure(new Length(2.315), WheelOrigin.Circumference, 0),
            Scale = new Scale { Division = new Mass(0.02), StatedAccuracy = new Mass(1e-9) },
            TurnResolution = new Revolutions(0),
            Repeatability = 1e-6,
        };
        var apart = DriveWheelEvaluation
            .Evaluate(question with { Tests = [TurnTest.Apart(58, [.. Enumerable.Repeat(new Mass(OnTarget / 20), 20)])] })
            .Rate!;
        var together = DriveWheelEvaluation.Evaluate(question with { Tests = [TurnTest.Together(58, new Mass(OnTarget))] }).Rate!;

        NearlyEqual.Assert(together.ExpandedUncertainty * Math.Sqrt(20), apart.ExpandedUncertainty, 1e-6);
        NearlyEqual.Assert(1.959963984540054 * Math.Sqrt(20.0 / 6) * 0.02 / OnTarget, apart.ExpandedUncertainty / apart.Value, 1e-6);
    }

    [Fact]
    public void RateOfStatedMeter_FarFromTheTarget_SaysWhatWouldBeNeeded()
    {
        var question = Drill() with { MeterRevolutionsPerTurn = 0.5, MassPerRevolution = new MassPerRevolution(0.15) };
        var finding = Assert
            .Single(DriveWheelEvaluation.Evaluate(question).Findings, one => one.Code == DriveWheelCodes.RateOffTarget)
            .Detail.InMetric();

        Assert.Contains("0.2222 kg/rev would be needed in place of 0.15 kg/rev", finding, StringComparison.Ordinal);
        Assert.DoesNotContain("wrong way round", finding, StringComparison.Ordinal);
    }

    // 160 kg/ha on the 6.945 m2 of a turn are 0.1111 kg, and the meter delivers 0.15 kg in a revolution.
    [Theory]
    [InlineData(null)]
    [InlineData(0.5)]
    public void NeededMeterRevolutionsPerTurn_OfARateAndAMeter_GivesTheTargetBack(double? gearing)
    {
        var question = Drill() with { Areas = [], MassPerRevolution = new MassPerRevolution(0.15), MeterRevolutionsPerTurn = gearing };
        var result = DriveWheelEvaluation.Evaluate(question);
        var back = DriveWheelEvaluation.Evaluate(question with { MeterRevolutionsPerTurn = result.NeededMeterRevolutionsPerTurn });

        NearlyEqual.Assert(0.016 * 2.315 * 3 / 0.15, result.NeededMeterRevolutionsPerTurn!.Value, 1e-12);
        NearlyEqual.Assert(0.016, back.RateOfStatedMeter!.Value.KilogramsPerSquareMetre, 1e-15);
        Assert.Equal(
            gearing is null,
            result
                .Headline.InMetric()
                .StartsWith("Gear the meter to 0.741 revolutions per turn of the drive wheel for 160 kg/ha.", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void RateOfStatedMeter_WithAGearingTurnedRound_IsAskedAbout()
    {
        var question = Drill() with { MeterRevolutionsPerTurn = 2, MassPerRevolution = new MassPerRevolution(0.21) };
        var result = DriveWheelEvaluation.Evaluate(question with { Areas = [] });

        Assert.Contains(
            "With 0.5 meter revolutions per turn of the wheel it would be 151.2 kg/ha",
            Assert.Single(result.Findings, one => one.Code == DriveWheelCodes.RateOffTarget).Detail.InMetric(),
            StringComparison.Ordinal
        );
        Assert.Contains("3.8 times the target", result.Headline.InMetric(), StringComparison.Ordinal);
        Assert.DoesNotContain(DriveWheelEvaluation.Evaluate(question with { MeterRevolutionsPerTurn = 0.52 }).Findings, one =>
            one.Code == DriveWheelCodes.RateOffTarget
        );
    }

    [Fact]
    public void Outlets_ExactlyOnTheLimit_AreWithinIt() =>
        Assert.All(OutletCatch.Compare([new Mass(0.95), new Mass(1.05)], 0.05), outlet => Assert.True(outlet.Within));

    [Fact]
    public void Correction_OfTheSetting_IsTargetOverRate()
    {
        var result = DriveWheelEvaluation.Evaluate(
            Drill(OnTarget * 1.1, OnTarget * 1.1) with
            {
                Setting = 44,
                MeterRevolutionsPerTurn = 0.55,
            }
        );

        NearlyEqual.Assert(40, result.Correction!.Setting!.Value, 1e-9);
        NearlyEqual.Assert(0.5, result.Correction.MeterRevolutionsPerTurn!.Value, 1e-9);
        Assert.Contains("from 44 to about 40", result.Headline.InMetric(), StringComparison.Ordinal);
        Assert.DoesNotContain(result.Findings, finding => finding.Code == DriveWheelCodes.LargeCorrection);
    }

    [Theory]
    [InlineData(1.6)]
    [InlineData(0.6)]
    public void Correction_FarFromOne_IsWarnedOf(double factor) =>
        Assert.Contains(DriveWheelEvaluation.Evaluate(Drill(OnTarget * factor)).Findings, finding =>
            finding.Code == DriveWheelCodes.LargeCorrection
        );

    [Fact]
    public void NeededPerMeterRevolution_WithTheGearing_GivesTheTargetBack()
    {
        var result = DriveWheelEvaluation.Evaluate(Drill() with { MeterRevolutionsPerTurn = 0.5 });
        var back = DriveWheelEvaluation.Evaluate(
            Drill() with
            {
                MeterRevolutionsPerTurn = 0.5,
                MassPerRevolution = result.NeededPerMeterRevolution,
            }
        );

        NearlyEqual.Assert(0.016, back.RateOfStatedMeter!.Value.KilogramsPerSquareMetre, 1e-15);
        NearlyEqual.Assert(result.Turns[0].Turns / 2, result.Turns[0].MeterRevolutions!.Value);
    }

    [Fact]
    public void TargetRate_OfManyTonsPerHectare_IsWarnedOf() =>
        Assert.Contains(DriveWheelEvaluation.Evaluate(Drill() with { TargetRate = new MassPerArea(1.6) }).Findings, finding =>
            finding.Code == DriveWheelCodes.RateImplausible
        );

    [Fact]
    public void TurnTests_ThatDiffer_AreSaidToScatter() =>
        Assert.Contains(DriveWheelEvaluation.Evaluate(Drill(OnTarget * 0.9, OnTarget * 1.1)).Findings, finding =>
            finding.Code == SharedCodes.CatchesScatterMoreThanExpected
        );

    [Fact]
    public void Skid_OfOneOrMore_IsNoWheelThatTurns() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => DriveWheelEvaluation.Evaluate(Drill() with { Skid = 1 }));

    [Fact]
    public void Correction_WithoutASetting_IsItsFactorAlone()
    {
        var correction = SettingCorrection.Of(new MassPerArea(0.016), new MassPerArea(0.0128));

        NearlyEqual.Assert(1.25, correction.Factor);
        Assert.Null(correction.Setting);
        Assert.Null(correction.MeterRevolutionsPerTurn);
    }

    [Fact]
    public void Apart_OutletsOfOneTest_AreCaughtTogether() =>
        Assert.Equal(0.31 + 0.33 + 0.32, TurnTest.Apart(58, [new Mass(0.31), new Mass(0.33), new Mass(0.32)]).Caught.Kilograms);
}
