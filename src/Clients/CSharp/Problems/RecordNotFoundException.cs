namespace CalibrationApi.Client;

/// <summary>There is no record with this id (404).</summary>
public sealed class RecordNotFoundException : CalibrationException
{
    internal RecordNotFoundException(string sentence, IReadOnlyList<CalibrationError> errors, string? traceId)
        : base(404, sentence, errors, traceId) { }
}
