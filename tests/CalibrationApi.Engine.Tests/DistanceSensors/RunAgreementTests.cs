using CalibrationApi.Engine.DistanceSensors;

namespace CalibrationApi.Engine.Tests.DistanceSensors;

public sealed class RunAgreementTests
{
    [Fact]
    public void OneRun_HasNothingToDisagreeWith()
    {
        var agreement = Driven.Runs(1300).Evaluated().Agreement;

        Assert.True(agreement.Agree);
        Assert.Equal((0, 0, 1), (agreement.Spread, agreement.Q, agreement.QProbability));
    }

    // Two runs 2 % apart against a scatter of 0.5 %: Q = 2 (1 % / 0.5 %)^2 = 8.
    [Fact]
    public void Q_OfTwoRuns_IsTheirDeviationsOverTheScatter()
    {
        var agreement = Driven.Pure(990, 1010).Evaluated().Agreement;

        NearlyEqual.Assert(8, agreement.Q, 1e-6);
        NearlyEqual.Assert(0.02 / Math.Sqrt(2), agreement.Spread, 1e-6);
        Assert.True(agreement.ScatterTooMuch);
    }

    [Fact]
    public void ScatterBeyondTheExpected_IsSaidAndWidensTheInterval()
    {
        var (calm, wild) = (Driven.Runs(1300, 1300).Evaluated(), Driven.Runs(1288, 1312).Evaluated());

        Assert.DoesNotContain(calm.Findings, finding => finding.Code == DistanceSensorCodes.RunsScatterMoreThanExpected);
        Assert.Contains(wild.Findings, finding => finding.Code == DistanceSensorCodes.RunsScatterMoreThanExpected);
        Assert.True(wild.Estimate.RelativeExpanded > calm.Estimate.RelativeExpanded);
    }

    [Fact]
    public void Directions_ThatDiffer_AreSaidWithTheirDifference()
    {
        var result = (
            Driven.Runs() with
            {
                Runs =
                [
                    Driven.Run(1290, direction: RunDirection.There),
                    Driven.Run(1320, direction: RunDirection.Back),
                    Driven.Run(1291, direction: RunDirection.There),
                    Driven.Run(1321, direction: RunDirection.Back),
                ],
            }
        ).Evaluated();

        NearlyEqual.Assert(1290.5 / 1320.5 - 1, result.Agreement.DirectionDifference!.Value, 1e-3);
        Assert.Contains(result.Findings, finding => finding.Code == DistanceSensorCodes.DirectionsDiffer);
    }

    [Fact]
    public void Directions_DrivenOneWayOnly_AreNotCompared()
    {
        var result = (Driven.Runs() with { Runs = [Driven.Run(1290, direction: RunDirection.There), Driven.Run(1320)] }).Evaluated();

        Assert.Null(result.Agreement.DirectionDifference);
        Assert.Equal(0.05, result.Agreement.ErrorEach);
    }
}
