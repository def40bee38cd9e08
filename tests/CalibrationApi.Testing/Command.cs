using System.Diagnostics;
using System.Text;

namespace CalibrationApi.Testing;

/// <summary>Runs a program to its end.</summary>
public sealed record Command(int ExitCode, string Output, string Errors)
{
    // Generous: it only ends a program that would never end. The first installation of the tools takes longest.
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(10);

    /// <summary>What the program wrote to both streams.</summary>
    public string Everything => $"{Output}{Environment.NewLine}{Errors}";

    /// <summary>Runs it.</summary>
    /// <param name="folder">Where it runs.</param>
    /// <param name="program">Its name or path.</param>
    /// <param name="arguments">What it is given.</param>
    public static async Task<Command> RunAsync(string folder, string program, params IEnumerable<string> arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        // The tools ask nobody outside for news and send no news themselves.
        start.Environment["REDOCLY_TELEMETRY"] = "off";
        start.Environment["REDOCLY_SUPPRESS_UPDATE_NOTICE"] = "true";
        start.Environment["NO_COLOR"] = "1";
        start.Environment["FORCE_COLOR"] = "0";
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{program} did not start.");
        using var limit = new CancellationTokenSource(Patience);
        var (output, errors) = (process.StandardOutput.ReadToEndAsync(limit.Token), process.StandardError.ReadToEndAsync(limit.Token));
        try
        {
            await process.WaitForExitAsync(limit.Token);
            return new Command(process.ExitCode, await output, await errors);
        }
        catch (OperationCanceledException)
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException($"{program} {string.Join(' ', start.ArgumentList)} did not end.");
        }
    }
}
