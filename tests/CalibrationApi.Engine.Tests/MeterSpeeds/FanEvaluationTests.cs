using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.MeterSpeeds;

/// <summary>Several products in one air stream: the limits of all hold at once.</summary>
public sealed class FanEvaluationTests
{
    private static readonly Speed[] Speeds = [new(2), new(3)];

    [Fact]
    public void FanSpeeds_TwoProducts_AreTheHighestMinimumToTheLowestMaximum()
    {
        var window = Of(3600, Product("clover", 2200, 3800), Product("phosphate", 3400, 4600)).FanSpeeds!;

        Assert.True(window.Exists);
        Assert.Equal((3400, "phosphate"), (Math.Round(window.Minimum!.Value.Rpm()), window.MinimumOf));
        Assert.Equal((3800, "clover"), (Math.Round(window.Maximum!.Value.Rpm()), window.MaximumOf));
    }

    [Fact]
    public void FanSpeeds_ThatDoNotMeet_NameBothProducts()
    {
        var result = Of(3600, Product("clover", 2200, 3300), Product("phosphate", 3400, 4600), Product("wheat", null, 5000));

        Assert.False(result.FanSpeeds!.Exists);
        var finding = Assert.Single(result.Findings, finding => finding.Code == MeterSpeedCodes.NoCommonFanWindow);
        Assert.Contains("phosphate", finding.Detail.InMetric(), StringComparison.Ordinal);
        Assert.Contains("clover", finding.Detail.InMetric(), StringComparison.Ordinal);
        Assert.DoesNotContain("wheat", finding.Detail.InMetric(), StringComparison.Ordinal);
        Assert.Equal("No setting of the fan suits all products.", result.Headline.InMetric());
    }

    [Fact]
    public void FanSpeeds_LimitsThatTouch_LeaveOneSpeed() =>
        Assert.True(Of(3400, Product("a", 2200, 3400), Product("b", 3400, 4600)).FanSpeeds!.Exists);

    [Fact]
    public void FanSpeeds_NoLimits_AreNotSaid()
    {
        var result = Of(3400, Product("a", null, null));

        Assert.Null(result.FanSpeeds);
        Assert.Empty(result.Findings);
        Assert.Equal("No limits of the fan are stated.", result.Headline.InMetric());
    }

    [Theory]
    [InlineData(2900, "outside-fan-window")]
    [InlineData(4100, "outside-fan-window")]
    [InlineData(3100, "near-fan-limit")]
    [InlineData(3000, "near-fan-limit")]
    [InlineData(3900, "near-fan-limit")]
    [InlineData(3450, null)]
    public void Findings_PlannedFanSpeed_IsHeldAgainstTheWindow(double rpm, string? expected) =>
        Assert.Equal(
            expected is null ? [] : [expected],
            Of(rpm, Product("clover", 3000, 4000)).Findings.Select(finding => finding.Code.Word)
        );

