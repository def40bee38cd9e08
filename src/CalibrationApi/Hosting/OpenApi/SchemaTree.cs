using Microsoft.OpenApi;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Walks schemas: those written out at a place, and those it refers to.</summary>
internal static class SchemaTree
{
    /// <summary>Every schema that is written out anywhere in the document.</summary>
    public static IEnumerable<OpenApiSchema> Of(OpenApiDocument document)
    {
        var operations = Operations(document).ToArray();
        var roots = (document.Components?.Schemas?.Values.AsEnumerable() ?? [])
            .Concat(operations.SelectMany(operation => operation.Parameters ?? []).Select(parameter => parameter.Schema))
            .Concat(operations.SelectMany(Sent))
            .Concat(operations.SelectMany(Answered));
        return roots.OfType<IOpenApiSchema>().SelectMany(WrittenOut);
    }

    /// <summary>Names of the components that a schema leads to, at any depth.</summary>
    public static HashSet<string> Reach(IEnumerable<IOpenApiSchema> roots, OpenApiDocument document)
    {
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<IOpenApiSchema>(roots);
        while (open.TryPop(out var schema))
        {
            if (schema is OpenApiSchemaReference { Reference.Id: { } id })
            {
                if (reached.Add(id) && document.Components?.Schemas?[id] is { } target)
                    open.Push(target);
                continue;
            }

            foreach (var part in Parts(schema))
                open.Push(part);
        }

        return reached;
    }

    public static IEnumerable<OpenApiOperation> Operations(OpenApiDocument document) =>
        document.Paths.Values.SelectMany(path => path.Operations?.Values.AsEnumerable() ?? []);

    /// <summary>What an operation is sent.</summary>
    public static IEnumerable<IOpenApiSchema> Sent(OpenApiOperation operation) => Schemas(operation.RequestBody?.Content);

    /// <summary>What an operation answers, problems included.</summary>
    public static IEnumerable<IOpenApiSchema> Answered(OpenApiOperation operation) =>
        (operation.Responses?.Values.AsEnumerable() ?? []).SelectMany(response => Schemas(response.Content));

    private static IEnumerable<IOpenApiSchema> Schemas(IDictionary<string, IOpenApiMediaType>? content) =>
        (content?.Values.AsEnumerable() ?? []).Select(media => media.Schema).OfType<IOpenApiSchema>();

    private static IEnumerable<OpenApiSchema> WrittenOut(IOpenApiSchema schema) =>
        schema is OpenApiSchema concrete ? Parts(concrete).SelectMany(WrittenOut).Prepend(concrete) : [];

    private static IEnumerable<IOpenApiSchema> Parts(IOpenApiSchema schema)
    {
        IEnumerable<IOpenApiSchema?> parts =
        [
            .. schema.Properties?.Values.AsEnumerable() ?? [],
            schema.Items,
            schema.AdditionalProperties,
            .. schema.AllOf ?? [],
            .. schema.OneOf ?? [],
            .. schema.AnyOf ?? [],
        ];
        return parts.OfType<IOpenApiSchema>();
    }
}
