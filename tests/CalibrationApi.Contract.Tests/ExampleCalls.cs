using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>Makes the request that stands behind the examples of an operation, for a service that holds the demo season.</summary>
internal static class ExampleCalls
{
    private static readonly DemoSeason Season = new();

    // What the season does not hold because it takes an administrator; each of the two that end a key has one of its own to end.
    private static readonly Dictionary<string, string> Ids = new()
    {
        ["/v1/workspaces/{id}"] = SampleKeys.Workspace,
        ["/v1/workspaces/{id}/keys"] = SampleKeys.Workspace,
        ["/v1/keys/{id}"] = SampleKeys.Read,
        ["/v1/keys/{id}/rotations"] = SampleKeys.Rotated,
        ["/v1/keys/{id}/revocations"] = SampleKeys.Revoked,
        // The field whose rates follow from a stand and from nutrients.
        ["/v1/plans/{id}/set-up"] = "019d0000-0006-7000-8000-000000000002",
    };

    /// <summary>Operations in an order in which no call changes what a later one reads.</summary>
    public static IEnumerable<ContractOperation> InOrder(ContractDocument contract) =>
        contract
            .Operations.OrderBy(operation => operation.Method == "PUT")
            .ThenBy(operation => operation.Path.StartsWith("/v1/keys/", StringComparison.Ordinal) && operation.Method == "POST");

    /// <summary>The request of the example.</summary>
    public static HttpRequestMessage For(ContractOperation operation)
    {
        var request = With(operation, operation.RequestExample);
        if (operation.RequestLineExample is { } line)
        {
            request.Content = new StringContent(line.ToJsonString() + "\n");
            request.Content.Headers.ContentType = new MediaTypeHeaderValue("application/x-ndjson");
        }

        return request;
    }

    /// <summary>The same with another body.</summary>
    public static HttpRequestMessage With(ContractOperation operation, JsonNode? body)
    {
        // The id in a path is that of the first record of the collection before it.
        var path = operation.Path;
        if (path.IndexOf("/{id}", StringComparison.Ordinal) is > 0 and var end)
            path = path.Replace("{id}", Ids.TryGetValue(path, out var id) ? id : Season.FirstOf(path[..end]), StringComparison.Ordinal);
        // A short page is an example too.
        var request = new HttpRequestMessage(HttpMethod.Parse(operation.Method), operation.Takes("limit") ? $"{path}?limit=2" : path);
        if (body is not null)
            request.Content = new StringContent(body.ToJsonString(), Encoding.UTF8, "application/json");
        if (operation.Takes("If-Match"))
            request.Headers.Add("If-Match", "*");
        return request;
    }
}
