namespace CalibrationApi.Engine.Answers;

/// <summary>The stable code of a likely mistake.</summary>
/// <param name="Word">The code as answers carry it.</param>
/// <param name="Remedy">The one thing to look at; a sentence that begins with a verb.</param>
public sealed record MistakeCode(string Word, string Remedy) : Code(Word, Remedy);
