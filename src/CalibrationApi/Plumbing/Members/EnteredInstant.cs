using System.Globalization;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Members;

/// <summary>Instants that a sender states: RFC 3339 with offset, not before 1990 and not in the future.</summary>
internal static class EnteredInstant
{
    private const string HowToWrite = "Write the time as in 2026-04-18T06:40:00+02:00, with its offset from UTC.";

    // Clocks of tractors and phones go a little wrong; a day ahead is a slip, not a clock.
    private static readonly TimeSpan ClocksMayDiffer = TimeSpan.FromMinutes(15);
    private static readonly DateTimeOffset Earliest = new(1990, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>
    /// Later than anything that was let in: of what happened, the newest counts now, although the clock it was noted by may go ahead of
    /// ours.
    /// </summary>
    public static DateTimeOffset Now => DateTimeOffset.MaxValue;

    private static readonly string[] Rfc3339 =
    [
        "yyyy-MM-dd'T'HH:mm:sszzz",
        "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFzzz",
        "yyyy-MM-dd'T'HH:mm:ss'Z'",
        "yyyy-MM-dd'T'HH:mm:ss.FFFFFFF'Z'",
    ];

    public static bool TryRead(string text, out DateTimeOffset instant) =>
        DateTimeOffset.TryParseExact(text, Rfc3339, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out instant)
        && HasWholeOffset(text);

    // The parser also takes +2, +02 and +0200; the standard wants +02:00.
    private static bool HasWholeOffset(string text) => text[^1] == 'Z' || (text.Length > 6 && text[^6] is '+' or '-' && text[^3] == ':');

    /// <summary>The instant of a text that passed validation.</summary>
    public static DateTimeOffset Read(string text) =>
        TryRead(text, out var instant) ? instant : throw new FormatException("The instant was not validated.");

    /// <summary>The instant of a parameter of the query; an error where it is none.</summary>
    public static DateTimeOffset? Parameter(string name, string? text, List<ProblemError> errors)
    {
        if (text is null)
            return null;
        if (TryRead(text, out var instant))
            return instant;
        errors.Add(WrongParameter(name));
        return null;
    }

    public static ProblemError WrongParameter(string name) =>
        new()
        {
            Parameter = name,
            Code = ErrorCodes.TimeWrong,
            Detail = "Write the time as in 2026-04-18T06:40:00Z or with an offset; in an address a plus sign is written %2B.",
        };

    /// <summary>As it is given back: with the offset it was entered with.</summary>
    public static string Write(DateTimeOffset instant) =>
        instant.ToString(
            instant.Offset == TimeSpan.Zero ? "yyyy-MM-dd'T'HH:mm:ss.FFF'Z'" : "yyyy-MM-dd'T'HH:mm:ss.FFFzzz",
            CultureInfo.InvariantCulture
        );

    /// <summary>What is wrong with an instant that has to be before or after now; null when nothing is.</summary>
    internal static string? Fault(string text, DateTimeOffset? notAfter, DateTimeOffset? notBefore)
    {
        if (!TryRead(text, out var instant))
            return HowToWrite;
        if (instant > notAfter + ClocksMayDiffer)
            return "This time is in the future. Check date, time and offset.";
        if (instant < notBefore - ClocksMayDiffer)
            return "This time has passed. Check date, time and offset.";
        return notBefore is null && instant < Earliest ? "This time is before 1990. Check the date." : null;
    }
}

/// <summary>An instant in a calculation, whose answer does not depend on the time of the day.</summary>
internal class InstantAttribute : TextRuleAttribute
{
    public sealed override string Format => "date-time";

    public sealed override (ErrorCode Code, string Detail)? Fault(string text, TimeProvider clock) =>
        Find(text, clock) is { } detail ? (ErrorCodes.TimeWrong, detail) : null;

    protected virtual string? Find(string text, TimeProvider clock) => EnteredInstant.Fault(text, notAfter: null, notBefore: null);
}

/// <summary>An instant that has been: now at the latest.</summary>
internal sealed class InstantPastAttribute : InstantAttribute
{
    protected override string? Find(string text, TimeProvider clock) =>
        EnteredInstant.Fault(text, notAfter: clock.GetUtcNow(), notBefore: null);
}

/// <summary>An instant that lies ahead: now at the earliest.</summary>
internal sealed class InstantAheadAttribute : InstantAttribute
{
    protected override string? Find(string text, TimeProvider clock) =>
        EnteredInstant.Fault(text, notAfter: null, notBefore: clock.GetUtcNow());
}
