using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.History;

namespace CalibrationApi.Engine.Tests.History;

/// <summary>What of a test is not as its plan says.</summary>
public sealed class TestAgainstPlanTests
{
    private static readonly NamedMeter Tested = new("1", "wheat", "coarse roller", "low gear", "lot A");

    [Fact]
    public void Difference_AsPlanned_IsNone() => Assert.Null(TestAgainstPlan.Difference([Tested with { Meter = "2" }, Tested], Tested));

    [Fact]
    public void Difference_PlanThatNamesNoLot_TakesAny() => Assert.Null(TestAgainstPlan.Difference([Tested with { Lot = null }], Tested));

    [Fact]
    public void Difference_MeterThatThePlanDoesNotHave_SaysWhich()
    {
        var finding = TestAgainstPlan.Difference([Tested with { Meter = "2" }], Tested)!;

        Assert.Equal((RecordedTestCodes.DiffersFromPlan, Severity.Warning), (finding.Code, finding.Severity));
        Assert.StartsWith("The plan has nothing for the meter 1.", finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("barley", "coarse roller", "low gear", "lot A", "another product")]
    [InlineData("wheat", "fine roller", "low gear", "lot A", "another element")]
    [InlineData("wheat", "coarse roller", null, "lot A", "another setting")]
    [InlineData("wheat", "coarse roller", "low gear", null, "another lot")]
    [InlineData("barley", "fine roller", "low gear", "lot A", "another product and another element")]
    public void Difference_OfOneMeter_NamesAllThatIsAnother(string product, string element, string? setting, string? lot, string others)
    {
        var finding = TestAgainstPlan.Difference([Tested], new NamedMeter("1", product, element, setting, lot))!;

        Assert.StartsWith($"The plan has {others} for this meter.", finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    // One meter may stand in a plan with a product for each tank.
    [Fact]
    public void Difference_MeterPlannedWithTwoProducts_ComparesTheOneTested() =>
        Assert.Null(TestAgainstPlan.Difference([Tested with { Product = "barley", Element = "fine roller" }, Tested], Tested));
}
