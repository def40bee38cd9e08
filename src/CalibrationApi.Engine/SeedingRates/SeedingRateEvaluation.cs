using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.SeedingRates;

/// <summary>How much to sow for a stand, or what stand a rate gives, with packages, cost and what is unusual.</summary>
public static class SeedingRateEvaluation
{
    /// <summary>Coverage probability of the interval of a stand.</summary>
    public const double Coverage = 0.95;

    /// <summary>Evaluates <paramref name="question"/>.</summary>
    /// <param name="question">Exactly one of stand, seeds, germinable seeds and rate; a kernel mass; what is known of
    /// establishment.</param>
    /// <remarks>
    /// <para>Formula: stand to seeds to mass, or back, by <see cref="SeedingRate"/>, kg/m2. The rate is a number that is typed in, so the
    /// uncertainties of kernel mass, germination and emergence all fall on the stand: u^2 = u_kernel^2 + u_germination^2 + u_emergence^2,
    /// relative .</para>
    /// <para>Range: counts and masses above 0, shares above 0 and at most 1; without a survival there is no stand.</para>
    /// <para>Source: SOURCES.md, keys NDSU-B and UKY-SR; the uncertainty of a product JCGM 100:2008, 5.1.6 (key GUM).</para>
    /// <para>Accuracy: there and back within 1e-12 (SeedingRatePropertyTests); each part by hand (SeedingRateEvaluationTests); published
    /// rates as printed, or the table of cases says why not (SeedingRateTradeTests).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">A stand without a survival, germinable seeds without a germination, or a price of packages
    /// without a package.</exception>
    /// <exception cref="InvalidOperationException">Not exactly one of stand, seeds, germinable seeds and rate is given.</exception>
    public static SeedingRateResult Evaluate(SeedingRateQuestion question)
    {
        var purity = question.Purity ?? SownSeedDefaults.Purity.Value.Canonical;
        var survival = question.Establishment.Survival;
        var seeds = SeedsOf(question, purity);
        var rate = question.Rate ?? SeedingRate.Mass(seeds, question.Kernel, purity);
        CountPerArea? plants = survival is { } share ? question.Stand ?? SeedingRate.Plants(seeds, share) : null;
        StandUncertaintyPart[] parts = plants is null ? [] : [.. Parts(question)];
        var packages = question.Package is { } package
            ? SeedPackages.Of(package.MassOf(question.Kernel, purity), rate, question.Area)
            : null;
        Mass? mass = question.Area is { } area ? new Mass(rate.KilogramsPerSquareMetre * area.SquareMetres) : null;
        var stated = question.StatedRate is { } other ? Compare(question, other, rate, purity) : null;
        return new SeedingRateResult
        {
            Headline = Headline(question, Sown(question, rate, seeds, plants), mass, packages),
            Rate = rate,
            Seeds = seeds,
            GerminableSeeds = question.Establishment.Germination is { } viable ? new CountPerArea(seeds.PerSquareMetre * viable) : null,
            Plants = plants,
            PlantsWithUncertainty = plants is { } stand && parts.Length > 0 ? Interval(stand, parts) : null,
            SeedsPerRow = question.RowSpacing is { } spacing ? SeedingRate.PerRow(seeds, spacing) : null,
            PlantsPerRow = question.RowSpacing is { } between && plants is { } standing ? SeedingRate.PerRow(standing, between) : null,
            Kernel = question.Kernel,
            SeedsPerMass = SeedingRate.SeedsPerMass(question.Kernel),
            Survival = survival,
            PureLiveSeed = question.Establishment.Germination is { } germination ? SeedingRate.PureLiveSeed(purity, germination) : null,
            MassOverArea = mass,
            Packages = packages,
            Cost = question.Price is { } price ? CostOf(price, rate, packages, question.Area) : null,
            StatedRate = stated,
            UncertaintyParts = parts,
            Assumptions = question.Purity is null ? [SownSeedDefaults.Purity.Assumed("purity")] : [],
            Findings = [.. SeedingRateFindings.Of(question, rate, seeds, stated)],
            Cautions = question.SeedsCounted is null ? [] : [Caution.TreatedSeed],
        };
    }

