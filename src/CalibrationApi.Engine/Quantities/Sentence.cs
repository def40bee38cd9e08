using System.ComponentModel;
using System.Runtime.CompilerServices;

namespace CalibrationApi.Engine.Quantities;

/// <summary>
/// A sentence that has not been written yet: its words, and the quantities, numbers and words that stand between them. It is made from
/// an interpolated string and written, in chosen units, by <see cref="DisplayUnits"/>.
/// </summary>
/// <remarks>
/// Each value has a name, taken from how the code calls it (<see cref="SentenceNames"/>), so that another language can say the same with
/// words of its own. A value may itself be a sentence; its words and values then become part of this one.
/// </remarks>
[InterpolatedStringHandler]
public sealed class Sentence
{
    private readonly string?[] words;
    private readonly Hole[] holes;
    private int filled;

    /// <summary>Called by the compiler.</summary>
    /// <param name="literalLength">The length of the words; not needed.</param>
    /// <param name="formattedCount">How many values stand between them.</param>
    [EditorBrowsable(EditorBrowsableState.Never)]
    public Sentence(int literalLength, int formattedCount)
    {
        words = new string?[formattedCount + 1];
        holes = formattedCount == 0 ? [] : new Hole[formattedCount];
    }

    /// <summary>How many values there are.</summary>
    internal int Count => filled;

    /// <summary>The value at a place.</summary>
    internal ref readonly Hole this[int place] => ref holes[place];

    /// <summary>The words before the value at a place; those behind the last one at <see cref="Count"/>.</summary>
    internal string Before(int place) => words[place] ?? "";

    /// <summary>Called by the compiler.</summary>
    /// <param name="text">Words.</param>
    [EditorBrowsable(EditorBrowsableState.Never)]
    public void AppendLiteral(string text) => words[filled] += text;

    /// <summary>Called by the compiler.</summary>
    /// <param name="value">The value.</param>
    /// <param name="format">How it is written.</param>
    /// <param name="name">How the code calls it.</param>
    [EditorBrowsable(EditorBrowsableState.Never)]
    public void AppendFormatted(object? value, string? format = null, [CallerArgumentExpression(nameof(value))] string name = "") =>
        holes[filled++] = new Hole(value, format, name);

    /// <summary>A place in a sentence where a value stands.</summary>
    /// <param name="Value">A quantity, a number, a word or another sentence.</param>
    /// <param name="Format">How it is written, where that is not the usual way.</param>
    /// <param name="Expression">How the code calls it.</param>
    internal readonly record struct Hole(object? Value, string? Format, string Expression)
    {
        /// <summary>The code chose one of the texts that it holds itself: that is words of the sentence and no value.</summary>
        public bool IsChoiceOfWords =>
            Value is string chosen
            && Expression.Contains('"', StringComparison.Ordinal)
            && Expression.Contains($"\"{chosen}\"", StringComparison.Ordinal);
    }
}
