using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Lists;

/// <summary>
/// Answers with a page of a list in the format asked for; the next page is in the Link header (RFC 8288) and in JSON also in the body.
/// </summary>
/// <param name="format">Format of the page.</param>
/// <param name="items">Its items, read while they are written; the last may be one too many, which says that there is a next page.</param>
/// <param name="most">Items that belong on the page.</param>
/// <param name="next">Cursor after an item.</param>
/// <param name="table">The table that it is written as.</param>
/// <param name="owned">Released when the page is written.</param>
internal sealed class PageResult(
    PageFormat format,
    IEnumerable<(JsonObject Item, string Position)> items,
    int most,
    Func<string, string> next,
    WrittenTable table,
    IDisposable owned
) : IResult, IDisposable
{
    public const string CursorParameter = "cursor";

    private const int MostUnsent = 32 * 1024;
    private const string LinesType = "application/x-ndjson; charset=utf-8";

    /// <summary>The parameter of the address that takes a cursor.</summary>
    public string Parameter { private get; init; } = CursorParameter;

    /// <summary>
    /// Makes the cursor after the last page, from the position of its last item where it has any, for a list that never ends; null for one
    /// that does.
    /// </summary>
    public Func<string?, string>? End { private get; init; }

    /// <summary>It goes out as a file and not as an answer to a program.</summary>
    public bool IsExport => format != PageFormat.Json;

    /// <summary>Gives up a page that is not written.</summary>
    public void Dispose() => owned.Dispose();

    public async Task ExecuteAsync(HttpContext httpContext)
    {
        using var release = owned;
        var response = httpContext.Response;
        response.Headers.Vary = "Accept";
        response.Headers.CacheControl = "private, no-cache";
        if (format == PageFormat.Csv)
        {
            response.ContentType = "text/csv; charset=utf-8; header=present";
            response.Headers.ContentDisposition = $"attachment; filename=\"{FileName(httpContext)}\"";
        }
        else if (format == PageFormat.Ndjson)
            response.ContentType = LinesType;
        if (format != PageFormat.Json && most > PageQuery.MostItems)
        {
            await (format == PageFormat.Csv ? StreamTableAsync(httpContext) : StreamAsync(httpContext));
            return;
        }

        var page = new List<JsonObject>(Math.Min(most, 128));
        string? last = null,
            address = null;
        foreach (var (item, position) in items)
        {
            if (page.Count == most)
            {
                address = Address(httpContext, last!);
                break;
            }

            page.Add(item);
            last = position;
        }

        if (address is not null)
            response.Headers.Link = $"<{address}>; rel=\"next\"";
        byte[] body;
        if (format == PageFormat.Csv)
        {
            var rows = new ArrayBufferWriter<byte>();
            WriteHead(rows);
            foreach (var item in page)
                WriteRow(rows, item);
            body = rows.WrittenSpan.ToArray();
        }
        else if (format == PageFormat.Ndjson)
            body = Encoding.UTF8.GetBytes(string.Concat(page.Select(item => item.ToJsonString(JsonSettings.Writing) + "\n")));
        else
        {
            response.ContentType = "application/json; charset=utf-8";
            var document = new JsonObject { ["items"] = new JsonArray([.. page]) };
            if (address is not null)
                document["next"] = address;
            if (End is not null)
                document["after"] = address is null ? End(last) : next(last!);
            body = JsonSerializer.SerializeToUtf8Bytes(document, JsonSettings.Writing);
        }

        response.ContentLength = body.Length;
        await response.Body.WriteAsync(body, httpContext.RequestAborted);
    }

    // Lines go out as they are read, so that the whole list never stands in memory.
    private async Task StreamAsync(HttpContext context)
    {
        foreach (var (item, _) in items)
        {
            await JsonSerializer.SerializeAsync(context.Response.Body, item, JsonSettings.Writing, context.RequestAborted);
            await context.Response.Body.WriteAsync("\n"u8.ToArray(), context.RequestAborted);
        }
    }

    private async Task StreamTableAsync(HttpContext context)
    {
        var writer = context.Response.BodyWriter;
        WriteHead(writer);
        foreach (var (item, _) in items)
        {
            WriteRow(writer, item);
            if (writer.UnflushedBytes >= MostUnsent)
                await writer.FlushAsync(context.RequestAborted);
        }

        await writer.FlushAsync(context.RequestAborted);
    }

    private void WriteHead(IBufferWriter<byte> rows)
    {
        if (table.Style.HasMark)
            rows.Write("\uFEFF"u8);
        CsvTable.WriteRow(rows, table.Columns.Select(column => column.Name), table.Style.Separator);
    }

    private void WriteRow(IBufferWriter<byte> rows, JsonObject item) =>
        CsvTable.WriteRow(rows, table.Columns.Select(column => column.Cell(item, table.Style)), table.Style.Separator);

    // What the list is called in its address, and the day on which it was read.
    private static string FileName(HttpContext context)
    {
        var list = string.Join('-', context.Request.Path.Value!.Split('/', StringSplitOptions.RemoveEmptyEntries).Skip(1));
        var today = context.RequestServices.GetRequiredService<TimeProvider>().GetUtcNow();
        return string.Create(CultureInfo.InvariantCulture, $"{list}-{today:yyyy-MM-dd}.csv");
    }

    private string Address(HttpContext context, string position)
    {
        var request = context.Request;
        var query = QueryString.Create([
            .. request
                .Query.Where(pair => pair.Key != Parameter)
                .SelectMany(pair => pair.Value.Select(value => KeyValuePair.Create(pair.Key, value))),
        ]);
        return $"{request.Scheme}://{request.Host}{request.PathBase}{request.Path}{query.Add(Parameter, next(position))}";
    }
}
