using CalibrationApi.CatchTests;
using CalibrationApi.Quantities;
using CalibrationApi.Storing;

namespace CalibrationApi.ScaleChecks;

/// <summary>A check of a scale against known masses.</summary>
public sealed class ScaleCheckRequest : IStoredRequest
{
    /// <summary>The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default: the service makes one.</summary>
    public string? Id { get; init; }

    /// <summary>Id of the scale.</summary>
    public string? Scale { get; init; }

    /// <summary>The readings, each of one known mass.</summary>
    public IReadOnlyList<KnownMassReadingOfCheck?>? Readings { get; init; }

    /// <summary>When the check was made, RFC 3339 with offset.</summary>
    public string? OccurredAt { get; init; }

    /// <summary>Who made it.</summary>
    public string? RecordedBy { get; init; }

    /// <summary>A remark, for example which masses were used.</summary>
    public string? Note { get; init; }

    /// <summary>The wrong check that this one takes the place of.</summary>
    public Supersedes? Supersedes { get; init; }
}

/// <summary>One reading of a known mass.</summary>
public sealed class KnownMassReadingOfCheck
{
    /// <summary>The known mass.</summary>
    public MassQuantity? Known { get; init; }

    /// <summary>What the scale showed.</summary>
    public MassQuantity? Indicated { get; init; }

    /// <summary>Standard uncertainty of the known mass. Default 0: judgement, known masses are far better than the scale.</summary>
    public MassQuantity? KnownUncertainty { get; init; }
}
