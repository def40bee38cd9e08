using System.Text.Json.Nodes;
using CalibrationApi.Http;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Contract;

/// <summary>Adds to each operation what its types cannot say: examples, words of the query, headers, sentences for the statuses.</summary>
internal sealed class OperationDetails : IOperationFilter
{
    private static readonly Dictionary<string, string> StatusSentences = new()
    {
        ["400"] = "The request cannot be read as this contract: broken JSON, a wrong type, an unknown or duplicate member or query parameter. One error, with its place.",
        ["304"] = "Not changed since the representation with the entity tag sent.",
        ["404"] = "There is no record with this id.",
        ["406"] = "The list cannot be given in any of the media types asked for.",
        ["409"] = "A request with the same Idempotency-Key is being worked on; Retry-After says when to ask again.",
        ["412"] = "Somebody changed the record since the revision named by If-Match.",
        ["428"] = "If-Match is missing.",
        ["503"] = "The database cannot be used right now; nothing was stored. Retry-After says when to try again.",
        ["413"] = "The body is larger than 1 MiB.",
        ["415"] = "The body is not application/json in UTF-8.",
        ["422"] = "The request can be read but breaks rules, or cannot be answered. Every error, each with pointer, code and what to do.",
        ["500"] = "The service failed; nothing was stored.",
    };

    private const string BadQuery = "The query holds a parameter that is unknown or given twice.";

    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        Describe(operation, context);
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
            body.Description = BodyComment.Of(context.MethodInfo);
            AddExample(body.Content, ContractExamples.Request(operation.OperationId!, context.ApiDescription.RelativePath!));
        }

        var success = (operation.Responses ?? []).FirstOrDefault(response => response.Key.StartsWith('2')).Value;
        AddExample((success as OpenApiResponse)?.Content, ContractExamples.Answer(operation.OperationId!));
    }

    private static void Describe(OpenApiOperation operation, OperationFilterContext context)
    {
        if (operation.Responses is not { } responses)
            return;
        if (operation.RequestBody is null && operation.Parameters is not { Count: > 0 })
        {
            // Nothing can be sent that could break a rule.
            responses.Remove("422");
            if (responses.TryGetValue("400", out var bad))
                bad.Description = BadQuery;
        }

        foreach (var (status, response) in responses)
        {
            if (StatusSentences.TryGetValue(status, out var sentence) && response.Description != BadQuery)
                response.Description = sentence;
        }

        foreach (var header in context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<AnswerHeader>())
        {
            if (responses.TryGetValue(header.Status.ToString(System.Globalization.CultureInfo.InvariantCulture), out var sending) && sending is OpenApiResponse response)
            {
                (response.Headers ??= new Dictionary<string, IOpenApiHeader>())[header.Name] =
                    new OpenApiHeader { Description = header.Description, Required = true, Schema = new OpenApiSchema { Type = JsonSchemaType.String } };
            }
        }
    }

    private static void AddExample(IDictionary<string, IOpenApiMediaType>? content, JsonNode? example)
    {
        if (example is not null && content is not null && content.TryGetValue("application/json", out var media) && media is OpenApiMediaType concrete)
            concrete.Example = example;
    }
}
