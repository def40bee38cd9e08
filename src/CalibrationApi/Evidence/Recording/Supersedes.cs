using CalibrationApi.Plumbing.Members;

namespace CalibrationApi.Evidence.Recording;

/// <summary>A correction: which record was wrong, and why.</summary>
public sealed class Supersedes
{
    /// <summary>Id of the record that was wrong.</summary>
    [Needed, Text(64)]
    public string? Record { get; init; }

    /// <summary>What was wrong with it.</summary>
    [Needed, Text(500)]
    public string? Reason { get; init; }
}
