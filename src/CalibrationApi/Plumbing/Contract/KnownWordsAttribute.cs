namespace CalibrationApi.Plumbing.Contract;

/// <summary>
/// Names the words that a text of an answer can hold today. The contract tells them without closing the list: within v1 words are added.
/// </summary>
/// <remarks>A word that may be sent needs no attribute; its rule closes the list.</remarks>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class KnownWordsAttribute : Attribute
{
    /// <param name="source">An enumeration whose names are the words, or a class whose public string constants are.</param>
    public KnownWordsAttribute(Type source) => Source = source;

    /// <param name="words">The words themselves.</param>
    public KnownWordsAttribute(params string[] words) => Words = words;

    public Type? Source { get; }

    public string[]? Words { get; }
}
