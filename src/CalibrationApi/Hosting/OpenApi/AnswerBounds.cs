using CalibrationApi.Plumbing.Lists;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>
/// Bounds what is only answered, so that a client can set aside room for it: lists, and texts that say nothing else of their form.
/// </summary>
/// <remarks>What is sent has its bounds from its rules. These are wide: they promise an end, not a usual length.</remarks>
internal sealed class AnswerBounds : IDocumentFilter
{
    private const int MostItems = 10_000;
    private const int LongestText = 4_000;

    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        var sent = SchemaTree.Reach(SchemaTree.Operations(swaggerDoc).SelectMany(SchemaTree.Sent), swaggerDoc);
        foreach (
            var (name, schema) in (swaggerDoc.Components?.Schemas ?? new Dictionary<string, IOpenApiSchema>()).Where(schema =>
                !sent.Contains(schema.Key)
            )
        )
        {
            foreach (var (member, value) in schema.Properties ?? new Dictionary<string, IOpenApiSchema>())
            {
                if (value is not OpenApiSchema concrete)
                    continue;
                if (concrete.Type == JsonSchemaType.Array)
                    concrete.MaxItems ??=
                        member == "items" && name.EndsWith("Page", StringComparison.Ordinal) ? PageQuery.MostItems : MostItems;
                // The items of a list are texts too.
                foreach (var text in new[] { concrete, concrete.Items as OpenApiSchema }.OfType<OpenApiSchema>().Where(IsOpenText))
                    text.MaxLength ??= LongestText;
            }
        }
    }

    private static bool IsOpenText(OpenApiSchema schema) =>
        schema.Type == JsonSchemaType.String && schema.Format is null && schema.Pattern is null && schema.Enum is not { Count: > 0 };
}
