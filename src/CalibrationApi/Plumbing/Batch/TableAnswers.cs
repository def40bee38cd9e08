using System.Buffers;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;

namespace CalibrationApi.Plumbing.Batch;

/// <summary>Answers as rows of a table, one for each question.</summary>
/// <remarks>
/// Columns are the members of an answer, named as in the tables that lists come in. The rows of one table can have different
/// units, so the unit of a quantity stands in a column beside it. A list of things with codes becomes their codes; other lists
/// are left to JSON.
/// </remarks>
internal sealed class TableAnswers : AnswerLines
{
    private const string CodeMember = "code";
    private static readonly string[] Leading = ["line", QuestionTable.TestColumn];
    private static readonly string[] Outcome = ["status", "errors", "detail"];

    private readonly TableFormat format;
    private readonly IReadOnlyList<string[]> columns;
    private readonly ArrayBufferWriter<byte> head = new();

    private readonly int given;

    private TableAnswers(IReadOnlyList<string[]> columns, TableFormat format, IReadOnlyList<string> given)
    {
        this.given = given.Count;
        this.columns = columns;
        this.format = format;
        if (format.HasMark)
            head.Write("\uFEFF"u8);
        CsvTable.WriteRow(head, [.. Leading, .. given.Select(CsvTable.Harmless), .. Outcome, .. columns.Select(Name)], format.Separator);
    }

    public override string ContentType => $"{PageFormats.Csv}; charset=utf-8; header=present";

    public override ReadOnlyMemory<byte> Head => head.WrittenMemory;

    /// <param name="format">How the table is written.</param>
    /// <param name="given">Names of the columns of the sender that are given back.</param>
    public static TableAnswers Of<TAnswer>(TableFormat format, IReadOnlyList<string> given) =>
        new([.. Paths(TypeInfo(typeof(TAnswer)), [])], format, given);

    public override void Write<TAnswer>(LineChunk chunk, in LineChunk.Line line, JsonAnswer<TAnswer> result)
    {
        var json = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(json, JsonAnswer.Writing))
            result.WriteTo(writer);
        using var document = JsonDocument.Parse(json.WrittenMemory);
        Write(chunk, line, StatusCodes.Status200OK, "", "", columns.Select(path => Cell(document.RootElement, path)));
    }

    public override void Write(LineChunk chunk, in LineChunk.Line line, Problem problem) =>
        Write(
            chunk,
            line,
            problem.Status,
            string.Join(' ', problem.Errors.Select(error => error.Code).Distinct()),
            string.Join(' ', problem.Errors.Select(Sentence)),
            columns.Select(_ => "")
        );

    private void Write(LineChunk chunk, in LineChunk.Line line, int status, string errors, string detail, IEnumerable<string> cells) =>
        CsvTable.WriteRow(
            chunk.Output,
            [
                line.Number.ToString(CultureInfo.InvariantCulture),
                CsvTable.Harmless(line.Rows?.Test ?? ""),
                .. Given(line),
                status.ToString(CultureInfo.InvariantCulture),
                errors,
                CsvTable.Harmless(detail),
                .. cells,
            ],
            format.Separator
        );

    private IEnumerable<string> Given(in LineChunk.Line line) =>
        line.Rows is { Given.Count: > 0 } rows ? rows.Given.Select(CsvTable.Harmless) : Enumerable.Repeat("", given);

    private static string Sentence(ProblemError error) =>
        (error.Row, error.Column) switch
        {
            ({ } row, { } column) => string.Create(CultureInfo.InvariantCulture, $"Row {row}, {column}: {error.Detail}"),
            ({ } row, null) => string.Create(CultureInfo.InvariantCulture, $"Row {row}: {error.Detail}"),
            _ => error.Pointer is { } pointer ? $"{pointer}: {error.Detail}" : error.Detail,
        };

    private static string Name(string[] path) =>
        path[^1] switch
        {
            "value" => string.Join('.', path[..^1]),
            "unit" when path.Length > 1 => $"{string.Join('.', path[..^1])} unit",
            CodeMember => string.Join('.', path[..^1]),
            _ => string.Join('.', path),
        };

    private string Cell(JsonElement answer, string[] path)
    {
        var here = answer;
        foreach (var step in path)
        {
            if (here.ValueKind == JsonValueKind.Array)
                return string.Join(' ', here.EnumerateArray().Select(item => item.GetProperty(CodeMember).GetString()));
            if (!here.TryGetProperty(step, out here))
                return "";
        }

        return here.ValueKind switch
        {
            JsonValueKind.String => CsvTable.Harmless(here.GetString()!),
            JsonValueKind.Number => here.GetRawText().Replace('.', format.DecimalSign),
            _ => here.GetRawText(),
        };
    }

    private static IEnumerable<string[]> Paths(JsonTypeInfo type, string[] path) =>
        type
            .Properties.Where(member => !member.PropertyType.IsDefined(typeof(NotInTablesAttribute), inherit: true))
            .SelectMany(member =>
            {
                string[] here = [.. path, member.Name];
                var inner = TypeInfo(member.PropertyType);
                return inner.Kind switch
                {
                    JsonTypeInfoKind.Object => Paths(inner, here),
                    JsonTypeInfoKind.Enumerable => TypeInfo(inner.ElementType!).Properties.Any(one => one.Name == CodeMember)
                        ?
                        [
                            [.. here, CodeMember],
                        ]
                        : [],
                    _ => (IEnumerable<string[]>)[here],
                };
            });

    private static JsonTypeInfo TypeInfo(Type type) => JsonSettings.Contract.GetTypeInfo(type);
}
