using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.ProductRates;

/// <summary>Rates of products from nutrients that are wanted, at least cost.</summary>
public static class ProductRateEvaluation
{
    /// <summary>Evaluates <paramref name="question"/>.</summary>
    /// <param name="question">At least one target and one product; all of them with a price or none.</param>
    /// <remarks>
    /// <para>Formula: with one product and one target the rate is amount / share. In general the rates x &gt;= 0 minimise the cost (without
    /// prices the total mass) subject to least &lt;= credits + sum(share x) &lt;= most for each nutrient and to the least and most rates.
    /// Among equal costs the least total mass is taken, then as much as possible of the first product, of the second, and so on. Where no
    /// rates meet all targets, the nearest are given: limits (at most) are kept as far as they can be; then the sum over all targets of
    /// what is missing, or for exact ones too much, each divided by its own target, is least; then the cost. A finding says for each target
    /// missed what stands against it.</para>
    /// <para>The cost of the next kilogram of a target is the shadow price of the programme just above the target, all limits kept; what a
    /// limit costs is the shadow price just above the limit, all targets kept. For products that each bring one more nutrient the first is
    /// what published sheets compute: price less the value of the other nutrients. Solved exactly by the simplex method for bounded
    /// variables.</para>
    /// <para>Range: rates and amounts at least 0, kg/m2; an analysis up to a whole; bounds that do not cross.</para>
    /// <para>Source: one product for one target SOURCES.md, keys MB-FERT and NMSU-A133; the method keys DANTZIG-1963, chapter 18, and
    /// BLAND-1977; the order of aims is judgement.</para>
    /// <para>Accuracy: every aim within 1e-9 of the best of all vertices for 1000 random blends, within 1e-6 of an independent solver for
    /// as many larger ones, limits kept to 1e-12 (BlendSolverTests); a change of units changes nothing beyond 1e-12, another order of
    /// products or targets nothing beyond 1e-8 (ProductRatePropertyTests); the cost of a next kilogram within 1e-9 of asking again
    /// (ProductRateTests).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">No target or no product, two targets of one nutrient, an analysis of more than a whole or of
    /// nothing, prices for some products only, or bounds that cross.</exception>
    public static ProductRateResult Evaluate(ProductRateQuestion question)
    {
        Require(question);
        var forms = Forms(question);
        var free = question.Products.Where(product => product.FixedRate is null).ToArray();
        var scales = new BlendScales(question, free);
        var program = scales.Program();
        var rows = question.Targets.Select(target => scales.Row(target, There(question, target.Form))).ToArray();
        var best = program.Solve(rows);
        var rates = best.Rates.Select(scales.Rate).ToArray();
        var lines = Lines(question, rates, forms);
        var meetsTargets = best.MeetsAll;
        TargetPrice[] prices =
        [
            .. question.Targets.Select(
                (target, j) =>
                    new TargetPrice(
                        scales.NextKilogram(program, rows, best, j, There(question, target.Form)),
                        scales.KilogramOfLimit(program, rows, best, j)
                    )
            ),
        ];
        NutrientBalance[] balances = [.. forms.Select(form => Balance(question, lines, form, best, prices))];
        var sentences = new ProductRateSentences(question, lines, balances);
        var total = lines.Sum(line => line.Rate.KilogramsPerSquareMetre);
        return new ProductRateResult
        {
            Headline = sentences.Headline(meetsTargets),
            Verdict = meetsTargets ? TargetsVerdict.Met : TargetsVerdict.Missed,
            Products = lines,
            Nutrients = balances,
            TotalRate = new MassPerArea(total),
            Blend = Blend(lines, forms),
            CostPerSquareMetre = lines[0].CostPerSquareMetre is null ? null : lines.Sum(line => line.CostPerSquareMetre),
            TotalCost = lines[0].TotalCost is null ? null : lines.Sum(line => line.TotalCost),
            Assumptions = Assumptions(question, forms),
            Findings =
            [
                .. meetsTargets ? [] : BlendConflict.Of(program, rows, best).Select(conflict => sentences.Explain(conflict, free)),
                .. sentences.Findings(),
            ],
            Cautions = Cautions(lines),
        };
    }

