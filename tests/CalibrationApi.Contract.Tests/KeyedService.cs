using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The running service after somebody made its first key by the command, while it ran.</summary>
public sealed class KeyedService : IAsyncLifetime
{
    /// <summary>The folder of http-examples whose requests show a key.</summary>
    public const string Folder = "keyed";

    private readonly RunningService service = new();

    public string Address => service.Address;

    /// <summary>A key with every scope.</summary>
    public string Key { get; private set; } = "";

    public async Task InitializeAsync()
    {
        await service.InitializeAsync();
        Key = await service.CommandAsync("keys", "create", "--name", "examples", "--scopes", "calculate,read,write,admin,operator");
    }

    public Task DisposeAsync() => service.DisposeAsync();
}