    private static CountPerArea SeedsOf(SeedingRateQuestion question, double purity) =>
        question.Target switch
        {
            SowingTarget.Stand => SeedingRate.Seeds(
                question.Stand!.Value,
                question.Establishment.Survival
                    ?? throw new ArgumentException("A stand takes germination and emergence, or survival.", nameof(question))
            ),
            SowingTarget.Seeds => question.Seeds!.Value,
            // The share that germinates takes the place of the share that becomes a plant.
            SowingTarget.GerminableSeeds => SeedingRate.Seeds(
                question.GerminableSeeds!.Value,
                question.Establishment.Germination
                    ?? throw new ArgumentException("Germinable seeds take the germination.", nameof(question))
            ),
            _ => SeedingRate.SeedsIn(question.Rate!.Value, question.Kernel, purity),
        };

    private static IEnumerable<StandUncertaintyPart> Parts(SeedingRateQuestion question)
    {
        if (question.KernelUncertainty is { } kernel)
            yield return new(StandUncertaintySource.KernelMass, kernel);
        if (question.Establishment.GerminationUncertainty is { } germination)
            yield return new(StandUncertaintySource.GerminationTest, germination);
        if (question.Establishment.EmergenceUncertainty is { } emergence)
            yield return new(StandUncertaintySource.Emergence, emergence);
    }

    private static MeasuredValue Interval(CountPerArea plants, StandUncertaintyPart[] parts)
    {
        var variance = parts.Sum(part => part.Relative * part.Relative);
        return MeasuredValue.Create(
            plants.PerSquareMetre,
            new TwoPartUncertainty(0, double.PositiveInfinity, variance).Times(plants.PerSquareMetre),
            Coverage
        );
    }

    private static SeedCost CostOf(SeedPrice price, MassPerArea rate, SeedPackages? packages, Area? area)
    {
        var perKilogram = price.PerKilogram
            ?? price.PerPackage / packages?.Mass.Kilograms
            ?? throw new ArgumentException("A price of packages takes a package.", nameof(price));
        var perSquareMetre = perKilogram * rate.KilogramsPerSquareMetre;
        return new(
            perSquareMetre,
            area is { } sown ? perSquareMetre * sown.SquareMetres : null,
            packages?.Whole * (price.PerPackage ?? perKilogram * packages?.Mass.Kilograms)
        );
    }

    private static StatedRateComparison Compare(SeedingRateQuestion question, MassPerArea stated, MassPerArea rate, double purity)
    {
        var ratio = stated.KilogramsPerSquareMetre / rate.KilogramsPerSquareMetre;
        var seeds = SeedingRate.SeedsIn(stated, question.Kernel, purity);
        return new(
            stated,
            ratio - 1,
            seeds,
            question.Establishment.Survival is { } survival ? SeedingRate.Plants(seeds, survival) : null,
            question.StatedRateIsShortcut ?? DivideByTen.Explains(ratio)
        );
    }

    private static Sentence Sown(SeedingRateQuestion question, MassPerArea rate, CountPerArea seeds, CountPerArea? plants) =>
        (question.Target, plants) switch
        {
            (SowingTarget.GerminableSeeds, { } stand) =>
                $"Sow {rate} to put down {question.GerminableSeeds!.Value:germinable seeds}, {seeds:seeds} in all. Expect a stand of {stand:plants}.",
            (SowingTarget.GerminableSeeds, null) =>
                $"Sow {rate} to put down {question.GerminableSeeds!.Value:germinable seeds}, {seeds:seeds} in all.",
            (SowingTarget.Stand, { } stand) => $"Sow {rate} for a stand of {stand:plants}. That puts down {seeds:seeds}.",
            (SowingTarget.Seeds, { } stand) => $"Sow {rate} to put down {seeds:seeds}. Expect a stand of {stand:plants}.",
            (SowingTarget.Rate, { } stand) => $"A rate of {rate} puts down {seeds:seeds}. Expect a stand of {stand:plants}.",
            (SowingTarget.Rate, null) => $"A rate of {rate} puts down {seeds:seeds}.",
            _ => $"Sow {rate} to put down {seeds:seeds}.",
        };

    private static Sentence Headline(SeedingRateQuestion question, Sentence sown, Mass? mass, SeedPackages? packages)
    {
        if (mass is null)
            return sown;
        return packages is { Whole: { } whole, LeftOver: { } rest }
            ? $"{sown} For {question.Area} that takes {mass}, which is {(whole == 1 ? (Sentence)$"1 package" : $"{whole:F0} packages")} with {rest} left over."
            : (Sentence)$"{sown} For {question.Area} that takes {mass}.";
    }
}
