using CalibrationApi.Http;
using CalibrationApi.Records;

namespace CalibrationApi.Lots;

/// <summary>Rules of a lot.</summary>
internal sealed class LotRequestValidator : DescribedRequestValidator<LotRequest>
{
    public LotRequestValidator()
    {
        RuleFor(lot => lot.Product).Needed();
        RuleFor(lot => lot.Product).Text(64);
        RuleFor(lot => lot.ThousandKernelMass).Measured();
        RuleFor(lot => lot.Germination).Measured(new(0, 100, "%", ExcludesLeast: true));
        RuleFor(lot => lot.Purity).Measured(new(0, 100, "%", ExcludesLeast: true));
        RuleFor(lot => lot.BulkDensity).Measured();
        RuleFor(lot => lot.Moisture).Measured();
        RuleFor(lot => lot.Treatment).Text(500);
    }
}
