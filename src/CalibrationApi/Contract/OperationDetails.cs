using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Contract;

/// <summary>Describes what is sent, and adds the examples.</summary>
internal sealed class OperationDetails : IOperationFilter
{
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        if (operation.RequestBody is OpenApiRequestBody body)
        {
            body.Required = true;
            body.Description = BodyComment.Of(context.MethodInfo);
            AddExample(body.Content, ContractExamples.Request(operation.OperationId!, context.ApiDescription.RelativePath!));
        }

        foreach (var success in (operation.Responses ?? []).Where(response => response.Key.StartsWith('2')).Select(response => response.Value))
            AddExample((success as OpenApiResponse)?.Content, ContractExamples.Answer(operation.OperationId!));
    }

    private static void AddExample(IDictionary<string, IOpenApiMediaType>? content, JsonNode? example)
    {
        if (example is not null && content is not null && content.TryGetValue("application/json", out var media) && media is OpenApiMediaType concrete)
            concrete.Example = example;
    }
}
