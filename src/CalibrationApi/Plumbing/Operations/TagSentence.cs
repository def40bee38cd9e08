namespace CalibrationApi.Plumbing.Operations;

/// <summary>Says what the operations of a tag are for.</summary>
/// <param name="Tag">The tag.</param>
/// <param name="Says">The sentence.</param>
internal sealed record TagSentence(string Tag, string Says);
