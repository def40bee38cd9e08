using CalibrationApi.Engine.Statistics;
using MathNet.Numerics.Distributions;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>Exact limits of a Poisson mean against published figures and against the library's own Poisson distribution.</summary>
[Trait("Category", "Reference")]
public sealed class PoissonMeanReferenceTests
{
    private static readonly ReferenceTable Published = ReferenceTable.Read("poisson-limits.csv");

    public static TheoryData<int> Rows => [.. Enumerable.Range(0, Published.Rows.Count)];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Limits_PublishedFigures_AreReproduced(int index)
    {
        var row = Published.Rows[index];
        var (lower, upper) = PoissonMean.Limits((long)row.Number("count"), row.Number("coverage"));

        // Figures of a library carry all digits of a double; ours agree within 1e-10.
        if (row["source"] == "LIB")
        {
            NearlyEqual.Assert(row.Number("upper"), upper, 1e-10);
            NearlyEqual.Assert(row.Number("lower"), lower, 1e-10);
            return;
        }

        row.Printed("upper").AssertReproducedBy(upper, row.Number("lastDigits"));
        row.Printed("lower").AssertReproducedBy(lower, row.Number("lastDigits"));
    }

    // At the lower limit so many or more are seen in 2.5 of 100 cases, at the upper limit so many or fewer.
    [Theory]
    [InlineData(1)]
    [InlineData(17)]
    [InlineData(400)]
    [InlineData(20_000)]
    public void Limits_LibraryDistribution_LeavesHalfOfTheRestOutside(int count)
    {
        var (lower, upper) = PoissonMean.Limits(count, 0.95);

        Assert.Equal(0.025, 1 - Poisson.CDF(lower, count - 1), 1e-9);
        Assert.Equal(0.025, Poisson.CDF(upper, count), 1e-9);
        Assert.Equal(0.025, PoissonMean.SureAtMost(count, lower), 1e-9);
        Assert.Equal(0.025, PoissonMean.SureAtLeast(count, upper), 1e-9);
    }

    [Theory]
    [InlineData(-1, 0.95)]
    [InlineData(1, 0.0)]
    [InlineData(1, 1.0)]
    public void Limits_ImpossibleArgument_Throws(int count, double coverage) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PoissonMean.Limits(count, coverage));
}
