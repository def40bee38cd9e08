using CalibrationApi.Calculations.Nutrients;
using FluentValidation;

namespace CalibrationApi.Records.Products;

/// <summary>Rules of a product.</summary>
internal sealed class ProductRequestValidator : AbstractValidator<ProductRequest>
{
    public ProductRequestValidator() =>
        RuleFor(product => product)
            .Custom((product, context) => NutrientRules.CheckAnalysis(product.Analysis, nameof(product.Analysis), context));
}
