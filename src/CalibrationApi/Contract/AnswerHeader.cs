using System.Globalization;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Contract;

/// <summary>A header that an operation sends with a status, for the contract.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Description">What it says.</param>
/// <param name="Status">The status it comes with.</param>
/// <param name="IsAlwaysSent">It comes with every answer of that status, not only with some.</param>
internal sealed record AnswerHeader(string Name, string Description, int Status, bool IsAlwaysSent = true);

/// <summary>Declares headers on a route.</summary>
internal static class AnswerHeaderRoutes
{
    /// <summary>Tells the contract that the route sends a header with every answer of a status.</summary>
    public static TBuilder Sends<TBuilder>(this TBuilder route, string name, string description, int status = StatusCodes.Status200OK)
        where TBuilder : IEndpointConventionBuilder => route.WithMetadata(new AnswerHeader(name, description, status));
}

/// <summary>Writes the headers that operations send into the contract.</summary>
internal sealed class AnswerHeaders : IOperationFilter
{
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        foreach (var header in context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<AnswerHeader>())
        {
            if (operation.Responses?.GetValueOrDefault(header.Status.ToString(CultureInfo.InvariantCulture)) is not OpenApiResponse response)
                continue;
            var schema = header.Name == "Retry-After" ? new OpenApiSchema { Type = JsonSchemaType.Integer, Format = "int32" } : new OpenApiSchema { Type = JsonSchemaType.String };
            (response.Headers ??= new Dictionary<string, IOpenApiHeader>())[header.Name] =
                new OpenApiHeader { Description = header.Description, Required = header.IsAlwaysSent, Schema = schema };
        }
    }
}
