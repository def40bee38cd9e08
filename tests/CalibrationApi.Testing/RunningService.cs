using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using Xunit;

namespace CalibrationApi.Testing;

/// <summary>
/// The built service as a process of its own on a free loopback port, with the demo season, started as the README starts it.
/// </summary>
public sealed partial class RunningService : IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calibration-examples-");
    private readonly TaskCompletionSource<string> address = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly StringBuilder log = new();
    private Process? process;

    /// <summary>Settings to start it with, as environment variables.</summary>
    public IReadOnlyDictionary<string, string> Settings { get; init; } = new Dictionary<string, string>();

    /// <summary>Where it listens.</summary>
    public string Address => address.Task.Result;

    /// <summary>The file that holds what it stores.</summary>
    public string Database => Path.Combine(folder.FullName, "examples.db");

    /// <summary>What it wrote to its log so far.</summary>
    public string Log
    {
        get
        {
            lock (log)
                return log.ToString();
        }
    }

    /// <summary>How much memory the process holds now, bytes.</summary>
    public long ResidentMemory
    {
        get
        {
            process!.Refresh();
            return process.WorkingSet64;
        }
    }

    public async Task InitializeAsync()
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "CalibrationApi.dll"), "--demo"])
        {
            WorkingDirectory = folder.FullName,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        // Port 0 lets the system pick a free one, so runs beside each other never meet.
        start.Environment["ASPNETCORE_URLS"] = "http://127.0.0.1:0";
        start.Environment["ASPNETCORE_ENVIRONMENT"] = "Production";
        start.Environment["Calibration__Database"] = Database;
        foreach (var (name, value) in Settings)
            start.Environment[name] = value;
        process = Process.Start(start) ?? throw new InvalidOperationException("The service did not start.");
        process.OutputDataReceived += (_, line) => Read(line.Data);
        process.ErrorDataReceived += (_, line) => Read(line.Data);
        process.EnableRaisingEvents = true;
        process.Exited += (_, _) => address.TrySetException(new InvalidOperationException($"The service ended before it listened. {log}"));
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        await address.Task.WaitAsync(Patience);
    }

    public async Task DisposeAsync()
    {
        if (process is not null)
        {
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync();
            process.Dispose();
        }

        folder.Delete(recursive: true);
    }

    /// <summary>Runs a command of the service on its database and gives what that prints.</summary>
    public async Task<string> CommandAsync(params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "CalibrationApi.dll"), .. arguments])
        {
            WorkingDirectory = folder.FullName,
            RedirectStandardOutput = true,
        };
        start.Environment["Calibration__Database"] = Database;
        using var command = Process.Start(start) ?? throw new InvalidOperationException("The command did not start.");
        var output = await command.StandardOutput.ReadToEndAsync();
        await command.WaitForExitAsync();
        return command.ExitCode == 0 ? output.Trim() : throw new InvalidOperationException($"The command ended with {command.ExitCode}.");
    }

    private void Read(string? line)
    {
        if (line is null)
            return;
        lock (log)
            log.AppendLine(line);
        if (Listening().Match(line) is { Success: true } match)
            address.TrySetResult(match.Groups[1].Value);
    }

    [GeneratedRegex(@"Reference page: (http://\S+)/reference")]
    private static partial Regex Listening();
}
