using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Describing;
using CalibrationApi.Storage.Described;

namespace CalibrationApi.Records.Lots;

/// <summary>A lot of a product: a delivery, a seed lot, a treatment of its own.</summary>
public class LotRequest : DescribedRequest
{
    /// <summary>Id of the product.</summary>
    [Needed, Text(64)]
    public string? Product { get; init; }

    /// <summary>Thousand-kernel mass as sown, treatment included.</summary>
    [Measured]
    public MassPerThousandQuantity? ThousandKernelMass { get; init; }

    /// <summary>Germination.</summary>
    [Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? Germination { get; init; }

    /// <summary>Purity.</summary>
    [Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? Purity { get; init; }

    /// <summary>Bulk density; goes before that of the product.</summary>
    [Measured]
    public BulkDensityQuantity? BulkDensity { get; init; }

    /// <summary>Moisture by mass.</summary>
    [Measured]
    public RatioQuantity? Moisture { get; init; }

    /// <summary>Treatment, in the owner's words; none when absent.</summary>
    [Text(500)]
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
