using CalibrationApi.Http;
using FluentValidation;
using FluentValidation.Validators;

namespace CalibrationApi.Storing;

/// <summary>Ids of records: UUIDv7 (RFC 9562), lower case.</summary>
internal static class RecordId
{
    public static string New(TimeProvider clock) => Guid.CreateVersion7(clock.GetUtcNow()).ToString();

    public static bool IsWellFormed(string? id) =>
        id is { Length: 36 } && Guid.TryParseExact(id, "D", out var guid) && guid.Version == 7 && guid.Variant is >= 8 and <= 11 && id == guid.ToString();

    /// <summary>An id that a sender makes for a new record.</summary>
    public static IRuleBuilderOptions<T, string?> NewId<T>(this IRuleBuilder<T, string?> rule) => rule.SetValidator(new IdRule<T>());

    internal sealed class IdRule<T> : PropertyValidator<T, string?>, Rules.IIdRule
    {
        public override string Name => nameof(IdRule<T>);

        public override bool IsValid(ValidationContext<T> context, string? id)
        {
            if (id is not null && !IsWellFormed(id))
                context.AddFailure(new FluentValidation.Results.ValidationFailure(context.PropertyPath, "An id is a UUID of version 7 (RFC 9562) in lower case. Leave it out to get one.") { ErrorCode = ErrorCode.TextWrong });
            return true;
        }
    }
}
