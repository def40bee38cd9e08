using CalibrationApi.Plumbing.Operations;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Writes the headers that operations take into the contract.</summary>
internal sealed class TakenHeaders : IOperationFilter
{
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        foreach (var header in context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<TakenHeader>())
        {
            (operation.Parameters ??= []).Add(
                new OpenApiParameter
                {
                    Name = header.Name,
                    In = ParameterLocation.Header,
                    Description = header.Description,
                    Required = header.IsNeeded,
                    Schema = new OpenApiSchema { Type = JsonSchemaType.String, MaxLength = header.Longest },
                    Example = header.Example,
                }
            );
        }
    }
}
