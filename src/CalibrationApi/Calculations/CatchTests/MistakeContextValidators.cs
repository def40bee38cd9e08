using CalibrationApi.Http;

namespace CalibrationApi.Calculations.CatchTests;

internal sealed class ContainerOfTestValidator : RequestValidator<ContainerOfTest>
{
    public ContainerOfTestValidator()
    {
        RuleFor(container => container.Volume).Measured(new(0, 10, "m3", ExcludesLeast: true));
        RuleFor(container => container.Tare).Measured(new(0, 10, "t"));
    }
}

internal sealed class OtherContainerOfTestValidator : RequestValidator<OtherContainerOfTest>
{
    public OtherContainerOfTestValidator()
    {
        RuleFor(container => container.Name).Text(Rules.LongestName);
        RuleFor(container => container.Tare).Needed();
        RuleFor(container => container.Tare).Measured(new(0, 10, "t"));
    }
}

internal sealed class OtherDeliveryOfTestValidator : RequestValidator<OtherDeliveryOfTest>
{
    public OtherDeliveryOfTestValidator()
    {
        RuleFor(other => other.Name).Text(Rules.LongestName);
        RuleFor(other => other.MassPerRevolution).Needed();
        RuleFor(other => other.MassPerRevolution).Measured();
        RuleFor(other => other.BulkDensity).Measured();
    }
}
