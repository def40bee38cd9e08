using System.Globalization;
using CalibrationApi.Plumbing.Http;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Every operation can be asked too often, too slowly, or while the service has too much to do.</summary>
internal sealed class LimitAnswers : IOperationFilter
{
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        int[] statuses = operation.RequestBody is null
            ? [StatusCodes.Status429TooManyRequests, StatusCodes.Status503ServiceUnavailable]
            : [StatusCodes.Status408RequestTimeout, StatusCodes.Status429TooManyRequests, StatusCodes.Status503ServiceUnavailable];
        foreach (var status in statuses)
        {
            (operation.Responses ??= []).TryAdd(
                status.ToString(CultureInfo.InvariantCulture),
                new OpenApiResponse
                {
                    Content = new Dictionary<string, IOpenApiMediaType>
                    {
                        [ProblemResult.MediaType] = new OpenApiMediaType
                        {
                            Schema = context.SchemaGenerator.GenerateSchema(typeof(Problem), context.SchemaRepository),
                        },
                    },
                }
            );
        }
    }
}
