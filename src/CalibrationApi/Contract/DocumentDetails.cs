using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Contract;

/// <summary>Describes the tags, and lets answers grow while requests stay strict.</summary>
internal sealed class DocumentDetails : IDocumentFilter
{
    private static readonly Dictionary<string, string> Tags = new()
    {
        ["Catch plans"] = "How much to catch, for how long, in which container, and when each meter stops.",
        ["Catch tests"] = "What the catches say, how sure it is, and what to do now.",
        ["Meter speeds"] = "Which metering element serves which rates at which ground speeds.",
        ["Units"] = "The closed list of units with their exact factors.",
    };

    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        var operations = swaggerDoc.Paths.Values.SelectMany(path => path.Operations?.Values.AsEnumerable() ?? []).ToArray();
        var used = operations
            .SelectMany(operation => operation.Tags ?? new HashSet<OpenApiTagReference>())
            .Select(tag => tag.Name!)
            .Distinct()
            .Order(StringComparer.Ordinal);
        swaggerDoc.Tags = new HashSet<OpenApiTag>(used.Select(name => new OpenApiTag { Name = name, Description = Tags[name] }));

        // A client must accept members that it does not know, so only schemas that are never answered forbid them.
        var answered = new HashSet<string>(StringComparer.Ordinal);
        foreach (var operation in operations)
        {
            foreach (var media in (operation.Responses ?? []).Values.SelectMany(response => response.Content?.Values.AsEnumerable() ?? []))
                Reach(media.Schema, answered, swaggerDoc);
        }

        foreach (var (name, schema) in swaggerDoc.Components?.Schemas ?? new Dictionary<string, IOpenApiSchema>())
        {
            if (answered.Contains(name) && schema is OpenApiSchema concrete)
                concrete.AdditionalPropertiesAllowed = true;
        }
    }

    private static void Reach(IOpenApiSchema? schema, HashSet<string> reached, OpenApiDocument document)
    {
        if (schema is OpenApiSchemaReference reference)
        {
            if (reference.Reference.Id is { } id && reached.Add(id))
                Reach(document.Components!.Schemas![id], reached, document);
            return;
        }

        if (schema is null)
            return;
        Reach(schema.Items, reached, document);
        foreach (var property in schema.Properties?.Values.AsEnumerable() ?? [])
            Reach(property, reached, document);
    }
}
