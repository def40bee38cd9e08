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

    /// <summary>The assemblies that it has loaded, by their files; on Linux.</summary>
    public IReadOnlySet<string> Assemblies() =>
        File.ReadLines($"/proc/{process.Id}/maps")
            .Select(line => line.Split(' ')[^1])
            .Where(file => file.EndsWith(".dll", StringComparison.Ordinal))
            .ToHashSet(StringComparer.Ordinal);

    /// <summary>What a line of the log says, once it is written.</summary>
    public async Task<string> LoggedAsync(string words)
    {
        using var patience = new CancellationTokenSource(Patience);
        while (await process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            if (line.Contains(words, StringComparison.Ordinal))
                return line;
        }

        throw new InvalidOperationException($"The service ended without saying '{words}': {await errors}");
    }

    public static ServiceProcess Start(params string[] arguments) => StartBy([], arguments);

    /// <summary>Starts the service by a command that takes the service and its arguments as its last ones.</summary>
    public static ServiceProcess StartBy(IReadOnlyList<string> command, params string[] arguments)
    {
        var folder = Directory.CreateTempSubdirectory("calibration-tests-").FullName;
        return new ServiceProcess(Run(folder, arguments, command), folder, isOwner: true);
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

    private static Process Run(string folder, string[] arguments, IReadOnlyList<string>? command = null)
    {
        var dotnet = Environment.ProcessPath is { } host && Path.GetFileNameWithoutExtension(host) == "dotnet" ? host : "dotnet";
        string[] all = [.. command ?? [], dotnet, Path.Combine(AppContext.BaseDirectory, "CalibrationApi.dll"), .. arguments];
        var start = new ProcessStartInfo(all[0], all.Skip(1))
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
            WorkingDirectory = AppContext.BaseDirectory,
        };
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
