using System.Globalization;

namespace CalibrationApi.Engine.Quantities;

/// <summary>
/// One unit for each dimension, in which an answer and its sentences are written.
/// It writes every quantity inside a sentence in that unit.
/// </summary>
/// <remarks>
/// A quantity without a format is written with four significant digits; a numeric format such as <c>F1</c> is
/// applied to the value in the display unit. A format that begins with a small letter is the noun of what is counted:
/// <c>{stand:plants}</c> gives 212.4 plants/m2. Numbers use a decimal point and no group separators.
/// </remarks>
public sealed class DisplayUnits
{
    private const int SignificantDigits = 4;
    private const int MostDecimals = 15;

    private static readonly string[] Formats =
    [
        .. Enumerable.Range(0, MostDecimals + 1).Select(decimals => "0." + new string('#', decimals)),
    ];

    private readonly Unit[] byDimension;

    private DisplayUnits(Unit[] byDimension) => this.byDimension = byDimension;

    /// <summary>The usual metric units: kg, kg/ha, kg/rev, km/h, m, ha, L, kg/hL, s, %.</summary>
    public static DisplayUnits Metric { get; } = new([.. Enum.GetValues<Dimension>().Select(dimension => UnitTable.Of(dimension)[0])]);

    /// <summary>The usual United States units: lb, lb/ac, lb/rev, mi/h, ft, ac, ft3, lb/bu-us, s, %, inH2O, degF.</summary>
    public static DisplayUnits UnitedStates { get; } =
        Metric.With(
            "lb",
            "lb/ac",
            "/ft2",
            "lb/rev",
            "mi/h",
            "ft",
            "ac",
            "ft3",
            "lb/bu-us",
            "/lb",
            "/ft",
            "lb/min",
            "ft3/min",
            "inH2O",
            "degF"
        );

    /// <summary>The unit for <paramref name="dimension"/>.</summary>
    public Unit this[Dimension dimension] => byDimension[(int)dimension];

    /// <summary>The same choice with <paramref name="units"/> put in place of those of their dimensions.</summary>
    public DisplayUnits With(params ReadOnlySpan<Unit> units)
    {
        var changed = (Unit[])byDimension.Clone();
        foreach (var unit in units)
            changed[(int)unit.Dimension] = unit;
        return new DisplayUnits(changed);
    }

    /// <summary>The value of <paramref name="quantity"/> in the display unit of its dimension.</summary>
    /// <param name="quantity">Any quantity.</param>
    /// <remarks>
    /// <para>Formula: that of <see cref="Unit.FromCanonical"/> of the unit chosen for its dimension.</para>
    /// <para>Range: any quantity; units are chosen for all dimensions.</para>
    /// <para>Source: as <see cref="Unit"/> (SOURCES.md, key NIST-SP811).</para>
    /// <para>Accuracy: that of the conversion (DisplayUnitsTests).</para>
    /// </remarks>
    public double Value(IQuantity quantity) => this[quantity.Dimension].FromCanonical(quantity.Canonical);

    /// <summary>Writes a sentence with its quantities in these units.</summary>
    /// <param name="sentence">Any sentence.</param>
    /// <remarks>
    /// <para>Formula: each quantity by <see cref="Value"/>, then rounded as its place in the sentence says.</para>
    /// <para>Range: any quantity; units are chosen for all dimensions.</para>
    /// <para>Source: as <see cref="Unit"/> (SOURCES.md, key NIST-SP811).</para>
    /// <para>Accuracy: four significant digits where the sentence asks for no others (DisplayUnitsTests).</para>
    /// </remarks>
    public string Write(Sentence sentence) => Writing.Whole(sentence, this);

    /// <summary>Writes a sentence with its quantities in these units, and tells its words and its values apart.</summary>
    /// <param name="sentence">Any sentence.</param>
    /// <remarks>
    /// <para>Formula: each quantity by <see cref="Value"/>, then rounded as its place in the sentence says.</para>
    /// <para>Range: any quantity; units are chosen for all dimensions.</para>
    /// <para>Source: as <see cref="Unit"/> (SOURCES.md, key NIST-SP811).</para>
    /// <para>Accuracy: texts as <see cref="Write"/>; numbers are not rounded (SentenceTests).</para>
    /// </remarks>
    public WrittenSentence WriteParts(Sentence sentence) => Writing.Apart(sentence, this);

    /// <summary>A value as a sentence writes it.</summary>
    internal string Written(object? value, string? format) =>
        value switch
        {
            IQuantity quantity when format is [>= 'a' and <= 'z', ..] =>
                $"{Number(Value(quantity), null)} {format}{this[quantity.Dimension].Symbol}",
            IQuantity quantity => $"{Number(Value(quantity), format)} {this[quantity.Dimension].Symbol}",
            IFormattable formattable => formattable.ToString(format, CultureInfo.InvariantCulture),
            _ => value?.ToString() ?? "",
        };

    private static string Number(double value, string? format)
    {
        if (format is not null)
            return value.ToString(format, CultureInfo.InvariantCulture);
        if (value == 0)
            return "0";
        var magnitude = (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return value.ToString(Formats[Math.Clamp(SignificantDigits - 1 - magnitude, 0, MostDecimals)], CultureInfo.InvariantCulture);
    }

    private DisplayUnits With(params ReadOnlySpan<string> symbols)
    {
        var units = new Unit[symbols.Length];
        for (var i = 0; i < symbols.Length; i++)
            units[i] = UnitTable.Get(symbols[i]);
        return With(units);
    }
}
