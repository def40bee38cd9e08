using CalibrationApi.Client.Http;
using Microsoft.Kiota.Abstractions;

namespace CalibrationApi.Client;

/// <summary>Which changes are wanted. What is not set does not narrow.</summary>
public sealed record ChangeFilter
{
    /// <summary>Kind of the record, for example <c>catch-test</c>.</summary>
    public string? Kind { get; init; }

    /// <summary>Id of the machine that it is about, or was until the change.</summary>
    public string? Machine { get; init; }

    /// <summary>How many to fetch at once, 1 to 1000. Default 100.</summary>
    public int? PageSize { get; init; }

    internal RequestInformation Apply(RequestInformation request) => request.Where("kind", Kind).Where("machine", Machine).Paged(PageSize);
}
