using FluentValidation;
using FluentValidation.Results;

namespace CalibrationApi.Plumbing.Validation;

/// <summary>Checks a whole request: the rules that stand on its members and on those of its parts, and the rules between them.</summary>
/// <param name="clock">For rules about times.</param>
internal sealed class RequestValidator<T>(TimeProvider clock) : AbstractValidator<T>, IValidator<T>
    where T : class
{
    // The library's own way to here makes a context first, which a sound request does not need.
    ValidationResult IValidator<T>.Validate(T instance) => Check(instance);

    public override ValidationResult Validate(ValidationContext<T> context) => Check(context.InstanceToValidate);

    public override Task<ValidationResult> ValidateAsync(ValidationContext<T> context, CancellationToken cancellation = default) =>
        Task.FromResult(Check(context.InstanceToValidate));

    private ValidationResult Check(T request)
    {
        var faults = new Faults(clock);
        RequestPlan<T>.Made.Check(request, ref faults);
        return faults.Result;
    }
}
