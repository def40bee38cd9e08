namespace CalibrationApi.Client;

/// <summary>One thing that is wrong with a request.</summary>
/// <param name="Code">Stable code to act on, for example <c>unit-unknown</c>.</param>
/// <param name="Sentence">What is wrong and what to do, to be shown as it is.</param>
/// <param name="Pointer">Where in the body, as a JSON pointer such as <c>#/catches/0/gross</c>; null when it is not about the body.</param>
/// <param name="Parameter">The query parameter it is about; null when it is not about the query.</param>
/// <param name="Header">The header it is about; null when it is not about a header.</param>
public sealed record CalibrationError(string Code, string Sentence, string? Pointer = null, string? Parameter = null, string? Header = null)
{
    /// <summary>The place, the sentence and the code.</summary>
    public override string ToString() =>
        (Pointer ?? Parameter ?? Header) is { } place ? $"{place}: {Sentence} ({Code})" : $"{Sentence} ({Code})";
}
