namespace CalibrationApi.Testing;

/// <summary>The npm tools of <c>openapi/</c>, installed from their lock file when they are missing or out of date.</summary>
public static class NodeTools
{
    public static string Folder { get; } = Repository.PathOf("openapi");

    private static readonly Lazy<Task> Installed = new(() => NpmInstallation.EnsureAsync(Folder));

    /// <summary>Installs them, for whoever runs them in another way.</summary>
    public static Task ReadyAsync() => Installed.Value;

    /// <summary>Runs a script of package.json.</summary>
    public static Task<Command> ScriptAsync(string script) => RunInAsync(Folder, "npm", "run", "--silent", script);

    /// <summary>Runs a tool.</summary>
    public static Task<Command> RunAsync(string tool, params IEnumerable<string> arguments) => RunInAsync(Folder, PathOf(tool), arguments);

    /// <summary>Runs a tool in another folder.</summary>
    public static Task<Command> RunAtAsync(string folder, string tool, params IEnumerable<string> arguments) =>
        RunInAsync(folder, PathOf(tool), arguments);

    /// <summary>Runs a script of our own, which finds the tools from the folder that it runs in.</summary>
    public static Task<Command> RunScriptAsync(string path, params IEnumerable<string> arguments) =>
        RunInAsync(Folder, "node", [path, .. arguments]);

    private static async Task<Command> RunInAsync(string folder, string program, params IEnumerable<string> arguments)
    {
        await Installed.Value;
        return await Command.RunAsync(folder, program, arguments);
    }

    private static string PathOf(string tool) => Path.Combine(Folder, "node_modules", ".bin", tool);
}
