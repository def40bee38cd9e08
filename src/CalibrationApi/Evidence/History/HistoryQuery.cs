using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Storage.History;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Evidence.History;

/// <summary>Which lines of the history are wanted.</summary>
internal sealed class HistoryQuery : RecordPageQuery
{
    private static readonly string[] OfTests = ["investigate", "repeat", "keep", "adopt"];
    private static readonly string[] OfChecks = ["passed", "failed"];

    /// <summary>Verdicts that the lines of a list can have.</summary>
    /// <param name="kind">Kind of its records; null for all kinds.</param>
    internal static IReadOnlyList<string> Verdicts(string? kind) =>
        kind switch
        {
            EvidenceKind.CatchTest => OfTests,
            EvidenceKind.ScaleCheck => OfChecks,
            _ => [.. OfTests, .. OfChecks],
        };

    /// <summary>Filters that can match no line of a list, because none of its lines has what they ask for.</summary>
    /// <param name="kind">Kind of its records; null for all kinds.</param>
    internal static IReadOnlyList<string> Unfitting(string? kind) =>
        kind switch
        {
            EvidenceKind.Adoption => ["scale", "plan", "verdict"],
            EvidenceKind.ScaleCheck => ["machine", "meter", "element", "product", "lot", "plan"],
            _ => [],
        };

    /// <summary>Only the machine with this id.</summary>
    [FromQuery(Name = "machine")]
    public string? Machine { get; init; }

    /// <summary>Only this position of a meter.</summary>
    [FromQuery(Name = "meter")]
    public string? Meter { get; init; }

    /// <summary>Only this metering element.</summary>
    [FromQuery(Name = "element")]
    public string? Element { get; init; }

    /// <summary>Only the product with this id.</summary>
    [FromQuery(Name = "product")]
    public string? Product { get; init; }

    /// <summary>Only the lot with this id.</summary>
    [FromQuery(Name = "lot")]
    public string? Lot { get; init; }

    /// <summary>Only the scale with this id.</summary>
    [FromQuery(Name = "scale")]
    public string? Scale { get; init; }

    /// <summary>Only the plan with this id.</summary>
    [FromQuery(Name = "plan")]
    public string? Plan { get; init; }

    /// <summary>Only this verdict: investigate, repeat, keep or adopt for tests, passed or failed for scale checks.</summary>
    [FromQuery(Name = "verdict")]
    public string? Verdict { get; init; }

    /// <summary>What happened at or after this instant, RFC 3339.</summary>
    [FromQuery(Name = "from")]
    public string? From { get; init; }

    /// <summary>What happened before this instant, RFC 3339.</summary>
    [FromQuery(Name = "until")]
    public string? Until { get; init; }

    /// <summary>newest-first (the default) or oldest-first, by the time when it happened.</summary>
    [FromQuery(Name = "order")]
    public string? Order { get; init; }

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

    /// <summary>The filter; a problem when a parameter is wrong.</summary>
    public (HistoryFilter Filter, ProblemResult? Problem) Read(string? kind)
    {
        var sent = ((string Name, string? Value)[])
            [
                ("machine", Machine),
                ("meter", Meter),
                ("element", Element),
                ("product", Product),
                ("lot", Lot),
                ("scale", Scale),
                ("plan", Plan),
                ("verdict", Verdict),
            ];
        var unfitting = Unfitting(kind);
        // Told alone, as any other parameter that a list does not take.
        if (Array.Find(sent, one => one.Value is not null && unfitting.Contains(one.Name)) is { Name: { } name })
            return (new HistoryFilter(), ProblemResult.Unreadable(NotTaken(name)));
        var errors = new List<ProblemError>();
        var filter = new HistoryFilter
        {
            Kind = kind,
            Machine = Machine,
            Meter = Meter,
            Element = Element,
            Product = Product,
            Lot = Lot,
            Scale = Scale,
            Plan = Plan,
            Verdict = QueryWord.Read("verdict", Verdict, Verdicts(kind), errors),
            From = EnteredInstant.Parameter("from", From, errors),
            Until = EnteredInstant.Parameter("until", Until, errors),
            NewestFirst = QueryWord.IsNewestFirst(Order, errors),
        };
        return (filter, errors.Count == 0 ? null : ProblemResult.Invalid(errors));
    }

    private static ProblemError NotTaken(string parameter) =>
        new()
        {
            Parameter = parameter,
            Code = ErrorCodes.MemberUnknown,
            Detail = "No line of this list has that, so nothing would match. Leave it out, or use it with /v1/history.",
        };
}
