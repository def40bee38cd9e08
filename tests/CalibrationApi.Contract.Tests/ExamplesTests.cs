using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The examples of the contract fit their schemas and are what the service answers.</summary>
public sealed class ExamplesTests
{
    // Every operation is called once, on a service that nobody else changes.
    private static readonly Lazy<Task<Dictionary<string, JsonNode>>> Answers = new(CallAllAsync);

    public static TheoryData<string> OperationIds => ServedContract.OperationIds;

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
    [MemberData(nameof(OperationIds))]
    public async Task AnswerExample_OfEachOperation_IsWhatTheServiceAnswers(string operationId)
    {
        var operation = (await ServedContract.GetAsync()).Operation(operationId);

        var answers = await Answers.Value;

        var difference = JsonDifference.First(operation.AnswerExample, answers.GetValueOrDefault(operationId));
        Assert.True(difference is null, $"{operationId} does not answer what the contract shows. {difference}. {ContractUpdate.Advice}");
    }

    [Fact]
    public async Task ProblemExamples_AreWhatTheServiceAnswers()
    {
        var shown = JsonNode.Parse(await File.ReadAllTextAsync(ContractUpdate.Problems))!.AsObject();

        var difference = JsonDifference.First(shown, await ProblemCalls.MakeAsync());

        Assert.NotEmpty(shown);
        Assert.True(difference is null, $"The service refuses otherwise than the contract shows. {difference}. {ContractUpdate.Advice}");
    }

    [Fact]
    public async Task ProblemExamples_FitTheirSchemaAndStandAtEveryProblem()
    {
        var contract = (await ServedContract.GetAsync()).Document;
        var problems = contract
            .Operations.SelectMany(operation =>
                operation.Json["responses"]!
                    .AsObject()
                    .Where(response => response.Key[0] is '4' or '5')
                    .Select(response =>
                        (
                            Place: $"{operation} {response.Key}",
                            Status: response.Key,
                            Media: contract.Resolve(response.Value!)["content"]!["application/problem+json"]!
                        )
                    )
            )
            .ToArray();

        Assert.NotEmpty(problems);
        Assert.All(problems, problem =>
        {
            var examples = problem.Media["examples"]?.AsObject();
            Assert.True(examples?.Count > 0, $"{problem.Place} shows no problem. Provoke one in ProblemCalls.cs and refresh the contract.");
            Assert.All(examples!, example =>
            {
                Assert.Empty(contract.Faults(problem.Media["schema"]!, JsonSerializer.SerializeToElement(example.Value!["value"])));
                Assert.Equal(problem.Status, example.Value!["value"]!["status"]!.ToString());
            });
        });
    }

    [Fact]
    public async Task LineExamples_OfBatches_FitTheirSchemasAndAreWhatTheServiceAnswers()
    {
        var contract = (await ServedContract.GetAsync()).Document;
        await using var service = await new Service().LoadAsync();
        using var client = service.CreateDefaultClient(new ContractCheckingHandler(contract));
        var batches = contract.Operations.Where(operation => operation.RequestLineExample is not null).ToArray();

        Assert.Equal(contract.Operations.Count(operation => operation.Path.EndsWith("/batch", StringComparison.Ordinal)), batches.Length);
        Assert.True(batches.Length >= 3);
        foreach (var batch in batches)
        {
            using var response = await client.SendAsync(ExampleCalls.For(batch));
            var answered = JsonNode.Parse(await response.Content.ReadAsStringAsync())!;
            AssertFits(contract, batch.AnswerLineSchema, batch.AnswerLineExample, batch.OperationId);
            Assert.Null(JsonDifference.First(batch.AnswerLineExample, answered));
        }
    }

    [Fact]
    public void RequestExamples_OfCalculations_AreNotKeptTwice()
    {
        var demo = Directory.GetFiles(Repository.PathOf("demo-data"), "*.json").Select(Path.GetFileNameWithoutExtension).ToHashSet();

        var twice = ContractDocument
            .Committed.Operations.Where(operation => demo.Contains(operation.Path.Split('/')[^1]))
            .Where(operation => File.Exists(Repository.PathOf("openapi", "examples", $"{operation.OperationId}.request.json")));

        Assert.NotEmpty(demo);
        Assert.Empty(twice);
    }

    private static async Task<Dictionary<string, JsonNode>> CallAllAsync()
    {
        var contract = (await ServedContract.GetAsync()).Document;
        await using var service = await new Service().LoadAsync();
        using var client = service.CreateDefaultClient(new ContractCheckingHandler(contract));
        var answers = new Dictionary<string, JsonNode>(StringComparer.Ordinal);
        foreach (var operation in ExampleCalls.InOrder(contract).Where(operation => operation.AnswerSchema is not null))
        {
            using var response = await client.SendAsync(ExampleCalls.For(operation));
            answers[operation.OperationId] = JsonNode.Parse(await response.Content.ReadAsStringAsync())!;
        }

        return answers;
    }

    private static void AssertFits(ContractDocument contract, JsonNode? schema, JsonNode? example, string file)
    {
        if (schema is null)
        {
            Assert.Null(example);
            return;
        }

        Assert.True(
            example is not null,
            $"The contract has no example here. Add openapi/examples/{file}, or for a calculation a request in demo-data."
        );
        Assert.Empty(contract.Faults(schema, JsonSerializer.SerializeToElement(example)));
    }
}
