using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.History;
using CalibrationApi.Engine.NewLots;
using CalibrationApi.Engine.ReferenceValues;

namespace CalibrationApi.Engine.Tests.History;

/// <summary>Values on record that a test is compared with.</summary>
public sealed class ValueOnRecordTests
{
    // 3, 4 and 12 parts are 13; without the first that of another lot takes its place.
    [Fact]
    public void UncertaintyOfLastTest_Parts_AddAsSquares()
    {
        Assert.Equal(0.05, ValueOnRecord.UncertaintyOfLastTest(0.03 * 0.03, 0.04, false), 1e-15);
        Assert.Equal(
            Math.Sqrt(0.05 * 0.05 + Math.Pow(PredictedValue.DefaultUncertainty, 2)),
            ValueOnRecord.UncertaintyOfLastTest(0.03 * 0.03, 0.04, true),
            1e-15
        );
    }

    [Theory]
    [InlineData("a", "a", null)]
    [InlineData(null, null, null)]
    [InlineData("a", null, "for only one of this test and the value in force")]
    [InlineData(null, "a", "for only one of this test and the value in force")]
    [InlineData("a", "b", "was adopted with another lot")]
    public void OtherLotOfValueInForce_EachPair_SaysWhatAChangeMayComeFrom(string? ofValue, string? ofTest, string? part) =>
        AssertNote(ValueOnRecord.OtherLotOfValueInForce(ofValue, ofTest), part);

    [Theory]
    [InlineData("a", "a", false, null)]
    [InlineData("a", null, false, "for only one of this test and the last one")]
    [InlineData("a", "b", false, "were allowed for that; judgement")]
    [InlineData("a", "b", true, "a change may come from the product and not from the meter.")]
    public void OtherLotOfLastTest_EachPair_SaysWhatWasAllowed(string? ofLast, string? ofTest, bool isPredicted, string? part)
    {
        var finding = ValueOnRecord.OtherLotOfLastTest(ofLast, ofTest, isPredicted);

        AssertNote(finding, part);
        Assert.Equal(
            part is not null && !isPredicted,
            finding?.Detail.InMetric().Contains("were allowed", StringComparison.Ordinal) is true
        );
    }

    private static void AssertNote(Finding? finding, string? part)
    {
        Assert.Equal(part is null, finding is null);
        if (part is null)
            return;
        Assert.Equal((NewLotCodes.OtherLot, Severity.Note), (finding!.Code, finding.Severity));
        Assert.Contains(part, finding.Detail.InMetric(), StringComparison.Ordinal);
    }
}
