using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace CalibrationApi.Benchmarks;

/// <summary>A program in a process of its own, from its start to its first answer and beyond.</summary>
internal sealed class StartedProgram : IDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(2);
    private static readonly TimeSpan Rest = TimeSpan.FromSeconds(2);

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calibration-start-");
    private readonly Process process;

    private StartedProgram(string program, string[] arguments, int port)
    {
        EndPoint = new IPEndPoint(IPAddress.Loopback, port);
        var start = new ProcessStartInfo("dotnet", [program, .. arguments])
        {
            WorkingDirectory = folder.FullName,
            RedirectStandardOutput = true,
        };
        start.Environment["ASPNETCORE_URLS"] = string.Create(CultureInfo.InvariantCulture, $"http://{EndPoint}");
        start.Environment["ASPNETCORE_ENVIRONMENT"] = "Production";
        start.Environment["Calibration__Database"] = Path.Combine(folder.FullName, "start.db");
        start.Environment["Calibration__Limits__RequestsPerMinuteLocal"] = "100000000";
        process = Process.Start(start)!;
        process.OutputDataReceived += static (_, _) => { };
        process.BeginOutputReadLine();
    }

    public IPEndPoint EndPoint { get; }

    /// <summary>Seconds by the clock until the first answer was there.</summary>
    public double FirstAnswer { get; private set; }

    /// <summary>Seconds of all cores until then.</summary>
    public double FirstAnswerOfCores { get; private set; }

    /// <summary>Starts a program and asks it as soon as it listens.</summary>
    public static async Task<StartedProgram> RunAsync(string program, string[] arguments, string path, byte[] body)
    {
        var start = Stopwatch.GetTimestamp();
        var started = new StartedProgram(program, arguments, FreePort());
        while (!await started.AnswersAsync(path, body))
            await Task.Delay(Pause);
        started.FirstAnswer = Stopwatch.GetElapsedTime(start).TotalSeconds;
        started.process.Refresh();
        started.FirstAnswerOfCores = started.process.TotalProcessorTime.TotalSeconds;
        return started;
    }

    /// <summary>MiB that the process holds once it has nothing to do.</summary>
    public async Task<double> MemoryAtRestAsync()
    {
        await Task.Delay(Rest);
        process.Refresh();
        return process.WorkingSet64 / (1024.0 * 1024.0);
    }

    public void Dispose()
    {
        process.Kill(entireProcessTree: true);
        process.WaitForExit();
        process.Dispose();
        folder.Delete(recursive: true);
    }

    private async Task<bool> AnswersAsync(string path, byte[] body)
    {
        if (process.HasExited)
            throw new InvalidOperationException("The program ended before it answered.");
        try
        {
            using var load = await ExchangeLoad.PostingAsync(EndPoint, path, body, 1, 200);
            await load.RunAsync(TimeSpan.Zero);
            return true;
        }
        catch (SocketException)
        {
            return false;
        }
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
