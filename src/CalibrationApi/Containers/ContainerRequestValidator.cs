using CalibrationApi.Http;
using CalibrationApi.Records;

namespace CalibrationApi.Containers;

/// <summary>Rules of a container.</summary>
internal sealed class ContainerRequestValidator : DescribedRequestValidator<ContainerRequest>
{
    public ContainerRequestValidator()
    {
        RuleFor(container => container.Volume).Measured(new(0, 10, "m3", ExcludesLeast: true));
        RuleFor(container => container.Tare).Needed();
        RuleFor(container => container.Tare).Measured(new(0, 10, "t"));
        RuleFor(container => container.Fill).Measured(new(1, 100, "%"));
    }
}
