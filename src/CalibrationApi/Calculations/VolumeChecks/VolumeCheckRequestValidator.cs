using CalibrationApi.Engine.VolumeChecks;
using CalibrationApi.Http;
using CalibrationApi.Quantities;
using FluentValidation;

namespace CalibrationApi.Calculations.VolumeChecks;

/// <summary>Rules of a volume check.</summary>
internal sealed class VolumeCheckRequestValidator : RequestValidator<VolumeCheckRequest>
{
    // Wide enough for any doubt, narrow enough for an interval that is still a number.
    internal static readonly QuantityLimits Uncertainty = new(0, 100, "%");

    public VolumeCheckRequestValidator()
    {
        RuleFor(check => check.Element).Text(Rules.LongestName);
        RuleFor(check => check.ElementKind).Word(Words.All<ElementKind>());
        RuleFor(check => check.Displacement).Needed();
        RuleFor(check => check.Displacement).Measured(new(0, 1000, "L", ExcludesLeast: true));
        RuleFor(check => check.Displacement!).SetValidator(new DisplacementOfElementValidator());
        RuleFor(check => check.BulkDensity).Needed();
        RuleFor(check => check.BulkDensity).Measured();
        RuleFor(check => check.BulkDensity!).SetValidator(new DensityOfProductValidator());
        RuleFor(check => check.FillEfficiency).Measured(new(1, 200, "%"));
        RuleFor(check => check.FillEfficiencySpread).Measured(Uncertainty);
        RuleFor(check => check.LearnedFrom!).SetValidator(new EarlierProductValidator());
        RuleFor(check => check.MassPerRevolution).Measured();
        RuleFor(check => check.MassPerRevolution!).SetValidator(new MassPerRevolutionToCheckValidator());
        RuleFor(check => check.CoverageProbability).Number(0.5, 0.9999);
        RuleFor(check => check).Custom((check, context) =>
        {
            if (check.LearnedFrom is not null && check.FillEfficiency is not null)
                context.Report(nameof(check.FillEfficiency), ErrorCode.SettingsAtOdds, "The fill efficiency is stated or learned from an earlier product. Give one of the two.");
            if (check.LearnedFrom is not null && check.FillEfficiencySpread is not null)
                context.Report(nameof(check.FillEfficiencySpread), ErrorCode.SettingsAtOdds, "What is learned from an earlier product has its own spread, learnedFrom/spread. Give it there.");
        });
    }
}

internal sealed class DisplacementOfElementValidator : RequestValidator<DisplacementOfElement>
{
    public DisplacementOfElementValidator() => RuleFor(displacement => displacement.RelativeUncertainty).Measured(VolumeCheckRequestValidator.Uncertainty);
}

internal sealed class MassPerRevolutionToCheckValidator : RequestValidator<MassPerRevolutionToCheck>
{
    public MassPerRevolutionToCheckValidator() => RuleFor(value => value.RelativeUncertainty).Measured(VolumeCheckRequestValidator.Uncertainty);
}

internal sealed class EarlierMassPerRevolutionValidator : RequestValidator<EarlierMassPerRevolution>
{
    public EarlierMassPerRevolutionValidator() => RuleFor(value => value.RelativeUncertainty).Measured(VolumeCheckRequestValidator.Uncertainty);
}

internal sealed class DensityOfProductValidator : RequestValidator<DensityOfProduct>
{
    public DensityOfProductValidator() => RuleFor(density => density.RelativeUncertainty).Measured(VolumeCheckRequestValidator.Uncertainty);
}

internal sealed class EarlierProductValidator : RequestValidator<EarlierProduct>
{
    public EarlierProductValidator()
    {
        RuleFor(earlier => earlier.MassPerRevolution).Needed();
        RuleFor(earlier => earlier.MassPerRevolution).Measured();
        RuleFor(earlier => earlier.MassPerRevolution!).SetValidator(new EarlierMassPerRevolutionValidator());
        RuleFor(earlier => earlier.BulkDensity).Needed();
        RuleFor(earlier => earlier.BulkDensity).Measured();
        RuleFor(earlier => earlier.BulkDensity!).SetValidator(new DensityOfProductValidator());
        RuleFor(earlier => earlier.Spread).Measured(VolumeCheckRequestValidator.Uncertainty);
    }
}
