using System.Buffers;
using System.Globalization;
using System.IO.Pipelines;
using System.Text;
using CalibrationApi.Plumbing.Http;
using CsvHelper;
using CsvHelper.Configuration;

namespace CalibrationApi.Plumbing.Batch;

/// <summary>
/// Questions as rows of a table (RFC 4180). Neighbouring rows with the same name in the column <c>test</c> are one question.
/// </summary>
internal sealed class TableQuestions : LineReader, IDisposable
{
    // Their names are remembered, so that rows that stand apart are noticed.
    private const int MostTests = 100_000;

    private readonly HashSet<string> ended = new(StringComparer.Ordinal);
    private readonly CsvParser parser;
    private readonly RowStream rows;
    private readonly ProblemResult tooLong;
    private TableHeader header = null!;
    private TableTest? open;
    private long row;
    private bool isBroken;
    private bool isAtEnd;

    private TableQuestions(Stream body, TableFormat format, int mostBytes, CancellationToken stop)
    {
        Format = format;
        tooLong = TooLong(mostBytes);
        rows = new RowStream(body, mostBytes, stop);
        parser = new CsvParser(
            new StreamReader(rows, Encoding.UTF8),
            new CsvConfiguration(CultureInfo.InvariantCulture)
            {
                Delimiter = format.Separator.ToString(),
                IgnoreBlankLines = false,
                BadDataFound = _ => isBroken = true,
            }
        );
    }

    public TableFormat Format { get; }

    /// <summary>Names of the columns that are given back.</summary>
    public IReadOnlyList<string> Given => [.. header.Given.Select(column => column.Name)];

    /// <summary>Reads the header; a table with a wrong one is refused as a whole.</summary>
    /// <param name="context">The request.</param>
    /// <param name="table">Its columns.</param>
    /// <param name="mostBytes">Longest row, in bytes.</param>
    public static async Task<(TableQuestions? Questions, ProblemResult? Problem)> OpenAsync(
        HttpContext context,
        QuestionTable table,
        int mostBytes
    )
    {
        var (body, stop) = (context.Request.BodyReader, context.RequestAborted);
        var questions = new TableQuestions(
            body.AsStream(leaveOpen: true),
            TableFormat.Of(await FirstLineAsync(body, mostBytes, stop)),
            mostBytes,
            stop
        );
        context.Response.RegisterForDispose(questions);
        try
        {
            var cells = await questions.NextAsync();
            if (cells is null)
                return (
                    null,
                    ProblemResult.Invalid([
                        new ProblemError
                        {
                            Row = 1,
                            Code = ErrorCodes.MemberMissing,
                            Detail = "The table is empty. Send a header row and a row for each catch.",
                        },
                    ])
                );
            var (header, problem) = TableHeader.Read(cells, table);
            questions.header = header;
            return (questions, problem);
        }
        catch (RowTooLongException)
        {
            return (null, questions.tooLong);
        }
    }

    public override async ValueTask<bool> FillAsync(LineChunk chunk, CancellationToken stop)
    {
        while (!chunk.IsFull && !isAtEnd)
        {
            string[]? cells;
            try
            {
                cells = await NextAsync();
            }
            catch (RowTooLongException)
            {
                End(chunk);
                chunk.Add(row + 1, tooLong, new TableRows(null, header, [row + 1], []));
                break;
            }

            if (cells is null)
                End(chunk);
            else if (!Array.TrueForAll(cells, string.IsNullOrWhiteSpace))
                Add(chunk, cells);
        }

        return chunk.Lines.Count > 0;
    }

    public void Dispose()
    {
        parser.Dispose();
        rows.Dispose();
    }

    private static ProblemResult TooLong(int mostBytes) =>
        ProblemResult.Of(
            StatusCodes.Status413PayloadTooLarge,
            ErrorCodes.LineTooLong,
            $"This row is longer than {mostBytes / 1024} KiB, so the rest of the table was not read. Look for a double quote that is not closed."
        );

    private void Add(LineChunk chunk, string[] cells)
    {
        var name = header.TestAt < cells.Length ? cells[header.TestAt].Trim() : "";
        if (name.Length == 0)
        {
            // Nobody knows whether the row belongs to the test before it, so that one cannot be answered either.
            Begin(chunk, open?.Name, keep: open is not null);
            open!.Fail(
                row,
                QuestionTable.TestColumn,
                ErrorCodes.MemberMissing,
                "This row names no test. Add the name of the test to which it belongs."
            );
        }
        else if (open?.Name != name)
        {
            Begin(chunk, name, keep: false);
            if (ended.Contains(name))
                open!.Fail(
                    row,
                    QuestionTable.TestColumn,
                    ErrorCodes.RowsApart,
                    $"The test '{Excerpt.Of(name, 60)}' already ended further up, and its answer leaves these rows out. Sort the rows by test, or give each test a name of its own."
                );
            else if (ended.Count >= MostTests)
                open!.Fail(
                    row,
                    null,
                    ErrorCodes.TooMany,
                    string.Create(CultureInfo.InvariantCulture, $"No more than {MostTests} tests are taken from one table. Split it.")
                );
        }

        open!.Add(row, cells);
        if (isBroken)
            open.Fail(
                row,
                null,
                ErrorCodes.TextWrong,
                "A double quote stands in the middle of a cell. Put the whole cell in double quotes and write each quote within it twice."
            );
    }

    private void Begin(LineChunk chunk, string? name, bool keep)
    {
        if (keep)
            return;
        Finish(chunk);
        open = new TableTest(name, header, Format);
    }

    private void Finish(LineChunk chunk)
    {
        open?.AddTo(chunk);
        if (open?.Name is { } name && ended.Count < MostTests)
            ended.Add(name);
        open = null;
    }

    private void End(LineChunk chunk)
    {
        isAtEnd = true;
        Finish(chunk);
    }

    private async Task<string[]?> NextAsync()
    {
        isBroken = false;
        if (!await parser.ReadAsync())
            return null;
        // Cells are read from the buffer of the parser only now.
        var cells = parser.Record;
        rows.RowEnds();
        row++;
        return cells ?? [];
    }

    // The bytes stay where they are.
    private static async Task<string> FirstLineAsync(PipeReader body, int mostBytes, CancellationToken stop)
    {
        while (true)
        {
            var read = await body.ReadAsync(stop);
            var buffer = read.Buffer;
            var end = buffer.PositionOf((byte)'\n');
            if (end is not null || read.IsCompleted || buffer.Length > mostBytes)
            {
                var line = Encoding.UTF8.GetString(buffer.Slice(0, end ?? buffer.End));
                body.AdvanceTo(buffer.Start);
                return line;
            }

            body.AdvanceTo(buffer.Start, buffer.End);
        }
    }
}
