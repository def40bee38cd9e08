using CalibrationApi.Plumbing.Keeping;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Gives texts whose names say what they are their standard format: instants, days, addresses, ids.</summary>
internal sealed class StandardFormats : IDocumentFilter
{
    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        foreach (var (name, member) in SchemaTree.Of(swaggerDoc).SelectMany(schema => schema.Properties?.AsEnumerable() ?? []))
        {
            if (member is not OpenApiSchema { Type: JsonSchemaType.String, Format: null } text)
                continue;
            if (name == "id" && text.Description?.Contains("UUID", StringComparison.Ordinal) == true)
                text.Pattern ??= RecordId.Pattern;
            else
                text.Format = FormatOf(name);
        }
    }

    private static string? FormatOf(string name) =>
        name.EndsWith("LocalDate", StringComparison.Ordinal) || name == "localDate" ? "date"
        : name.EndsWith("At", StringComparison.Ordinal) || name == "since" ? "date-time"
        : name == "next" ? "uri"
        : null;
}
