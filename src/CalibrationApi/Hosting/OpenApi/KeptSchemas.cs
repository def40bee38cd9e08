using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Validation;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Describes what is given back as it was kept by the type that it was written as.</summary>
internal sealed class KeptSchemas : ISchemaFilter
{
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema { Properties: { } properties })
            return;
        foreach (var name in properties.Keys.ToArray())
        {
            if (
                context.Type.GetProperty(RequestPlan.Pascal(name)) is { PropertyType: { IsGenericType: true } kept } member
                && kept.GetGenericTypeDefinition() == typeof(AsKept<>)
            )
                properties[name] = context.SchemaGenerator.GenerateSchema(
                    kept.GetGenericArguments()[0],
                    context.SchemaRepository,
                    memberInfo: member
                );
        }
    }
}
