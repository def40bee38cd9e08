using System.Globalization;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.StandCounts;
using CalibrationApi.Engine.Statistics;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.StandCounts;

/// <summary>Rules of a stand count.</summary>
internal sealed class StandCountRequestValidator : AbstractValidator<StandCountRequest>
{
    public StandCountRequestValidator()
    {
        RuleFor(question => question).Custom(CheckGround);
        RuleFor(question => question).Custom(CheckPrior);
    }

    private static void CheckGround(StandCountRequest question, ValidationContext<StandCountRequest> context)
    {
        if (question.Ground is not null || question.Counts is not { Count: <= StandCountRequest.MostCounts } counts)
            return;
        for (var i = 0; i < counts.Count; i++)
        {
            if (counts[i] is { Ground: null })
                context.Report(
                    string.Create(CultureInfo.InvariantCulture, $"Counts[{i}].Ground"),
                    ErrorCodes.MemberMissing,
                    "Add the ground that was counted: here, or once for all counts as ground."
                );
        }
    }

    private static void CheckPrior(StandCountRequest question, ValidationContext<StandCountRequest> context)
    {
        if (question.Prior is null)
            return;
        if (question.Sown is null)
            context.Report(
                nameof(question.Sown),
                ErrorCodes.MemberMissing,
                "A prior is about a share of the seeds sown. Add what was sown."
            );
        else if (question.Prior.Reading == Words.Of(SeedReading.Emergence) && question.Sown.Germination is null)
            context.Report(
                $"{nameof(question.Sown)}.{nameof(SownSeed.Germination)}",
                ErrorCodes.MemberMissing,
                "A prior of emergence is about viable seeds. Add the germination, or give the prior as survival."
            );
    }
}

internal sealed class GroundOfCountValidator : AbstractValidator<GroundOfCount>
{
    public GroundOfCountValidator() => RuleFor(ground => ground).Custom(CheckForm);

    private static void CheckForm(GroundOfCount ground, ValidationContext<GroundOfCount> context)
    {
        var alongRows = ground.RowLength is not null || ground.RowSpacing is not null || ground.Rows is not null;
        var frame = ground.Length is not null || ground.Width is not null;
        (string Member, bool Given)[] forms =
        [
            (nameof(ground.RowLength), alongRows),
            (nameof(ground.Length), frame),
            (nameof(ground.Area), ground.Area is not null),
            (nameof(ground.HoopDiameter), ground.HoopDiameter is not null),
        ];
        string[] given = [.. forms.Where(form => form.Given).Select(form => form.Member)];
        if (given.Length == 0)
            context.Report(
                "",
                ErrorCodes.MemberMissing,
                "Add how large the ground is: rowLength with rowSpacing, length with width, area, or hoopDiameter."
            );
        if (given.Length > 1)
            context.Report(
                given[1],
                SharedCodes.SettingsAtOdds,
                "The ground is given in more than one form. Keep one: rowLength with rowSpacing, length with width, area, or hoopDiameter. What it is called goes to calledArea."
            );
        Both(alongRows, ground.RowLength, nameof(ground.RowLength), "Add the length counted along each row.", context);
        Both(alongRows, ground.RowSpacing, nameof(ground.RowSpacing), "Add the distance from row to row.", context);
        Both(frame, ground.Length, nameof(ground.Length), "Add the other side of the frame.", context);
        Both(frame, ground.Width, nameof(ground.Width), "Add the other side of the frame.", context);
    }

    private static void Both(bool needed, Quantity? member, string name, string advice, ValidationContext<GroundOfCount> context)
    {
        if (needed && member is null)
            context.Report(name, ErrorCodes.MemberMissing, advice);
    }
}

internal sealed class SownSeedValidator : AbstractValidator<SownSeed>
{
    public SownSeedValidator()
    {
        RuleFor(sown => sown)
            .Custom(
                (sown, context) =>
                {
                    if (sown.SeedsPerArea is null && sown.Rate is null)
                        context.Report(
                            nameof(sown.SeedsPerArea),
                            ErrorCodes.MemberMissing,
                            "Add the seeds sown per area, or the rate with the kernel mass."
                        );
                    if (
                        sown.SeedsPerArea is not null
                        && (sown.Rate is not null || sown.ThousandKernelMass is not null || sown.Purity is not null)
                    )
                        context.Report(
                            nameof(sown.SeedsPerArea),
                            SharedCodes.SettingsAtOdds,
                            "Give either the pure seeds sown per area, or rate with thousandKernelMass and purity, not both."
                        );
                    if (sown.Rate is not null && sown.ThousandKernelMass is null)
                        context.Report(
                            nameof(sown.ThousandKernelMass),
                            ErrorCodes.MemberMissing,
                            "Add the kernel mass; without it the rate does not say how many seeds were sown."
                        );
                }
            );
    }
}

internal sealed class PriorOfShareValidator : AbstractValidator<PriorOfShare>
{
    public PriorOfShareValidator()
    {
        RuleFor(prior => prior)
            .Custom(
                (prior, context) =>
                {
                    if (
                        Rules.Canonical(prior.Mean) is { } mean and > 0 and < 1
                        && Rules.Canonical(prior.Spread) is { } spread and > 0 and <= 0.5
                        && !BetaShape.IsPossible(mean, spread)
                    )
                        context.Report(nameof(prior.Spread), SharedCodes.SettingsAtOdds, SpreadOfShare.Impossible);
                }
            );
    }
}
