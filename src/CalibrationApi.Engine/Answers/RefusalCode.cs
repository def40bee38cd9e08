namespace CalibrationApi.Engine.Answers;

/// <summary>The stable code with which the engine refuses a well-formed question.</summary>
/// <param name="Word">The code as answers carry it.</param>
/// <param name="Remedy">What to do about it.</param>
public sealed record RefusalCode(string Word, string Remedy) : Code(Word, Remedy);
