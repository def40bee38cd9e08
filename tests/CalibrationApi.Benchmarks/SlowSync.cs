using System.Diagnostics;
using System.Globalization;

namespace CalibrationApi.Benchmarks;

/// <summary>
/// The comparison of storing once more, in a process in which every fsync takes as long as on a disk that has to write: for both sides
/// alike.
/// </summary>
/// <remarks>Linux with gcc only; elsewhere it says so and measures nothing.</remarks>
internal sealed class SlowSync : IComparison
{
    public const int Milliseconds = 5;

    private const string Switch = "CALIBRATION_SLOW_SYNC_MS";

    /// <summary>This process has been started with slow flushes.</summary>
    public static bool IsOn => Environment.GetEnvironmentVariable(Switch) is not null;

    public string Name => "storing-on-a-disk";

    public async Task<IReadOnlyList<MeasuredRatio>> RunAsync()
    {
        var folder = Directory.CreateTempSubdirectory("calibration-slow-sync-");
        try
        {
            var library = Path.Combine(folder.FullName, "slow-sync.so");
            if (!OperatingSystem.IsLinux() || !await CompileAsync(library))
            {
                await Console.Error.WriteLineAsync($"{Name} needs Linux and gcc; it was not measured.");
                return [];
            }

            // It prints what it finds itself.
            var again = new ProcessStartInfo("dotnet", [typeof(SlowSync).Assembly.Location, new StoringComparison().Name]);
            again.Environment["LD_PRELOAD"] = library;
            again.Environment[Switch] = Milliseconds.ToString(CultureInfo.InvariantCulture);
            using var process = Process.Start(again)!;
            await process.WaitForExitAsync();
            return process.ExitCode == 0 ? [] : throw new InvalidOperationException("Storing with slow flushes failed.");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task<bool> CompileAsync(string library)
    {
        var source = Path.ChangeExtension(library, ".c");
        await using (var text = typeof(SlowSync).Assembly.GetManifestResourceStream("slow-sync.c")!)
        await using (var file = File.Create(source))
            await text.CopyToAsync(file);
        try
        {
            using var gcc = Process.Start("gcc", ["-shared", "-fPIC", "-O1", "-o", library, source, "-ldl"]);
            await gcc.WaitForExitAsync();
            return gcc.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
