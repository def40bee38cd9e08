using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Validation;
using CalibrationApi.Storage.Described;

namespace CalibrationApi.Records.Describing;

/// <summary>A request that describes a thing: a machine, a product, a lot, a scale, a container, a plan.</summary>
[ReadOnlyMembers("revision", "createdAt", "updatedAt")]
public abstract class DescribedRequest : IStoredRequest
{
    /// <summary>
    /// The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default:
    /// the service makes one. May be repeated, unchanged, when replacing.
    /// </summary>
    [NewId]
    public string? Id { get; init; }

    /// <summary>What the owner calls it.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? Name { get; init; }

    /// <summary>No longer in use: takes no new evidence, and lists leave it out unless asked. Default false.</summary>
    public bool? Retired { get; init; }

    /// <summary>A remark in the owner's words.</summary>
    [Text(2000)]
    public string? Note { get; init; }

    /// <summary>The records it refers to, each with the member that does.</summary>
    internal virtual IEnumerable<RecordReference> References() => [];
}

/// <summary>A reference from one record to another.</summary>
/// <param name="Member">Path of the member, in C# form such as <c>Meters[0].Product</c>.</param>
/// <param name="Kind">Kind of the record referred to.</param>
/// <param name="Id">Its id as entered.</param>
internal sealed record RecordReference(string Member, RecordKind Kind, string Id);
