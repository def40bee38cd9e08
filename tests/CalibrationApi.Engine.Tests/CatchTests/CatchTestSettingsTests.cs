using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Repeatability;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>Tolerance and wanted precision that cannot both be met are refused, with the reason.</summary>
public sealed class SettingsAtOddsTests
{
    private static readonly CatchTest TwoCatches = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8));

    // Best case: change zero, u = U_wanted / 1.96 with 1 % from day to day; 1.96 sqrt(0.0153^2 + 0.01^2) = 3.58 %.
    [Theory]
    [InlineData(0.035, true)]
    [InlineData(0.0360, false)]
    [InlineData(0.05, false)]
    public void Evaluate_ToleranceThatTheWantedPrecisionCannotShow_IsRefused(double tolerance, bool refused) =>
        Assert.Equal(refused, !Outcome(new CatchTestLimits { Tolerance = tolerance }).IsAnswered);

    [Fact]
    public void Evaluate_Refusal_NamesTheMemberAndBothSettings()
    {
        var refusal = Assert.Single(Outcome(new CatchTestLimits { Tolerance = 0.02, WantedPrecision = 0.04 }).Refusals);

        Assert.Equal(RefusalCode.SettingsAtOdds, refusal.Code);
        Assert.Equal("wantedPrecision", refusal.Member);
        var sentence = refusal.Detail.InMetric();
        Assert.Contains("2 %", sentence, StringComparison.Ordinal);
        Assert.Contains("4 %", sentence, StringComparison.Ordinal);
    }

    // Equal to the last bit on paper, a rounding apart in binary: exactly met is met.
    [Theory]
    [InlineData(0.03)]
    [InlineData(0.02)]
    [InlineData(0.07)]
    public void Evaluate_ToleranceEqualToThePrecisionWithoutDayToDay_IsAccepted(double both) =>
        Assert.True(Outcome(new CatchTestLimits { Tolerance = both, WantedPrecision = both, DayToDay = 0 }).IsAnswered);

    [Fact]
    public void Evaluate_LargerDayToDayComponent_PutsTheSettingsAtOdds()
    {
        Assert.True(Outcome(new CatchTestLimits { DayToDay = 0.01 }).IsAnswered);
        Assert.False(Outcome(new CatchTestLimits { DayToDay = 0.03 }).IsAnswered);
    }

    [Fact]
    public void Evaluate_NothingInForce_AsksForNoTolerance()
    {
        var limits = new CatchTestLimits { Tolerance = 0.001 };

        Assert.True(CatchTestEvaluation.Evaluate(TwoCatches with { Limits = limits }).IsAnswered);
        Assert.True(CatchTestEvaluation.Evaluate(TwoCatches.StartingFrom(0.35) with { Limits = limits }).IsAnswered);
    }

    [Fact]
    public void Evaluate_Defaults_AreNotAtOdds() => Assert.True(Outcome(new CatchTestLimits()).IsAnswered);

    private static Outcome<CatchTestResult> Outcome(CatchTestLimits limits) =>
        CatchTestEvaluation.Evaluate(TwoCatches.InForce(0.342) with { Limits = limits });
}

