using System.Globalization;
using CalibrationApi.Plumbing.Http;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Plumbing.Lists;

/// <summary>Which part of a list is wanted. Bound as text, so that a slip gets a sentence of ours.</summary>
/// <remarks>
/// A class of parameters declares all of them itself: the binding that is written at build time does not see those of a base class.
/// </remarks>
internal class PageQuery
{
    /// <summary>Most items on one page of JSON or CSV.</summary>
    public const int MostItems = 1000;

    private const int UsualItems = 100;
    private const string Everything = "all";

    /// <summary>Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.</summary>
    [FromQuery(Name = "limit")]
    public virtual string? Limit { get; init; }

    /// <summary>Where to go on: the cursor of the previous page's next link.</summary>
    [FromQuery(Name = "cursor")]
    public virtual string? Cursor { get; init; }

    /// <summary>The number of items; a problem when the text is no such number.</summary>
    public (int Items, ProblemResult? Problem) ReadLimit(PageFormat format)
    {
        if (Limit is null)
            return (UsualItems, null);
        if (Limit == Everything && format == PageFormat.Ndjson)
            return (int.MaxValue - 1, null);
        return int.TryParse(Limit, NumberStyles.None, CultureInfo.InvariantCulture, out var items) && items is >= 1 and <= MostItems
            ? (items, null)
            : (
                0,
                ProblemResult.Invalid([
                    new ProblemError
                    {
                        Parameter = "limit",
                        Code = ErrorCodes.NumberOutOfRange,
                        Detail = $"Give a whole number from 1 to {MostItems}; '{Everything}' goes with {PageFormats.Ndjson} only.",
                    },
                ])
            );
    }
}

/// <summary>Which part of a list of records is wanted, and in which units.</summary>
internal abstract class RecordPageQuery : PageQuery
{
    /// <summary>Units of the answer; as-asked keeps what was entered.</summary>
    [FromQuery(Name = "units")]
    public virtual string? Units { get; init; }
}

/// <summary>Which described records are wanted.</summary>
internal sealed class RecordQuery : RecordPageQuery
{
    /// <summary>Retired records too: true or false. Default false.</summary>
    [FromQuery(Name = "includeRetired")]
    public string? IncludeRetired { get; init; }

    /// <summary>Units of the answer; as-asked keeps what was entered.</summary>
    [FromQuery(Name = "units")]
    public override string? Units { get; init; }

    /// <summary>Items on a page, 1 to 1000, or all for a stream of NDJSON without pages. Default 100.</summary>
    [FromQuery(Name = "limit")]
    public override string? Limit { get; init; }

    /// <summary>Where to go on: the cursor of the previous page's next link.</summary>
    [FromQuery(Name = "cursor")]
    public override string? Cursor { get; init; }

    public static ProblemError WrongIncludeRetired() =>
        new()
        {
            Parameter = "includeRetired",
            Code = ErrorCodes.WordUnknown,
            Detail = "Use true or false.",
        };
}
