using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.SeedingRates;

/// <summary>Rules of a seeding rate that look at several members at once.</summary>
internal static class SeedingRateRules
{
    public static void CheckTarget(SeedingRateRequest question, ValidationContext<SeedingRateRequest> context)
    {
        CheckOneOf(
            context,
            [
                (nameof(question.TargetStand), question.TargetStand),
                (nameof(question.SeedsPerArea), question.SeedsPerArea),
                (nameof(question.GerminableSeedsPerArea), question.GerminableSeedsPerArea),
                (nameof(question.SeedsPerRow), question.SeedsPerRow),
                (nameof(question.Rate), question.Rate),
            ],
            "Say what is fixed. Give one of: targetStand, seedsPerArea, germinableSeedsPerArea, seedsPerRow, rate.",
            "The rest follows from one of targetStand, seedsPerArea, germinableSeedsPerArea, seedsPerRow and rate. Keep one and leave the others out."
        );
        if (question.SeedsPerRow is not null && question.RowSpacing is null)
            context.Report(
                nameof(question.RowSpacing),
                ErrorCodes.MemberMissing,
                "Seeds per length of row say nothing without the distance between rows. Add the row spacing."
            );
        if (question.StatedRate is not null && question.Rate is not null)
            context.Report(
                nameof(question.StatedRate),
                SharedCodes.SettingsAtOdds,
                "A stated rate is compared with the rate for a stand or for seeds. Leave out rate, or statedRate."
            );
    }

    public static void CheckKernel(SeedingRateRequest question, ValidationContext<SeedingRateRequest> context)
    {
        CheckOneOf(
            context,
            [
                (nameof(question.ThousandKernelMass), question.ThousandKernelMass),
                (nameof(question.SeedsPerMass), question.SeedsPerMass),
                (nameof(question.Sample), question.Sample),
            ],
            "The mass of a kernel is missing. Give one of: thousandKernelMass, seedsPerMass, sample.",
            "The mass of a kernel is given in more than one way. Keep one of thousandKernelMass, seedsPerMass and sample."
        );
        // One seed and a ton are no sample, though each of the two is a number in range.
        var limits = QuantityLimits.Of(Dimension.MassPerThousand);
        if (
            Rules.Canonical(question.Sample?.Mass) / question.Sample?.Seeds is { } mass
            && double.IsFinite(mass)
            && mass > 0
            && !limits.Allows(mass)
        )
            context.Report(
                nameof(question.Sample),
                SharedCodes.SettingsAtOdds,
                $"Count and mass do not belong together: they make a mass of a thousand kernels that no seed has. It has to be {limits}. Check count, mass and unit."
            );
    }

    private static void CheckOneOf(
        ValidationContext<SeedingRateRequest> context,
        (string Member, object? Value)[] members,
        string missing,
        string surplus
    )
    {
        var given = members.Where(member => member.Value is not null).ToArray();
        if (given.Length == 0)
            context.Report(members[0].Member, ErrorCodes.MemberMissing, missing);
        foreach (var (member, _) in given.Skip(1))
            context.Report(member, SharedCodes.SettingsAtOdds, surplus);
    }

    public static void CheckEstablishment(SeedingRateRequest question, ValidationContext<SeedingRateRequest> context)
    {
        if (question is { GerminableSeedsPerArea: not null, Survival: not null })
            context.Report(
                nameof(question.Survival),
                SharedCodes.SettingsAtOdds,
                "Survival holds germination without telling it, so it cannot say how many seeds germinate. Give germination, with emergence where a stand is wanted."
            );
        const string Folded =
            "Survival already holds germination and emergence. Leave this out, or leave survival out and give germination and emergence.";
        if (question.Survival is not null)
        {
            if (question.Germination is not null)
                context.Report(nameof(question.Germination), SharedCodes.SettingsAtOdds, Folded);
            if (question.Emergence is not null)
                context.Report(nameof(question.Emergence), SharedCodes.SettingsAtOdds, Folded);
        }
        else if (question.Germination is null && question.GerminableSeedsPerArea is not null)
        {
            context.Report(
                nameof(question.Germination),
                ErrorCodes.MemberMissing,
                "How many seeds can germinate depends on the germination. Add it."
            );
        }
        else if (question.Germination is null && (question.Emergence is not null || question.TargetStand is not null))
        {
            context.Report(
                nameof(question.Germination),
                ErrorCodes.MemberMissing,
                "Germination is missing. Add it beside emergence, or give survival if your figure already holds germination."
            );
        }

        if (question.TargetStand is not null && question.Survival is null && question.Emergence is null)
            context.Report(
                nameof(question.Emergence),
                ErrorCodes.MemberMissing,
                "A stand takes the share of the seeds that emerge. Add emergence, or survival in place of germination and emergence."
            );
        if (question.GerminationSeedsTested is not null && question.Germination is null)
            context.Report(
                nameof(question.GerminationSeedsTested),
                SharedCodes.SettingsAtOdds,
                "The seeds tested go with germination. Add germination, or leave them out."
            );
        CheckRange(nameof(question.EmergenceRange), question.EmergenceRange, question.Emergence, "emergence", context);
        CheckRange(nameof(question.SurvivalRange), question.SurvivalRange, question.Survival, "survival", context);
    }

    public static void CheckCost(SeedingRateRequest question, ValidationContext<SeedingRateRequest> context)
    {
        if (question.Price is not null && question.Package?.Price is not null)
            context.Report(
                "Package.Price",
                SharedCodes.SettingsAtOdds,
                "A price by mass and a price of a package are given. Leave one of the two out."
            );
    }

    private static void CheckRange(
        string member,
        ShareRange? range,
        RatioQuantity? share,
        string name,
        ValidationContext<SeedingRateRequest> context
    )
    {
        if (range is null)
            return;
        if (share is null)
            context.Report(member, SharedCodes.SettingsAtOdds, $"This range is around the {name}. Add the {name}, or leave the range out.");
        else if (
            Rules.Canonical(share) is { } value
            && Rules.Canonical(range.Minimum) is { } lowest
            && Rules.Canonical(range.Maximum) is { } highest
            && lowest < highest
            && !(lowest <= value && value <= highest)
        )
            context.Report(
                member,
                SharedCodes.SettingsAtOdds,
                $"The {name} lies outside its own range. Check the two, and correct the one that is wrong."
            );
    }
}
