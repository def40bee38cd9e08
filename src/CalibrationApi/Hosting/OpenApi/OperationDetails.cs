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
            AddExample((success as OpenApiResponse)?.Content, ContractExamples.Answer(operation.OperationId!), context.SchemaRepository);
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

    // What is kept of a request is answered again without what was shown once, as the text of a key.
    private static void AddExample(IDictionary<string, IOpenApiMediaType>? content, JsonNode? example, SchemaRepository? known = null)
    {
        if (
            example is not null
            && content is not null
            && content.TryGetValue("application/json", out var media)
            && media is OpenApiMediaType concrete
        )
            concrete.Example = known is not null && example is JsonObject answer ? Fitting(answer, concrete.Schema, known) : example;
    }

    private static JsonObject Fitting(JsonObject answer, IOpenApiSchema? schema, SchemaRepository known)
    {
        if (schema is not OpenApiSchemaReference { Reference.Id: { } name } || known.Schemas[name].Properties is not { Count: > 0 } members)
            return answer;
        return new JsonObject(
            answer
                .Where(member => members.ContainsKey(member.Key))
                .Select(member => new KeyValuePair<string, JsonNode?>(member.Key, member.Value?.DeepClone()))
        );
    }
}
