using System.Globalization;
using FluentValidation;
using FluentValidation.Results;
using FluentValidation.Validators;

namespace CalibrationApi.Http;

/// <summary>Instants that a sender states: RFC 3339 with offset, not before 1990 and not in the future.</summary>
internal static class EnteredInstant
{
    private const string HowToWrite = "Write the time as in 2026-04-18T06:40:00+02:00, with its offset from UTC.";

    // Clocks of tractors and phones go a little wrong; a day ahead is a slip, not a clock.
    private static readonly TimeSpan ClocksMayDiffer = TimeSpan.FromMinutes(15);
    private static readonly DateTimeOffset Earliest = new(1990, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Later than anything that was let in: of what happened, the newest counts now, although the clock it was noted by may go ahead of ours.</summary>
    public static DateTimeOffset Now => DateTimeOffset.MaxValue;

    private static readonly string[] Rfc3339 =
        ["yyyy-MM-dd'T'HH:mm:sszzz", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFzzz", "yyyy-MM-dd'T'HH:mm:ss'Z'", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFF'Z'"];

    public static bool TryRead(string text, out DateTimeOffset instant) =>
        DateTimeOffset.TryParseExact(text, Rfc3339, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out instant) && HasWholeOffset(text);

    // The parser also takes +2, +02 and +0200; the standard wants +02:00.
    private static bool HasWholeOffset(string text) => text[^1] == 'Z' || (text.Length > 6 && text[^6] is '+' or '-' && text[^3] == ':');

    /// <summary>The instant of a text that passed validation.</summary>
    public static DateTimeOffset Read(string text) => TryRead(text, out var instant) ? instant : throw new FormatException("The instant was not validated.");

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
        new() { Parameter = name, Code = ErrorCode.TimeWrong, Detail = "Write the time as in 2026-04-18T06:40:00Z or with an offset; in an address a plus sign is written %2B." };

    /// <summary>As it is given back: with the offset it was entered with.</summary>
    public static string Write(DateTimeOffset instant) =>
        instant.ToString(instant.Offset == TimeSpan.Zero ? "yyyy-MM-dd'T'HH:mm:ss.FFF'Z'" : "yyyy-MM-dd'T'HH:mm:ss.FFFzzz", CultureInfo.InvariantCulture);

    public static IRuleBuilderOptions<T, string?> Instant<T>(this IRuleBuilder<T, string?> rule, TimeProvider clock) => rule.SetValidator(new InstantRule<T>(clock));

    /// <summary>An instant in a calculation, whose answer does not depend on the time of the day.</summary>
    public static IRuleBuilderOptions<T, string?> Instant<T>(this IRuleBuilder<T, string?> rule) => rule.SetValidator(new InstantRule<T>(null));

    /// <summary>An instant that lies ahead: now at the earliest.</summary>
    public static IRuleBuilderOptions<T, string?> InstantAhead<T>(this IRuleBuilder<T, string?> rule, TimeProvider clock) => rule.SetValidator(new AheadRule<T>(clock));

    internal sealed class AheadRule<T>(TimeProvider clock) : PropertyValidator<T, string?>, Rules.IInstantRule
    {
        public override string Name => nameof(AheadRule<T>);

        public override bool IsValid(ValidationContext<T> context, string? text)
        {
            if (text is null)
                return true;
            if (!TryRead(text, out var instant))
                Fail(context, HowToWrite);
            else if (instant < clock.GetUtcNow() - ClocksMayDiffer)
                Fail(context, "This time has passed. Check date, time and offset.");
            return true;
        }
    }

    internal sealed class InstantRule<T>(TimeProvider? clock) : PropertyValidator<T, string?>, Rules.IInstantRule
    {
        public override string Name => nameof(InstantRule<T>);

        public override bool IsValid(ValidationContext<T> context, string? text)
        {
            if (text is null)
                return true;
            if (!TryRead(text, out var instant))
                Fail(context, HowToWrite);
            else if (instant > clock?.GetUtcNow() + ClocksMayDiffer)
                Fail(context, "This time is in the future. Check date, time and offset.");
            else if (instant < Earliest)
                Fail(context, "This time is before 1990. Check the date.");
            return true;
        }
    }

    private static void Fail<T>(ValidationContext<T> context, string detail) =>
        context.AddFailure(new ValidationFailure(context.PropertyPath, detail) { ErrorCode = ErrorCode.TimeWrong });
}
