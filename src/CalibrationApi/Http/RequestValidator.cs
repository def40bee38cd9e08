using FluentValidation;
using FluentValidation.Results;

namespace CalibrationApi.Http;

/// <summary>Rules of a part of a request. No further part is looked at once there are more faults than an answer tells.</summary>
internal abstract class RequestValidator<T> : AbstractValidator<T>
{
    // The library hands the same list of faults to every part of a request.
    protected override bool PreValidate(ValidationContext<T> context, ValidationResult result) => result.Errors.Count < ProblemResult.MostErrors;
}
