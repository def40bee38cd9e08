using System.Globalization;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Contract;

/// <summary>Writes each problem once, as a component, instead of at every operation.</summary>
internal sealed class SharedProblems : IDocumentFilter
{
    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        var problems = new Dictionary<string, IOpenApiResponse>(StringComparer.Ordinal);
        foreach (var responses in SchemaTree.Operations(swaggerDoc).Select(operation => operation.Responses).OfType<OpenApiResponses>())
        {
            foreach (var (status, response) in responses.Where(one => one.Key[0] is '4' or '5').ToArray())
            {
                // The name of the status; what differs from the first of its status stays at its operation.
                var name = ReasonPhrases.GetReasonPhrase(int.Parse(status, CultureInfo.InvariantCulture)).Replace(" ", "", StringComparison.Ordinal);
                if (problems.TryAdd(name, response) || IsSame(problems[name], response))
                    responses[status] = new OpenApiResponseReference(name, swaggerDoc);
            }
        }

        var components = swaggerDoc.Components ??= new OpenApiComponents();
        foreach (var (name, response) in problems.OrderBy(problem => problem.Key, StringComparer.Ordinal))
            (components.Responses ??= new Dictionary<string, IOpenApiResponse>())[name] = response;
    }

    private static bool IsSame(IOpenApiResponse one, IOpenApiResponse other) =>
        one.Description == other.Description
        && (one.Headers?.Keys ?? []).ToHashSet(StringComparer.Ordinal).SetEquals(other.Headers?.Keys ?? []);
}
