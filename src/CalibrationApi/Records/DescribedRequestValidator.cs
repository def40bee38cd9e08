using CalibrationApi.Http;
using CalibrationApi.Storing;
using FluentValidation;

namespace CalibrationApi.Records;

/// <summary>Rules that every described record shares.</summary>
internal abstract class DescribedRequestValidator<T> : AbstractValidator<T>
    where T : DescribedRequest
{
    protected DescribedRequestValidator()
    {
        RuleFor(record => record.Id).NewId();
        RuleFor(record => record.Name).Needed();
        RuleFor(record => record.Name).Text(Rules.LongestName);
        RuleFor(record => record.Note).Text(2000);
    }
}
