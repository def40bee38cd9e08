namespace CalibrationApi.Http;

/// <summary>The problems an operation can answer with, for the contract.</summary>
internal static class Declared
{
    private const int Unreadable = StatusCodes.Status400BadRequest;
    private const int Invalid = StatusCodes.Status422UnprocessableEntity;
    private const int Failed = StatusCodes.Status500InternalServerError;

    public static object[] Calculating { get; } = Problems(Unreadable, StatusCodes.Status413PayloadTooLarge, StatusCodes.Status415UnsupportedMediaType, Invalid, Failed);

    public static object[] Storing { get; } = Problems(Unreadable, StatusCodes.Status409Conflict, StatusCodes.Status413PayloadTooLarge, StatusCodes.Status415UnsupportedMediaType, Invalid, Failed, StatusCodes.Status503ServiceUnavailable);

    public static object[] Replacing { get; } = Problems(Unreadable, StatusCodes.Status404NotFound, StatusCodes.Status412PreconditionFailed, StatusCodes.Status413PayloadTooLarge, StatusCodes.Status415UnsupportedMediaType, Invalid, StatusCodes.Status428PreconditionRequired, Failed, StatusCodes.Status503ServiceUnavailable);

    public static object[] Reading { get; } = Problems(Unreadable, StatusCodes.Status404NotFound, Invalid, Failed);

    public static object[] Listing { get; } = Problems(Unreadable, StatusCodes.Status406NotAcceptable, Invalid, Failed);

    private static object[] Problems(params int[] statuses) =>
        [.. statuses.Select(status => new ProducesResponseTypeMetadata(status, typeof(Problem), [ProblemResult.MediaType]))];
}
