using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>What a headline that says keep or adopt must not leave out. Invented tests.</summary>
public sealed class HeadlineQualificationTests
{
    private static readonly CatchTestQuestion Test = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8));

    private static readonly TestConditions Sowing = new()
    {
        TankLevel = new Ratio(0.6),
        Slope = new Ratio(0),
        FanSpeed = new RotationalSpeed(60),
    };

    [Theory]
    [InlineData(0.342)]
    [InlineData(0.3627)]
    public void Headline_ConditionsFarFromSowing_SaysSo(double inForce)
    {
        var test = Test.InForce(inForce) with { SowingConditions = Sowing };

        Assert.EndsWith(
            " But the tank level was not as in sowing: test again near the conditions of sowing.",
            Headline(test with { Conditions = Sowing with { TankLevel = new Ratio(0.05) } }),
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            " But the tank level, slope and fan speed were not as in sowing: test again near the conditions of sowing.",
            Headline(
                test with
                {
                    Conditions = new()
                    {
                        TankLevel = new Ratio(0.05),
                        Slope = new Ratio(0.1),
                        FanSpeed = new RotationalSpeed(40),
                    },
                }
            ),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("But", Headline(test with { Conditions = Sowing }), StringComparison.Ordinal);
        Assert.DoesNotContain("But", Headline(test), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.09, true)]
    [InlineData(0.10, false)]
    public void Headline_TankNearlyEmptyAndNothingSaidAboutSowing_SaysSo(double level, bool said)
    {
        var result = (Test.InForce(0.342) with { Conditions = new() { TankLevel = new Ratio(level) } }).Evaluated();

        Assert.Equal(
            said,
            result
                .Headline.InMetric()
                .EndsWith("But the tank was nearly empty: test again with more product in it.", StringComparison.Ordinal)
        );
        Assert.Equal(
            said,
            result.Findings.Any(finding =>
                finding.Detail.InMetric().StartsWith("The tank was nearly empty in the test (9 %)", StringComparison.Ordinal)
            )
        );
    }

    // Who sows with a nearly empty tank tests with one.
    [Fact]
    public void Headline_TankNearlyEmptyAsInSowing_IsQuiet() =>
        Assert.DoesNotContain(
            "But",
            Headline(
                Test.InForce(0.342) with
                {
                    Conditions = new() { TankLevel = new Ratio(0.05) },
                    SowingConditions = new() { TankLevel = new Ratio(0.1) },
                }
            ),
            StringComparison.Ordinal
        );

    [Fact]
    public void Headline_ControllerWithTooFewDecimals_SaysWhatItCosts()
    {
        var unit = UnitTable.Get("kg/rev");

        Assert.EndsWith(
            "Adopt 0.4 kg/rev. But the controller takes too few decimals: that is 10.3 % above the value found.",
            Headline(Test with { ControllerEntry = ControllerEntry.PerRevolutionOf(unit, 1) }),
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            "But with 0 decimals in kg/rev the controller could only take 0: choose a form or a unit with more digits first.",
            Headline(Test with { ControllerEntry = ControllerEntry.PerRevolutionOf(unit, 0) }),
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            "Adopt 0.363 kg/rev.",
            Headline(Test with { ControllerEntry = ControllerEntry.PerRevolutionOf(unit, 3) }),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Headline_BothAtOnce_SaysBoth()
    {
        var headline = Headline(
            Test with
            {
                ControllerEntry = ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), 1),
                Conditions = new() { TankLevel = new Ratio(0.02) },
            }
        );

        Assert.EndsWith(
            "more product in it. But the controller takes too few decimals: that is 10.3 % above the value found.",
            headline,
            StringComparison.Ordinal
        );
    }

    // What is not to be used anyway needs no second reason.
    [Fact]
    public void Headline_TestThatIsNotToBeUsed_StandsAlone() =>
        Assert.DoesNotContain(
            "But",
            Headline(
                Given.Test(Given.Delivering(0.30), Given.Delivering(0.42)).InForce(0.36) with
                {
                    Conditions = new() { TankLevel = new Ratio(0.02) },
                }
            ),
            StringComparison.Ordinal
        );

    private static string Headline(CatchTestQuestion test) => test.Evaluated().Headline.InMetric();
}
