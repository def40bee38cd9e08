using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The npm tools of <c>openapi/</c>, installed from their lock file when they are missing or out of date.</summary>
internal static class NodeTools
{
    private static readonly Lazy<Task> Installed = new(InstallAsync);

    public static string Folder { get; } = Repository.PathOf("openapi");

    /// <summary>Runs a script of package.json.</summary>
    public static Task<Command> ScriptAsync(string script) => RunInAsync(Folder, "npm", "run", "--silent", script);

    /// <summary>Runs a tool.</summary>
    public static Task<Command> RunAsync(string tool, params IEnumerable<string> arguments) => RunInAsync(Folder, PathOf(tool), arguments);

    /// <summary>Runs a tool in another folder.</summary>
    public static Task<Command> RunAtAsync(string folder, string tool, params IEnumerable<string> arguments) => RunInAsync(folder, PathOf(tool), arguments);

    private static async Task<Command> RunInAsync(string folder, string program, params IEnumerable<string> arguments)
    {
        await Installed.Value;
        return await Command.RunAsync(folder, program, arguments);
    }

    private static string PathOf(string tool) => Path.Combine(Folder, "node_modules", ".bin", tool);

    private static async Task InstallAsync()
    {
        // npm writes this file last.
        var done = new FileInfo(Path.Combine(Folder, "node_modules", ".package-lock.json"));
        if (done.Exists && done.LastWriteTimeUtc >= File.GetLastWriteTimeUtc(Path.Combine(Folder, "package-lock.json")))
            return;
        var install = await Command.RunAsync(Folder, "npm", "ci", "--no-audit", "--no-fund", "--ignore-scripts");
        Assert.True(install.ExitCode == 0, $"npm ci failed in openapi/. {install.Everything}");
    }
}
