using System.Collections.Concurrent;
using System.Text.RegularExpressions;

namespace CalibrationApi.Engine.Quantities;

/// <summary>
/// The names of the values of a sentence: the last telling word of how the code calls them, so that <c>new Ratio(standard.Low)</c> is
/// "low" and <c>line.Product.Name</c> is "product".
/// </summary>
internal static partial class SentenceNames
{
    private static readonly ConcurrentDictionary<string, string> Known = new(StringComparer.Ordinal);

    // Words that tell how something is reached and not what it is.
    private static readonly HashSet<string> Untelling =
    [
        "new",
        "is",
        "not",
        "null",
        "or",
        "and",
        "this",
        "var",
        "double",
        "string",
        "Value",
        "Name",
        "Detail",
        "Length",
        "Count",
        "Symbol",
        "InWords",
        "Called",
        "Word",
        "Median",
        "Of",
        "Math",
        "Abs",
        "Floor",
        "Round",
        "Sqrt",
        "ToString",
        "ToLowerInvariant",
        "First",
        "Last",
        "Single",
    ];

    /// <summary>The name for an expression, camelCase; the same for the same expression at any time.</summary>
    public static string Of(string expression) => Known.GetOrAdd(expression, static text =>
        {
            var name = Identifier()
                .Matches(Text().Replace(text, ""))
                .Select(match => match.Value)
                .LastOrDefault(word => !Untelling.Contains(word), "word");
            return char.ToLowerInvariant(name[0]) + name[1..];
        });

    [GeneratedRegex("[A-Za-z_][A-Za-z0-9_]*")]
    private static partial Regex Identifier();

    [GeneratedRegex("\\$?\"(?:[^\"\\\\]|\\\\.)*\"")]
    private static partial Regex Text();
}
