using System.Security.Cryptography;
using System.Text;

namespace CalibrationApi.Testing;

/// <summary>Installs the npm packages of a folder from its lock file when they are missing or out of date.</summary>
public static class NpmInstallation
{
    private static readonly TimeSpan LookAgain = TimeSpan.FromMilliseconds(200);
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(10);

    public static async Task EnsureAsync(string folder)
    {
        // Test projects run beside each other, each in a process of its own; only one of them may install.
        await using var held = await LockAsync(folder);
        // npm writes this file last.
        var done = new FileInfo(Path.Combine(folder, "node_modules", ".package-lock.json"));
        if (done.Exists && done.LastWriteTimeUtc >= File.GetLastWriteTimeUtc(Path.Combine(folder, "package-lock.json")))
            return;
        var install = await Command.RunAsync(folder, "npm", "ci", "--no-audit", "--no-fund", "--ignore-scripts");
        if (install.ExitCode != 0)
            throw new InvalidOperationException($"npm ci failed in {folder}. {install.Everything}");
    }

    private static async Task<FileStream> LockAsync(string folder)
    {
        var name = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(folder)).AsSpan(0, 8));
        var path = Path.Combine(Path.GetTempPath(), $"calibration-npm-{name}.lock");
        using var limit = new CancellationTokenSource(Patience);
        while (true)
        {
            try
            {
                return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            }
            catch (IOException)
            {
                await Task.Delay(LookAgain, limit.Token);
            }
        }
    }
}
