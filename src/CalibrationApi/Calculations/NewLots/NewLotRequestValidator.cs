using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.NewLots;

/// <summary>Rules of a question about a new lot.</summary>
internal sealed class NewLotRequestValidator : AbstractValidator<NewLotRequest>
{
    public NewLotRequestValidator()
    {
        RuleFor(question => question)
            .Custom(
                (question, context) =>
                {
                    if (question.Rate is not null && question.SeedsPerArea is not null)
                        context.Report(
                            nameof(question.SeedsPerArea),
                            SharedCodes.SettingsAtOdds,
                            "The seeds follow from the rate and the kernel mass of the lot before. Leave out rate, or seedsPerArea."
                        );
                    if (question.Price is not null && question.Area is null)
                        context.Report(
                            nameof(question.Area),
                            ErrorCodes.MemberMissing,
                            "A price tells what a wrong rate costs over an area. Add the area, or leave the price out."
                        );
                }
            );
    }
}
