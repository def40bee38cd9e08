using CalibrationApi.Limits;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Contract;

/// <summary>Every answer says how much may still be asked, and a refusal when to ask again.</summary>
internal sealed class LimitHeaders : IOperationFilter
{
    private const string RetryAfter = "Retry-After";

    private static readonly Dictionary<string, string> OfEveryAnswer = new()
    {
        [RateLimitFields.Policies] = "The limits that hold for the sender (draft-ietf-httpapi-ratelimit-headers-10): for each its name, its quota q, and the seconds w in which the quota may be used up.",
        [RateLimitFields.Standings] = "How the sender stands with each limit: requests r that remain, and seconds t until the whole quota is back.",
    };

    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        var shared = (context.Document.Components ??= new OpenApiComponents()).Headers ??= new Dictionary<string, IOpenApiHeader>();
        foreach (var (name, description) in OfEveryAnswer)
            shared.TryAdd(name, Header(description, new OpenApiSchema { Type = JsonSchemaType.String }));

        foreach (var (status, response) in operation.Responses ?? [])
        {
            if (response is not OpenApiResponse own)
                continue;
            own.Headers ??= new Dictionary<string, IOpenApiHeader>();
            foreach (var name in OfEveryAnswer.Keys)
                own.Headers[name] = new OpenApiHeaderReference(name, context.Document);
            if (status is "429" or "503")
                own.Headers.TryAdd(RetryAfter, Header("Seconds to wait before the request is sent again.", new OpenApiSchema { Type = JsonSchemaType.Integer, Format = "int32" }));
            if (status is "415")
                own.Headers.TryAdd("Accept-Encoding", Header("With a compressed body: that bodies are taken only as they are.", new OpenApiSchema { Type = JsonSchemaType.String }, isAlwaysSent: false));
        }
    }

    private static OpenApiHeader Header(string description, OpenApiSchema schema, bool isAlwaysSent = true) =>
        new() { Description = description, Required = isAlwaysSent, Schema = schema };
}
