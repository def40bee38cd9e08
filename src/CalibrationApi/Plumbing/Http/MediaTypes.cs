using Microsoft.Net.Http.Headers;

namespace CalibrationApi.Plumbing.Http;

/// <summary>What a body is said to be, and what an answer is wanted as.</summary>
internal static class MediaTypes
{
    /// <summary>Whether a Content-Type is a media type in UTF-8, which is also meant where no charset is given.</summary>
    public static bool IsUtf8(string? contentType, string mediaType) =>
        contentType == mediaType
        || (
            MediaTypeHeaderValue.TryParse(contentType, out var type)
            && type.MediaType.Equals(mediaType, StringComparison.OrdinalIgnoreCase)
            && (
                !type.Charset.HasValue
                || type.Charset.Equals("utf-8", StringComparison.OrdinalIgnoreCase)
                || type.Charset.Equals("\"utf-8\"", StringComparison.OrdinalIgnoreCase)
            )
        );

    /// <summary>The offer that the Accept header likes best (RFC 9110 12.5.1), earlier ones on a tie; null when it takes none.</summary>
    public static string? Best(HttpRequest request, IReadOnlyList<string> offers)
    {
        var header = request.Headers.Accept;
        if (header.Count == 0)
            return offers[0];
        return MediaTypeHeaderValue.TryParseList(header, out var ranges)
            ? offers
                .Select(offer => (Offer: offer, Quality: Quality(ranges, offer)))
                .Where(offer => offer.Quality > 0)
                .OrderByDescending(offer => offer.Quality)
                .Select(offer => offer.Offer)
                .FirstOrDefault()
            : null;
    }

    // The most specific range that fits an offer gives its quality.
    private static double Quality(IList<MediaTypeHeaderValue> ranges, string mediaType) =>
        ranges
            .Where(range => new MediaTypeHeaderValue(mediaType).IsSubsetOf(new MediaTypeHeaderValue(range.MediaType)))
            .OrderByDescending(range =>
                range.MatchesAllTypes ? 0
                : range.MatchesAllSubTypes ? 1
                : 2
            )
            .Select(range => range.Quality ?? 1)
            .FirstOrDefault(0);
}
