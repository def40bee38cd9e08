using CalibrationApi.Plumbing.Limits;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Every answer says how much may still be asked, and a refusal when to ask again.</summary>
internal sealed class LimitHeaders : IOperationFilter
{
    private const string RetryAfter = "Retry-After";
    private const string AcceptEncoding = "Accept-Encoding";

    private static readonly Dictionary<string, string> OfEveryAnswer = new()
    {
        [RateLimitFields.Policies] =
            "The limits that hold for the sender (draft-ietf-httpapi-ratelimit-headers-10): for each its name, its quota q, and the seconds w in which the quota may be used up.",
        [RateLimitFields.Standings] =
            "How the sender stands with each limit: requests r that remain, and seconds t until the whole quota is back.",
    };

    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        var shared = (context.Document.Components ??= new OpenApiComponents()).Headers ??= new Dictionary<string, IOpenApiHeader>();
        foreach (var (name, description) in OfEveryAnswer)
            shared.TryAdd(name, AnswerHeaders.Written(name, description, isAlwaysSent: true));

        foreach (var (status, response) in operation.Responses ?? [])
        {
            if (response is not OpenApiResponse own)
                continue;
            own.Headers ??= new Dictionary<string, IOpenApiHeader>();
            foreach (var name in OfEveryAnswer.Keys)
                own.Headers[name] = new OpenApiHeaderReference(name, context.Document);
            if (status is "429" or "503")
                own.Headers.TryAdd(
                    RetryAfter,
                    AnswerHeaders.Written(RetryAfter, "Seconds to wait before the request is sent again.", isAlwaysSent: true)
                );
            if (status is "415")
                own.Headers.TryAdd(
                    AcceptEncoding,
                    AnswerHeaders.Written(
                        AcceptEncoding,
                        "With a compressed body: that bodies are taken only as they are.",
                        isAlwaysSent: false
                    )
                );
        }
    }
}
