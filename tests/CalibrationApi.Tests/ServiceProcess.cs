using System.Diagnostics;
using System.Text.RegularExpressions;

namespace CalibrationApi.Tests;

/// <summary>The built service as its own process.</summary>
internal sealed partial class ServiceProcess : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly Process process;
    private readonly string folder;
    private readonly Task<string> errors;
    private readonly bool isOwner;

    private ServiceProcess(Process process, string folder, bool isOwner)
    {
        this.process = process;
        this.folder = folder;
        this.isOwner = isOwner;
        errors = process.StandardError.ReadToEndAsync();
    }

    /// <summary>Its database.</summary>
    public string Database => DatabaseIn(folder);

    public static ServiceProcess Start(params string[] arguments)
    {
        var folder = Directory.CreateTempSubdirectory("calibration-tests-").FullName;
        return new ServiceProcess(Run(folder, arguments), folder, isOwner: true);
    }

    /// <summary>Another process on the same database.</summary>
    public ServiceProcess Again(params string[] arguments) => new(Run(folder, arguments), folder, isOwner: false);

    /// <summary>Runs a command on the same database to its end.</summary>
    public async Task<(int ExitCode, string Output, string Errors)> CommandAsync(params string[] arguments)
    {
        await using var command = Again(arguments);
        var output = await command.process.StandardOutput.ReadToEndAsync();
        var (exitCode, said) = await command.EndAsync();
        return (exitCode, output, said);
    }

    private static string DatabaseIn(string folder) => Path.Combine(folder, "calibration.db");

    private static Process Run(string folder, string[] arguments)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath is { } host && Path.GetFileNameWithoutExtension(host) == "dotnet" ? host : "dotnet")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
            WorkingDirectory = AppContext.BaseDirectory,
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "CalibrationApi.dll"));
        foreach (var argument in arguments)
            start.ArgumentList.Add(argument);
        start.Environment.Remove("ASPNETCORE_URLS");
        start.Environment.Remove("ASPNETCORE_HTTP_PORTS");
        start.Environment["ASPNETCORE_ENVIRONMENT"] = "Production";
        start.Environment["Calibration__Database"] = DatabaseIn(folder);
        return Process.Start(start)!;
    }

    /// <summary>Waits until the service says where it listens, and returns that address.</summary>
    public async Task<Uri> ListeningAsync()
    {
        using var patience = new CancellationTokenSource(Patience);
        while (await process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            if (Listening().Match(line) is { Success: true } match)
                return new Uri(match.Groups[1].Value);
        }

        throw new InvalidOperationException($"The service ended before it listened: {await errors}");
    }

    /// <summary>Waits for the end and returns exit code and error output.</summary>
    public async Task<(int ExitCode, string Errors)> EndAsync()
    {
        using var patience = new CancellationTokenSource(Patience);
        await process.WaitForExitAsync(patience.Token);
        return (process.ExitCode, await errors);
    }

    public async ValueTask DisposeAsync()
    {
        if (!process.HasExited)
        {
            process.Kill();
            await process.WaitForExitAsync();
        }

        process.Dispose();
        if (isOwner)
            Directory.Delete(folder, recursive: true);
    }

    [GeneratedRegex(@"Now listening on: (http://[^\s""]+)")]
    private static partial Regex Listening();
}
