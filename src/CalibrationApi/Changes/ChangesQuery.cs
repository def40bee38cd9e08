using System.Globalization;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Storage.Changes;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Changes;

/// <summary>Which changes are wanted.</summary>
internal sealed class ChangesQuery : PageQuery
{
    /// <summary>The parameter that takes a cursor.</summary>
    public const string AfterParameter = "after";

    /// <summary>Texts of a time to wait that are taken.</summary>
    public const string WaitPattern = "^([0-9]|[12][0-9]|30)s$";

    /// <summary>Kinds of records that changes are of.</summary>
    public static readonly string[] Kinds =
    [
        "machine",
        "product",
        "lot",
        "scale",
        "container",
        "plan",
        "catch-test",
        "adoption",
        "scale-check",
    ];

    // Below what proxies and clients usually grant.
    private const int LongestWaitSeconds = 30;

    /// <summary>
    /// What was stored after this cursor: the after of a page, or the cursor of a change. It stays good for ever. From the first change
    /// without it.
    /// </summary>
    [FromQuery(Name = AfterParameter)]
    public override string? Cursor { get; init; }

    /// <summary>
    /// While there is nothing to list, wait this long for something to be stored: 0s (the default) to 30s. The answer can come earlier,
    /// also without a change.
    /// </summary>
    [FromQuery(Name = "wait")]
    public string? Wait { get; init; }

    /// <summary>Only records of this kind.</summary>
    [FromQuery(Name = "kind")]
    public string? Kind { get; init; }

    /// <summary>Only what is about the machine with this id, or was until the change.</summary>
    [FromQuery(Name = "machine")]
    public string? Machine { get; init; }

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

    /// <summary>The filter and the time to wait; a problem when a parameter is wrong.</summary>
    public (ChangeFilter Filter, TimeSpan Wait, ProblemResult? Problem) Read()
    {
        var errors = new List<ProblemError>();
        var filter = new ChangeFilter { Kind = QueryWord.Read("kind", Kind, Kinds, errors), Machine = Machine };
        var wait = ReadWait(errors);
        return (filter, wait, errors.Count == 0 ? null : ProblemResult.Invalid(errors));
    }

    private TimeSpan ReadWait(List<ProblemError> errors)
    {
        if (Wait is null)
            return TimeSpan.Zero;
        if (
            Wait is [.. var number, 's']
            && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var seconds)
            && seconds <= LongestWaitSeconds
        )
            return TimeSpan.FromSeconds(seconds);
        errors.Add(
            new ProblemError
            {
                Parameter = "wait",
                Code = ErrorCodes.NumberOutOfRange,
                Detail = $"Give whole seconds from 0s to {LongestWaitSeconds}s, for example 20s. To wait longer, ask again.",
            }
        );
        return TimeSpan.Zero;
    }
}
