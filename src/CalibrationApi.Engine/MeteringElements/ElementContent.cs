using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;

namespace CalibrationApi.Engine.MeteringElements;

/// <summary>What one revolution of an element can hold of a product: displacement times bulk density.</summary>
/// <param name="Displacement">Volume that one revolution displaces V, above 0.</param>
/// <param name="Density">Bulk density of the product rho, above 0.</param>
/// <param name="Kind">How the element carries product; null when it is not known.</param>
/// <param name="Name">What the owner calls the element; null when it has no name.</param>
/// <remarks>
/// <para>Formula: full = rho V, kg per revolution; start value k = 0.9 rho V with u^2 = 0.15^2 + u_rho^2 + u_V^2, relative.</para>
/// <para>Range: displacement and density above 0, uncertainties at least 0.</para>
/// <para>Source: our own derivation; the usual fill and its spread are judgement.</para>
/// <para>Accuracy: 1e-12 relative (ElementContentTests).</para>
/// </remarks>
public sealed record ElementContent(
    Uncertain<Volume> Displacement,
    Uncertain<BulkDensity> Density,
    ElementKind? Kind = null,
    string? Name = null
)
{
    /// <summary>
    /// Fill above which no element delivers, closed pockets aside: what is dragged along between element and housing; judgement, no
    /// published source.
    /// </summary>
    public const double MostFillOfOpenElement = 1.6;

    /// <summary>Standard uncertainties that are allowed for before a value counts as impossible; judgement.</summary>
    private const double Allowed = 2;

    /// <summary>Mass of one revolution when the displacement is full, kg per revolution.</summary>
    public MassPerRevolution Full => new(Density.Value.KilogramsPerCubicMetre * Displacement.Value.CubicMetres);

    /// <summary>Largest fill that is possible for an element of this kind.</summary>
    public double MostFill => MostFillOf(Kind);

    /// <summary>What the fill that a value needs says about the value.</summary>
    /// <param name="value">Mass per revolution k, above 0.</param>
    /// <param name="relativeUncertainty">Its standard uncertainty u_k, relative, &gt;= 0.</param>
    /// <remarks>
    /// <para>Formula: e = k / (rho V) with u^2 = u_rho^2 + u_V^2 + u_k^2, relative. Impossible: e above L (1 + 2 u), where L is 1.05 for
    /// closed pockets and 1.6 for open flutes, augers and unknown elements. Unusual: e above 1.05, or ln(e / 0.9) at or below -2
    /// sqrt(0.15^2 + u^2). Otherwise usual.</para>
    /// <para>Range: values above 0; no uncertainty stated takes the default.</para>
    /// <para>Source: our own derivation; the limits are judgement.</para>
    /// <para>Accuracy: the fill within 1e-12, every limit from both sides (ElementContentTests).</para>
    /// </remarks>
    public (double Fill, Plausibility Plausibility) Judge(MassPerRevolution value, double relativeUncertainty)
    {
        var fill = value.KilogramsPerRevolution / Full.KilogramsPerRevolution;
        var uncertainty = Root(RelativeUncertainty, relativeUncertainty);
        if (Threshold.IsAbove(fill, MostFill * (1 + Allowed * uncertainty)))
            return (fill, Plausibility.Impossible);
        var spread = Root(ElementDefaults.Spread.Value.Canonical, uncertainty);
        var least = ElementDefaults.FillEfficiency.Value.Canonical * Math.Exp(-ElementDefaults.Unusual * spread);
        return (
            fill,
            Threshold.IsAbove(fill, ElementDefaults.MostFillEfficiency) || Threshold.IsBelow(fill, least)
                ? Plausibility.Unusual
                : Plausibility.Usual
        );
    }

    /// <summary>A finding about a value that does not fit; null when it is usual.</summary>
    /// <param name="what">The value in words, as the beginning of a sentence.</param>
    /// <param name="value">The value.</param>
    /// <param name="relativeUncertainty">Its standard uncertainty, relative.</param>
    public Finding? FindingOf(string what, MassPerRevolution value, double relativeUncertainty)
    {
        var (fill, plausibility) = Judge(value, relativeUncertainty);
        return plausibility switch
        {
            Plausibility.Impossible => Finding.Stop(ElementCodes.MoreThanTheElementHolds, $"{what}, {value}, {TooMuch(fill)} {CheckIt}"),
            Plausibility.Unusual => Finding.Warning(
                ElementCodes.FillUnlikeExpected,
                $"{what}, {value}, would fill {NameOrElement} to {new Ratio(fill):F0}; about {ElementDefaults.FillEfficiency.Value:F0} is usual (judgement). {CheckIt}"
            ),
            _ => null,
        };
    }

    /// <summary>What to expect where nothing was measured yet: the content at the usual fill efficiency.</summary>
    public ReferenceValue StartValue =>
        new(
            new MassPerRevolution(ElementDefaults.FillEfficiency.Value.Canonical * Full.KilogramsPerRevolution),
            ReferenceKind.StartValue,
            Root(ElementDefaults.Spread.Value.Canonical, RelativeUncertainty),
            FromAnotherScale: true
        );

    /// <summary>The values that were used and not stated.</summary>
    public IEnumerable<Assumption> Assumptions()
    {
        if (Density.RelativeUncertainty is null)
            yield return ElementDefaults.Density.Assumed("bulkDensity/relativeUncertainty");
        if (Displacement.RelativeUncertainty is null)
            yield return ElementDefaults.Displacement.Assumed("displacement/relativeUncertainty");
        if (Kind is null)
            yield return new(
                "fittedElement/kind",
                new Ratio(MostFillOfOpenElement),
                "not stated: the most that an open element delivers is taken, so that less is called impossible; judgement, no published source"
            );
    }

    /// <summary>What a fill beyond the possible means, as the end of a sentence.</summary>
    internal Sentence TooMuch(double fill) =>
        $"is more than {NameOrElement} can deliver: full it holds {Full} and this would fill it to {new Ratio(fill):F0}.";

    internal const string CheckIt =
        "Check the number and its unit, the count of the revolutions, which element is fitted, its displacement and the bulk density.";

    internal static double MostFillOf(ElementKind? kind) =>
        kind == ElementKind.ClosedPockets ? ElementDefaults.MostFillEfficiency : MostFillOfOpenElement;

    private string NameOrElement => Name is null ? "this element" : $"the element {Name}";

    private double RelativeUncertainty =>
        Root(
            Density.RelativeUncertainty ?? ElementDefaults.Density.Value.Canonical,
            Displacement.RelativeUncertainty ?? ElementDefaults.Displacement.Value.Canonical
        );

    private static double Root(double a, double b) => Math.Sqrt(a * a + b * b);
}

/// <summary>Whether a value can be.</summary>
public enum Plausibility
{
    /// <summary>As such values are.</summary>
    Usual,

    /// <summary>It can be, but seldom is.</summary>
    Unusual,

    /// <summary>It cannot be, whatever the uncertainty.</summary>
    Impossible,
}
