using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.LikelyMistakes;

/// <summary>The first look that spares most tests the whole search never hides what the whole search would show.</summary>
public sealed class FirstLookTests
{
    [Theory]
    [InlineData(1, 0)]
    [InlineData(2, 0)]
    [InlineData(5, 0)]
    [InlineData(5, 0.09)]
    [InlineData(5, -0.1)]
    [InlineData(20, 0)]
    [InlineData(20, 0.06)]
    public void Shown_OverManyChanges_IsWhatTheWholeSearchShows(int catches, double ofTheSecond)
    {
        for (var change = -0.7; change <= 0.9; change += 0.02)
        {
            var ratios = Enumerable
                .Range(0, catches)
                .Select(i => Math.Exp(change + 0.008 * Math.Sin(3 * i) + (i == 1 ? ofTheSecond : 0)))
                .ToArray();
            foreach (var test in (CatchTestQuestion[])[Suspected.Net(ratios), Suspected.Weighed(ratios), Heavy(ratios)])
            {
                var posteriors = test.Posteriors();
                var result = test.Evaluated().LikelyMistakes;

                Assert.Equal(
                    posteriors.Count(each => each.Mistake is not null && each.Probability >= MistakeJudgement.ShownFrom),
                    result.Shown.Count
                );
                Assert.Equal(posteriors[0].Probability <= 1 - MistakeJudgement.NamedFrom, result.LikelierThanChange);
            }
        }
    }

    // A container as heavy as the catch: taking it off or not changes unequal catches unequally.
    private static CatchTestQuestion Heavy(double[] ratios) =>
        Suspected.Net(ratios).Knowing(known => known with { ContainerTare = new Mass(0.5 * Suspected.InForce * 47) });
}
