using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Storage.Adoptions;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Evidence.Adoptions;

/// <summary>Which values in force are wanted.</summary>
internal sealed class ValuesInForceQuery : RecordPageQuery
{
    /// <summary>Only this position.</summary>
    [FromQuery(Name = "meter")]
    public string? Meter { get; init; }

    /// <summary>Only this metering element.</summary>
    [FromQuery(Name = "element")]
    public string? Element { get; init; }

    /// <summary>Only this setting.</summary>
    [FromQuery(Name = "setting")]
    public string? Setting { get; init; }

    /// <summary>Only the product with this id.</summary>
    [FromQuery(Name = "product")]
    public string? Product { get; init; }

    /// <summary>In force at this instant, RFC 3339; default now.</summary>
    [FromQuery(Name = "at")]
    public string? At { get; init; }

    /// <summary>Units of the answer; as-asked keeps what was entered.</summary>
    [FromQuery(Name = "units")]
    public override string? Units { get; init; }

    /// <summary>
    /// Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
    /// </summary>
    [FromQuery(Name = "limit")]
    public override string? Limit { get; init; }

    /// <summary>
    /// What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas.
    /// </summary>
    [FromQuery(Name = "separator")]
    public override string? Separator { get; init; }

    /// <summary>Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default).</summary>
    [FromQuery(Name = "bom")]
    public override string? Bom { get; init; }

    /// <summary>Where to go on: the cursor of the previous page's next link.</summary>
    [FromQuery(Name = "cursor")]
    public override string? Cursor { get; init; }

    internal SeriesFilter Series => new(Meter, Element, Setting, Product);
}
