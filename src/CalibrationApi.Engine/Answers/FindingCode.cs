namespace CalibrationApi.Engine.Answers;

/// <summary>The stable code of a finding or reason. Which severities it may come with is told by its type.</summary>
/// <param name="Word">The code as answers carry it.</param>
/// <param name="Remedy">What to do about it.</param>
public abstract record FindingCode(string Word, string Remedy) : Code(Word, Remedy)
{
    /// <summary>Each severity that the finding comes with.</summary>
    public IReadOnlyList<Severity> Severities =>
        [
            .. this is IMayNote ? [Severity.Note] : (ReadOnlySpan<Severity>)[],
            .. this is IMayWarn ? [Severity.Warning] : (ReadOnlySpan<Severity>)[],
            .. this is IMayStop ? [Severity.Stop] : (ReadOnlySpan<Severity>)[],
        ];
}

/// <summary>A code that may come as a note.</summary>
public interface IMayNote;

/// <summary>A code that may come as a warning.</summary>
public interface IMayWarn;

/// <summary>A code that may come as a stop.</summary>
public interface IMayStop;

/// <summary>The code of a finding that is always a note.</summary>
/// <param name="Word">The code as answers carry it.</param>
/// <param name="Remedy">What to do about it.</param>
public sealed record NoteCode(string Word, string Remedy) : FindingCode(Word, Remedy), IMayNote;

/// <summary>The code of a finding that is a note or a warning.</summary>
/// <param name="Word">The code as answers carry it.</param>
/// <param name="Remedy">What to do about it.</param>
public sealed record NoteOrWarningCode(string Word, string Remedy) : FindingCode(Word, Remedy), IMayNote, IMayWarn;

/// <summary>The code of a finding that is always a warning.</summary>
/// <param name="Word">The code as answers carry it.</param>
/// <param name="Remedy">What to do about it.</param>
public sealed record WarningCode(string Word, string Remedy) : FindingCode(Word, Remedy), IMayWarn;

/// <summary>The code of a finding that is a warning or a stop.</summary>
/// <param name="Word">The code as answers carry it.</param>
/// <param name="Remedy">What to do about it.</param>
public sealed record WarningOrStopCode(string Word, string Remedy) : FindingCode(Word, Remedy), IMayWarn, IMayStop;

/// <summary>The code of a finding that is always a stop.</summary>
/// <param name="Word">The code as answers carry it.</param>
/// <param name="Remedy">What to do about it.</param>
public sealed record StopCode(string Word, string Remedy) : FindingCode(Word, Remedy), IMayStop;
