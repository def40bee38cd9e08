using CalibrationApi.Plumbing.Lists;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Says what a page looks like when it is no JSON: rows of CSV, or one record a line.</summary>
internal sealed class PageMedia : IOperationFilter
{
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        if (operation.Responses?.GetValueOrDefault("200")?.Content is not { } content)
            return;
        if (content.TryGetValue(PageFormats.Csv, out var csv) && csv is OpenApiMediaType rows)
        {
            rows.Schema = new OpenApiSchema
            {
                Type = JsonSchemaType.String,
                Description =
                    "RFC 4180 with a header row. The columns are the same on every page: one for each value that a record can have, `outer.inner` for a member within a member. With `units=metric` or `units=us` the unit of a quantity stands in the header in brackets, otherwise in a column beside it. What a record has several of stands in one cell, separated by semicolons. Text that a spreadsheet would take for a formula is led by an apostrophe.",
            };
        }

        if (
            content.TryGetValue(PageFormats.Ndjson, out var ndjson)
            && ndjson is OpenApiMediaType { Schema: OpenApiSchemaReference page } lines
            && context.SchemaRepository.Schemas[page.Reference.Id!].Properties?.TryGetValue("items", out var items) == true
            && items.Items is OpenApiSchemaReference { Reference.Id: { } item }
        )
        {
            lines.Schema = new OpenApiSchemaReference(item, context.Document) { Description = "One line; every line is a record." };
        }
    }
}
