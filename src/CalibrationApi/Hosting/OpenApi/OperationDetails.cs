using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Operations;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Describes what is sent, and adds the examples.</summary>
internal sealed class OperationDetails : IOperationFilter
{
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        var describedBy = context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<DescribedBy>().FirstOrDefault()?.Type;
        if (describedBy is not null)
            Describe(operation, describedBy);
        if (operation.RequestBody is OpenApiRequestBody body)
        {
            body.Required = true;
            body.Description = describedBy is null ? BodyComment.Of(context.MethodInfo) : DocComments.Of(describedBy, "request");
            AddExample(body.Content, ContractExamples.Request(operation.OperationId!, context.ApiDescription.RelativePath!));
        }

        foreach (
            var success in (operation.Responses ?? []).Where(response => response.Key.StartsWith('2')).Select(response => response.Value)
        )
            AddExample((success as OpenApiResponse)?.Content, ContractExamples.Answer(operation.OperationId!));
    }

    private static void Describe(OpenApiOperation operation, Type type)
    {
        operation.Summary = DocComments.SummaryOf(type);
        operation.Description = DocComments.Of(type, "remarks");
        operation.Responses!["200"].Description = DocComments.Of(type, "response[@code='200']");
        const string Units = RequestFilter.UnitsParameter;
        if (DocComments.Of(type, Units) is { } sentence)
            operation.Parameters!.Single(parameter => parameter.Name == Units).Description = sentence;
    }

    private static void AddExample(IDictionary<string, IOpenApiMediaType>? content, JsonNode? example)
    {
        if (
            example is not null
            && content is not null
            && content.TryGetValue("application/json", out var media)
            && media is OpenApiMediaType concrete
        )
            concrete.Example = example;
    }
}
