using CalibrationApi.Quantities;
using CalibrationApi.Records;
using CalibrationApi.Storage.Records;

namespace CalibrationApi.Lots;

/// <summary>A lot of a product: a delivery, a seed lot, a treatment of its own.</summary>
public class LotRequest : DescribedRequest
{
    /// <summary>Id of the product.</summary>
    public string? Product { get; init; }

    /// <summary>Thousand-kernel mass as sown, treatment included.</summary>
    public MassPerThousandQuantity? ThousandKernelMass { get; init; }

    /// <summary>Germination.</summary>
    public RatioQuantity? Germination { get; init; }

    /// <summary>Purity.</summary>
    public RatioQuantity? Purity { get; init; }

    /// <summary>Bulk density; goes before that of the product.</summary>
    public BulkDensityQuantity? BulkDensity { get; init; }

    /// <summary>Moisture by mass.</summary>
    public RatioQuantity? Moisture { get; init; }

    /// <summary>Treatment, in the owner's words; none when absent.</summary>
    public string? Treatment { get; init; }

    internal override IEnumerable<RecordReference> References() => [new(nameof(Product), RecordKind.Products, Product!)];
}

/// <summary>A lot as stored.</summary>
public sealed class LotAnswer : LotRequest, IRecordAnswer
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
