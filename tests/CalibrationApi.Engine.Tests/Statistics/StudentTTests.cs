using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.Statistics;

public sealed class StudentTTests
{
    public static TheoryData<double> DegreesOfFreedom =>
        [1, 1.5, 2, 2.5, 3, 4, 5.59, 10, 30, 120, 999, 9.99e3, 1e4, 1.01e4, 1e7, 1e12, double.PositiveInfinity];

    [Theory]
    [MemberData(nameof(DegreesOfFreedom))]
    public void Cdf_OfQuantile_GivesTheProbabilityBack(double nu)
    {
        foreach (var p in (double[])[1e-6, 0.001, 0.01, 0.025, 0.05, 0.2, 0.4, 0.49, 0.5, 0.51, 0.75, 0.95, 0.975, 0.995, 0.9999])
            Assert.Equal(p, StudentT.Cdf(StudentT.Quantile(p, nu), nu), 5e-13);
    }

    [Theory]
    [MemberData(nameof(DegreesOfFreedom))]
    public void Quantile_OfComplement_IsTheNegative(double nu)
    {
        // Probabilities whose complement is exact in binary, so that only the symmetry is tested.
        foreach (var p in (double[])[0.25, 0.125, 1.0 / 1024, 0.375])
            Assert.Equal(-StudentT.Quantile(p, nu), StudentT.Quantile(1 - p, nu));
    }

    [Theory]
    [MemberData(nameof(DegreesOfFreedom))]
    public void Quantile_LargerProbability_IsLarger(double nu)
    {
        var quantiles = Enumerable.Range(1, 199).Select(i => StudentT.Quantile(i / 200.0, nu)).ToArray();

        Assert.All(quantiles.Zip(quantiles.Skip(1)), pair => Assert.True(pair.First < pair.Second));
    }

    [Fact]
    public void CoverageFactor_MoreDegreesOfFreedom_IsSmaller()
    {
        var factors = ((double[])[1, 1.2, 2, 3, 5, 9, 30, 1e3, 9.9e3, 1.1e4, 1e8, double.PositiveInfinity])
            .Select(nu => StudentT.CoverageFactor(0.95, nu))
            .ToArray();

        Assert.All(factors.Zip(factors.Skip(1)), pair => Assert.True(pair.First > pair.Second));
    }

    // Closed form: 1/2 + arctan(t)/pi.
    [Theory]
    [InlineData(0.3)]
    [InlineData(1)]
    [InlineData(12.706204736432095)]
    [InlineData(-400)]
    public void Cdf_OneDegreeOfFreedom_IsTheArcTangent(double t) =>
        NearlyEqual.Assert(0.5 + Math.Atan(t) / Math.PI, StudentT.Cdf(t, 1), 1e-12);

    // Closed form: 1/2 + t / (2 sqrt(2 + t^2)).
    [Theory]
    [InlineData(0.01)]
    [InlineData(-0.8)]
    [InlineData(4.302652729749464)]
    public void Cdf_TwoDegreesOfFreedom_IsAlgebraic(double t) =>
        NearlyEqual.Assert(0.5 + t / (2 * Math.Sqrt(2 + t * t)), StudentT.Cdf(t, 2), 1e-13);

    // Closed form: 1/2 + 3/8 s (1 - s^2 / 12 ...) with s = t / sqrt(1 + t^2/4), Abramowitz and Stegun 26.7.4 for nu = 4.
    [Theory]
    [InlineData(0.2)]
    [InlineData(1.5)]
    [InlineData(2.7764451051977934)]
    public void Cdf_FourDegreesOfFreedom_IsAlgebraic(double t)
    {
        var sine = t / Math.Sqrt(4 + t * t);
        var cosine = 2 / Math.Sqrt(4 + t * t);

        NearlyEqual.Assert(0.5 + sine * (1 + cosine * cosine / 2) / 2, StudentT.Cdf(t, 4), 1e-13);
    }

    // Far out P(T < t) approaches C |t|^-nu; a solver that works on P itself loses all digits here.
    [Theory]
    [InlineData(1e-9, 1)]
    [InlineData(1e-12, 1.5)]
    [InlineData(1e-40, 2)]
    [InlineData(1e-100, 3)]
    [InlineData(1e-200, 5.5)]
    [InlineData(1e-300, 30)]
    public void Quantile_ExtremeTail_KeepsItsRelativeAccuracy(double probability, double nu)
    {
        var t = StudentT.Quantile(probability, nu);

        NearlyEqual.Assert(probability, StudentT.Cdf(t, nu), 1e-10);
    }

