using CalibrationApi.Http;
using CalibrationApi.Storing;

namespace CalibrationApi.Records;

/// <summary>Rules that every described record shares.</summary>
internal abstract class DescribedRequestValidator<T> : RequestValidator<T>
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
