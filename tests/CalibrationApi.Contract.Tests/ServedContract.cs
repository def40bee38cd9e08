using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The contract as the service serves it, and the service itself. One of each for all tests of this project.</summary>
internal sealed class ServedContract
{
    public const string Address = "/openapi/v1.json";

    private static readonly Lazy<Task<ServedContract>> Once = new(StartAsync);

    private ServedContract(string text, Service service)
    {
        Text = text;
        Document = ContractDocument.Parse(text);
        Client = service.CreateDefaultClient(new ContractCheckingHandler(Document));
    }

    /// <summary>The names of the operations in the committed contract, for theories; their number shows that there are any.</summary>
    public static TheoryData<string> OperationIds => [.. ContractDocument.Committed.Operations.Select(operation => operation.OperationId)];

    /// <summary>The served text.</summary>
    public string Text { get; }

    public ContractDocument Document { get; }

    /// <summary>Asks the service, and fails on every answer that is not what the contract says.</summary>
    public HttpClient Client { get; }

    public static Task<ServedContract> GetAsync() => Once.Value;

    public ContractOperation Operation(string operationId) =>
        Assert.Single(Document.Operations, operation => operation.OperationId == operationId);

    private static async Task<ServedContract> StartAsync()
    {
        if (ContractUpdate.IsAsked)
            return new ServedContract(await ContractUpdate.RunAsync(), await new Service().LoadAsync());
        var service = await new Service().LoadAsync();
        return new ServedContract(await service.CreateClient().GetStringAsync(new Uri(Address, UriKind.Relative)), service);
    }
}
