using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The examples of the contract fit their schemas and are what the service answers.</summary>
public sealed class ExamplesTests
{
    public static TheoryData<string> OperationIds => ServedContract.OperationIds;

    public static TheoryData<string> CalculationIds =>
        [.. ContractDocument.Committed.Operations.Where(operation => operation.StandsAlone).Select(operation => operation.OperationId)];

    [Theory]
    [MemberData(nameof(OperationIds))]
    public async Task Examples_OfEachOperation_FitTheirSchemas(string operationId)
    {
        var contract = await ServedContract.GetAsync();
        var operation = contract.Operation(operationId);

        AssertFits(contract.Document, operation.RequestSchema, operation.RequestExample, $"{operationId}.request.json");
        AssertFits(contract.Document, operation.AnswerSchema, operation.AnswerExample, $"{operationId}.answer.json");
    }

    [Theory]
    [MemberData(nameof(CalculationIds))]
    public async Task AnswerExample_OfAnOperationThatStandsAlone_IsWhatTheServiceAnswers(string operationId)
    {
        var contract = await ServedContract.GetAsync();
        var operation = contract.Operation(operationId);

        using var response = await contract.Client.SendAsync(ExampleRequest.For(operation));
        var answer = JsonNode.Parse(await response.Content.ReadAsStringAsync());

        var difference = JsonDifference.First(operation.AnswerExample, answer);
        Assert.True(difference is null, $"{operationId} does not answer what the contract shows. {difference}. {ContractUpdate.Advice}");
    }

    [Fact]
    public void RequestExamples_OfCalculations_AreNotKeptTwice()
    {
        var demo = Directory.GetFiles(Repository.PathOf("demo-data"), "*.json").Select(Path.GetFileNameWithoutExtension).ToHashSet();

        var twice = ContractDocument.Committed.Operations
            .Where(operation => demo.Contains(operation.Path.Split('/')[^1]))
            .Where(operation => File.Exists(Repository.PathOf("src", "CalibrationApi", "Contract", "Examples", $"{operation.OperationId}.request.json")));

        Assert.NotEmpty(demo);
        Assert.Empty(twice);
    }

    private static void AssertFits(ContractDocument contract, JsonNode? schema, JsonNode? example, string file)
    {
        if (schema is null)
        {
            Assert.Null(example);
            return;
        }

        Assert.True(example is not null, $"The contract has no example here. Add src/CalibrationApi/Contract/Examples/{file}, or for a calculation a request in demo-data.");
        Assert.Empty(contract.Faults(schema, JsonSerializer.SerializeToElement(example)));
    }
}