    [Fact]
    public void Findings_NarrowWindow_AreToldInOneSentence()
    {
        var finding = Assert.Single(Of(3600, Product("clover", 2200, 3800), Product("phosphate", 3400, 4600)).Findings);

        Assert.Contains("on both sides", finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_LimitWithoutItsPlan_AreNotPassedOver()
    {
        var result = FanEvaluation.Evaluate(
            new FanQuestion { AirFlow = new VolumeFlow(0.5), Products = [Product("clover", 2200, 3800)] },
            Speeds
        );

        Assert.Contains(result.Findings, finding => finding.Code == MeterSpeedCodes.FanLimitNotChecked);
    }

    [Fact]
    public void AirFlows_Limits_AreHeldLikeFanSpeeds()
    {
        var product = Product("clover", null, null) with { AirFlow = new(new VolumeFlow(0.4), new VolumeFlow(0.6)) };
        var result = FanEvaluation.Evaluate(new FanQuestion { AirFlow = new VolumeFlow(0.7), Products = [product] }, Speeds);

        Assert.Equal(0.4, result.AirFlows!.Minimum!.Value.CubicMetresPerSecond);
        var finding = Assert.Single(result.Findings);
        Assert.Equal(MeterSpeedCodes.OutsideFanWindow, finding.Code);
        Assert.Contains("2160 m3/h", finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    // 0.006 kg/m2 x 9 m x 3 m/s = 0.162 kg/s of one product, twice that of the other, in half a cubic metre a second.
    [Fact]
    public void Loads_HighestRatesAtTheFastestSpeed_AreSummedOverProducts()
    {
        var one = Product("one", null, null) with { Rates = [new(0), new(0.004), new(0.006)] };
        var two = Product("two", null, null) with { Rates = [new(0.012)] };
        var loads = FanEvaluation.Evaluate(new FanQuestion { AirFlow = new VolumeFlow(0.5), Products = [one, two] }, Speeds).Loads;

        Assert.Equal(
            [(2, false), (3, false), (2, true), (3, true)],
            loads.Select(load => ((int)load.GroundSpeed.MetresPerSecond, load.HighestRates))
        );
        NearlyEqual.Assert(0.162 + 0.324, loads[3].Total.Flow.KilogramsPerSecond);
        NearlyEqual.Assert((0.162 + 0.324) / 0.5, loads[3].Total.PerAir!.Value.KilogramsPerCubicMetre);
        NearlyEqual.Assert(0.004 * 9 * 2 / 0.5, loads[0].Products[0].Carried.PerAir!.Value.KilogramsPerCubicMetre);
    }

    [Fact]
    public void Loads_ConstantRatesAndOneSpeed_AreOneCorner()
    {
        var loads = FanEvaluation.Evaluate(new FanQuestion { Products = [Product("one", null, null)] }, [new Speed(2)]).Loads;

        Assert.Null(Assert.Single(loads).Total.PerAir);
    }

    [Fact]
    public void Evaluate_NothingToAnswer_IsRefusedAsACodingMistake()
    {
        Assert.Throws<ArgumentException>(() => FanEvaluation.Evaluate(new FanQuestion { Products = [] }, Speeds));
        Assert.Throws<ArgumentException>(() => FanEvaluation.Evaluate(new FanQuestion { Products = [Product("one", null, null)] }, []));
    }

    [Fact]
    public void Evaluate_MeterSpeedWithAFan_TellsItsWindowAndItsCautions()
    {
        var result = MeterSpeedEvaluation.Evaluate(
            Asked.Question([90], [9]) with
            {
                Fan = new FanQuestion { FanSpeed = Planned.Rpm(3400), Products = [Product("clover", 3000, 4000)] },
            }
        );

        Assert.Equal("Keep the fan at 3000 rpm to 4000 rpm.", result.Fan!.Headline.InMetric());
        Assert.DoesNotContain("fan", result.Headline.InMetric(), StringComparison.Ordinal);
        Assert.Contains(result.Cautions, caution => caution.Code == CautionCodes.StoredPressure);
        Assert.Empty(MeterSpeedEvaluation.Evaluate(Asked.Question([90], [9])).Cautions);
    }

    // Product that blocks the lines is worth more than the element: whoever reads the first sentence only has to know.
    [Fact]
    public void Evaluate_MeterSpeedWithAFanPlannedOutsideItsWindow_SaysInTheHeadlineWhereToKeepIt() =>
        Assert.EndsWith(
            "Keep the fan at 3000 rpm to 4000 rpm.",
            MeterSpeedEvaluation
                .Evaluate(
                    Asked.Question([90], [9]) with
                    {
                        Fan = new FanQuestion { FanSpeed = Planned.Rpm(2800), Products = [Product("clover", 3000, 4000)] },
                    }
                )
                .Headline.InMetric(),
            StringComparison.Ordinal
        );

    [Fact]
    public void Evaluate_MeterSpeedWithoutACommonWindow_SaysSoInTheHeadline()
    {
        var fan = new FanQuestion
        {
            FanSpeed = Planned.Rpm(3400),
            Products = [Product("clover", 2200, 3300), Product("phosphate", 3400, 4600)],
        };

        Assert.EndsWith(
            "No setting of the fan suits all products.",
            MeterSpeedEvaluation.Evaluate(Asked.Question([90], [9]) with { Fan = fan }).Headline.InMetric(),
            StringComparison.Ordinal
        );
    }

    private static FanResult Of(double rpm, params CarriedProduct[] products) =>
        FanEvaluation.Evaluate(new FanQuestion { FanSpeed = Planned.Rpm(rpm), Products = products }, Speeds);

    private static CarriedProduct Product(string name, double? least, double? most) =>
        new(
            name,
            new Length(9),
            [new MassPerArea(0.006)],
            new(least is { } low ? Planned.Rpm(low) : null, most is { } high ? Planned.Rpm(high) : null),
            default
        );
}
