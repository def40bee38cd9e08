namespace CalibrationApi.Client;

/// <summary>The service refused a request, or could not answer it. The message holds its sentences.</summary>
public class CalibrationException : Exception
{
    internal CalibrationException(
        int status,
        string sentence,
        IReadOnlyList<CalibrationError> errors,
        string? traceId = null,
        TimeSpan? retryAfter = null
    )
        : base(MessageOf(status, sentence, errors, retryAfter))
    {
        Status = status;
        Sentence = sentence;
        Errors = errors;
        TraceId = traceId;
        RetryAfter = retryAfter;
    }

    /// <summary>The HTTP status.</summary>
    public int Status { get; }

    /// <summary>What went wrong, in one sentence.</summary>
    public string Sentence { get; }

    /// <summary>
    /// Everything that is wrong, each with code, place and sentence. Empty when something between client and service answered in its place.
    /// </summary>
    public IReadOnlyList<CalibrationError> Errors { get; }

    /// <summary>Code of the first error, to act on; null when there is none.</summary>
    public string? Code => Errors.Count > 0 ? Errors[0].Code : null;

    /// <summary>Under which the service's operator finds the request in the logs.</summary>
    public string? TraceId { get; }

    /// <summary>How long the service asks to wait before the next try; null when it does not say.</summary>
    public TimeSpan? RetryAfter { get; }

    // One error repeats the sentence of the whole.
    private static string MessageOf(int status, string sentence, IReadOnlyList<CalibrationError> errors, TimeSpan? retryAfter)
    {
        IEnumerable<string> told =
            errors is [var only] && only.Sentence == sentence
                ? [$"{status}: {only}"]
                : [$"{status}: {sentence}", .. errors.Select(error => $"- {error}")];
        return string.Join(
            Environment.NewLine,
            retryAfter is { } wait
                ? told.Append(
                    FormattableString.Invariant($"The service asks to wait {Math.Ceiling(wait.TotalSeconds)} s before the next try.")
                )
                : told
        );
    }
}
