using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Batch;
using CalibrationApi.Plumbing.Lists;
using Microsoft.AspNetCore.Mvc.ApiExplorer;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>
/// Describes each batch by the calculation beside it: what a line holds, what it is answered, and how the stream behaves.
/// </summary>
internal sealed class BatchOperations : IDocumentFilter
{
    private const string Behaviour = """
        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,
        with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every other
        line gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. A
        line may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: once
        some megabytes of answers are unread, no more questions are read. Nothing is stored.
        """;

    private const string OfTables = """

        Questions can also come as a table (`text/csv`, RFC 4180, with a header) of one catch in each row. The column `test`
        names the test to which a row belongs; rows of a test stand together. Other columns are named by the members they give,
        `scale.accuracyClass`, those of a catch without more, `gross`. A quantity has its unit in the header, `gross [kg]`, or
        in each row in a column beside it, `gross unit`. What holds for the whole test stands in its first row; later rows leave
        it empty or repeat it. A column `note` and any whose name begins with `x-` are yours: they are given back with the answer, as
        is `meter`. Where the header has tabs, tabs separate the cells; where it has a semicolon, semicolons do, and numbers may
        have decimal commas; otherwise commas separate them and numbers have decimal points. Errors name row and
        column. Answers come as a table too when `Accept` asks for it: one row for each test, the unit of a quantity in a
        column beside it.
        """;

    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        foreach (var (path, batch, description) in Batches(swaggerDoc, context.ApiDescriptions))
        {
            var single = swaggerDoc.Paths[path[..^BatchRoutes.Suffix.Length]].Operations![HttpMethod.Post];
            var table = description.ActionDescriptor.EndpointMetadata.OfType<QuestionTable>().FirstOrDefault();
            batch.Summary = $"{single.Summary!.TrimEnd('.')}, for many questions at once.";
            batch.Description = table is null ? Behaviour : Behaviour + OfTables;
            var (question, answer) = (single.RequestBody!.Content![PageFormats.Json], single.Responses!["200"].Content![PageFormats.Json]);
            var sent = new Dictionary<string, IOpenApiMediaType>
            {
                [PageFormats.Ndjson] = new OpenApiMediaType { Schema = question.Schema, Example = question.Example?.DeepClone() },
            };
            if (table is not null)
            {
                var columns =
                    $"One row for each item of `{table.Items}`. Columns: {QuestionTable.TestColumn}, {QuestionTable.NoteColumn}, {string.Join(", ", table.Columns.Select(column => column.Name))}.";
                sent[PageFormats.Csv] = new OpenApiMediaType { Schema = Text(columns) };
                sent[PageFormats.Tsv] = new OpenApiMediaType { Schema = Text("The same with tabs between the cells.") };
            }

            batch.RequestBody = new OpenApiRequestBody
            {
                Required = true,
                Description = $"Questions, one a line. {single.RequestBody.Description}",
                Content = sent,
            };
            Describe(batch.Responses!, answer);
        }
    }

    private static IEnumerable<(string Path, OpenApiOperation Operation, ApiDescription Description)> Batches(
        OpenApiDocument document,
        IEnumerable<ApiDescription> descriptions
    ) =>
        from path in document.Paths
        where path.Key.EndsWith(BatchRoutes.Suffix, StringComparison.Ordinal)
        let description = descriptions.Single(one => "/" + one.RelativePath == path.Key)
        select (path.Key, path.Value.Operations![HttpMethod.Post], description);

    private static void Describe(OpenApiResponses responses, IOpenApiMediaType answer)
    {
        responses["200"].Description =
            "An answer for each question, in the order of the questions. It is sent before all questions are read, so what goes wrong later shows in its lines or cuts the connection.";
        responses["415"].Description = "The body is of none of the media types listed in Accept-Post, or not in UTF-8.";
        var content = responses["200"].Content!;
        if (content[PageFormats.Ndjson] is OpenApiMediaType lines && answer.Example is { } example)
            lines.Example = new JsonObject { ["line"] = 1, ["result"] = example.DeepClone() };
        if (content.TryGetValue(PageFormats.Csv, out var csv) && csv is OpenApiMediaType rows)
            rows.Schema = Text(
                "One row for each test, after a header: line, test, your own columns, status, errors (codes), detail, and the members of a result. Text that a spreadsheet would take for a formula is led by an apostrophe. Separator, decimal sign and byte-order mark are those of the table that was sent."
            );
    }

    private static OpenApiSchema Text(string description) => new() { Type = JsonSchemaType.String, Description = description };
}
