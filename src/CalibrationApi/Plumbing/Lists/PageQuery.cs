using System.Globalization;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;
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
    private const string SeparatorParameter = "separator";
    private const string MarkParameter = "bom";

    /// <summary>The words of the parameter separator; the first is the usual one.</summary>
    public static readonly string[] Separators = ["comma", "semicolon"];

    /// <summary>The words of the parameter bom; the last is the usual one.</summary>
    public static readonly string[] YesOrNo = ["yes", "no"];

    /// <summary>
    /// Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
    /// </summary>
    [FromQuery(Name = "limit")]
    public virtual string? Limit { get; init; }

    /// <summary>
    /// What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas.
    /// </summary>
    [FromQuery(Name = "separator")]
    public virtual string? Separator { get; init; }

    /// <summary>Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default).</summary>
    [FromQuery(Name = "bom")]
    public virtual string? Bom { get; init; }

    /// <summary>Where to go on: the cursor of the previous page's next link.</summary>
    [FromQuery(Name = "cursor")]
    public virtual string? Cursor { get; init; }

    /// <summary>The number of items; a problem when the text is no such number.</summary>
    public (int Items, ProblemResult? Problem) ReadLimit(PageFormat format)
    {
        if (format != PageFormat.Json && (Limit == Everything || (Limit is null && format == PageFormat.Csv)))
            return (int.MaxValue - 1, null);
        if (Limit is null)
            return (UsualItems, null);
        return int.TryParse(Limit, NumberStyles.None, CultureInfo.InvariantCulture, out var items) && items is >= 1 and <= MostItems
            ? (items, null)
            : (
                0,
                ProblemResult.Invalid([
                    new ProblemError
                    {
                        Parameter = "limit",
                        Code = ErrorCodes.NumberOutOfRange,
                        Detail =
                            $"Give a whole number from 1 to {MostItems}; '{Everything}' goes with {PageFormats.Csv} and {PageFormats.Ndjson} only.",
                    },
                ])
            );
    }

    /// <summary>The table that the list comes as, if it does; a problem when a word about it cannot be meant.</summary>
    public (WrittenTable Table, ProblemResult? Problem) ReadTable(PageFormat format, ListTable table)
    {
        var errors = new List<ProblemError>();
        var separator = QueryWord.Read(SeparatorParameter, Separator, Separators, errors);
        var mark = QueryWord.Read(MarkParameter, Bom, YesOrNo, errors);
        if (format != PageFormat.Csv)
            errors.AddRange([
                .. from word in ((string Name, string? Word)[])[(SeparatorParameter, separator), (MarkParameter, mark)]
                where word.Word is not null && errors.TrueForAll(error => error.Parameter != word.Name)
                select OfTablesOnly(word.Name),
            ]);
        var style = separator == Separators[1] ? TableStyle.Semicolons : TableStyle.Commas;
        return (
            new WrittenTable(format == PageFormat.Csv ? table.Columns(Display()) : [], style with { HasMark = mark == YesOrNo[0] }),
            errors.Count == 0 ? null : ProblemResult.Invalid(errors)
        );
    }

    /// <summary>The units that all quantities come in; null where each has its own.</summary>
    protected virtual DisplayUnits? Display() => null;

    private static ProblemError OfTablesOnly(string parameter) =>
        new()
        {
            Parameter = parameter,
            Code = ErrorCodes.WordUnknown,
            Detail = $"This is about tables, and no table was asked for. Leave it out, or send Accept: {PageFormats.Csv}.",
        };
}

/// <summary>Which part of a list of records is wanted, and in which units.</summary>
internal abstract class RecordPageQuery : PageQuery
{
    /// <summary>Units of the answer; as-asked keeps what was entered.</summary>
    [FromQuery(Name = "units")]
    public virtual string? Units { get; init; }

    protected sealed override DisplayUnits? Display() => QuantityConversion.For(Units);
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

    public static ProblemError WrongIncludeRetired() =>
        new()
        {
            Parameter = "includeRetired",
            Code = ErrorCodes.WordUnknown,
            Detail = "Use true or false.",
        };
}
