using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Catches;

/// <summary>Conditions of the test against those of sowing. How far they may differ is judgement; no published source.</summary>
public sealed class TestConditionsTests
{
    private static readonly TestConditions Usual = new()
    {
        TankLevel = new Ratio(0.8),
        TankPressure = new Pressure(3000),
        Slope = new Ratio(0),
        ProductMoisture = new Ratio(0.12),
        AirTemperature = new Temperature(288),
        FanSpeed = new RotationalSpeed(60),
    };

    public static TheoryData<string, TestConditions> Different =>
        new()
        {
            { "tank level", Usual with { TankLevel = new Ratio(0.4) } },
            { "tank pressure", Usual with { TankPressure = new Pressure(4500) } },
            { "slope", Usual with { Slope = new Ratio(-0.06) } },
            { "moisture of the product", Usual with { ProductMoisture = new Ratio(0.16) } },
            { "air temperature", Usual with { AirTemperature = new Temperature(303) } },
            { "fan speed", Usual with { FanSpeed = new RotationalSpeed(70) } },
        };

    [Fact]
    public void DifferingFrom_SameConditions_IsQuiet() => Assert.Empty(Usual.DifferingFrom(Usual));

    [Fact]
    public void DifferingFrom_NothingStatedOnOneSide_IsQuiet()
    {
        Assert.Empty(new TestConditions().DifferingFrom(Usual));
        Assert.Empty(Usual.DifferingFrom(new TestConditions()));
    }

    [Theory]
    [MemberData(nameof(Different))]
    public void DifferingFrom_OneConditionFarOff_IsWarnedOfByName(string name, TestConditions other)
    {
        foreach (var finding in (Finding[])[Assert.Single(Usual.DifferingFrom(other)), Assert.Single(other.DifferingFrom(Usual))])
        {
            Assert.Equal(CatchCodes.ConditionsDiffer, finding.Code);
            Assert.Equal(Severity.Warning, finding.Severity);
            Assert.StartsWith($"The {name} in the test (", finding.Detail.InMetric(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void DifferingFrom_EverythingFarOff_WarnsOfEach()
    {
        var other = new TestConditions
        {
            TankLevel = new Ratio(0.1),
            TankPressure = new Pressure(9000),
            Slope = new Ratio(0.1),
            ProductMoisture = new Ratio(0.2),
            AirTemperature = new Temperature(270),
            FanSpeed = new RotationalSpeed(90),
        };

        Assert.Equal(6, Usual.DifferingFrom(other).Count());
    }

    [Fact]
    public void DifferingFrom_SmallDifferences_AreQuiet() =>
        Assert.Empty(
            Usual.DifferingFrom(
                new TestConditions
                {
                    TankLevel = new Ratio(0.6),
                    TankPressure = new Pressure(3300),
                    Slope = new Ratio(0.02),
                    ProductMoisture = new Ratio(0.13),
                    AirTemperature = new Temperature(295),
                    FanSpeed = new RotationalSpeed(63),
                }
            )
        );
}
