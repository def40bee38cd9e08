using System.Text;
using System.Text.Json.Nodes;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>Makes requests of an operation that stands alone.</summary>
internal static class ExampleRequest
{
    /// <summary>The request that the contract shows.</summary>
    public static HttpRequestMessage For(ContractOperation operation) => With(operation, operation.RequestExample);

    /// <summary>The same operation with another body.</summary>
    public static HttpRequestMessage With(ContractOperation operation, JsonNode? body) => new(HttpMethod.Parse(operation.Method), operation.Path)
    {
        Content = body is null ? null : new StringContent(body.ToJsonString(), Encoding.UTF8, "application/json"),
    };
}
