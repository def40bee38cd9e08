using System.Globalization;

namespace CalibrationApi.Engine.Answers;

/// <summary>Small counts in words, as sentences want them.</summary>
internal static class CountWords
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

    public static string Of(int count) => count < Words.Length ? Words[count] : count.ToString(CultureInfo.InvariantCulture);
}
