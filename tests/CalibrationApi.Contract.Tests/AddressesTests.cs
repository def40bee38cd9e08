using System.Net;
using System.Text.Json.Nodes;

namespace CalibrationApi.Contract.Tests;

/// <summary>What the contract says about paths and queries is what the service does, for every operation.</summary>
public sealed class AddressesTests
{
    private const string NoSuchId = "019dffff-ffff-7fff-bfff-ffffffffffff";

    public static TheoryData<string> OperationIds => ServedContract.OperationIds;

    [Theory]
    [MemberData(nameof(OperationIds))]
    public async Task Query_OfAParameterThatTheContractDoesNotKnow_IsRefused(string operationId)
    {
        var (status, problem) = await AskAsync(operationId, "noSuchParameter", "1");

        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.Equal("noSuchParameter", problem["errors"]![0]!["parameter"]!.GetValue<string>());
    }

    [Theory]
    [MemberData(nameof(OperationIds))]
    public async Task Query_OfAValueThatTheContractForbids_IsRefusedByTheNameOfItsParameter(string operationId)
    {
        foreach (var parameter in await QueryAsync(operationId, Closes))
        {
            var (status, problem) = await AskAsync(operationId, parameter.Name, "no such value");

            Assert.True(
                status is HttpStatusCode.UnprocessableEntity or HttpStatusCode.BadRequest,
                $"{operationId}?{parameter.Name} answered {status} to a value that the contract forbids."
            );
            Assert.Equal(parameter.Name, problem["errors"]![0]!["parameter"]!.GetValue<string>());
        }
    }

    [Theory]
    [MemberData(nameof(OperationIds))]
    public async Task Query_OfEachWordThatTheContractLists_IsTaken(string operationId)
    {
        foreach (var parameter in await QueryAsync(operationId, schema => schema["enum"] is not null))
        {
            foreach (var word in parameter.Schema["enum"]!.AsArray().Select(word => word!.GetValue<string>()))
            {
                var (status, _) = await AskAsync(operationId, parameter.Name, word);

                Assert.True((int)status < 300, $"{operationId}?{parameter.Name}={word} answered {status}.");
            }
        }
    }

    [Fact]
    public async Task Query_OfAllOperations_HasParametersWithClosedValues()
    {
        // So that the tests above try something.
        var contract = (await ServedContract.GetAsync()).Document;

        var tried = await Task.WhenAll(contract.Operations.Select(operation => QueryAsync(operation.OperationId, Closes)));

        Assert.Contains(tried, parameters => parameters.Count > 0);
    }

    [Theory]
    [MemberData(nameof(OperationIds))]
    public async Task Path_WithAnIdOfNoRecord_IsNotFound(string operationId)
    {
        var contract = await ServedContract.GetAsync();
        var operation = contract.Operation(operationId);
        if (operation.IsPlainPath)
        {
            Assert.Null(operation.Response(404));
            return;
        }

        using var request = ExampleCalls.For(operation);
        request.RequestUri = new Uri(operation.Path.Replace("{id}", NoSuchId, StringComparison.Ordinal), UriKind.Relative);
        if (operation.RequestExample?.DeepClone() is JsonObject body)
        {
            body.Remove("id");
            request.Content = ExampleCalls.With(operation, body).Content;
        }

        using var response = await contract.Client.SendAsync(request);

        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
    }

    private static bool Closes(JsonObject schema) =>
        schema["enum"] is not null
        || schema["pattern"] is not null
        || schema["format"] is not null
        || schema["type"]!.GetValue<string>() == "boolean";

    private static async Task<List<(string Name, JsonObject Schema)>> QueryAsync(string operationId, Func<JsonObject, bool> which)
    {
        var contract = await ServedContract.GetAsync();
        return
        [
            .. (contract.Operation(operationId).Json["parameters"]?.AsArray() ?? [])
                .Select(parameter => contract.Document.Resolve(parameter!))
                .Where(parameter => parameter["in"]!.GetValue<string>() == "query")
                .Select(parameter => (parameter["name"]!.GetValue<string>(), contract.Document.Resolve(parameter["schema"]!)))
                .Where(parameter => which(parameter.Item2)),
        ];
    }

    private static async Task<(HttpStatusCode Status, JsonNode Answer)> AskAsync(string operationId, string parameter, string value)
    {
        var contract = await ServedContract.GetAsync();
        using var request = ExampleCalls.For(contract.Operation(operationId));
        request.RequestUri = new Uri(
            $"{request.RequestUri!.OriginalString.Split('?')[0]}?{parameter}={Uri.EscapeDataString(value)}",
            UriKind.Relative
        );
        // How a table is written can be asked for only where one is.
        if (parameter is "separator" or "bom")
            request.Headers.Accept.ParseAdd("text/csv");
        using var response = await contract.Client.SendAsync(request);
        var text = await response.Content.ReadAsStringAsync();
        return (
            response.StatusCode,
            response.Content.Headers.ContentType?.MediaType == "text/csv" ? JsonValue.Create(text) : JsonNode.Parse(text)!
        );
    }
}
