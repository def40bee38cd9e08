using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedRowLimits;
using CalibrationApi.Engine.SeedRowLimits.Published;
using CalibrationApi.Http;
using FluentValidation;

namespace CalibrationApi.SeedRowLimits;

/// <summary>Rules of a question about fertilizer with the seed.</summary>
internal sealed class SeedRowLimitRequestValidator : AbstractValidator<SeedRowLimitRequest>
{
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
        RuleFor(question => question.Products).Items(1, 20);
        RuleForEach(question => question.Products!).SetValidator(new ProductWithSeedValidator()!);
        RuleFor(question => question.Sources).Items(1, PublishedLimits.Keys.Count);
        RuleForEach(question => question.Sources).Word(PublishedLimits.Keys);
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

internal sealed class ProductWithSeedValidator : AbstractValidator<ProductWithSeed>
{
    public ProductWithSeedValidator()
    {
        RuleFor(product => product.Name).Needed();
        RuleFor(product => product.Name).Text(Rules.LongestName);
        RuleFor(product => product.Analysis!).SetValidator(new ProductAnalysisValidator());
        RuleFor(product => product.Rates).Items(1, 100);
        RuleForEach(product => product.Rates).Measured(new(0, 100_000, "kg/ha"));
        RuleFor(product => product.Nutrients!).SetValidator(new NutrientRatesValidator());
        RuleFor(product => product.NitrogenForm).Word(Words.All<NitrogenForm>());
        RuleFor(product => product).Custom((product, context) =>
        {
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

internal sealed class ProductAnalysisValidator : AbstractValidator<ProductAnalysis>
{
    public ProductAnalysisValidator()
    {
        RuleFor(analysis => analysis.N).Measured();
        RuleFor(analysis => analysis.P2o5).Measured();
        RuleFor(analysis => analysis.K2o).Measured();
        RuleFor(analysis => analysis.S).Measured();
        RuleFor(analysis => analysis).Custom((analysis, context) =>
        {
            double?[] shares = [Rules.Canonical(analysis.N), Rules.Canonical(analysis.P2o5), Rules.Canonical(analysis.K2o), Rules.Canonical(analysis.S)];
            if (shares.All(share => share is null or 0))
                context.Report("", ErrorCode.MemberMissing, "The analysis names no nutrient. Give the share of at least one.");
            // A sum of decimal shares can miss one by rounding.
            else if (shares.Sum() > 1 + 1e-9)
                context.Report("", ErrorCode.NumberOutOfRange, "These shares add up to more than 100 %. Check the label: P2O5 and K2O count as oxides, sulphur as the element.");
        });
    }
}

internal sealed class NutrientRatesValidator : AbstractValidator<NutrientRates>
{
    public NutrientRatesValidator()
    {
        RuleFor(rates => rates.N).Measured(new(0, 100_000, "kg/ha"));
        RuleFor(rates => rates.P2o5).Measured(new(0, 100_000, "kg/ha"));
        RuleFor(rates => rates.K2o).Measured(new(0, 100_000, "kg/ha"));
        RuleFor(rates => rates.S).Measured(new(0, 100_000, "kg/ha"));
        RuleFor(rates => rates).Custom((rates, context) =>
        {
            if (rates is { N: null, P2o5: null, K2o: null, S: null })
                context.Report("", ErrorCode.MemberMissing, "No nutrient is named. Give the rate of at least one.");
        });
    }
}

internal sealed class LocalLimitWithSeedValidator : AbstractValidator<LocalLimitWithSeed>
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
