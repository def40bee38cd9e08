using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Writes each parameter that several operations take alike once, as a component.</summary>
internal sealed class SharedParameters : IDocumentFilter
{
    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        var operations = SchemaTree.Operations(swaggerDoc).ToArray();
        var shared = operations
            .SelectMany(operation => operation.Parameters ?? [])
            .OfType<OpenApiParameter>()
            .GroupBy(Name)
            // What differs from the others of its name stays at its operation.
            .Select(group => (Name: group.Key, Alike: group.GroupBy(Written).MaxBy(alike => alike.Count())!))
            .Where(one => one.Alike.Count() > 1)
            .OrderBy(one => one.Name, StringComparer.Ordinal)
            .ToDictionary(one => one.Name, one => one.Alike.Key);
        var components = (swaggerDoc.Components ??= new OpenApiComponents()).Parameters ??= new Dictionary<string, IOpenApiParameter>();
        foreach (var parameters in operations.Select(operation => operation.Parameters).OfType<IList<IOpenApiParameter>>())
        {
            for (var i = 0; i < parameters.Count; i++)
            {
                if (parameters[i] is not OpenApiParameter parameter || shared.GetValueOrDefault(Name(parameter)) != Written(parameter))
                    continue;
                components.TryAdd(Name(parameter), parameter);
                parameters[i] = new OpenApiParameterReference(Name(parameter), swaggerDoc);
            }
        }
    }

    private static string Name(OpenApiParameter parameter) =>
        string.Concat(parameter.Name!.Split('-').Select(part => char.ToUpperInvariant(part[0]) + part[1..]));

    private static string Written(OpenApiParameter parameter)
    {
        using var text = new StringWriter();
        parameter.SerializeAsV31(new OpenApiJsonWriter(text));
        return text.ToString();
    }
}
