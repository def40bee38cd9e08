using CalibrationApi.Calculations.Nutrients;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.ProductRates;

/// <summary>Rules of a question about product rates.</summary>
internal sealed class ProductRateRequestValidator : AbstractValidator<ProductRateRequest>
{
    public ProductRateRequestValidator()
    {
        RuleFor(question => question)
            .Custom(
                (question, context) =>
                {
                    NutrientRules.EachOnce(question.Targets, target => target.Nutrient, nameof(question.Targets), "target", context);
                    CheckPrices(question.Products ?? [], context);
                }
            );
    }

    private static void CheckPrices(IReadOnlyList<ProductOffer?> products, ValidationContext<ProductRateRequest> context)
    {
        if (products.FirstOrDefault(product => product?.Price is not null)?.Price is not { } first)
            return;
        for (var i = 0; i < products.Count; i++)
        {
            var at = $"{nameof(ProductRateRequest.Products)}[{i}].{nameof(ProductOffer.Price)}";
            if (products[i] is { Price: null })
                context.Report(
                    at,
                    ErrorCodes.MemberMissing,
                    "Other products have a price. Give one for this product too, or for none: the least cost cannot be found from some prices."
                );
            else if (products[i]?.Price is { Currency: { } currency } && first.Currency is { } common && currency != common)
                context.Report(
                    $"{at}.{nameof(Price.Currency)}",
                    SharedCodes.SettingsAtOdds,
                    $"The first price is in {Excerpt.Of(common, 3)}. Give all prices in one currency."
                );
        }
    }
}

internal sealed class WantedNutrientValidator : AbstractValidator<WantedNutrient>
{
    public WantedNutrientValidator()
    {
        RuleFor(target => target)
            .Custom(
                (target, context) =>
                {
                    NutrientRules.ZeroOrMeasurable(target.Amount, nameof(target.Amount), context);
                    NutrientRules.ZeroOrMeasurable(target.Maximum, nameof(target.Maximum), context);
                    var isLeast = target.Kind is null || target.Kind == Words.Of(TargetKind.AtLeast);
                    if (isLeast && Rules.Canonical(target.Amount) == 0)
                        context.Report(
                            nameof(target.Amount),
                            ErrorCodes.NumberOutOfRange,
                            "At least nothing asks for nothing. Give an amount above zero, or the kind at-most to keep the nutrient out."
                        );
                    if (!isLeast && target.Maximum is not null)
                        context.Report(
                            nameof(target.Maximum),
                            SharedCodes.SettingsAtOdds,
                            "A most goes with the kind at-least only; exactly and at-most already say it. Leave one of them out."
                        );
                    if (isLeast && Rules.Canonical(target.Maximum) < Rules.Canonical(target.Amount) * NutrientRules.JustBelow)
                        context.Report(
                            nameof(target.Maximum),
                            SharedCodes.SettingsAtOdds,
                            "The most is below the amount that is wanted at least. Check both numbers and their units."
                        );
                }
            );
    }
}

internal sealed class ProductOfferValidator : AbstractValidator<ProductOffer>
{
    public ProductOfferValidator()
    {
        RuleFor(product => product)
            .Custom(
                (product, context) =>
                {
                    NutrientRules.ZeroOrMeasurable(product.MinimumRate, nameof(product.MinimumRate), context);
                    NutrientRules.ZeroOrMeasurable(product.MaximumRate, nameof(product.MaximumRate), context);
                    NutrientRules.ZeroOrMeasurable(product.FixedRate, nameof(product.FixedRate), context);
                    CheckRates(product, context);
                    NutrientRules.CheckAnalysis(product.Analysis, nameof(product.Analysis), context);
                }
            );
    }

    private static void CheckRates(ProductOffer product, ValidationContext<ProductOffer> context)
    {
        if (product.FixedRate is not null && (product.MinimumRate is not null || product.MaximumRate is not null))
            context.Report(
                nameof(product.FixedRate),
                SharedCodes.SettingsAtOdds,
                "A fixed rate leaves nothing between a least and a most. Give either the fixed rate or the limits."
            );
        if (Rules.Canonical(product.MaximumRate) < Rules.Canonical(product.MinimumRate) * NutrientRules.JustBelow)
            context.Report(
                nameof(product.MaximumRate),
                SharedCodes.SettingsAtOdds,
                "The most rate is below the least. Check both numbers and their units."
            );
    }
}
