using CalibrationApi.Quantities;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Http;
using CalibrationApi.Records;

namespace CalibrationApi.Products;

/// <summary>Rules of a product.</summary>
internal sealed class ProductRequestValidator : DescribedRequestValidator<ProductRequest>
{
    public ProductRequestValidator()
    {
        RuleFor(product => product.Material).Word(Words.All<ProductMaterial>());
        RuleFor(product => product.BulkDensity).Measured();
        RuleFor(product => product.Price!).SetValidator(new PriceValidator());
    }
}
