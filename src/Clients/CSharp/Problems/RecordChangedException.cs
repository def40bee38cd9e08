namespace CalibrationApi.Client;

/// <summary>
/// Somebody else changed the record since it was read (412). Nothing was saved: read it again, make the change again, save it again.
/// </summary>
public sealed class RecordChangedException : CalibrationException
{
    internal RecordChangedException(string sentence, IReadOnlyList<CalibrationError> errors, string? traceId)
        : base(412, sentence, errors, traceId) { }
}
