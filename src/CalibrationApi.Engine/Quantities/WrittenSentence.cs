namespace CalibrationApi.Engine.Quantities;

/// <summary>A sentence in chosen units, and what another language needs to say the same.</summary>
/// <param name="Text">The sentence as it can be shown.</param>
/// <param name="Template">
/// The sentence with the name of each value in braces where the value stands. Filled with the texts of the values it gives
/// <paramref name="Text"/> again. A brace of the sentence itself is doubled.
/// </param>
/// <param name="Values">The values, each name once.</param>
public sealed record WrittenSentence(string Text, string Template, IReadOnlyList<WrittenValue> Values);

/// <summary>A value that a sentence used.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Text">As the sentence writes it, rounded, with its unit.</param>
/// <param name="Number">Where it is a quantity or a number, that number, not rounded, in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit of a quantity.</param>
public readonly record struct WrittenValue(string Name, string Text, double? Number, Unit? Unit);
