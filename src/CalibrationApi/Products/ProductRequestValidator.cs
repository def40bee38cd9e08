using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.SeedRowLimits;
using CalibrationApi.Http;
using CalibrationApi.Nutrients;
using CalibrationApi.Quantities;
using CalibrationApi.Records;
using FluentValidation;

namespace CalibrationApi.Products;

/// <summary>Rules of a product.</summary>
internal sealed class ProductRequestValidator : DescribedRequestValidator<ProductRequest>
{
    public ProductRequestValidator()
    {
        RuleFor(product => product.Material).Word(Words.All<ProductMaterial>());
        RuleFor(product => product.BulkDensity).Measured();
        RuleFor(product => product.Analysis).Items(1, NutrientRules.MostShares);
        RuleForEach(product => product.Analysis!).SetValidator(new ShareOfNutrientValidator()!);
        RuleFor(product => product.NitrogenForm).Word(Words.All<NitrogenForm>());
        RuleFor(product => product).Custom((product, context) => NutrientRules.CheckAnalysis(product.Analysis, nameof(product.Analysis), context));
        RuleFor(product => product.FanSpeedLimits!).SetValidator(new RotationLimitsValidator());
        RuleFor(product => product.Price!).SetValidator(new PriceValidator());
    }
}
