using System.Globalization;
using Microsoft.Kiota.Abstractions;

namespace CalibrationApi.Client.Http;

/// <summary>Adds to a request what several operations take alike. The generator makes types of its own for each operation.</summary>
internal static class RequestDetails
{
    public static RequestInformation In(this RequestInformation request, UnitSystem units) =>
        request.Where(
            "units",
            units switch
            {
                UnitSystem.Metric => "metric",
                UnitSystem.Us => "us",
                _ => null,
            }
        );

    public static RequestInformation Where(this RequestInformation request, string parameter, string? value)
    {
        if (value is not null)
            request.QueryParameters.Add(parameter, value);
        return request;
    }

    public static RequestInformation Where(this RequestInformation request, string parameter, DateTimeOffset? instant) =>
        request.Where(parameter, instant?.ToString("O", CultureInfo.InvariantCulture));

    public static RequestInformation WithRetired(this RequestInformation request, bool includeRetired) =>
        request.Where("includeRetired", includeRetired ? "true" : null);

    public static RequestInformation OldestFirst(this RequestInformation request, bool oldestFirst) =>
        request.Where("order", oldestFirst ? "oldest-first" : null);

    public static RequestInformation Paged(this RequestInformation request, int? pageSize) =>
        request.Where("limit", pageSize?.ToString(CultureInfo.InvariantCulture));

    public static RequestInformation WithKey(this RequestInformation request, string? idempotencyKey)
    {
        if (idempotencyKey is not null)
            request.Headers.Add(IdempotencyKeyHandler.Header, IdempotencyKeyHandler.Quoted(idempotencyKey));
        return request;
    }
}
