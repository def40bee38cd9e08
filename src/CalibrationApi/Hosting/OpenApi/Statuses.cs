using System.Globalization;
using CalibrationApi.Plumbing.Operations;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Says of each status what it means, once for all operations, and drops those that an operation cannot give.</summary>
/// <remarks>A <c>&lt;response&gt;</c> comment on the handler of a success goes before what is said here.</remarks>
internal sealed class Statuses : IOperationFilter
{
    private static readonly Dictionary<int, string> Problems = new()
    {
        [400] =
            "The request cannot be read as this contract: broken JSON, a wrong type, an unknown or duplicate member or query parameter. One error, with its place.",
        [401] = "No key came, or one that opens nothing. WWW-Authenticate and the code say which.",
        [403] = "The key lacks the scope that this operation needs.",
        [404] = "There is no record with this id.",
        [406] = "The answer cannot be given in any of the media types asked for.",
        [408] = "The body came too slowly.",
        [409] = "A request with the same Idempotency-Key is being worked on; Retry-After says when to ask again.",
        [410] = "A backup from before this cursor took the place of the database. Read the list from its beginning.",
        [412] = "Somebody changed the record since the revision named by If-Match.",
        [413] = "The body is larger than the service takes: 1 MiB, unless its operator chose otherwise.",
        [415] = "The body is not application/json in UTF-8, or it is compressed.",
        [422] = "The request can be read but breaks rules, or cannot be answered. Every error, each with pointer, code and what to do.",
        [428] = "If-Match is missing.",
        [429] = "More requests than a policy of RateLimit-Policy allows. Retry-After says when to ask again.",
        [500] = "The service failed; nothing was stored.",
        [503] =
            "The database cannot be used right now, or the service has more to do than it can; nothing was stored. Retry-After says when to try again.",
    };

    // What the library writes when nobody says anything better.
    private static readonly string[] NamesOfStatuses = ["OK", "Success", "Created", "No Content", "Not Modified"];

    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        if (operation.Responses is not { } responses)
            return;
        var metadata = context.ApiDescription.ActionDescriptor.EndpointMetadata;
        if (metadata.OfType<TakenHeader>().Any(header => header.Name == "If-None-Match"))
            responses["304"] = new OpenApiResponse { Description = "Not changed since the representation with the entity tag sent." };
        var takesNothing = operation.RequestBody is null && operation.Parameters is not { Count: > 0 };
        if (takesNothing)
            responses.Remove("422");

        foreach (var (code, response) in responses)
        {
            var status = int.Parse(code, CultureInfo.InvariantCulture);
            if (Problems.TryGetValue(status, out var sentence))
                response.Description =
                    status == 400 && takesNothing ? "The query holds a parameter that is unknown or given twice." : sentence;
            else if (response.Description is null || NamesOfStatuses.Contains(response.Description))
                response.Description = Success(
                    status,
                    context.ApiDescription.HttpMethod!,
                    response.Content?.ContainsKey("text/csv") == true
                );
        }

        operation.Responses = [];
        foreach (var (code, response) in responses.OrderBy(one => one.Key, StringComparer.Ordinal))
            operation.Responses.Add(code, response);
    }

    private static string Success(int status, string method, bool isList) =>
        (status, method) switch
        {
            (StatusCodes.Status201Created, _) => "The stored record.",
            (_, "POST") => "The record that this id already had, from an equal request.",
            (_, "PUT") => "The record as it is now.",
            _ => isList ? "A page of the list." : "The record.",
        };
}
