using System.Reflection;
using System.Text.Json.Nodes;
using CalibrationApi.Http;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Contract;

/// <summary>Adds to each operation what its types cannot say: examples, words of the query, sentences for the statuses.</summary>
internal sealed class OperationDetails : IOperationFilter
{
    private static readonly Dictionary<string, string> StatusSentences = new()
    {
        ["400"] = "The request cannot be read as this contract: broken JSON, a wrong type, an unknown or duplicate member. One error, with its place.",
        ["413"] = "The body is larger than 1 MiB.",
        ["415"] = "The body is not application/json in UTF-8.",
        ["422"] = "The request can be read but breaks rules, or cannot be answered. Every error, each with pointer, code and what to do.",
        ["500"] = "The service failed; nothing was stored.",
    };

    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        foreach (var (status, response) in operation.Responses ?? [])
        {
            if (StatusSentences.TryGetValue(status, out var sentence))
                response.Description = sentence;
        }

        foreach (var parameter in (operation.Parameters ?? []).OfType<OpenApiParameter>().Where(parameter => parameter.Name == RequestFilter.UnitsParameter))
        {
            if (parameter.Schema is not OpenApiSchema schema)
                continue;
            schema.Enum = [.. UnitsWord.All.Select(word => JsonValue.Create(word))];
            schema.Default = JsonValue.Create(UnitsWord.AsAsked);
        }

        if (operation.RequestBody is OpenApiRequestBody body)
        {
            body.Required = true;
            AddExample(body.Content, operation.OperationId!, "request");
        }

        if (operation.Responses is { } responses && responses.TryGetValue("200", out var ok) && ok is OpenApiResponse answer)
            AddExample(answer.Content, operation.OperationId!, "answer");
    }

    private static void AddExample(IDictionary<string, IOpenApiMediaType>? content, string operationId, string kind)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"examples/{operationId}.{kind}.json");
        if (stream is null || content is null || !content.TryGetValue("application/json", out var media) || media is not OpenApiMediaType concrete)
            return;
        concrete.Example = JsonNode.Parse(stream);
    }
}
