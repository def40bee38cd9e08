using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.SeedingRates;

/// <summary>Rules of a question about a seeding rate.</summary>
internal sealed class SeedingRateRequestValidator : AbstractValidator<SeedingRateRequest>
{
    public SeedingRateRequestValidator()
    {
        RuleFor(question => question)
            .Custom(
                (question, context) =>
                {
                    SeedingRateRules.CheckTarget(question, context);
                    SeedingRateRules.CheckKernel(question, context);
                    SeedingRateRules.CheckEstablishment(question, context);
                    SeedingRateRules.CheckCost(question, context);
                }
            );
    }
}

/// <summary>How a rate from elsewhere was made.</summary>
internal enum RateOrigin
{
    /// <summary>Without a shortcut.</summary>
    ExactUnits,

    /// <summary>By dividing by ten.</summary>
    DivideByTen,
}

internal sealed class ShareRangeValidator : AbstractValidator<ShareRange>
{
    public ShareRangeValidator()
    {
        RuleFor(range => range)
            .Custom(
                (range, context) =>
                {
                    if (Rules.Canonical(range.Minimum) is { } lowest && Rules.Canonical(range.Maximum) is { } highest && lowest >= highest)
                        context.Report(
                            nameof(range.Minimum),
                            SharedCodes.SettingsAtOdds,
                            "The lowest share has to be below the highest. Swap the two, or leave the range out."
                        );
                }
            );
    }
}

internal sealed class PackageOfSeedValidator : AbstractValidator<PackageOfSeed>
{
    public PackageOfSeedValidator()
    {
        RuleFor(package => package)
            .Custom(
                (package, context) =>
                {
                    if (package.Mass is null && package.Seeds is null)
                        context.Report(
                            nameof(package.Mass),
                            ErrorCodes.MemberMissing,
                            "Give what one package holds: a mass, or a count of seeds."
                        );
                    if (package.Mass is not null && package.Seeds is not null)
                        context.Report(
                            nameof(package.Seeds),
                            SharedCodes.SettingsAtOdds,
                            "A package is given by its mass and by its seeds. Leave one of the two out."
                        );
                }
            );
    }
}
