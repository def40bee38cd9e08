using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.VolumeChecks;

/// <summary>The mass per revolution that an element should deliver: displacement times bulk density times fill efficiency.</summary>
public static class VolumeCheckEvaluation
{
    /// <summary>Evaluates <paramref name="question"/>.</summary>
    /// <param name="question">Displacement and density above 0; a fill efficiency, an earlier product or a value to check where
    /// known.</param>
    /// <remarks>
    /// <para>Formula: k = rho V eta on the logarithmic scale, where the parts add: sd(ln k)^2 = u_rho^2 + u_V^2 + s_eta^2. Learned from an
    /// earlier product on the same element V cancels: k = k_0 rho / rho_0, sd(ln k)^2 = u_rho^2 + u_rho0^2 + u_k0^2 + s^2. The interval is
    /// k exp(-+ z sd), its upper end at most rho V L exp(z sqrt(u_rho^2 + u_V^2)), with L the most that the kind of element holds (see
    /// <see cref="ElementContent.Judge"/>). A checked value k_m is (ln k_m - ln k) / sqrt(sd(ln k)^2 + u_m^2) standard deviations away, and implies eta = k_m /
    /// (rho V).</para>
    /// <para>Range: all above 0; uncertainties at least 0; without any a difference has no size in standard deviations.</para>
    /// <para>Source: our own derivation; products as in JCGM 100:2008, 5.1.6 (SOURCES.md, key GUM).</para>
    /// <para>Accuracy: medians and spreads within 1e-12, ends within 1e-9 (VolumeCheckTests).</para>
    /// </remarks>
    public static VolumeCheckResult Evaluate(VolumeCheckQuestion question)
    {
        var z = StudentT.CoverageFactor(question.CoverageProbability ?? CatchTestLimits.DefaultCoverage, double.PositiveInfinity);
        var density = Known(question.Density, ElementDefaults.Density);
        var displacement = Known(question.Displacement, ElementDefaults.Displacement);
        var volume = question.Displacement.Value.CubicMetres;
        var full = question.Density.Value.KilogramsPerCubicMetre * volume;
        var (fill, fillParts) = question.Fill is LearnedFill learned ? Learned(learned, volume) : Stated(question.Fill as StatedFill);
        (string Source, double Relative)[] parts =
            question.Fill is LearnedFill
                ? [("density", density), .. fillParts]
                : [("density", density), ("displacement", displacement), .. fillParts];
        // No element delivers more than the most that it holds, however little is known of its fill.
        var most = ElementContent.MostFillOf(question.Kind);
        var expected = Bounded(
            Interval<MassPerRevolution>(full * fill, Root(parts.Select(part => part.Relative)), z),
            full * most * Math.Exp(z * Root([density, displacement]))
        );
        // Behind a learned fill efficiency stands the displacement, too: it cancels in the mass per revolution only.
        var fillSpread = Root(fillParts.Select(part => part.Relative).Append(question.Fill is LearnedFill ? displacement : 0));
        var compared = question.Checked is { } value ? Compare(value, expected, full, Root([density, displacement]), z) : null;
        return new VolumeCheckResult
        {
            Headline = VolumeCheckSentences.Headline(question, expected, compared),
            Expected = expected,
            FillEfficiency = Bounded(
                Interval<Ratio>(fill, fillSpread, z),
                most * (question.Fill is LearnedFill ? Math.Exp(z * displacement) : 1)
            ),
            Parts = parts,
            Checked = compared,
            Assumptions = [.. Assumptions(question)],
            Findings = [.. VolumeCheckSentences.Findings(question, fill, expected, compared)],
        };
    }

    private static (double Median, (string Source, double Relative)[] Parts) Stated(StatedFill? fill) =>
        (
            fill?.Median ?? ElementDefaults.FillEfficiency.Value.Canonical,
            [("fill-efficiency", fill?.Spread ?? ElementDefaults.Spread.Value.Canonical)]
        );

    private static (double Median, (string Source, double Relative)[] Parts) Learned(LearnedFill fill, double volume) =>
        (
            fill.Value.Value.KilogramsPerRevolution / (fill.Density.Value.KilogramsPerCubicMetre * volume),
            [
                ("earlier-density", Known(fill.Density, ElementDefaults.Density)),
                ("earlier-value", Known(fill.Value, ElementDefaults.MassPerRevolution)),
                ("product-to-product", fill.Spread ?? ElementDefaults.ProductToProduct.Value.Canonical),
            ]
        );

    private static CheckedValue Compare(
        Uncertain<MassPerRevolution> value,
        LogInterval<MassPerRevolution> expected,
        double full,
        double fullSpread,
        double z
    )
    {
        var own = Known(value, ElementDefaults.MassPerRevolution);
        var ratio = value.Value.KilogramsPerRevolution / expected.Median.KilogramsPerRevolution;
        var spread = Root([expected.Spread, own]);
        var logarithm = Math.Log(ratio);
        return new CheckedValue(
            ratio,
            // Without any uncertainty stated a difference has no size in standard deviations.
            spread > 0
                ? logarithm / spread
                : null,
            Interval<Ratio>(value.Value.KilogramsPerRevolution / full, Root([fullSpread, own]), z)
        );
    }

    private static LogInterval<T> Interval<T>(double median, double spread, double z)
        where T : struct, IQuantity<T> =>
        new(
            T.FromCanonical(median),
            T.FromCanonical(median * Math.Exp(-z * spread)),
            T.FromCanonical(median * Math.Exp(z * spread)),
            spread
        );

    // A median beyond the bound is told by a finding, and its interval stays as it is.
    private static LogInterval<T> Bounded<T>(LogInterval<T> interval, double most)
        where T : struct, IQuantity<T> =>
        interval.Median.Canonical < most && interval.Upper.Canonical > most ? interval with { Upper = T.FromCanonical(most) } : interval;

    private static double Known<T>(Uncertain<T> value, DefaultValue fallback)
        where T : struct, IQuantity<T> => value.RelativeUncertainty ?? fallback.Value.Canonical;

    private static double Root(IEnumerable<double> parts) => Math.Sqrt(parts.Sum(part => part * part));

    private static IEnumerable<Assumption> Assumptions(VolumeCheckQuestion question)
    {
        if (question.Density.RelativeUncertainty is null)
            yield return ElementDefaults.Density.Assumed("bulkDensity/relativeUncertainty");
        if (question.Displacement.RelativeUncertainty is null)
            yield return ElementDefaults.Displacement.Assumed("displacement/relativeUncertainty");
        if (question.Fill is LearnedFill learned)
        {
            if (learned.Density.RelativeUncertainty is null)
                yield return ElementDefaults.Density.Assumed("learnedFrom/bulkDensity/relativeUncertainty");
            if (learned.Value.RelativeUncertainty is null)
                yield return ElementDefaults.MassPerRevolution.Assumed("learnedFrom/massPerRevolution/relativeUncertainty");
            if (learned.Spread is null)
                yield return ElementDefaults.ProductToProduct.Assumed("learnedFrom/spread");
        }
        else
        {
            var stated = question.Fill as StatedFill;
            if (stated?.Median is null)
                yield return ElementDefaults.FillEfficiency.Assumed("fillEfficiency");
            if (stated?.Spread is null)
                yield return ElementDefaults.Spread.Assumed("fillEfficiencySpread");
        }

        if (question.Checked is { RelativeUncertainty: null })
            yield return ElementDefaults.MassPerRevolution.Assumed("massPerRevolution/relativeUncertainty");
    }
}
