using CalibrationApi.Engine.SeedingRates;
using CalibrationApi.Http;
using CalibrationApi.Quantities;
using FluentValidation;

namespace CalibrationApi.Calculations.SeedingRates;

/// <summary>Rules of a question about a seeding rate.</summary>
internal sealed class SeedingRateRequestValidator : RequestValidator<SeedingRateRequest>
{
    public SeedingRateRequestValidator()
    {
        RuleFor(question => question.TargetStand).Measured();
        RuleFor(question => question.SeedsPerArea).Measured();
        RuleFor(question => question.GerminableSeedsPerArea).Measured();
        RuleFor(question => question.SeedsPerRow).Measured();
        RuleFor(question => question.Rate).Measured();
        RuleFor(question => question.ThousandKernelMass).Measured();
        // The lower end is the heaviest kernel that is taken, 5000 g/1000.
        RuleFor(question => question.SeedsPerMass).Measured(new(200, 1_000_000_000, "/kg"));
        RuleFor(question => question.Sample!).SetValidator(new SampleOfSeedValidator());
        RuleFor(question => question.KernelMassUncertainty).Measured(new(0, 50, "%", ExcludesLeast: true));
        RuleFor(question => question.Germination).Measured(QuantityLimits.SomeShare);
        RuleFor(question => question.GerminationSeedsTested).Whole(10, 1_000_000);
        RuleFor(question => question.Emergence).Measured(QuantityLimits.SomeShare);
        RuleFor(question => question.EmergenceRange!).SetValidator(new ShareRangeValidator());
        RuleFor(question => question.Survival).Measured(QuantityLimits.SomeShare);
        RuleFor(question => question.SurvivalRange!).SetValidator(new ShareRangeValidator());
        RuleFor(question => question.Purity).Measured(QuantityLimits.SomeShare);
        RuleFor(question => question.Crop).Word(Words.All<Crop>());
        RuleFor(question => question.RowSpacing).Measured(new(0, 10, "m", ExcludesLeast: true));
        RuleFor(question => question.Area).Measured();
        RuleFor(question => question.Package!).SetValidator(new PackageOfSeedValidator());
        RuleFor(question => question.Price!).SetValidator(new PriceValidator());
        RuleFor(question => question.StatedRate).Measured();
        RuleFor(question => question.StatedRate!).SetValidator(new RateFromElsewhereValidator());
        RuleFor(question => question).Custom((question, context) =>
        {
            SeedingRateRules.CheckTarget(question, context);
            SeedingRateRules.CheckKernel(question, context);
            SeedingRateRules.CheckEstablishment(question, context);
            SeedingRateRules.CheckCost(question, context);
        });
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

internal sealed class SampleOfSeedValidator : RequestValidator<SampleOfSeed>
{
    public SampleOfSeedValidator()
    {
        RuleFor(sample => sample.Seeds).Needed();
        RuleFor(sample => sample.Seeds).Whole(1, 10_000_000);
        RuleFor(sample => sample.Mass).Needed();
        RuleFor(sample => sample.Mass).Measured();
    }
}

internal sealed class ShareRangeValidator : RequestValidator<ShareRange>
{
    public ShareRangeValidator()
    {
        RuleFor(range => range.Lowest).Needed();
        RuleFor(range => range.Lowest).Measured(QuantityLimits.SomeShare);
        RuleFor(range => range.Highest).Needed();
        RuleFor(range => range.Highest).Measured(QuantityLimits.SomeShare);
        RuleFor(range => range).Custom((range, context) =>
        {
            if (Rules.Canonical(range.Lowest) is { } lowest && Rules.Canonical(range.Highest) is { } highest && lowest >= highest)
                context.Report(nameof(range.Lowest), ErrorCode.SettingsAtOdds, "The lowest share has to be below the highest. Swap the two, or leave the range out.");
        });
    }
}

internal sealed class PackageOfSeedValidator : RequestValidator<PackageOfSeed>
{
    public PackageOfSeedValidator()
    {
        RuleFor(package => package.Mass).Measured();
        RuleFor(package => package.Seeds).Number(1, 1_000_000_000);
        RuleFor(package => package.Price!).SetValidator(new PackagePriceValidator());
        RuleFor(package => package).Custom((package, context) =>
        {
            if (package.Mass is null && package.Seeds is null)
                context.Report(nameof(package.Mass), ErrorCode.MemberMissing, "Give what one package holds: a mass, or a count of seeds.");
            if (package.Mass is not null && package.Seeds is not null)
                context.Report(nameof(package.Seeds), ErrorCode.SettingsAtOdds, "A package is given by its mass and by its seeds. Leave one of the two out.");
        });
    }
}

internal sealed class PackagePriceValidator : RequestValidator<PackagePrice>
{
    public PackagePriceValidator()
    {
        RuleFor(price => price.Value).Needed();
        RuleFor(price => price.Value).Number(0, 1_000_000_000);
        RuleFor(price => price.Currency).Needed();
        RuleFor(price => price.Currency).CurrencyCode();
    }
}

internal sealed class RateFromElsewhereValidator : RequestValidator<RateFromElsewhere>
{
    public RateFromElsewhereValidator() => RuleFor(rate => rate.MadeBy).Word(Words.All<RateOrigin>());
}
