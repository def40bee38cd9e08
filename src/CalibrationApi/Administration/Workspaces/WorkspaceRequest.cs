using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Members;

namespace CalibrationApi.Administration.Workspaces;

/// <summary>A workspace: what one farm, dealer or customer keeps, and what only its keys open.</summary>
[ReadOnlyMembers("revision", "createdAt", "updatedAt")]
public sealed class WorkspaceRequest : IStoredRequest
{
    internal const int LongestName = 200;

    /// <summary>
    /// The sender's own id, a UUID of version 7 in lower case, for repeating the request safely. Default: the service makes one. May be
    /// repeated, unchanged, when replacing.
    /// </summary>
    [NewId]
    public string? Id { get; init; }

    /// <summary>What it is called.</summary>
    [Needed, Text(WorkspaceRequest.LongestName)]
    public string? Name { get; init; }

    /// <summary>Its keys open nothing; everything stays stored. Default false.</summary>
    public bool? Retired { get; init; }
}

/// <summary>A workspace as stored.</summary>
public sealed class WorkspaceAnswer
{
    /// <summary>Its id; <c>local</c> for the one that every database begins with.</summary>
    public required string Id { get; init; }

    /// <summary>1 when created, one more with each change.</summary>
    public required long Revision { get; init; }

    /// <summary>Its keys open nothing; everything stays stored.</summary>
    public required bool Retired { get; init; }

    /// <summary>When it was created (UTC).</summary>
    public required string CreatedAt { get; init; }

    /// <summary>When it was changed last (UTC).</summary>
    public required string UpdatedAt { get; init; }

    /// <summary>What it is called.</summary>
    public required string Name { get; init; }
}
