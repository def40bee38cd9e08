using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedRowLimits;
using CalibrationApi.Engine.SeedRowLimits.Published;
using CalibrationApi.Http;
using CalibrationApi.Nutrients;
using CalibrationApi.Quantities;
using FluentValidation;

namespace CalibrationApi.Calculations.SeedRowLimits;

/// <summary>Rules of a question about fertilizer with the seed.</summary>
internal sealed class SeedRowLimitRequestValidator : RequestValidator<SeedRowLimitRequest>
{
    /// <summary>What may be accepted of a stand.</summary>
    public static readonly QuantityLimits AcceptableLoss = new(0, 50, "%", ExcludesLeast: true);

    // As many as a plan has meters.
    private const int MostProducts = 64;

    public SeedRowLimitRequestValidator()
    {
        RuleFor(question => question.Crop).Needed();
        RuleFor(question => question.Crop).Word(Words.All<Crop>());
        RuleFor(question => question.Soil).Needed();
        RuleFor(question => question.Soil).Word(Words.All<SoilTexture>());
        RuleFor(question => question.Moisture).Needed();
        RuleFor(question => question.Moisture).Word(Words.All<SeedbedMoisture>());
        RuleFor(question => question.Region).Word(Words.All<Region>());
        RuleFor(question => question.RowSpacing).Needed();
        RuleFor(question => question.RowSpacing).Measured(new(0, 5, "m", ExcludesLeast: true));
        RuleFor(question => question.Spread).Needed();
        RuleFor(question => question.Spread).Measured(new(0, 5, "m", ExcludesLeast: true));
        RuleFor(question => question.Opener).Word(Words.All<Opener>());
        RuleFor(question => question.Products).Needed();
        RuleFor(question => question.Products).Items(1, MostProducts);
        RuleForEach(question => question.Products!).SetValidator(new ProductWithSeedValidator()!);
        RuleFor(question => question.Sources).Items(1, PublishedLimits.Keys.Count);
        RuleForEach(question => question.Sources).Word(PublishedLimits.Keys);
        RuleFor(question => question.AcceptableStandLoss).Measured(AcceptableLoss);
        RuleFor(question => question.LocalLimits).Items(1, 20);
        RuleForEach(question => question.LocalLimits!).SetValidator(new LocalLimitWithSeedValidator()!);
        RuleFor(question => question).Custom((question, context) =>
        {
            if (Rules.Canonical(question.RowSpacing) is { } row && Rules.Canonical(question.Spread) is { } spread && double.IsFinite(row) && double.IsFinite(spread)
                && SeedbedUtilisation.IsWiderThanRow(new Length(spread), new Length(row)))
                context.Report(nameof(question.Spread), ErrorCode.SettingsAtOdds, "Seed cannot be spread wider than the rows are apart. Check both widths and their units.");
            CheckZones(question, context);
        });
    }

    private static void CheckZones(SeedRowLimitRequest question, ValidationContext<SeedRowLimitRequest> context)
    {
        if (question.Products is not { } products)
            return;
        var zones = products.FirstOrDefault(product => product?.Rates is { Count: > 1 })?.Rates!.Count;
        for (var i = 0; i < products.Count; i++)
        {
            if (products[i]?.Rates is { Count: > 1 } rates && rates.Count != zones)
                context.Report($"{nameof(question.Products)}[{i}].{nameof(ProductWithSeed.Rates)}", ErrorCode.SettingsAtOdds, $"This product has {rates.Count} zones, another one {zones}. Give one rate, or one for each of the same zones.");
        }
    }
}

internal sealed class ProductWithSeedValidator : RequestValidator<ProductWithSeed>
{
    public ProductWithSeedValidator()
    {
        RuleFor(product => product.Name).Needed();
        RuleFor(product => product.Name).Text(Rules.LongestName);
        RuleFor(product => product.Analysis).Items(1, NutrientRules.MostShares);
        RuleForEach(product => product.Analysis!).SetValidator(new ShareOfNutrientValidator()!);
        RuleFor(product => product.Rates).Items(1, 100);
        RuleForEach(product => product.Rates).Measured(new(0, 100_000, "kg/ha"));
        RuleFor(product => product.Nutrients).Items(1, NutrientRules.MostShares);
        RuleForEach(product => product.Nutrients!).SetValidator(new AmountOfNutrientValidator()!);
        RuleFor(product => product.NitrogenForm).Word(Words.All<NitrogenForm>());
        RuleFor(product => product).Custom((product, context) =>
        {
            NutrientRules.CheckAnalysis(product.Analysis, nameof(product.Analysis), context);
            NutrientRules.EachOnce(product.Nutrients, one => one.Nutrient, nameof(product.Nutrients), "rate", context);
            if (product.Nutrients is not null)
            {
                if (product.Analysis is not null || product.Rates is not null)
                    context.Report(nameof(product.Nutrients), ErrorCode.SettingsAtOdds, "Give either an analysis with rates or nutrients at their own rates, not both.");
                return;
            }

            if (product.Analysis is null)
                context.Report(nameof(product.Analysis), ErrorCode.MemberMissing, "Add the analysis of the product with its rates, or nutrients at rates of their own.");
            if (product.Rates is null)
                context.Report(nameof(product.Rates), ErrorCode.MemberMissing, "Add the rates of the product: one, or one for each zone.");
        });
    }
}

internal sealed class LocalLimitWithSeedValidator : RequestValidator<LocalLimitWithSeed>
{
    public LocalLimitWithSeedValidator()
    {
        RuleFor(limit => limit.Source).Needed();
        RuleFor(limit => limit.Source).Text(Rules.LongestName);
        RuleFor(limit => limit.Nutrient).Needed();
        RuleFor(limit => limit.Nutrient).Word(Words.All<LimitedNutrient>());
        RuleFor(limit => limit.Rate).Needed();
        RuleFor(limit => limit.Rate).Measured(new(0, 100_000, "kg/ha"));
    }
}
