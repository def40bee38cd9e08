using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Contract;

/// <summary>A header that an operation takes, for the contract.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Description">What it says and when to send it.</param>
/// <param name="Example">How it looks.</param>
/// <param name="Longest">Most characters.</param>
/// <param name="IsNeeded">Without it the request is refused.</param>
internal sealed record TakenHeader(string Name, string Description, string Example, int Longest = 500, bool IsNeeded = false);

/// <summary>Writes the headers that operations take into the contract.</summary>
internal sealed class TakenHeaders : IOperationFilter
{
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        foreach (var header in context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<TakenHeader>())
        {
            (operation.Parameters ??= []).Add(new OpenApiParameter
            {
                Name = header.Name,
                In = ParameterLocation.Header,
                Description = header.Description,
                Required = header.IsNeeded,
                Schema = new OpenApiSchema { Type = JsonSchemaType.String, MaxLength = header.Longest },
                Example = header.Example,
            });
        }
    }
}