    private static void Require(ProductRateQuestion question)
    {
        if (question.Targets.Count == 0 || question.Products.Count == 0)
            throw new ArgumentException("A target and a product are needed.", nameof(question));
        if (question.Targets.DistinctBy(target => target.Form.Nutrient).Count() < question.Targets.Count)
            throw new ArgumentException("Two targets of one nutrient.", nameof(question));
        if (
            question.Targets.Any(target =>
                target.Most is { } most && Threshold.IsBelow(most.KilogramsPerSquareMetre, target.Amount.KilogramsPerSquareMetre)
            )
        )
            throw new ArgumentException("A target above its own limit.", nameof(question));
        if (
            question.Products.Any(product =>
                product.Analysis.All(one => one.Share <= 0) || NutrientShare.IsMoreThanAWhole(product.Analysis)
            )
        )
            throw new ArgumentException("An analysis of nothing, or of more than a whole.", nameof(question));
        if (question.Products.Select(product => product.PricePerKilogram is null).Distinct().Count() > 1)
            throw new ArgumentException("Prices for some products only.", nameof(question));
        if (
            question.Products.Any(product =>
                product is { LeastRate: { } least, MostRate: { } most }
                && Threshold.IsBelow(most.KilogramsPerSquareMetre, least.KilogramsPerSquareMetre)
            )
        )
            throw new ArgumentException("A least rate above the most.", nameof(question));
    }

    // The form in which each nutrient is told: that of its target, else the first one named.
    private static NutrientForm[] Forms(ProductRateQuestion question) =>
        [
            .. question
                .Targets.Select(target => target.Form)
                .Concat(question.Credits.Select(credit => credit.Form))
                .Concat(question.Products.SelectMany(product => product.Analysis).Where(one => one.Share > 0).Select(one => one.Form))
                .DistinctBy(form => form.Nutrient)
                .OrderBy(form => form.Nutrient),
        ];

    private static double Credits(ProductRateQuestion question, NutrientForm form) =>
        question
            .Credits.Where(credit => credit.Form.Nutrient == form.Nutrient)
            .Sum(credit => credit.Amount.KilogramsPerSquareMetre * credit.Form.To(form));

    // What no computed rate changes: credits, and products of fixed rate.
    private static double There(ProductRateQuestion question, NutrientForm form) =>
        Credits(question, form) + question.Products.Sum(product => (product.FixedRate?.KilogramsPerSquareMetre ?? 0) * product.Share(form));

    private static ProductLine[] Lines(ProductRateQuestion question, MassPerArea[] computed, NutrientForm[] forms)
    {
        var next = 0;
        return [.. question.Products.Select(product => Line(product, product.FixedRate ?? computed[next++], question.Area, forms))];
    }

    private static ProductLine Line(OfferedProduct product, MassPerArea rate, Area? area, NutrientForm[] forms)
    {
        var held = forms.Where(form => product.Share(form) > 0).ToArray();
        var total = area is { } known ? new Mass(rate.KilogramsPerSquareMetre * known.SquareMetres) : (Mass?)null;
        return new ProductLine(
            product,
            rate,
            [.. held.Select(form => new NutrientAmount(form, new MassPerArea(rate.KilogramsPerSquareMetre * product.Share(form))))],
            rate.KilogramsPerSquareMetre * product.PricePerKilogram,
            total,
            total is { } mass && product.Package is { } package ? WholePackages(mass, package) : null,
            total?.Kilograms * product.PricePerKilogram,
            held is [var only] && product.PricePerKilogram is { } price ? new NutrientCost(only, price / product.Share(only)) : null
        );
    }

