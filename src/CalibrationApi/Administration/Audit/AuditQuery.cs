using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Storage.Audit;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Administration.Audit;

/// <summary>Which entries of the audit are wanted.</summary>
internal sealed class AuditQuery : PageQuery
{
    /// <summary>Only what was done with the key with this id.</summary>
    [FromQuery(Name = "key")]
    public string? Key { get; init; }

    /// <summary>Only this operation, by its name in this contract.</summary>
    [FromQuery(Name = "action")]
    public string? Action { get; init; }

    /// <summary>What was done at or after this instant, RFC 3339.</summary>
    [FromQuery(Name = "from")]
    public string? From { get; init; }

    /// <summary>What was done before this instant, RFC 3339.</summary>
    [FromQuery(Name = "until")]
    public string? Until { get; init; }

    /// <summary>newest-first (the default) or oldest-first.</summary>
    [FromQuery(Name = "order")]
    public string? Order { get; init; }

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

    /// <summary>The filter; a problem when a parameter is wrong.</summary>
    public (AuditFilter Filter, ProblemResult? Problem) Read()
    {
        var errors = new List<ProblemError>();
        var filter = new AuditFilter
        {
            Key = Key,
            Action = Action,
            From = EnteredInstant.Parameter("from", From, errors),
            Until = EnteredInstant.Parameter("until", Until, errors),
            NewestFirst = QueryWord.IsNewestFirst(Order, errors),
        };
        return (filter, errors.Count == 0 ? null : ProblemResult.Invalid(errors));
    }
}
