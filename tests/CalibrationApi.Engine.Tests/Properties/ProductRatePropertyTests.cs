using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Tests.ProductRates;

namespace CalibrationApi.Engine.Tests.Properties;

/// <summary>What must hold for every blend, met or not.</summary>
public sealed class ProductRatePropertyTests
{
    private static readonly IEnumerable<ProductRateQuestion> Questions = Enumerable
        .Range(10_000, 500)
        .Select(seed => RandomBlends.Draw(seed, mostProducts: 10));

    [Fact]
    public void Amounts_AllTimesThree_MakeRatesTimesThree() => Assert.All(Questions, question =>
        {
            static MassPerArea? Three(MassPerArea? rate) => rate is { } known ? new MassPerArea(known.KilogramsPerSquareMetre * 3) : null;
            var scaled = Each(
                question,
                target => target with { Amount = Three(target.Amount)!.Value, Most = Three(target.Most) },
                product =>
                    product with
                    {
                        LeastRate = Three(product.LeastRate),
                        MostRate = Three(product.MostRate),
                        FixedRate = Three(product.FixedRate),
                    }
            ) with
            {
                Credits = [.. question.Credits.Select(credit => credit with { Amount = Three(credit.Amount)!.Value })],
            };

            AreEqual(
                question.Evaluated().Products.Select(line => line.Rate.KilogramsPerSquareMetre * 3),
                scaled.Evaluated().Products.Select(line => line.Rate.KilogramsPerSquareMetre)
            );
        });

    [Fact]
    public void Question_InPoundsPerAcre_HasTheSameAnswer() => Assert.All(Questions, question =>
        {
            var unit = UnitTable.Get("lb/ac");
            var pound = UnitTable.Get("lb").Canonical(1);

            // The numbers as typed in that unit, rounded to a double, then read back: what a sender's conversion does.
            MassPerArea? Typed(MassPerArea? rate) =>
                rate is { } known ? new MassPerArea(unit.Canonical(unit.FromCanonical(known.KilogramsPerSquareMetre))) : null;
            var other = Each(
                question,
                target => target with { Amount = Typed(target.Amount)!.Value, Most = Typed(target.Most) },
                product =>
                    product with
                    {
                        LeastRate = Typed(product.LeastRate),
                        MostRate = Typed(product.MostRate),
                        FixedRate = Typed(product.FixedRate),
                        PricePerKilogram = product.PricePerKilogram is { } price ? price * pound / pound : null,
                    }
            );

            var (one, two) = (question.Evaluated(), other.Evaluated());
            AreEqual(
                one.Products.Select(line => line.Rate.KilogramsPerSquareMetre),
                two.Products.Select(line => line.Rate.KilogramsPerSquareMetre)
            );
            Assert.Equal(one.Findings.Select(finding => finding.Code), two.Findings.Select(finding => finding.Code));
        });

    // Phosphorus and potassium told as elements throughout: other numbers, the same rates.
    [Fact]
    public void Question_InElements_HasTheSameAnswer() => Assert.All(Questions, question =>
        {
            static NutrientForm Element(NutrientForm form) =>
                form.Nutrient switch
                {
                    Nutrient.Phosphorus => NutrientForm.P,
                    Nutrient.Potassium => NutrientForm.K,
                    Nutrient.Sulfur => NutrientForm.SO3,
                    _ => form,
                };
            static MassPerArea In(MassPerArea amount, NutrientForm form) => new(amount.KilogramsPerSquareMetre * form.To(Element(form)));
            var elements = Each(
                question,
                target => new NutrientTarget(
                    Element(target.Form),
                    In(target.Amount, target.Form),
                    target.Kind,
                    target.Most is { } most ? In(most, target.Form) : null
                ),
                product =>
                    product with
                    {
                        Analysis =
                        [
                            .. product.Analysis.Select(one => new NutrientShare(
                                Element(one.Form),
                                one.Share * one.Form.To(Element(one.Form))
                            )),
                        ],
                    }
            );

            // A target of nothing is weighed by the amount of another nutrient, which is another number as an element.
            if (question.Targets.All(target => target.Amount.KilogramsPerSquareMetre > 0))
                AreEqual(
                    question.Evaluated().Products.Select(line => line.Rate.KilogramsPerSquareMetre),
                    elements.Evaluated().Products.Select(line => line.Rate.KilogramsPerSquareMetre)
                );
        });

    [Fact]
    public void Products_InOtherOrder_CostTheSame() => Assert.All(Questions, question =>
        {
            var (one, two) = (question.Evaluated(), (question with { Products = [.. question.Products.Reverse()] }).Evaluated());

            Assert.Equal(one.Verdict, two.Verdict);
            AreEqual(
                [one.CostPerSquareMetre ?? 0, one.TotalRate.KilogramsPerSquareMetre],
                [two.CostPerSquareMetre ?? 0, two.TotalRate.KilogramsPerSquareMetre],
                1e-8
            );
        });

    [Fact]
    public void Targets_InOtherOrder_ChangeNothing() =>
        Assert.All(Questions, question =>
            AreEqual(
                question.Evaluated().Products.Select(line => line.Rate.KilogramsPerSquareMetre),
                (question with { Targets = [.. question.Targets.Reverse()] })
                    .Evaluated()
                    .Products.Select(line => line.Rate.KilogramsPerSquareMetre),
                1e-8
            )
        );

    [Fact]
    public void Balances_AddUp_AndEveryTargetMissedHasItsFinding() => Assert.All(Questions, question =>
        {
            var result = question.Evaluated();
            foreach (var nutrient in result.Nutrients)
            {
                var brought = result.Products.Sum(line => line.Rate.KilogramsPerSquareMetre * line.Product.Share(nutrient.Form));
                AreEqual([nutrient.Credits.KilogramsPerSquareMetre + brought], [nutrient.Total.KilogramsPerSquareMetre]);
                Assert.Equal(nutrient.Met, !result.Findings.Any(finding => Says(finding.Detail, nutrient.Form)));
            }
        });

    // Findings about targets that are missed begin with the nutrient and how far it is off.
    private static bool Says(Sentence detail, NutrientForm form)
    {
        var text = DisplayUnits.Metric.Write(detail);
        return text.StartsWith($"{form} stays ", StringComparison.Ordinal) || text.StartsWith($"{form} goes ", StringComparison.Ordinal);
    }

    private static ProductRateQuestion Each(
        ProductRateQuestion question,
        Func<NutrientTarget, NutrientTarget> target,
        Func<OfferedProduct, OfferedProduct> product
    ) => question with { Targets = [.. question.Targets.Select(target)], Products = [.. question.Products.Select(product)] };

    private static void AreEqual(IEnumerable<double> one, IEnumerable<double> other, double relative = 1e-12)
    {
        var all = one.ToArray();
        foreach (var (first, second) in all.Zip(other))
            Assert.True(Math.Abs(first - second) <= relative * Math.Max(Math.Abs(first), all.Max(Math.Abs)), $"{first:R} and {second:R}");
    }
}