    // The library's distribution goes through the incomplete beta function everywhere.
    [Fact]
    public void Cdf_WholeDegreesOfFreedom_IsTheLibrarys()
    {
        for (var nu = 1; nu <= 210; nu++)
        {
            for (var t = -40.0; t < 0; t += 0.37)
                NearlyEqual.Assert(MathNet.Numerics.Distributions.StudentT.CDF(0, 1, nu, t), StudentT.Cdf(t, nu), 1e-11);
        }
    }

    [Theory]
    [InlineData(4)]
    [InlineData(9)]
    [InlineData(199)]
    public void Cdf_WhereTheSumEnds_HasNoStep(int nu)
    {
        var end = StudentT.Quantile(1e-3, nu);
        NearlyEqual.Assert(StudentT.Cdf(end * (1 + 1e-13), nu), StudentT.Cdf(end * (1 - 1e-13), nu), 1e-11);
        NearlyEqual.Assert(StudentT.Cdf(-0.7, nu * (1 + 1e-15)), StudentT.Cdf(-0.7, nu), 1e-12);
    }

    [Fact]
    public void Quantile_InfiniteDegreesOfFreedom_IsNormal() =>
        Assert.Equal(1.959963984540054, StudentT.Quantile(0.975, double.PositiveInfinity), 1e-14);

    [Fact]
    public void Quantile_HugeDegreesOfFreedom_ApproachesTheNormal() =>
        Assert.Equal(1.959963984540054, StudentT.Quantile(0.975, 1e12), 1e-11);

    // The library's beta function is good to some 1e-12 just below the point where the expansion takes over.
    [Theory]
    [InlineData(0.6)]
    [InlineData(0.95)]
    [InlineData(0.975)]
    [InlineData(0.9995)]
    public void Quantile_WhereTheExpansionTakesOver_HasNoStep(double probability) =>
        NearlyEqual.Assert(StudentT.Quantile(probability, 1e4), StudentT.Quantile(probability, 1e4 * (1 + 1e-12)), 1e-11);

    [Theory]
    [InlineData(0.5)]
    [InlineData(2)]
    [InlineData(-4)]
    public void Cdf_WhereTheExpansionTakesOver_HasNoStep(double t) =>
        NearlyEqual.Assert(StudentT.Cdf(t, 1e4), StudentT.Cdf(t, 1e4 * (1 + 1e-12)), 1e-11);

    [Fact]
    public void Cdf_InfiniteT_IsCertain()
    {
        Assert.Equal(0, StudentT.Cdf(double.NegativeInfinity, 3));
        Assert.Equal(1, StudentT.Cdf(double.PositiveInfinity, 3));
    }

    [Fact]
    public void TwoSided_Zero_IsOne() => Assert.Equal(1, StudentT.TwoSided(0, 4));

    [Theory]
    [InlineData(1.3, 4)]
    [InlineData(-1.3, 4)]
    [InlineData(2.5, 200)]
    public void TwoSided_AnyT_IsTwiceTheUpperTail(double t, double nu) =>
        Assert.Equal(2 * (1 - StudentT.Cdf(Math.Abs(t), nu)), StudentT.TwoSided(t, nu), 1e-14);

    [Fact]
    public void CoverageFactor_OfACoverage_CoversThatMuch()
    {
        var k = StudentT.CoverageFactor(0.95, 5.59);

        Assert.Equal(0.05, StudentT.TwoSided(k, 5.59), 5e-13);
    }

    [Theory]
    [InlineData(0.999)]
    [InlineData(0)]
    [InlineData(-3)]
    [InlineData(double.NaN)]
    public void AllMembers_DegreesOfFreedomBelowOne_AreRefused(double nu)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.Cdf(1, nu));
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.Quantile(0.9, nu));
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.CoverageFactor(0.95, nu));
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.TwoSided(1, nu));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    public void Quantile_ProbabilityOutsideTheOpenUnitInterval_IsRefused(double probability) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.Quantile(probability, 5));

    [Fact]
    public void Cdf_NotANumber_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.Cdf(double.NaN, 5));
}
