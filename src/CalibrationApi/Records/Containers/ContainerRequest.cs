using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Describing;

namespace CalibrationApi.Records.Containers;

/// <summary>A container for catches.</summary>
public class ContainerRequest : DescribedRequest
{
    /// <summary>Volume.</summary>
    [Measured(0, 10, "m3", ExcludesLeast = true)]
    public VolumeQuantity? Volume { get; init; }

    /// <summary>Mass of the empty container.</summary>
    [Needed, Measured(0, 10, "t")]
    public MassQuantity? Tare { get; init; }

    /// <summary>Share of the volume that may be filled.</summary>
    [Default(typeof(CatchPlanDefaults), nameof(CatchPlanDefaults.Fill))]
    [Measured(1, 100, "%")]
    public RatioQuantity? Fill { get; init; }
}

/// <summary>A container as stored.</summary>
public sealed class ContainerAnswer : ContainerRequest, IRecordAnswer
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
