using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;

namespace CalibrationApi.Engine.Adoptions;

/// <summary>A number typed in by hand beside what is in force for other products on the same element.</summary>
public static class TypedValueAgainstProducts
{
    // Standard uncertainties within which a number is the one of a product.
    private const double Within = 2;

    /// <summary>What to keep in sight about a number that no test explains; empty when nothing is odd about it.</summary>
    /// <param name="typed">The number and what it can be compared with.</param>
    /// <remarks>
    /// <para>Formula: it is the number of another product when |ln(k / k_o)| &lt;= 2 u_o (2 % where unstated), and fits its own product
    /// when it lies as near the value in force before, within U or 4 % of the last test, or within 2 standard deviations of what the
    /// densities of the other products let expect. Of another and not of its own: a warning; of another and nothing known of its own: a
    /// note. Beside that <see cref="OtherProductsOfElement.FindingOf"/>, as for a measured value. A number that its test explains is not
    /// asked.</para>
    /// <para>Range: values above 0.</para>
    /// <para>Source: our own rules; the limits are judgement.</para>
    /// <para>Accuracy: exact comparisons (TypedValueAgainstProductsTests).</para>
    /// </remarks>
    public static IReadOnlyList<Finding> FindingsOf(TypedValue typed)
    {
        if (typed.Test is { } test && TypedValueCheck.Accepts(test, typed))
            return [];
        var findings = new List<Finding>();
        var fitsOwn = FitsOwn(typed);
        if (fitsOwn is not true && Fitting(typed) is { } other)
        {
            findings.Add(
                fitsOwn is false
                    ? Finding.Warning(
                        TypedValueCodes.FitsOtherProduct,
                        $"{typed.InWords} fits {other.Name}, for which {other.Value.Value} is in force on this element, and not what is known of this product. Check which product was meant."
                    )
                    : Finding.Note(
                        TypedValueCodes.FitsOtherProduct,
                        $"{typed.InWords} is what is in force for {other.Name} on this element, {other.Value.Value}. Nothing else is known of this product there: make a catch test before you rely on it."
                    )
            );
        }

        if (Expected(typed)?.FindingOf(typed.Value, 0) is { } unlike)
            findings.Add(unlike);
        return findings;
    }

    /// <summary>What the other products whose densities are known let expect of this one; null when nothing.</summary>
    internal static OtherProductsOfElement? Expected(TypedValue typed)
    {
        KnownDelivery[] known =
        [
            .. typed
                .OtherProducts.Where(other => other.Density is not null)
                .Select(other => new KnownDelivery(other.Name, other.Value, other.Density!.Value)),
        ];
        return typed.Density is { } density && known.Length > 0 ? new OtherProductsOfElement(density, known) : null;
    }

    /// <summary>To which other product the number belongs, as a sentence; null when to none.</summary>
    internal static Sentence? Belongs(TypedValue typed) =>
        Fitting(typed) is { } other ? (Sentence)$"It fits {other.Name}, for which {other.Value.Value} is in force on this element." : null;

    /// <summary>The products in words.</summary>
    internal static string Names(IReadOnlyList<KnownDelivery> known) => string.Join(", ", known.Select(one => one.Name));

    private static ValueOfOtherProduct? Fitting(TypedValue typed) =>
        typed
            .OtherProducts.Where(other =>
                Off(typed, other.Value.Value) <= Within * (other.Value.RelativeUncertainty ?? Usual) + HalfStep(typed)
            )
            .MinBy(other => Off(typed, other.Value.Value));

    // Null when nothing is known of the product itself.
    private static bool? FitsOwn(TypedValue typed)
    {
        if (typed.Test is not null)
            return false;
        if (typed.Before is { } before)
            return Off(typed, before) <= Within * Usual + HalfStep(typed);
        if (typed.LastMeasured is { } last)
            return Off(typed, last.Value)
                <= Math.Max(Within * Usual, last.ExpandedUncertainty / last.Value.KilogramsPerRevolution) + HalfStep(typed);
        if (Expected(typed) is { Expected: var (median, spread) })
            return Off(typed, median) <= Within * spread;
        return null;
    }

    private static double Usual => ReferenceValue.UncertaintyInForce.Value.Canonical;

    private static double HalfStep(TypedValue typed) => typed.Step / 2 / typed.Value.KilogramsPerRevolution;

    private static double Off(TypedValue typed, MassPerRevolution other) =>
        Math.Abs(Math.Log(typed.Value.KilogramsPerRevolution / other.KilogramsPerRevolution));
}
