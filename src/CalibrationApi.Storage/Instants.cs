using System.Globalization;

namespace CalibrationApi.Storage;

/// <summary>How instants stand in the database: UTC, RFC 3339 with milliseconds, so that text order is time order.</summary>
public static class Instants
{
    private const string Format = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";

    /// <summary>The text of an instant.</summary>
    public static string Text(DateTimeOffset instant) => instant.UtcDateTime.ToString(Format, CultureInfo.InvariantCulture);

    /// <summary>The instant of a text.</summary>
    public static DateTimeOffset Read(string text) =>
        DateTimeOffset.ParseExact(
            text,
            Format,
            CultureInfo.InvariantCulture,
            DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal
        );

    /// <summary>The instant of a text, given back with the offset it was entered with.</summary>
    public static DateTimeOffset Read(string text, long offsetMinutes) => Read(text).ToOffset(TimeSpan.FromMinutes(offsetMinutes));
}
