using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.VolumeChecks;

/// <summary>Rules of a volume check.</summary>
internal sealed class VolumeCheckRequestValidator : AbstractValidator<VolumeCheckRequest>
{
    public VolumeCheckRequestValidator()
    {
        RuleFor(check => check)
            .Custom(
                (check, context) =>
                {
                    if (check.LearnedFrom is not null && check.FillEfficiency is not null)
                        context.Report(
                            nameof(check.FillEfficiency),
                            SharedCodes.SettingsAtOdds,
                            "The fill efficiency is stated or learned from an earlier product. Give one of the two."
                        );
                    if (check.LearnedFrom is not null && check.FillEfficiencySpread is not null)
                        context.Report(
                            nameof(check.FillEfficiencySpread),
                            SharedCodes.SettingsAtOdds,
                            "What is learned from an earlier product has its own spread, learnedFrom/spread. Give it there."
                        );
                }
            );
    }
}
