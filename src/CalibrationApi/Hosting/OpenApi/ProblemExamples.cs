using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Http;
using Microsoft.OpenApi;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Problems as examples of the contract.</summary>
internal static class ProblemExamples
{
    /// <summary>Those that fit an operation: what is wrong with a body is no example for one that takes none.</summary>
    public static IDictionary<string, IOpenApiExample>? Of(JsonObject problems, bool takesBody)
    {
        var fitting = problems
            .Where(problem => takesBody || !IsAboutABody(problem.Value!["value"]!["errors"]![0]!))
            .ToDictionary(
                problem => problem.Key,
                IOpenApiExample (problem) =>
                    new OpenApiExample
                    {
                        Summary = problem.Value!["summary"]!.GetValue<string>(),
                        Value = problem.Value["value"]!.DeepClone(),
                    }
            );
        return fitting.Count > 0 ? fitting : null;
    }

    private static bool IsAboutABody(JsonNode error) =>
        error["pointer"] is not null || error["code"]!.GetValue<string>() == ErrorCodes.JsonBroken.Word;
}
