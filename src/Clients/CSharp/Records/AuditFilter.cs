using CalibrationApi.Client.Http;
using Microsoft.Kiota.Abstractions;

namespace CalibrationApi.Client;

/// <summary>What to list of the audit, and how. What is not set does not narrow.</summary>
public sealed record AuditFilter
{
    /// <summary>Id of the key that did it.</summary>
    public string? Key { get; init; }

    /// <summary>The operation, by its name in the contract, for example <c>recordCatchTest</c>.</summary>
    public string? Action { get; init; }

    /// <summary>The earliest time.</summary>
    public DateTimeOffset? From { get; init; }

    /// <summary>The time before which it happened.</summary>
    public DateTimeOffset? Until { get; init; }

    /// <summary>The oldest first. Default the newest first.</summary>
    public bool OldestFirst { get; init; }

    /// <summary>How many to fetch at once, 1 to 1000. Default 100.</summary>
    public int? PageSize { get; init; }

    internal RequestInformation Apply(RequestInformation request) =>
        request
            .Where("key", Key)
            .Where("action", Action)
            .Where("from", From)
            .Where("until", Until)
            .OldestFirst(OldestFirst)
            .Paged(PageSize);
}
