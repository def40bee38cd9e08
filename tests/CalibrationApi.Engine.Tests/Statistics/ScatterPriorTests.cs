using CalibrationApi.Engine.Statistics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace CalibrationApi.Engine.Tests.Statistics;

/// <summary>
/// Sums of squares under a scatter that is only known from a prior, against the general-purpose library and against series.
/// </summary>
public sealed class ScatterPriorTests
{
    // Whatever part of each variance is known, for catches from alike to very unlike.
    public static TheoryData<double[], double[]> Unequal =>
        new()
        {
            { [1, 1, 1], [0.1, 0.1, 0.12] },
            { [1, 1, 1], [0.1, 0.5, 1] },
            { [1, 4, 1, 2], [0.2, 0.5, 2, 0] },
            { [1, 1, 1, 1, 1], [0, 0, 0, 0, 3] },
            { [1, 9], [1, 0.1] },
            { [1, 1, 1, 1, 1, 1, 1, 1], [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8] },
        };

    // v = 0: Q / (c - 1) is F with c - 1 and nu degrees of freedom (the library's incomplete beta function).
    [Theory]
    [InlineData(1, 4)]
    [InlineData(2, 4)]
    [InlineData(5, 4)]
    [InlineData(19, 4)]
    [InlineData(49, 4)]
    [InlineData(1, 1)]
    [InlineData(4, 15)]
    [InlineData(3, 1000)]
    public void UpperTail_NothingKnown_IsThatOfTheFDistribution(int terms, double nu)
    {
        var prior = ScatterPrior.Of(nu);
        double[] squares = [.. Enumerable.Repeat(1.0, terms + 1)];
        var shares = ScatterShares.Of(squares, new double[terms + 1]);

        foreach (var f in (double[])[0.01, 0.3, 1, 2.5, 6, 20])
            Assert.Equal(1 - FisherSnedecor.CDF(terms, nu, f), prior.UpperTail(f * terms, shares), terms <= 4 ? 1e-6 : 5e-4);
    }

    // The series of Ruben (1962; from memory) reproduces figures that Imhof printed (SOURCES.md, key IMHOF-1961).
    [Theory]
    [InlineData(0.1, 0.9458)]
    [InlineData(0.7, 0.5064)]
    [InlineData(2, 0.1240)]
    public void Series_PublishedSum_IsReproduced(double x, double printed) => Assert.Equal(printed, Ruben([0.6, 0.3, 0.1], x), 0.00005);

    // The eigenvalues by the library, the tail by the series, the average over the prior by 400 quantiles of the library.
    [Theory]
    [MemberData(nameof(Unequal))]
    public void UpperTail_PartsKnown_IsThatOfTheSumOfChiSquaredVariables(double[] scatter, double[] known)
    {
        var shares = ScatterShares.Of(scatter, known);
        foreach (var q in (double[])[0.5, 2, 6, 12, 25])
        {
            var expected = Enumerable
                .Range(0, 400)
                .Average(i =>
                    Ruben(Eigenvalues(scatter, known, 4 / MathNet.Numerics.Distributions.ChiSquared.InvCDF(4, (i + 0.5) / 400)), q)
                );

            Assert.Equal(expected, ScatterPrior.Of(4).UpperTail(q, shares), 0.0015);
        }
    }

    [Fact]
    public void UpperTail_LargerSum_IsRarer()
    {
        var shares = ScatterShares.Of([1, 1, 1], [0.1, 0.5, 1]);
        double[] tails = [.. Enumerable.Range(0, 200).Select(i => ScatterPrior.Of(4).UpperTail(i * 0.3, shares))];

        Assert.All(tails.Zip(tails.Skip(1)), pair => Assert.True(pair.First > pair.Second));
        Assert.Equal(1, tails[0]);
    }

    [Fact]
    public void UpperTail_NoTerm_IsOne() => Assert.Equal(1, ScatterPrior.Of(4).UpperTail(0, ScatterShares.Of([1], [0])));

    [Fact]
    public void UpperTail_OutsideItsRange_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ScatterPrior.Of(0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => ScatterPrior.Of(double.PositiveInfinity));
        Assert.Throws<ArgumentOutOfRangeException>(() => ScatterPrior.Of(4).UpperTail(-1, ScatterShares.Of([1, 1], [0, 0])));
    }

    private static double[] Eigenvalues(double[] scatter, double[] known, double factor)
    {
        var n = scatter.Length;
        var w = Vector<double>.Build.Dense(n, i => 1 / (scatter[i] + known[i]));
        var root = Matrix<double>.Build.DenseDiagonal(n, n, i => Math.Sqrt(factor * scatter[i] + known[i]));
        var inner = Matrix<double>.Build.DenseOfDiagonalVector(w) - w.OuterProduct(w) / w.Sum();
        return [.. (root * inner * root).Evd(Symmetricity.Symmetric).EigenValues.Select(value => value.Real).Order().Skip(1)];
    }

    // P(sum lambda_j chi^2_1 >= x) as a mixture of chi-squared distributions.
    private static double Ruben(double[] lambda, double x)
    {
        var beta = 0.95 * lambda.Min();
        double[] ratios = [.. lambda.Select(each => beta / each)];
        List<double> weights = [ratios.Aggregate(1.0, (product, ratio) => product * Math.Sqrt(ratio))];
        List<double> powers = [];
        var (sum, below) = (weights[0], weights[0] * MathNet.Numerics.Distributions.ChiSquared.CDF(lambda.Length, x / beta));
        while (sum < 1 - 1e-9 && weights.Count < 3000)
        {
            var j = weights.Count;
            powers.Add(ratios.Sum(ratio => Math.Pow(1 - ratio, j)));
            weights.Add(Enumerable.Range(1, j).Sum(r => powers[r - 1] * weights[j - r]) / (2 * j));
            sum += weights[j];
            below += weights[j] * MathNet.Numerics.Distributions.ChiSquared.CDF(lambda.Length + 2 * j, x / beta);
        }

        return 1 - below;
    }

    // lambda_j = 1 + (phi - 1) mu_j, so that at phi = 2 the eigenvalues less 1 are the mu_j.
    [Theory]
    [MemberData(nameof(Unequal))]
    public void Shares_OfUnequalParts_AreThePowerSumsOfTheEigenvalues(double[] scatter, double[] known)
    {
        double[] mu = [.. Eigenvalues(scatter, known, 2).Select(value => value - 1)];

        var shares = ScatterShares.Of(scatter, known);

        Assert.Equal(mu.Length, shares.Terms);
        Assert.Equal(mu.Average(), shares.Mean, 1e-12);
        Assert.Equal(mu.Sum(value => Math.Pow(value - shares.Mean, 2)), shares.Second, 1e-12);
        Assert.Equal(mu.Sum(value => Math.Pow(value - shares.Mean, 3)), shares.Third, 1e-12);
    }
}
