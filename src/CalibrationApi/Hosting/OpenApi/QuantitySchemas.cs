using System.Text.Json.Nodes;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Quantities;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Gives the schema of each quantity its closed list of units.</summary>
internal sealed class QuantitySchemas : ISchemaFilter
{
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema { Properties: { } properties } concrete)
            return;
        // A value of any dimension is only answered. Its list stays open, so that a new unit does not break a client.
        if (context.Type == typeof(AnyQuantity) && properties["unit"] is OpenApiSchema unit)
            unit.Examples = [.. UnitTable.All.Select(one => JsonValue.Create(one.Symbol))];
        else if (context.Type.IsAssignableTo(typeof(Quantity)) && !context.Type.IsAbstract)
            Describe(concrete, properties, UnitTable.Of(((Quantity)Activator.CreateInstance(context.Type)!).Dimension));
    }

    private static void Describe(OpenApiSchema schema, IDictionary<string, IOpenApiSchema> properties, IReadOnlyList<Unit> units)
    {
        if (properties["unit"] is OpenApiSchema unit)
            unit.Enum = [.. units.Select(one => JsonValue.Create(one.Symbol))];
        schema.Required ??= new HashSet<string>(StringComparer.Ordinal);
        schema.Required.Add("value");
        schema.Required.Add("unit");
    }
}
