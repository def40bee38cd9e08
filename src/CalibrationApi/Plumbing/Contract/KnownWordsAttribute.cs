namespace CalibrationApi.Plumbing.Contract;

/// <summary>
/// Names the words that a text of an answer can hold today. The contract tells them without closing the list: within v1 words are added.
/// </summary>
/// <remarks>A word that may be sent needs no attribute; its rule closes the list.</remarks>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class KnownWordsAttribute : Attribute
{
    /// <param name="source">An enumeration whose names are the words, or a class of codes.</param>
    /// <param name="list">The static property of the class that lists them; all of its codes where none is named.</param>
    public KnownWordsAttribute(Type source, string? list = null) => (Source, List) = (source, list);

    /// <param name="words">The words themselves.</param>
    public KnownWordsAttribute(params string[] words) => Words = words;

    public Type? Source { get; }

    public string? List { get; }

    public string[]? Words { get; }
}