/// <summary>An answer lists every default it used, with value and origin.</summary>
public sealed class CatchTestAssumptionTests
{
    private static readonly CatchTest TwoCatches = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8));

    [Fact]
    public void Evaluate_NothingStated_ListsEveryDefaultInUse()
    {
        var assumptions = TwoCatches.InForce(0.342).Evaluated().Assumptions;

        Assert.Equal(
            ["repeatability", "scaleLimit", "dayToDay", "secondCatchChange", "tolerance", "wantedPrecision"],
            assumptions.Select(assumption => assumption.Name));
        Assert.All(assumptions, assumption => Assert.False(string.IsNullOrWhiteSpace(assumption.Origin)));
    }

    [Theory]
    [InlineData("repeatability", 0.01, "judgement")]
    [InlineData("dayToDay", 0.01, "judgement")]
    [InlineData("secondCatchChange", 0.10, "common practice")]
    [InlineData("tolerance", 0.05, "published acceptance limit")]
    [InlineData("wantedPrecision", 0.03, "judgement")]
    public void Evaluate_Default_ComesWithItsValueAndOrigin(string name, double value, string origin)
    {
        var assumption = Single(TwoCatches.InForce(0.342), name);

        Assert.Equal(new Ratio(value), assumption.Value);
        Assert.Contains(origin, assumption.Origin, StringComparison.Ordinal);
    }

    [Fact]
    public void Evaluate_NothingToCompareWith_ListsNothingAboutChange()
    {
        var names = TwoCatches.Evaluated().Assumptions.Select(assumption => assumption.Name).ToArray();

        Assert.DoesNotContain("dayToDay", names);
        Assert.DoesNotContain("secondCatchChange", names);
    }

    [Fact]
    public void Evaluate_EverythingStated_ListsTheScaleOnly()
    {
        var test = TwoCatches.InForce(0.342) with
        {
            Limits = new CatchTestLimits
            {
                Tolerance = 0.06,
                WantedPrecision = 0.03,
                SecondCatchChange = 0.12,
                DayToDay = 0.005,
                Repeatability = 0.008,
                RepeatabilityDegreesOfFreedom = 9,
            },
        };

        Assert.Equal(["scaleLimit"], test.Evaluated().Assumptions.Select(assumption => assumption.Name));
    }

    [Fact]
    public void Evaluate_RepeatabilityStatedWithoutItsWorth_ListsTheDefaultDegreesOfFreedom()
    {
        var test = TwoCatches with { Limits = new CatchTestLimits { Repeatability = 0.008 } };

        var assumption = Single(test, "repeatabilityDegreesOfFreedom");
        Assert.Contains("4 degrees of freedom", assumption.Origin, StringComparison.Ordinal);
        Assert.Contains("judgement", assumption.Origin, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(ProductMaterial.Dusty, 0.03)]
    [InlineData(null, 0.01)]
    public void Evaluate_Material_DecidesTheAssumedRepeatability(ProductMaterial? material, double expected) =>
        Assert.Equal(new Ratio(expected), Single(TwoCatches with { Material = material }, "repeatability").Value);

    // One prior serves all catches, so the smallest one decides.
    [Fact]
    public void Evaluate_OneSmallCatch_DecidesTheAssumedRepeatability() => Assert.Equal(
        new Ratio(0.02), Single(Given.Test(Given.Net(17, 47), Given.Net(4, 11)), "repeatability").Value);

    [Fact]
    public void Evaluate_ClassedScale_ListsItsLimitAtTheLoad()
    {
        var assumption = Single(TwoCatches, "scaleLimit");

        Assert.Equal(0.04, Assert.IsType<Mass>(assumption.Value).Kilograms, 1e-12);
        Assert.Contains("OIML R 76, class III, in service", assumption.Origin, StringComparison.Ordinal);
    }

    [Fact]
    public void Evaluate_CheckedScale_ListsTheUncertaintyOfItsError()
    {
        var scale = Given.Platform with { KnownError = new Engine.Weighing.KnownScaleError(0.01, 0.0005) };

        var names = (TwoCatches with { Scale = scale }).Evaluated().Assumptions.Select(assumption => assumption.Name).ToArray();
        Assert.Contains("scaleError", names);
        Assert.DoesNotContain("scaleLimit", names);
    }

    [Theory]
    [InlineData(null, true)]
    [InlineData(false, false)]
    [InlineData(true, false)]
    public void Evaluate_ScaleOfTheOldValue_IsAssumedTheSameOnlyWhereNotStated(bool? fromAnotherScale, bool listed)
    {
        var names = TwoCatches.InForce(0.342, fromAnotherScale: fromAnotherScale).Evaluated().Assumptions.Select(assumption => assumption.Name);

        Assert.Equal(listed, names.Contains("valueInForce/fromAnotherScale"));
    }

    private static Assumption Single(CatchTest test, string name) =>
        Assert.Single(test.Evaluated().Assumptions, assumption => assumption.Name == name);
}
