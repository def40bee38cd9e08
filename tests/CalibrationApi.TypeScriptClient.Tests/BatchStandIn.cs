using System.Diagnostics;
using CalibrationApi.Testing;

namespace CalibrationApi.TypeScriptClient.Tests;

/// <summary>A service with batches, by passing each line on to the real one; goes when the contract has batches.</summary>
internal sealed class BatchStandIn : IAsyncDisposable
{
    private readonly Process process;

    private BatchStandIn(Process process, string address) => (this.process, Address) = (process, address);

    public string Address { get; }

    public static async Task<BatchStandIn> StartAsync(string service)
    {
        var script = Repository.PathOf("tests", "CalibrationApi.TypeScriptClient.Tests", "Node", "batch-stand-in.mjs");
        var process = Process.Start(new ProcessStartInfo("node", [script, service]) { RedirectStandardOutput = true })!;
        var address = await process.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("The stand-in for batches did not start.");
        return new BatchStandIn(process, address);
    }

    public async ValueTask DisposeAsync()
    {
        process.Kill();
        await process.WaitForExitAsync();
        process.Dispose();
    }
}
