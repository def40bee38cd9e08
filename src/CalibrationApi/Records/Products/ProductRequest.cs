using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Calculations.Nutrients;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using CalibrationApi.Records.Describing;

namespace CalibrationApi.Records.Products;

/// <summary>A product that meters put down.</summary>
[CheckedBy(typeof(ProductRequestValidator))]
public class ProductRequest : DescribedRequest
{
    /// <summary>How it flows: <c>free-flowing</c>, <c>small-seed</c> or <c>dusty</c> (also sticky or caking).</summary>
    [Word(typeof(ProductMaterial))]
    public string? Material { get; init; }

    /// <summary>Usual bulk density; a lot may have its own.</summary>
    [Measured]
    public BulkDensityQuantity? BulkDensity { get; init; }

    /// <summary>Its nutrients, each as a share of its mass in a stated form; for a fertilizer.</summary>
    [Items(1, NutrientRules.MostShares)]
    public IReadOnlyList<ShareOfNutrient?>? Analysis { get; init; }

    /// <summary>Form of its nitrogen. When it is not stated, all nitrogen beside the seed counts as urea.</summary>
    [Word(typeof(NitrogenForm))]
    public string? NitrogenForm { get; init; }

    /// <summary>Fan speeds that the product may have on this machine; yours, from the machine's manual.</summary>
    public RotationLimits? FanSpeedLimits { get; init; }

    /// <summary>Price.</summary>
    public Price? Price { get; init; }
}

/// <summary>A product as stored.</summary>
public sealed class ProductAnswer : ProductRequest, IRecordAnswer
{
    /// <inheritdoc/>
    public new required string Id { get; init; }

    /// <inheritdoc/>
    public required long Revision { get; init; }

    /// <inheritdoc/>
    public required DateTimeOffset CreatedAt { get; init; }

    /// <inheritdoc/>
    public required DateTimeOffset UpdatedAt { get; init; }
}