    // 3000 kg in bags of 50 kg are 60 bags, also where rounding makes it a hair more.
    private static long WholePackages(Mass total, Mass package)
    {
        var packages = total.Kilograms / package.Kilograms;
        var nearest = Math.Round(packages);
        return (long)(Threshold.IsAbove(packages, nearest) ? Math.Ceiling(packages) : nearest);
    }

    private static NutrientBalance Balance(
        ProductRateQuestion question,
        ProductLine[] lines,
        NutrientForm form,
        BlendSolution best,
        TargetPrice[] prices
    )
    {
        var at = question.Targets.Select(target => target.Form.Nutrient).ToList().IndexOf(form.Nutrient);
        double Brought(bool isFixed) =>
            lines
                .Where(line => line.Product.FixedRate is not null == isFixed)
                .Sum(line => line.Rate.KilogramsPerSquareMetre * line.Product.Share(form));
        return new NutrientBalance(
            form,
            at < 0 ? null : question.Targets[at],
            new MassPerArea(Credits(question, form)),
            new MassPerArea(Brought(isFixed: true)),
            new MassPerArea(Brought(isFixed: false)),
            at < 0 || best.Met[at],
            at < 0 ? null : prices[at].NextKilogram,
            at < 0 ? null : prices[at].KilogramOfLimit
        );
    }

    private static NutrientShare[] Blend(ProductLine[] lines, NutrientForm[] forms)
    {
        var computed = lines.Where(line => line.Product.FixedRate is null).ToArray();
        var total = computed.Sum(line => line.Rate.KilogramsPerSquareMetre);
        return total > 0
            ?
            [
                .. forms
                    .Select(form => new NutrientShare(
                        form,
                        computed.Sum(line => line.Rate.KilogramsPerSquareMetre * line.Product.Share(form)) / total
                    ))
                    .Where(one => one.Share > 0),
            ]
            : [];
    }

    private static List<Assumption> Assumptions(ProductRateQuestion question, NutrientForm[] forms)
    {
        var assumptions = new List<Assumption>();
        assumptions.AddRange(
            question
                .Targets.Index()
                .Where(target => target.Item.Kind is null)
                .Select(target => ProductRateDefaults.AssumedKind(target.Index))
        );
        if (question.Products[0].PricePerKilogram is null)
            assumptions.Add(ProductRateDefaults.LeastMass);
        assumptions.AddRange(
            question
                .Products.SelectMany(product => product.Analysis)
                .Select(one => one.Form)
                .Concat(question.Credits.Select(credit => credit.Form))
                .Distinct()
                .Select(from => (From: from, To: forms.FirstOrDefault(form => form.Nutrient == from.Nutrient)))
                .Where(pair => pair.To is not null && pair.From.To(pair.To) != 1)
                .Select(pair => ProductRateDefaults.Converted(pair.From, pair.To!))
        );
        return assumptions;
    }

    private static List<Caution> Cautions(ProductLine[] lines)
    {
        var cautions = new List<Caution>
        {
            new(
                ProductRateCodes.SoilTestFirst,
                $"Nutrient rates follow a soil test, the product label, local rules and a licensed or certified adviser; this answer only does their arithmetic."
            ),
            new(
                ProductRateCodes.SeedRowHasItsOwnLimit,
                $"Product laid in the seed row can kill the seed at rates that are harmless elsewhere: its limit is a question of its own and goes before these rates."
            ),
        };
        if (lines.Count(line => line.Rate.KilogramsPerSquareMetre > 0) > 1)
            cautions.Add(
                new Caution(
                    ProductRateCodes.NotAllProductsMix,
                    $"Not all products may share a tank or a heap: some draw water and cake, some give off gas or feed a fire. Read their labels and safety data sheets, and ask the supplier, before mixing."
                )
            );
        return cautions;
    }

    private readonly record struct TargetPrice(double? NextKilogram, double? KilogramOfLimit);
}
