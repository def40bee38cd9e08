namespace CalibrationApi.Engine.Answers;

/// <summary>The stable code of a caution: the comment of each is the danger.</summary>
/// <param name="Word">The code as answers carry it.</param>
/// <param name="Remedy">How to keep out of the danger.</param>
public sealed record CautionCode(string Word, string Remedy) : Code(Word, Remedy);
