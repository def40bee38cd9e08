using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Contract;

/// <summary>Says that nulls are never sent: what is not there is absent.</summary>
internal sealed class AnswerSchemas : ISchemaFilter
{
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema { Properties: { } properties })
            return;
        foreach (var property in properties.Values.OfType<OpenApiSchema>())
        {
            if (property.Type is { } type)
                property.Type = type & ~JsonSchemaType.Null;
            if (property.Items is OpenApiSchema { Type: { } itemType } items)
                items.Type = itemType & ~JsonSchemaType.Null;
        }
    }
}
