using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.Statistics;

/// <summary>The least-squares estimate of a heavy-tailed change.</summary>
public sealed class StudentTShrinkageTests
{
    // Derived figures, in per cent, by numerical integration of x t3(x / s) phi((d - x) / u) with s = 4 %; no printed example was found.
    [Theory]
    [InlineData(2, 1, 1.86200813)]
    [InlineData(2, 2, 1.5725628)]
    [InlineData(5, 1, 4.7373809)]
    [InlineData(5, 2, 4.08820402)]
    [InlineData(10, 1, 9.72790732)]
    [InlineData(10, 2, 8.90291651)]
    [InlineData(20, 1, 19.8199263)]
    [InlineData(20, 2, 19.2605834)]
    public void Estimate_ScaleOfFourPerCent_IsTheIntegral(double measured, double uncertainty, double expected) =>
        NearlyEqual.Assert(expected, 100 * StudentTShrinkage.Estimate(measured / 100, uncertainty / 100, 0.04), 1e-6);

    [Fact]
    public void Estimate_OppositeChange_IsTheOpposite() =>
        Assert.Equal(-StudentTShrinkage.Estimate(0.03, 0.01, 0.015), StudentTShrinkage.Estimate(-0.03, 0.01, 0.015), 1e-15);

    [Fact]
    public void Estimate_NoChange_IsNone() => Assert.Equal(0, StudentTShrinkage.Estimate(0, 0.01, 0.015));

    [Theory]
    [InlineData(0.02)]
    [InlineData(0.2)]
    [InlineData(5)]
    public void Estimate_AnyChange_LiesBetweenNoneAndItself(double measured) =>
        Assert.InRange(StudentTShrinkage.Estimate(measured, 0.01, 0.015), 0, measured);

    [Fact]
    public void Estimate_OutsideItsRange_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentTShrinkage.Estimate(0.01, 0, 0.015));
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentTShrinkage.Estimate(0.01, 0.01, -1));
    }

    // The same average on a grid eighty times as fine and far wider.
    [Fact]
    public void Estimate_AnySizes_IsTheBruteForceSum()
    {
        foreach (var uncertainty in (double[])[0.01, 0.1, 0.5, 2, 20])
        {
            foreach (var measured in (double[])[0.01, 0.5, 2, 10, 200])
                NearlyEqual.Assert(BruteForce(measured, uncertainty), StudentTShrinkage.Estimate(measured, uncertainty, 1), 1e-6);
        }

        static double BruteForce(double measured, double uncertainty)
        {
            double sum = 0,
                share = 0;
            for (var logW = -8.0; logW < 40; logW += 0.005)
            {
                var variance = Math.Exp(logW) + uncertainty * uncertainty;
                var weight = Math.Exp(-1.5 * (logW + Math.Exp(-logW)) - measured * measured / variance / 2) / Math.Sqrt(variance);
                sum += weight;
                share += weight * Math.Exp(logW) / variance;
            }

            return measured * share / sum;
        }
    }
}
