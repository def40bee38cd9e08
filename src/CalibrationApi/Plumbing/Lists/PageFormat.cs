using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Lists;

/// <summary>The media type of a list.</summary>
internal enum PageFormat
{
    Json,
    Csv,
    Ndjson,
}

/// <summary>Chooses the format of a list by the Accept header (RFC 9110 12.5.1).</summary>
internal static class PageFormats
{
    public const string Json = "application/json";
    public const string Csv = "text/csv";
    public const string Tsv = "text/tab-separated-values";
    public const string Ndjson = "application/x-ndjson";

    private static readonly string[] Offered = [Json, Csv, Ndjson];

    public static (PageFormat Format, ProblemResult? Problem) Choose(HttpRequest request) =>
        MediaTypes.Best(request, Offered) switch
        {
            Json => (PageFormat.Json, null),
            Csv => (PageFormat.Csv, null),
            Ndjson => (PageFormat.Ndjson, null),
            _ => (PageFormat.Json, NotAcceptable()),
        };

    private static ProblemResult NotAcceptable() =>
        ProblemResult.Of(
            StatusCodes.Status406NotAcceptable,
            ErrorCodes.NotAcceptable,
            $"This list comes as {Json}, {Csv} or {Ndjson}. Ask for one of them in the Accept header."
        );
}
