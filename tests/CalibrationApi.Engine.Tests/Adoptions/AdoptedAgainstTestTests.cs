using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.History;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Adoptions;

/// <summary>A number that was typed in although its test gave another, or spoke against it.</summary>
public sealed class AdoptedAgainstTestTests
{
    private static readonly TestBehindValue Measured = new(new MassPerRevolution(0.36), 0.01);

    [Theory]
    [InlineData(0.36, true)]
    [InlineData(0.3699, true)]
    [InlineData(0.3501, true)]
    [InlineData(0.3701, false)]
    [InlineData(0.3499, false)]
    public void Findings_WithoutANumberGiven_AreOfWhatLiesOutsideOfWhatWasMeasured(double adopted, bool isInside) =>
        Assert.Equal(isInside ? [] : [TypedValueCodes.AdoptedOtherwise], Codes(Adopted(adopted, Measured)));

    [Theory]
    [InlineData(true, true)]
    [InlineData(false, false)]
    public void Findings_NumberInTheUnitOfTheController_IsItOrIsNot(bool isNumberGiven, bool isSame)
    {
        var adopted = Adopted(0.363, Measured with { Enter = new MassPerRevolution(0.363) }) with
        {
            GivenInWords = "0.363 kg/rev",
            IsNumberGiven = isNumberGiven,
        };

        Assert.Equal(isSame ? [] : [TypedValueCodes.AdoptedOtherwise], Codes(adopted));
    }

    [Theory]
    [InlineData(0.363 * (1 + 0.9e-9), true)]
    [InlineData(0.363 * (1 + 1.1e-9), false)]
    public void Findings_NumberInAnotherUnit_IsToldByItsValue(double adopted, bool isSame)
    {
        var against = Adopted(adopted, Measured with { Enter = new MassPerRevolution(0.363) }) with { GivenInWords = "363 g/rev" };

        Assert.Equal(isSame ? [] : [TypedValueCodes.AdoptedOtherwise], Codes(against));
    }

    [Fact]
    public void Findings_OtherNumber_NameBoth()
    {
        var against = Adopted(0.37, Measured with { Enter = new MassPerRevolution(0.363) }) with { GivenInWords = "363 g/rev" };

        Assert.Equal(
            "The number typed in, 0.37 kg/rev, is not the 363 g/rev that the test gave.",
            Assert.Single(against.Findings()).Detail.InMetric()
        );
    }

    [Fact]
    public void Findings_FailedCheckAndOtherVerdict_AreBothSaid()
    {
        var against = Adopted(0.36, Measured) with { ErrorOfFailedCheck = -0.02, OtherVerdict = "repeat" };

        Assert.Equal([HistoryCodes.ScaleCheckFailedLater, TypedValueCodes.AdoptedOtherwise], Codes(against));
        Assert.Contains("said 'repeat', not adopt", against.Findings()[1].Detail.InMetric(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true, "adopt the value of the test in its place.")]
    [InlineData(false, "test again, because the test in its place is of another meter, element, setting or product.")]
    public void Superseded_TestInItsPlace_SaysWhatToDo(bool isOfSameSeries, string end)
    {
        var finding = AdoptedAgainstTest.Superseded("wrong tare", isOfSameSeries);

        Assert.Equal((HistoryCodes.BasisSuperseded, Severity.Stop), (finding.Code, finding.Severity));
        Assert.Contains("(wrong tare)", finding.Detail.InMetric(), StringComparison.Ordinal);
        Assert.EndsWith(end, finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    private static FindingCode[] Codes(AdoptedAgainstTest against) => [.. against.Findings().Select(finding => finding.Code)];

    private static AdoptedAgainstTest Adopted(double value, TestBehindValue test) => new(new(value), $"{value} kg/rev", test);
}
