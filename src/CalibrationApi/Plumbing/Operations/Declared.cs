using CalibrationApi.Plumbing.Http;
using Microsoft.AspNetCore.Http.Timeouts;

namespace CalibrationApi.Plumbing.Operations;

/// <summary>What an operation answers with and takes beside its types, for the contract: problems and headers.</summary>
internal static class Declared
{
    private const int Ok = StatusCodes.Status200OK;
    private const int Created = StatusCodes.Status201Created;
    private const int NotModified = StatusCodes.Status304NotModified;
    private const string TagSays = "Entity tag of this representation; send it back as If-None-Match or, when replacing, as If-Match.";
    private const string LocationSays = "Address of the record.";

    private static readonly int[] AnyProblem =
    [
        StatusCodes.Status400BadRequest,
        StatusCodes.Status422UnprocessableEntity,
        StatusCodes.Status500InternalServerError,
        StatusCodes.Status503ServiceUnavailable,
    ];
    private static readonly int[] BodyProblem = [StatusCodes.Status413PayloadTooLarge, StatusCodes.Status415UnsupportedMediaType];
    private static readonly AnswerHeader LaterAgain = new(
        "Retry-After",
        "Seconds to wait before the request is sent again.",
        StatusCodes.Status503ServiceUnavailable
    );

    /// <summary>An operation that stores a new record.</summary>
    public static object[] Storing { get; } =
    [
        .. Problems([.. AnyProblem, .. BodyProblem, StatusCodes.Status409Conflict]),
        new TakenHeader(
            "Idempotency-Key",
            "A text of your own, up to 200 ASCII characters, for example a new UUID in quotes. The same key with the same body within 24 hours gets the first answer again; with another body it is refused.",
            "\"8e03978e-40d5-43e8-bc93-6894a57f9324\"",
            Longest: 202
        ),
        new AnswerHeader("Location", LocationSays, Created),
        new AnswerHeader("ETag", TagSays, Created),
        new AnswerHeader("Location", LocationSays, Ok),
        new AnswerHeader("ETag", TagSays, Ok),
        Cache(Created),
        Cache(Ok),
        Replay(Created),
        Replay(Ok),
        LaterAgain,
        LaterAgain with
        {
            Status = StatusCodes.Status409Conflict,
        },
    ];

    /// <summary>An operation that stores something new below a record.</summary>
    public static object[] StoringBelow { get; } = [.. Storing, .. Problems([StatusCodes.Status404NotFound])];

    /// <summary>An operation that replaces a described record.</summary>
    public static object[] Replacing { get; } =
    [
        .. Problems([
            .. AnyProblem,
            .. BodyProblem,
            StatusCodes.Status404NotFound,
            StatusCodes.Status412PreconditionFailed,
            StatusCodes.Status428PreconditionRequired,
        ]),
        new TakenHeader(
            "If-Match",
            "The ETag of the revision that you are changing; without it the change is refused.",
            "\"r3\"",
            IsNeeded: true
        ),
        new AnswerHeader("ETag", TagSays, Ok),
        new AnswerHeader("Location", LocationSays, Ok),
        Cache(Ok),
        LaterAgain,
    ];

    /// <summary>An operation that reads one record.</summary>
    public static object[] Reading { get; } =
    [
        .. Problems([.. AnyProblem, StatusCodes.Status404NotFound]),
        new ProducesResponseTypeMetadata(NotModified, typeof(void)),
        new TakenHeader("If-None-Match", "The ETag that you have; an unchanged record answers 304 without a body.", "\"r3\""),
        new AnswerHeader("ETag", TagSays, Ok),
        new AnswerHeader("ETag", TagSays, NotModified),
        Cache(Ok),
        Cache(NotModified),
        LaterAgain,
    ];

    /// <summary>An operation that computes from a stored record.</summary>
    public static object[] ComputingFromRecord { get; } = [.. Problems([.. AnyProblem, StatusCodes.Status404NotFound]), LaterAgain];

    /// <summary>An operation that lists records.</summary>
    public static object[] Listing { get; } =
    [
        .. Problems([.. AnyProblem, StatusCodes.Status406NotAcceptable]),
        new AnswerHeader("Link", "Address of the next page (RFC 8288, rel next); absent on the last one.", Ok, IsAlwaysSent: false),
        new AnswerHeader("Content-Disposition", "A name for the file, with CSV.", Ok, IsAlwaysSent: false),
        Cache(Ok),
        LaterAgain,
        // A whole list goes out line by line, as fast as its reader takes it.
        new RequestTimeoutAttribute(MuchWork.LongTime),
        PlainList.Metadata,
    ];

    /// <summary>An operation that lists what is below a record.</summary>
    public static object[] ListingBelow { get; } = [.. Listing, .. Problems([StatusCodes.Status404NotFound])];

    /// <summary>An operation that lists changes, whose cursors outlive the database when a backup takes its place.</summary>
    public static object[] ListingChanges { get; } = [.. Listing, .. Problems([StatusCodes.Status410Gone])];

    /// <summary>An operation that answers one question of a calculation.</summary>
    public static object[] Calculation { get; } =
        Problems([
            StatusCodes.Status400BadRequest,
            .. BodyProblem,
            StatusCodes.Status422UnprocessableEntity,
            StatusCodes.Status500InternalServerError,
        ]);

    /// <summary>An operation that answers many questions of a calculation.</summary>
    public static object[] Batch { get; } =
    [
        .. Problems([
            StatusCodes.Status400BadRequest,
            StatusCodes.Status406NotAcceptable,
            StatusCodes.Status415UnsupportedMediaType,
            StatusCodes.Status422UnprocessableEntity,
            StatusCodes.Status500InternalServerError,
        ]),
        new AnswerHeader("Accept-Post", "The media types that can be sent.", StatusCodes.Status415UnsupportedMediaType),
        new RequestTimeoutAttribute(MuchWork.LongTime),
        MuchWork.Metadata,
    ];

    /// <summary>The same where questions come as a table: one with a header that is too long is refused as a whole.</summary>
    public static object[] BatchOfTables { get; } = [.. Batch, .. Problems([StatusCodes.Status413PayloadTooLarge])];

    private static AnswerHeader Cache(int status) =>
        new("Cache-Control", "A copy may be kept by its owner but has to be checked before each use.", status);

    private static AnswerHeader Replay(int status) =>
        new("Idempotent-Replayed", "true when this is the answer to an earlier, equal request.", status, IsAlwaysSent: false);

    private static object[] Problems(int[] statuses) =>
        [.. statuses.Order().Select(status => new ProducesResponseTypeMetadata(status, typeof(Problem), [ProblemResult.MediaType]))];
}
