using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.BulkDensities;

/// <summary>The bulk density of a product with its interval, beside the published ones.</summary>
public static class BulkDensityEvaluation
{
    /// <summary>Evaluates <paramref name="question"/>.</summary>
    /// <param name="question">The evidence, at least one weighing or number above 0; a material and a tank where known.</param>
    /// <remarks>
    /// <para>Formula: rho = m / V pooled over weighings (<see cref="WeighedVolume"/>), or the number read, or the middle of the published
    /// range; interval as <see cref="TwoPartUncertainty"/>, kg/m3. The density comes from the evidence alone; published values are a check
    /// beside it and are used only where there is no other evidence. The mass of a fill is V f rho, the area that it covers the mass over
    /// the rate.</para>
    /// <para>Range: densities, volumes and rates above 0; one weighing rests on the prior of its scatter.</para>
    /// <para>Source: JCGM 100:2008, 4.3.7 and 5.1.6 (SOURCES.md, key GUM); default uncertainties are judgement.</para>
    /// <para>Accuracy: 1e-9 relative against mass over volume and quadrature by hand (BulkDensityEvaluationTests, WeighedVolumeTests);
    /// published densities as printed, or the table of cases says why not (BulkDensityTradeTests).</para>
    /// </remarks>
    public static BulkDensityResult Evaluate(BulkDensityQuestion question)
    {
        var estimate = question.Evidence.Estimate();
        var coverage = question.CoverageProbability ?? CatchTestLimits.DefaultCoverage;
        var density = MeasuredValue.Create(estimate.Density, estimate.Relative.Times(estimate.Density), coverage);
        var material = question.Material ?? (question.Evidence as PublishedDensity)?.Material;
        var comparison = material is { } known ? ReferenceComparison.Of(known, density.Value) : null;
        var loose = Loose(question.Evidence, material);
        return new BulkDensityResult
        {
            Headline = Headline(question, density, comparison),
            Basis = question.Evidence.Basis,
            Density = density,
            Parts = estimate.Parts,
            Readings = estimate.Readings,
            Comparison = comparison,
            LooseDensity = loose,
            Tank = question.Tank is { } tank ? Load(tank, density) : null,
            Cautions = Cautions(question),
            Assumptions =
            [
                .. estimate.Assumptions,
                .. question.Tank is { Fill: null } ? [BulkDensityDefaults.Fill.Assumed("tank/fill")] : Array.Empty<Assumption>(),
            ],
            Findings = [.. estimate.Findings, .. DensityFindings.Of(question.Evidence, density, comparison, loose)],
        };
    }

    private static TankLoad Load(TankToFill tank, MeasuredValue density)
    {
        var volume = tank.Volume.CubicMetres * (tank.Fill ?? 1);
        var mass = new Mass(volume * density.Value);
        return new TankLoad(
            mass,
            new Mass(volume * Math.Max(0, density.Value - density.ExpandedUncertainty)),
            new Mass(volume * (density.Value + density.ExpandedUncertainty)),
            tank.Rate is { } rate ? new Area(mass.Kilograms / rate.KilogramsPerSquareMetre) : null
        );
    }

    // Pounds per US bushel are the loose weight already.
    private static BulkDensity? Loose(DensityEvidence evidence, ReferenceMaterial? material) =>
        evidence is ReadDensity { IsTestWeight: true, Unit.Symbol: "lb/bu-imp" or "kg/hL" } read
        && material is { } grain
        && CanadianTestWeight.Grains.Contains(grain)
        && CanadianTestWeight.Loose(grain, read.Density) is { KilogramsPerCubicMetre: > 0 } loose
        // Settled grain is never lighter than loose grain: where the equation says so, it compares two ways of weighing only.
        && Threshold.IsBelow(loose.KilogramsPerCubicMetre, read.Density.KilogramsPerCubicMetre)
            ? loose
            : null;

    private static Sentence Headline(BulkDensityQuestion question, MeasuredValue density, ReferenceComparison? comparison)
    {
        var evidence = question.Evidence;
        var value = new BulkDensity(density.Value);
        var give = new Ratio(density.ExpandedUncertainty / density.Value);
        Sentence from = evidence switch
        {
            WeighedVolume weighed =>
                $"from {new CountInWords(weighed.IndicatedNet.Count)} weighing{(weighed.IndicatedNet.Count == 1 ? "" : "s")} of {weighed.Volume}",
            FilledTank tank => $"from {tank.Mass} that filled {tank.Volume}",
            ReadDensity { IsTestWeight: true } => $"from a test weight",
            ReadDensity => $"as stated",
            _ => $"from published values only",
        };
        var product = question.Product is { } name ? $" of {name}" : "";
        Sentence sentence =
            $"The bulk density{product} is {value}, give or take {give:0.#} ({new Ratio(density.CoverageProbability):0.##} coverage), {from}.";
        if (evidence is PublishedDensity)
            return $"{sentence} Start with it, and weigh a known volume of your own lot.";
        return comparison is not null && Math.Abs(comparison.Beyond) > BulkDensityDefaults.FarOutside
            ? $"{sentence} That is far from what is published for {ReferenceDensities.NameOf(comparison.Material)}: check it before you use it."
            : sentence;
    }

    private static List<Caution> Cautions(BulkDensityQuestion question)
    {
        List<Caution> cautions = [];
        if (question.Evidence is WeighedVolume or FilledTank)
            cautions.Add(Caution.ProductDust);
        if (question.Evidence is FilledTank || question.Tank is not null)
            cautions.Add(Caution.TankEntry);
        return cautions;
    }
}
