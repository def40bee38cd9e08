using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>
/// What the catches that were left out say about those that count: sometimes the good one is left out and the bad one kept.
/// </summary>
/// <param name="Agreeing">Positions of those that agree with the catches that count.</param>
/// <param name="Contradicting">Positions of those that stand apart from them and fit what was expected; without anything expected, of all
/// that stand apart.</param>
public sealed record ExcludedCatches(IReadOnlyList<int> Agreeing, IReadOnlyList<int> Contradicting)
{
    private const double Rare = 0.05;

    private static readonly ExcludedCatches None = new([], []);

    /// <summary>The catches that count do not outweigh those that contradict them two to one: leaving out decides, not the test.</summary>
    /// <param name="counted">Catches that count.</param>
    /// <remarks>
    /// <para>Formula: 2 times those that contradict above those that count.</para>
    /// <para>Range: at least one catch that counts.</para>
    /// <para>Source: judgement.</para>
    /// <para>Accuracy: the limit from both sides (ExcludedCatchTests).</para>
    /// </remarks>
    public bool Decide(int counted) => 2 * Contradicting.Count > counted;

    internal static ExcludedCatches Of(
        CatchTestQuestion test,
        CatchReadings readings,
        MassPerRevolutionEstimate estimate,
        ExpectedChange? expected,
        double tolerance
    )
    {
        var left = test.Catches.Count - readings.Count;
        if (left == 0)
            return None;
        var (agreeing, contradicting) = (new List<int>(left), new List<int>(left));
        for (var position = 0; position < test.Catches.Count; position++)
        {
            var one = test.Catches[position];
            if (one.Counts)
                continue;
            var metered = CatchReadings.MeteredMass(test, one);
            var value = metered / one.Revolutions.Count;
            var believed = test.Limits.Repeatability
                ?? RepeatabilityPrior.Default(test.Material, metered / (test.CaughtPoints?.Scale ?? 1), one.Revolutions.Count).Relative;
            var spread = Math.Sqrt(
                estimate.Pooled.Scatter * believed * believed + CatchVariance.Of(test, one) + estimate.Pooled.RelativeVariance
            );
            var isApart = left * StudentT.TwoSided((value / estimate.Value.Value - 1) / spread, estimate.Pooled.DegreesOfFreedom) < Rare;
            if (!isApart)
                agreeing.Add(position);
            else if (expected is null || Math.Abs(value / expected.Expected.KilogramsPerRevolution - 1) <= tolerance)
                contradicting.Add(position);
        }

        return new(agreeing, contradicting);
    }
}
