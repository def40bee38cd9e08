using CalibrationApi.Http;
using Microsoft.Net.Http.Headers;

namespace CalibrationApi.Records;

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
    public const string Ndjson = "application/x-ndjson";

    private static readonly (PageFormat Format, string MediaType)[] Offered = [(PageFormat.Json, Json), (PageFormat.Csv, Csv), (PageFormat.Ndjson, Ndjson)];

    public static (PageFormat Format, ProblemResult? Problem) Choose(HttpRequest request)
    {
        var header = request.Headers.Accept;
        if (header.Count == 0)
            return (PageFormat.Json, null);
        if (!MediaTypeHeaderValue.TryParseList(header, out var ranges))
            return (PageFormat.Json, NotAcceptable());
        // The most specific range that fits an offer gives its quality; the best offer wins, earlier ones on a tie.
        var best = Offered
            .Select(offer => (offer.Format, Quality: Quality(ranges, offer.MediaType)))
            .Where(offer => offer.Quality > 0)
            .OrderByDescending(offer => offer.Quality)
            .Select(offer => (PageFormat?)offer.Format)
            .FirstOrDefault();
        return best is { } format ? (format, null) : (PageFormat.Json, NotAcceptable());
    }

    private static double Quality(IList<MediaTypeHeaderValue> ranges, string mediaType) => ranges
        .Where(range => new MediaTypeHeaderValue(mediaType).IsSubsetOf(new MediaTypeHeaderValue(range.MediaType)))
        .OrderByDescending(range => range.MatchesAllTypes ? 0 : range.MatchesAllSubTypes ? 1 : 2)
        .Select(range => range.Quality ?? 1)
        .FirstOrDefault(0);

    private static ProblemResult NotAcceptable() => ProblemResult.Of(StatusCodes.Status406NotAcceptable, ErrorCode.NotAcceptable,
        $"This list comes as {Json}, {Csv} or {Ndjson}. Ask for one of them in the Accept header.");
}
