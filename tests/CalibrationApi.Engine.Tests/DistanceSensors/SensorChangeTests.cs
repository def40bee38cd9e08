using CalibrationApi.Engine.DistanceSensors;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.Tests.DistanceSensors;

/// <summary>Runs against the number in force, by the relative uncertainty of the runs.</summary>
public sealed class SensorChangeTests
{
    [Theory]
    [InlineData(13)]
    [InlineData(12.7)]
    [InlineData(13.4)]
    public void Of_AValueInForce_IsTheRatioLessOneWithTheUncertaintyOfTheRuns(double inForce)
    {
        var estimate = Driven.Runs(1305, 1298, 1302).Evaluated().Estimate;
        var ratio = estimate.CountsPerMetre.Value / inForce;

        var change = SensorChange.Of(estimate, inForce, 0.02, 0.95);
        var relative = estimate.CountsPerMetre.StandardUncertainty / estimate.CountsPerMetre.Value;
        var probability = Conformance.Probability(ratio, estimate.Relative.Times(ratio), 0.98, 1.02);

        NearlyEqual.Assert(ratio - 1, change.Delta.Value, 1e-12);
        NearlyEqual.Assert(ratio * relative, change.Delta.StandardUncertainty, 1e-12);
        NearlyEqual.Assert(probability, change.ProbabilityWithinTolerance, 1e-12);
        Assert.Equal(Math.Abs(ratio - 1) > change.Delta.ExpandedUncertainty, change.IsDetected);
    }
}
