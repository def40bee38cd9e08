using NodaTime;

namespace CalibrationApi.Plumbing.Lists;

/// <summary>Days as they are on the farm.</summary>
internal static class LocalDate
{
    public const string Utc = "Etc/UTC";

    /// <summary>The date of an instant in a time zone, for example 2026-04-18.</summary>
    public static string Of(DateTimeOffset instant, string timeZone) =>
        Instant
            .FromDateTimeOffset(instant)
            .InZone(DateTimeZoneProviders.Tzdb[timeZone])
            .Date.ToString("uuuu-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
