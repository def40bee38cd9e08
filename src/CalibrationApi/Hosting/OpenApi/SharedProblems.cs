using System.Globalization;
using CalibrationApi.Plumbing.Http;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Writes each problem once, as a component, instead of at every operation.</summary>
internal sealed class SharedProblems : IDocumentFilter
{
    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        var problems = new Dictionary<string, IOpenApiResponse>(StringComparer.Ordinal);
        foreach (var operation in SchemaTree.Operations(swaggerDoc).OrderBy(operation => operation.RequestBody is null))
        {
            foreach (var (status, response) in (operation.Responses ?? []).Where(one => one.Key[0] is '4' or '5').ToArray())
            {
                ShowProblems(status, response, operation.RequestBody is not null);
                if (response.Extensions?.ContainsKey(SentCodes.Extension) == true)
                    continue;
                // The name of the status; what differs from the first of its status stays at its operation.
                var name = ReasonPhrases
                    .GetReasonPhrase(int.Parse(status, CultureInfo.InvariantCulture))
                    .Replace(" ", "", StringComparison.Ordinal);
                if (problems.TryAdd(name, response) || IsSame(problems[name], response))
                    operation.Responses![status] = new OpenApiResponseReference(name, swaggerDoc);
            }
        }

        var components = swaggerDoc.Components ??= new OpenApiComponents();
        foreach (var (name, response) in problems.OrderBy(problem => problem.Key, StringComparer.Ordinal))
            (components.Responses ??= new Dictionary<string, IOpenApiResponse>())[name] = response;
    }

    private static void ShowProblems(string status, IOpenApiResponse response, bool takesBody)
    {
        if (
            response.Content is not { } content
            || !content.TryGetValue(ProblemResult.MediaType, out var shape)
            || shape is not OpenApiMediaType media
        )
            return;
        media.Examples = ProblemExamples.Of(ContractExamples.Problems(status), takesBody);
    }

    private static bool IsSame(IOpenApiResponse one, IOpenApiResponse other) =>
        one.Description == other.Description
        && (one.Headers?.Keys ?? []).ToHashSet(StringComparer.Ordinal).SetEquals(other.Headers?.Keys ?? []);
}
