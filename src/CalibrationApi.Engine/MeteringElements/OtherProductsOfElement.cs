using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.MeteringElements;

/// <summary>What the fitted element is known to deliver of other products, by which a value of this one can be judged.</summary>
/// <param name="Density">Bulk density of the product at hand rho, above 0.</param>
/// <param name="Known">Other products on the same element with their bulk densities; at least one.</param>
public sealed record OtherProductsOfElement(Uncertain<BulkDensity> Density, IReadOnlyList<KnownDelivery> Known)
{
    /// <summary>The mass per revolution that the others let expect, with the standard deviation of its logarithm.</summary>
    /// <remarks>
    /// <para>Formula: fill efficiency is that of the element and changes a little from product to product, so that k / rho is about the
    /// same for all: ln k = ln rho + mean(ln k_i - ln rho_i) over the n others, with sd^2 = u_rho^2 + s^2 (1 + 1 / n) + mean(u_rho_i^2 +
    /// u_k_i^2) / n; s from product to product. The displacement cancels.</para>
    /// <para>Range: at least one other product, values and densities above 0.</para>
    /// <para>Source: our own derivation; s and the default uncertainties are judgement (<see cref="ElementDefaults"/>).</para>
    /// <para>Accuracy: 1e-12 relative (OtherProductsOfElementTests).</para>
    /// </remarks>
    public (MassPerRevolution Median, double Spread) Expected
    {
        get
        {
            var product = ElementDefaults.ProductToProduct.Value.Canonical;
            var own = Density.RelativeUncertainty ?? ElementDefaults.Density.Value.Canonical;
            var perDensity = Known.Average(one =>
                Math.Log(one.Value.Value.KilogramsPerRevolution / one.Density.Value.KilogramsPerCubicMetre)
            );
            var doubt = Known.Average(one =>
                Square(one.Density.RelativeUncertainty ?? ElementDefaults.Density.Value.Canonical)
                + Square(one.Value.RelativeUncertainty ?? ElementDefaults.MassPerRevolution.Value.Canonical)
            );
            return (
                new MassPerRevolution(Density.Value.KilogramsPerCubicMetre * Math.Exp(perDensity)),
                Math.Sqrt(own * own + product * product * (1 + 1.0 / Known.Count) + doubt / Known.Count)
            );
        }
    }

    /// <summary>A finding about a value two standard deviations or more from what the others let expect; null when it is usual.</summary>
    /// <param name="value">The value, above 0.</param>
    /// <param name="relativeUncertainty">Its standard uncertainty, relative.</param>
    /// <param name="what">The value in words; null for what was measured or typed in.</param>
    /// <remarks>
    /// <para>Formula: |ln k - ln median| / sqrt(sd^2 + u_k^2) from 2 on.</para>
    /// <para>Range: values above 0.</para>
    /// <para>Source: our own derivation; two standard deviations are judgement.</para>
    /// <para>Accuracy: the limit from both sides (OtherProductsOfElementTests).</para>
    /// </remarks>
    public Finding? FindingOf(MassPerRevolution value, double relativeUncertainty, string? what = null)
    {
        var (median, spread) = Expected;
        var deviations =
            Math.Log(value.KilogramsPerRevolution / median.KilogramsPerRevolution)
            / Math.Sqrt(spread * spread + relativeUncertainty * relativeUncertainty);
        if (Math.Abs(deviations) < ElementDefaults.Unusual)
            return null;
        var names = Known.Select(one => one.Name).OfType<string>().ToArray();
        return Finding.Warning(
            ElementCodes.UnlikeOtherProducts,
            $"By their bulk densities, {(names.Length > 0 ? string.Join(", ", names) : "the other products")} on this element let {median} be expected; {(what is null ? (Sentence)$"{value}" : $"{what}, {value},")} is {Math.Abs(deviations):0.0} standard deviations away. Check product, element, density and count."
        );
    }

    private static double Square(double x) => x * x;
}

/// <summary>What the element delivers of another product.</summary>
/// <param name="Name">What the owner calls the product; null when it has no name.</param>
/// <param name="Value">Its mass per revolution.</param>
/// <param name="Density">Its bulk density.</param>
public sealed record KnownDelivery(string? Name, Uncertain<MassPerRevolution> Value, Uncertain<BulkDensity> Density);
