using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.StandRisks;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.StandRisks;

/// <summary>Rules of a question about the risk of a stand.</summary>
internal sealed class StandRiskRequestValidator : AbstractValidator<StandRiskRequest>
{
    public StandRiskRequestValidator()
    {
        RuleFor(question => question).Custom(CheckShare);
        RuleFor(question => question).Custom(CheckRates);
    }

    private static void CheckShare(StandRiskRequest question, ValidationContext<StandRiskRequest> context)
    {
        if (question.Emergence is null && question.Survival is null)
            context.Report(
                nameof(question.Emergence),
                ErrorCodes.MemberMissing,
                "Add the emergence with the germination, or survival, which holds both."
            );
        if (question.Emergence is not null && question.Survival is not null)
            context.Report(
                nameof(question.Survival),
                SharedCodes.SettingsAtOdds,
                "Give either emergence or survival. Survival already holds the germination."
            );
        else if (question.Survival is not null && question.Germination is not null)
            context.Report(
                nameof(question.Germination),
                SharedCodes.SettingsAtOdds,
                "Survival already holds the germination. Leave germination out, or give emergence in place of survival."
            );
        if (question.Emergence is not null && question.Germination is null)
            context.Report(
                nameof(question.Germination),
                ErrorCodes.MemberMissing,
                "Emergence is a share of viable seeds. Add the germination, or give survival."
            );
        if (question.GerminationSeedsTested is not null && question.Germination is null)
            context.Report(
                nameof(question.GerminationSeedsTested),
                SharedCodes.SettingsAtOdds,
                "The seeds tested go with a germination. Add it, or leave them out."
            );
    }

    private static void CheckRates(StandRiskRequest question, ValidationContext<StandRiskRequest> context)
    {
        if (question.SeedsPerArea is not null && question.Rate is not null)
            context.Report(
                nameof(question.Rate),
                SharedCodes.SettingsAtOdds,
                "Give the rate either as seeds per area or as mass per area."
            );
        if (question.MaximumSeedsPerArea is not null && question.MaximumRate is not null)
            context.Report(
                nameof(question.MaximumRate),
                SharedCodes.SettingsAtOdds,
                "Give the maximum either as seeds per area or as mass per area."
            );
        if (question.ThousandKernelMass is null && (question.Rate ?? question.MaximumRate ?? question.Purity as Quantity) is not null)
            context.Report(
                nameof(question.ThousandKernelMass),
                ErrorCodes.MemberMissing,
                "Add the kernel mass; without it a mass does not say how many seeds it holds."
            );
        else if (question.ThousandKernelMass is null && question.Price is not null)
            context.Report(
                nameof(question.ThousandKernelMass),
                ErrorCodes.MemberMissing,
                "Add the kernel mass; without it the seed of the margin has no mass to price."
            );
        if (question.Area is not null && question.Price is null)
            context.Report(
                nameof(question.Price),
                ErrorCodes.MemberMissing,
                "The area is for the cost of the margin. Add the price, or leave the area out."
            );
    }
}

internal sealed class ShareToComeValidator : AbstractValidator<ShareToCome>
{
    public ShareToComeValidator()
    {
        RuleFor(share => share).Custom(CheckForm);
        RuleFor(share => share).Custom(CheckSpread);
    }

    private static void CheckForm(ShareToCome share, ValidationContext<ShareToCome> context)
    {
        if (share.Counted is not null)
        {
            if ((share.Mean ?? share.Spread) is not null)
                context.Report(
                    nameof(share.Counted),
                    SharedCodes.SettingsAtOdds,
                    "Give either mean with spread, or counted with seasonSpread."
                );
            return;
        }

        if (share.Mean is null)
            context.Report(nameof(share.Mean), ErrorCodes.MemberMissing, "Add the mean with its spread, or counted from a stand count.");
        if (share.Spread is null)
            context.Report(
                nameof(share.Spread),
                ErrorCodes.MemberMissing,
                "Add how much the share differs from season to season, as a standard deviation; zero if it never does."
            );
        if (share.SeasonSpread is not null)
            context.Report(
                nameof(share.SeasonSpread),
                SharedCodes.SettingsAtOdds,
                "The spread of seasons goes with counted. Leave seasonSpread out, and give spread beside the mean."
            );
    }

    // A share between 0 and 100 % cannot spread without bounds.
    private static void CheckSpread(ShareToCome share, ValidationContext<ShareToCome> context)
    {
        if (
            Rules.Canonical(share.Mean) is { } mean and > 0 and <= 1
            && Rules.Canonical(share.Spread) is { } spread and >= 0 and <= 0.5
            && !SeedSurvival.IsPossible(mean, spread)
        )
            context.Report(nameof(share.Spread), SharedCodes.SettingsAtOdds, SpreadOfShare.Impossible);
        if (
            share.Counted is { } counted
            && CountedShareValidator.IsOrdered(counted)
            && StandRiskCalculation.Read(share) is var expected
            && !SeedSurvival.IsPossible(expected.Mean, expected.Spread)
        )
            context.Report(
                share.SeasonSpread is null ? nameof(share.Counted) : nameof(share.SeasonSpread),
                SharedCodes.SettingsAtOdds,
                SpreadOfShare.Impossible
            );
    }
}

internal sealed class CountedShareValidator : AbstractValidator<CountedShare>
{
    public CountedShareValidator()
    {
        RuleFor(counted => counted)
            .Custom(
                (counted, context) =>
                {
                    var (lower, estimate, upper) = (
                        Rules.Canonical(counted.Lower),
                        Rules.Canonical(counted.Estimate),
                        Rules.Canonical(counted.Upper)
                    );
                    if (lower > estimate || estimate > upper)
                        context.Report(
                            nameof(counted.Estimate),
                            SharedCodes.SettingsAtOdds,
                            "The estimate lies outside its own interval. Check the three numbers."
                        );
                }
            );
    }

    /// <summary>All four members are there, in range and in order, so that they can be read.</summary>
    public static bool IsOrdered(CountedShare counted) =>
        Rules.Canonical(counted.Lower) is { } lower and >= 0
        && Rules.Canonical(counted.Upper) is { } upper and <= CountedShare.MostCounted
        && Rules.Canonical(counted.Estimate) is { } estimate and > 0 and <= 1
        && lower <= estimate
        && estimate <= upper
        && counted.CoverageProbability is >= 0.5 and <= 0.9999;
}
