using CalibrationApi.Calculations.Nutrients;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.SeedRowLimits;

/// <summary>Rules of a question about fertilizer with the seed.</summary>
internal sealed class SeedRowLimitRequestValidator : AbstractValidator<SeedRowLimitRequest>
{
    public SeedRowLimitRequestValidator()
    {
        RuleFor(question => question)
            .Custom(
                (question, context) =>
                {
                    SeedSpread.Check(question.RowSpacing, question.SeedRowWidth, nameof(question.SeedRowWidth), context);
                    CheckZones(question, context);
                }
            );
    }

    private static void CheckZones(SeedRowLimitRequest question, ValidationContext<SeedRowLimitRequest> context)
    {
        if (question.Products is not { } products)
            return;
        var zones = products.FirstOrDefault(product => product?.Rates is { Count: > 1 })?.Rates!.Count;
        for (var i = 0; i < products.Count; i++)
        {
            if (products[i]?.Rates is { Count: > 1 } rates && rates.Count != zones)
                context.Report(
                    $"{nameof(question.Products)}[{i}].{nameof(ProductWithSeed.Rates)}",
                    SharedCodes.SettingsAtOdds,
                    $"This product has {rates.Count} zones, another one {zones}. Give one rate, or one for each of the same zones."
                );
        }
    }
}

internal sealed class ProductWithSeedValidator : AbstractValidator<ProductWithSeed>
{
    public ProductWithSeedValidator()
    {
        RuleFor(product => product)
            .Custom(
                (product, context) =>
                {
                    NutrientRules.CheckAnalysis(product.Analysis, nameof(product.Analysis), context);
                    NutrientRules.EachOnce(product.Nutrients, one => one.Nutrient, nameof(product.Nutrients), "rate", context);
                    if (product.Nutrients is not null)
                    {
                        if (product.Analysis is not null || product.Rates is not null)
                            context.Report(
                                nameof(product.Nutrients),
                                SharedCodes.SettingsAtOdds,
                                "Give either an analysis with rates or nutrients at their own rates, not both."
                            );
                        return;
                    }
                    if (product.Analysis is null)
                        context.Report(
                            nameof(product.Analysis),
                            ErrorCodes.MemberMissing,
                            "Add the analysis of the product with its rates, or nutrients at rates of their own."
                        );
                    if (product.Rates is null)
                        context.Report(
                            nameof(product.Rates),
                            ErrorCodes.MemberMissing,
                            "Add the rates of the product: one, or one for each zone."
                        );
                }
            );
    }
}
