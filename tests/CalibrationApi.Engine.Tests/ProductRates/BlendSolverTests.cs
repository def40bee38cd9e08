using CalibrationApi.Engine.ProductRates;

namespace CalibrationApi.Engine.Tests.ProductRates;

/// <summary>
/// Random blends against two methods that share nothing with the engine: every vertex tried, and a general-purpose solver.
/// </summary>
public sealed class BlendSolverTests
{
    private const int Blends = 1000;

    [Fact]
    public void Rates_OfRandomBlends_AreThoseOfTheBestVertex()
    {
        var met = 0;
        for (var seed = 0; seed < Blends; seed++)
        {
            var question = RandomBlends.Draw(seed, mostProducts: 5);
            var plain = PlainBlend.Of(question);
            var result = ProductRateEvaluation.Evaluate(question);

            var found = plain.Objectives(Rates(result));
            var best = AllVertices.Best(plain);
            Assert.True(
                !AllVertices.IsBetter(best, found) && !AllVertices.IsBetter(found, best),
                $"blend {seed}: found {string.Join(" ", found)}, best {string.Join(" ", best)}"
            );
            Assert.Equal(best[0] + best[1] <= 1e-9, result.Verdict == TargetsVerdict.Met);
            Assert.Equal(result.Verdict == TargetsVerdict.Met, result.Nutrients.All(nutrient => nutrient.Met));
            met += result.Verdict == TargetsVerdict.Met ? 1 : 0;
        }

        Assert.InRange(met, Blends / 4, Blends * 3 / 4);
    }

    [Fact]
    public void Rates_OfRandomBlends_AreAsGoodAsThoseOfAnIndependentSolver()
    {
        for (var seed = 0; seed < Blends; seed++)
        {
            var question = RandomBlends.Draw(seed, mostProducts: 20);
            var plain = PlainBlend.Of(question);

            var found = plain.Objectives(Rates(ProductRateEvaluation.Evaluate(question)));
            var best = IndependentSolver.Best(plain);
            for (var k = 0; k < best.Length; k++)
                Assert.True(
                    Math.Abs(found[k] - best[k]) <= 1e-6 * Math.Max(1, best[k]),
                    $"blend {seed}, objective {k}: found {found[k]:R}, best {best[k]:R}"
                );
        }
    }

    // The answer itself, in the limits of the question.
    [Fact]
    public void Rates_OfRandomBlends_StayWithinTheirLimits()
    {
        for (var seed = 2 * Blends; seed < 3 * Blends; seed++)
        {
            Assert.All(ProductRateEvaluation.Evaluate(RandomBlends.Draw(seed, mostProducts: 20)).Products, line =>
            {
                var rate = line.Rate.KilogramsPerSquareMetre;
                Assert.True(rate >= (line.Product.LeastRate?.KilogramsPerSquareMetre ?? 0) * (1 - 1e-12));
                Assert.True(rate <= (line.Product.MostRate?.KilogramsPerSquareMetre ?? double.PositiveInfinity) * (1 + 1e-12));
            });
        }
    }

    private static double[] Rates(ProductRateResult result) =>
        [
            .. result
                .Products.Where(line => line.Product.FixedRate is null)
                .Select(line => line.Rate.KilogramsPerSquareMetre / RandomBlends.KilogramPerHectare),
        ];
}
