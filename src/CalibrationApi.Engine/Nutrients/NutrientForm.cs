namespace CalibrationApi.Engine.Nutrients;

/// <summary>What a plant takes from a product, in whatever form it is stated.</summary>
public enum Nutrient
{
    /// <summary>Nitrogen.</summary>
    Nitrogen,

    /// <summary>Phosphorus.</summary>
    Phosphorus,

    /// <summary>Potassium.</summary>
    Potassium,

    /// <summary>Sulfur.</summary>
    Sulfur,
}

/// <summary>The form in which a nutrient is stated: as the element or as an oxide or ion that holds it.</summary>
/// <remarks>
/// Forms of one nutrient are converted by the ratio of molar masses, see <see cref="AtomicWeights"/>; a form is never guessed.
/// </remarks>
public sealed class NutrientForm
{
    private NutrientForm(string symbol, Nutrient nutrient, double elementShare)
    {
        Symbol = symbol;
        Nutrient = nutrient;
        ElementShare = elementShare;
    }

    /// <summary>Nitrogen as the element.</summary>
    public static NutrientForm N { get; } = new("N", Nutrient.Nitrogen, 1);

    /// <summary>Phosphorus as phosphorus pentoxide, the form of most labels.</summary>
    public static NutrientForm P2O5 { get; } =
        new("P2O5", Nutrient.Phosphorus, 2 * AtomicWeights.Phosphorus / (2 * AtomicWeights.Phosphorus + 5 * AtomicWeights.Oxygen));

    /// <summary>Phosphorus as the element.</summary>
    public static NutrientForm P { get; } = new("P", Nutrient.Phosphorus, 1);

    /// <summary>Potassium as potassium oxide, the form of most labels.</summary>
    public static NutrientForm K2O { get; } =
        new("K2O", Nutrient.Potassium, 2 * AtomicWeights.Potassium / (2 * AtomicWeights.Potassium + AtomicWeights.Oxygen));

    /// <summary>Potassium as the element.</summary>
    public static NutrientForm K { get; } = new("K", Nutrient.Potassium, 1);

    /// <summary>Sulfur as the element.</summary>
    public static NutrientForm S { get; } = new("S", Nutrient.Sulfur, 1);

    /// <summary>Sulfur that is there as sulfate, counted as the element.</summary>
    public static NutrientForm SulfateSulfur { get; } = new("SO4-S", Nutrient.Sulfur, 1);

    /// <summary>Sulfur as sulfur trioxide.</summary>
    public static NutrientForm SO3 { get; } =
        new("SO3", Nutrient.Sulfur, AtomicWeights.Sulfur / (AtomicWeights.Sulfur + 3 * AtomicWeights.Oxygen));

    /// <summary>Sulfur as the whole sulfate ion.</summary>
    public static NutrientForm SO4 { get; } =
        new("SO4", Nutrient.Sulfur, AtomicWeights.Sulfur / (AtomicWeights.Sulfur + 4 * AtomicWeights.Oxygen));

    /// <summary>Every form.</summary>
    public static IReadOnlyList<NutrientForm> All { get; } = [N, P2O5, P, K2O, K, S, SulfateSulfur, SO3, SO4];

    /// <summary>The word that people write for it.</summary>
    public string Symbol { get; }

    /// <summary>The nutrient.</summary>
    public Nutrient Nutrient { get; }

    /// <summary>Mass of the element per mass of this form, above 0, at most 1.</summary>
    public double ElementShare { get; }

    /// <summary>The form behind a word; null when there is none.</summary>
    public static NutrientForm? Find(string? symbol) => All.FirstOrDefault(form => form.Symbol == symbol);

    /// <summary>Mass of <paramref name="other"/> that holds as much of the nutrient as one mass of this form.</summary>
    /// <param name="other">Another form of the same nutrient.</param>
    /// <remarks>
    /// <para>Formula: share of the element in this form over that in the other, from molar masses.</para>
    /// <para>Range: forms of one nutrient; 1 between equals.</para>
    /// <para>Source: SOURCES.md, key CIAAW-2021, the atomic weights of <see cref="AtomicWeights"/>.</para>
    /// <para>Accuracy: there and back within 1e-12, ratios of molar masses within 1e-12 (NutrientFormTests); published factors as printed,
    /// or the table of cases says why not (NutrientTradeTests).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">The other form is of another nutrient.</exception>
    public double To(NutrientForm other) =>
        other.Nutrient != Nutrient ? throw new ArgumentException($"{Symbol} and {other.Symbol} are not the same nutrient.", nameof(other))
        : ElementShare == other.ElementShare ? 1
        : ElementShare / other.ElementShare;

    /// <inheritdoc/>
    public override string ToString() => Symbol;
}
