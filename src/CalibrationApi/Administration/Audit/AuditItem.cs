using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Contract;

namespace CalibrationApi.Administration.Audit;

/// <summary>One thing that was done.</summary>
public sealed class AuditItem
{
    /// <summary>When (UTC).</summary>
    public required string At { get; init; }

    /// <summary>
    /// Who: <c>key</c>; <c>local</c>, somebody at the machine of the service while there were no keys; <c>command</c>, the command of the
    /// service.
    /// </summary>
    [KnownWords("key", "local", "command")]
    public required string Actor { get; init; }

    /// <summary>Id of the key; absent for the other actors.</summary>
    public string? Key { get; init; }

    /// <summary>What: the name of the operation, as this contract has it; of a list, that it was exported.</summary>
    public required string Action { get; init; }

    /// <summary>Path of what was made, changed or exported.</summary>
    public string? Target { get; init; }

    /// <summary>Identifier under which the service's operator finds the request in the logs.</summary>
    public string? TraceId { get; init; }
}

/// <summary>How often requests were turned away on a day.</summary>
public sealed class RefusalItem
{
    /// <summary>The day in UTC.</summary>
    public required string Day { get; init; }

    /// <summary>Id of the key that was shown; absent where none is known.</summary>
    public string? Key { get; init; }

    /// <summary>Why: the code of the problem that was answered.</summary>
    [KnownWords(typeof(AccessCodes))]
    public required string Code { get; init; }

    /// <summary>How often.</summary>
    public required long Count { get; init; }

    /// <summary>The last time (UTC).</summary>
    public required string LastAt { get; init; }
}
