using System.Globalization;
using CalibrationApi.Engine.StandCounts;
using CalibrationApi.Engine.Statistics;
using CalibrationApi.Http;
using CalibrationApi.Quantities;
using FluentValidation;

namespace CalibrationApi.Calculations.StandCounts;

/// <summary>Rules of a stand count.</summary>
internal sealed class StandCountRequestValidator : RequestValidator<StandCountRequest>
{
    private const int MostCounts = 200;

    public StandCountRequestValidator()
    {
        RuleFor(question => question.Ground!).SetValidator(new GroundOfCountValidator());
        RuleFor(question => question.Counts).Needed();
        RuleFor(question => question.Counts).Items(1, MostCounts);
        RuleForEach(question => question.Counts!).SetValidator(new CountOfPlantsValidator()!);
        RuleFor(question => question.Sown!).SetValidator(new SownSeedValidator());
        RuleFor(question => question.Prior!).SetValidator(new PriorOfShareValidator());
        RuleFor(question => question.TargetStand).Measured();
        RuleFor(question => question.MinimumStand).Measured();
        RuleFor(question => question.StatedStand).Measured();
        RuleFor(question => question.WantedPrecision).Measured(new(1, 100, "%"));
        RuleFor(question => question.CoverageProbability).Number(0.5, 0.9999);
        RuleFor(question => question).Custom(CheckGround);
        RuleFor(question => question).Custom(CheckPrior);
    }

    private static void CheckGround(StandCountRequest question, ValidationContext<StandCountRequest> context)
    {
        if (question.Ground is not null || question.Counts is not { Count: <= MostCounts } counts)
            return;
        for (var i = 0; i < counts.Count; i++)
        {
            if (counts[i] is { Ground: null })
                context.Report(string.Create(CultureInfo.InvariantCulture, $"Counts[{i}].Ground"), ErrorCode.MemberMissing, "Add the ground that was counted: here, or once for all counts as ground.");
        }
    }

    private static void CheckPrior(StandCountRequest question, ValidationContext<StandCountRequest> context)
    {
        if (question.Prior is null)
            return;
        if (question.Sown is null)
            context.Report(nameof(question.Sown), ErrorCode.MemberMissing, "A prior is about a share of the seeds sown. Add what was sown.");
        else if (question.Prior.Reading == Words.Of(SeedReading.Emergence) && question.Sown.Germination is null)
            context.Report($"{nameof(question.Sown)}.{nameof(SownSeed.Germination)}", ErrorCode.MemberMissing, "A prior of emergence is about viable seeds. Add the germination, or give the prior as survival.");
    }
}

internal sealed class CountOfPlantsValidator : RequestValidator<CountOfPlants>
{
    public CountOfPlantsValidator()
    {
        RuleFor(count => count.Plants).Needed();
        RuleFor(count => count.Plants).Whole(0, 100_000);
        RuleFor(count => count.Ground!).SetValidator(new GroundOfCountValidator());
        RuleFor(count => count.Row).Text(Rules.LongestName);
    }
}

internal sealed class GroundOfCountValidator : RequestValidator<GroundOfCount>
{
    public GroundOfCountValidator()
    {
        var side = new QuantityLimits(0.01, 1000, "m");
        var spacing = new QuantityLimits(0.01, 10, "m");
        var area = new QuantityLimits(0.001, 100_000, "m2");
        RuleFor(ground => ground.RowLength).Measured(side);
        RuleFor(ground => ground.RowSpacing).Measured(spacing);
        RuleFor(ground => ground.Rows).Whole(1, 1000);
        RuleFor(ground => ground.Length).Measured(side);
        RuleFor(ground => ground.Width).Measured(side);
        RuleFor(ground => ground.Area).Measured(area);
        RuleFor(ground => ground.HoopDiameter).Measured(spacing);
        RuleFor(ground => ground.CalledArea).Measured(area);
        RuleFor(ground => ground).Custom(CheckForm);
    }

