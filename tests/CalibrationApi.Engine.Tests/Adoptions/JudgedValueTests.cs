using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Adoptions;

public sealed class JudgedValueTests
{
    [Fact]
    public void Headline_NothingNoticed_SaysThatNothingSpeaksAgainstTheValue()
    {
        var value = new JudgedValue(new MassPerRevolution(0.342), []);

        Assert.Equal(Usability.Usable, value.Verdict);
        Assert.Equal("The number typed in stands for 0.342 kg/rev. Nothing on record speaks against it.", value.Headline.InMetric());
    }

    [Fact]
    public void Headline_SeveralFindings_TellsTheGravest()
    {
        var stop = AdoptedAgainstTest.Superseded("wrong lot", isOfSameSeries: true);
        var value = new JudgedValue(
            new MassPerRevolution(0.342),
            [Finding.Warning(TypedValueCodes.AdoptedOtherwise, $"Another number was given."), stop]
        );

        Assert.Equal(Usability.DoNotUse, value.Verdict);
        Assert.EndsWith(stop.Detail.InMetric(), value.Headline.InMetric(), StringComparison.Ordinal);
    }
}
