using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>A row that was typed twice.</summary>
public sealed class RepeatedRowsTests
{
    [Fact]
    public void CatchTypedTwice_SameReadingsToTheLastDigit_Warns() =>
        Assert.Contains(
            "Catches 1 and 3 have the same readings",
            Assert
                .Single(
                    Given
                        .Test(Given.Weighed(18.7, 1.62, 47), Given.Weighed(18.56, 1.62, 46.8), Given.Weighed(18.7, 1.62, 47))
                        .Evaluated()
                        .Findings,
                    Is
                )
                .Detail.InMetric(),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(18.72, 47)]
    [InlineData(18.7, 46.9)]
    public void CatchTypedTwice_ADigitApart_IsQuiet(double gross, double revolutions) =>
        Assert.DoesNotContain(Given.Test(Given.Weighed(18.7, 1.62, 47), Given.Weighed(gross, 1.62, revolutions)).Evaluated().Findings, Is);

    // On a coarse scale honest catches show the same.
    [Fact]
    public void CatchTypedTwice_CoarseScale_IsQuiet() =>
        Assert.DoesNotContain(
            (
                Given.Test(Given.Weighed(18.5, 1.5, 47), Given.Weighed(18.5, 1.5, 47)) with
                {
                    Scale = Given.Platform with { Division = new Mass(0.5) },
                }
            )
                .Evaluated()
                .Findings,
            Is
        );

    [Fact]
    public void CatchTypedTwice_OneOfThemLeftOut_IsQuiet() =>
        Assert.DoesNotContain(
            Given.Test(Given.Weighed(18.7, 1.62, 47), Given.Weighed(18.7, 1.62, 47, excludedBecause: "typed twice")).Evaluated().Findings,
            Is
        );

    private static bool Is(Finding finding) => finding.Code == CatchTestCodes.CatchTypedTwice;
}