    private static void CheckForm(GroundOfCount ground, ValidationContext<GroundOfCount> context)
    {
        var alongRows = ground.RowLength is not null || ground.RowSpacing is not null || ground.Rows is not null;
        var frame = ground.Length is not null || ground.Width is not null;
        (string Member, bool Given)[] forms =
        [
            (nameof(ground.RowLength), alongRows), (nameof(ground.Length), frame),
            (nameof(ground.Area), ground.Area is not null), (nameof(ground.HoopDiameter), ground.HoopDiameter is not null),
        ];
        string[] given = [.. forms.Where(form => form.Given).Select(form => form.Member)];
        if (given.Length == 0)
            context.Report("", ErrorCode.MemberMissing, "Add how large the ground is: rowLength with rowSpacing, length with width, area, or hoopDiameter.");
        if (given.Length > 1)
            context.Report(given[1], ErrorCode.SettingsAtOdds, "The ground is given in more than one form. Keep one: rowLength with rowSpacing, length with width, area, or hoopDiameter. What it is called goes to calledArea.");
        Both(alongRows, ground.RowLength, nameof(ground.RowLength), "Add the length counted along each row.", context);
        Both(alongRows, ground.RowSpacing, nameof(ground.RowSpacing), "Add the distance from row to row.", context);
        Both(frame, ground.Length, nameof(ground.Length), "Add the other side of the frame.", context);
        Both(frame, ground.Width, nameof(ground.Width), "Add the other side of the frame.", context);
    }

    private static void Both(bool needed, Quantity? member, string name, string advice, ValidationContext<GroundOfCount> context)
    {
        if (needed && member is null)
            context.Report(name, ErrorCode.MemberMissing, advice);
    }
}

internal sealed class SownSeedValidator : RequestValidator<SownSeed>
{
    public SownSeedValidator()
    {
        RuleFor(sown => sown.SeedsPerArea).Measured();
        RuleFor(sown => sown.Rate).Measured();
        RuleFor(sown => sown.ThousandKernelMass).Measured();
        RuleFor(sown => sown.Purity).Measured(new(0, 100, "%", ExcludesLeast: true));
        RuleFor(sown => sown.Germination).Measured(new(0, 100, "%", ExcludesLeast: true));
        RuleFor(sown => sown.Uncertainty).Measured(new(0, 50, "%"));
        RuleFor(sown => sown).Custom((sown, context) =>
        {
            if (sown.SeedsPerArea is null && sown.Rate is null)
                context.Report(nameof(sown.SeedsPerArea), ErrorCode.MemberMissing, "Add the seeds sown per area, or the rate with the kernel mass.");
            if (sown.SeedsPerArea is not null && (sown.Rate is not null || sown.ThousandKernelMass is not null || sown.Purity is not null))
                context.Report(nameof(sown.SeedsPerArea), ErrorCode.SettingsAtOdds, "Give either the pure seeds sown per area, or rate with thousandKernelMass and purity, not both.");
            if (sown.Rate is not null && sown.ThousandKernelMass is null)
                context.Report(nameof(sown.ThousandKernelMass), ErrorCode.MemberMissing, "Add the kernel mass; without it the rate does not say how many seeds were sown.");
        });
    }
}

internal sealed class PriorOfShareValidator : RequestValidator<PriorOfShare>
{
    public PriorOfShareValidator()
    {
        RuleFor(prior => prior.Reading).Needed();
        RuleFor(prior => prior.Reading).Word(Words.All<SeedReading>());
        RuleFor(prior => prior.Mean).Needed();
        RuleFor(prior => prior.Mean).Measured(new(1, 99.9, "%"));
        RuleFor(prior => prior.Spread).Needed();
        RuleFor(prior => prior.Spread).Measured(new(0.1, 50, "%"));
        RuleFor(prior => prior).Custom((prior, context) =>
        {
            if (Rules.Canonical(prior.Mean) is { } mean and > 0 and < 1 && Rules.Canonical(prior.Spread) is { } spread and > 0 and <= 0.5 && !BetaShape.IsPossible(mean, spread))
                context.Report(nameof(prior.Spread), ErrorCode.SettingsAtOdds, SpreadOfShare.Impossible);
        });
    }
}
