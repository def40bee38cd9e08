namespace CalibrationApi.Engine.Answers;

/// <summary>
/// A stable code. Each is declared once, in a class of codes beside the capability that it belongs to; the comment there is its cause.
/// </summary>
/// <param name="Word">The code as answers carry it, kebab-case. It never changes its meaning.</param>
/// <param name="Remedy">What to do about it: short sentences for the person at the machine or the programmer of the client.</param>
public abstract record Code(string Word, string Remedy)
{
    /// <summary>Codes are one and the same when their words are.</summary>
    /// <param name="other">The other one.</param>
    public virtual bool Equals(Code? other) => other is not null && Word == other.Word;

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Word);

    /// <summary>The word.</summary>
    public sealed override string ToString() => Word;
}
