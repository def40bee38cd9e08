using System.Reflection;
using System.Text.Json.Nodes;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Operations;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Tells at each list of an answer, and at what an operation refuses, which codes can come there.</summary>
/// <remarks>As an extension, because what carries a code has to stay one type for every client.</remarks>
internal sealed class SentCodes : ISchemaFilter, IOperationFilter
{
    public const string Extension = "x-codes";

    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema list || context.MemberInfo?.GetCustomAttribute<SentCodesAttribute>() is not { All: var codes })
            return;
        list.Description = $"{list.Description?.TrimEnd()} Codes known today: {InWords(codes)}.";
        list.AddExtension(Extension, AsData(codes));
    }

    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        var refused = context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<RefusedWith>().FirstOrDefault();
        if (refused is not { Codes: { Count: > 0 } codes } || operation.Responses!["422"] is not OpenApiResponse response)
            return;
        response.Description = $"{response.Description} What breaks no rule can still be refused: {InWords(codes)}.";
        response.AddExtension(Extension, AsData(codes));
    }

    private static string InWords(IEnumerable<Code> codes) => string.Join(", ", codes.Select(code => $"`{code}`"));

    private static JsonNodeExtension AsData(IEnumerable<Code> codes) =>
        new(new JsonArray([.. codes.Select(code => JsonValue.Create(code.Word))]));
}
