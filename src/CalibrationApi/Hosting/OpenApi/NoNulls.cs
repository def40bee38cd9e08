using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Says that nulls are never sent: what is not there is absent.</summary>
internal sealed class NoNulls : IDocumentFilter
{
    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        foreach (var schema in SchemaTree.Of(swaggerDoc))
        {
            if (schema.Type is { } type && type != JsonSchemaType.Null)
                schema.Type = type & ~JsonSchemaType.Null;
        }
    }
}
