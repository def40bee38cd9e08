using CalibrationApi.Testing;

namespace CalibrationApi.Clients.Tests;

/// <summary>The real service in memory with the season of the demo data. Every answer is checked against the contract.</summary>
public sealed class Season : IAsyncLifetime, IDisposable
{
    public const string Machine = "019d0000-0001-7000-8000-000000000001";
    public const string Barley = "019d0000-0002-7000-8000-000000000001";
    public const string PlatformScale = "019d0000-0004-7000-8000-000000000001";
    public const string FirstTest = "019d0000-0009-7000-8000-000000000001";

    private readonly Service service = new();

    public Task InitializeAsync() => service.LoadAsync();

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => service.Dispose();

    /// <summary>A client of it, with a key that may do everything unless the options have another.</summary>
    /// <param name="between">Handlers between client and service, the outermost first.</param>
    internal CalibrationClient Connect(params ReadOnlySpan<DelegatingHandler> between) => Connect(new(), between);

    internal CalibrationClient Connect(CalibrationClientOptions options, params ReadOnlySpan<DelegatingHandler> between) =>
        Open(options with { Key = options.Key ?? SampleKeys.Text }, between);

    internal CalibrationClient ConnectWithoutKey(params ReadOnlySpan<DelegatingHandler> between) => Open(new(), between);

    private CalibrationClient Open(CalibrationClientOptions options, ReadOnlySpan<DelegatingHandler> between)
    {
        HttpMessageHandler transport = new ContractCheckingHandler { InnerHandler = service.Server.CreateHandler() };
        for (var i = between.Length - 1; i >= 0; i--)
        {
            between[i].InnerHandler = transport;
            transport = between[i];
        }

        return new CalibrationClient(new Uri("http://localhost"), options with { Transport = transport });
    }
}
