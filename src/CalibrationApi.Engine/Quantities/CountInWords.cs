using System.Globalization;

namespace CalibrationApi.Engine.Quantities;

/// <summary>A count that sentences write in words while it is small.</summary>
/// <param name="Count">The count.</param>
internal readonly record struct CountInWords(int Count) : IFormattable
{
    private static readonly string[] Words =
    [
        "no",
        "one",
        "two",
        "three",
        "four",
        "five",
        "six",
        "seven",
        "eight",
        "nine",
        "ten",
        "eleven",
        "twelve",
    ];

    public override string ToString() => Count < Words.Length ? Words[Count] : Count.ToString(CultureInfo.InvariantCulture);

    /// <summary>The count in words; <c>C</c> begins a sentence with it.</summary>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        var words = ToString();
        return format == "C" ? char.ToUpperInvariant(words[0]) + words[1..] : words;
    }
}
