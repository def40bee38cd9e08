using CalibrationApi.Evidence.Recording;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Evidence.ScaleChecks;

/// <summary>A check of a scale against known masses.</summary>
[CheckedBy(typeof(ScaleCheckRequestValidator))]
public sealed class ScaleCheckRequest : IEvidenceRequest
{
    /// <summary>
    /// The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default:
    /// the service makes one.
    /// </summary>
    [NewId]
    public string? Id { get; init; }

    /// <summary>Id of the scale.</summary>
    [Needed, Text(64)]
    public string? Scale { get; init; }

    /// <summary>The readings, each of one known mass.</summary>
    [Needed, Items(1, 100)]
    public IReadOnlyList<KnownMassReadingOfCheck?>? Readings { get; init; }

    /// <summary>When the check was made, RFC 3339 with offset.</summary>
    [Needed, InstantPast]
    public string? OccurredAt { get; init; }

    /// <summary>Who made it.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? RecordedBy { get; init; }

    /// <summary>A remark, for example which masses were used.</summary>
    [Text(2000)]
    public string? Note { get; init; }

    /// <summary>The wrong check that this one takes the place of.</summary>
    public Supersedes? Supersedes { get; init; }
}

/// <summary>One reading of a known mass.</summary>
public sealed class KnownMassReadingOfCheck
{
    /// <summary>The known mass.</summary>
    [Needed, Measured]
    public MassQuantity? Known { get; init; }

    /// <summary>What the scale showed.</summary>
    [Needed, Measured(0, 1000, "t")]
    public MassQuantity? Indicated { get; init; }

    /// <summary>Standard uncertainty of the known mass. Default 0: judgement, known masses are far better than the scale.</summary>
    [Measured(0, 1000, "kg")]
    public MassQuantity? KnownUncertainty { get; init; }
}
