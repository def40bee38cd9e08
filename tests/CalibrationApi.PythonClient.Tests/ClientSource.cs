using CalibrationApi.Testing;

namespace CalibrationApi.PythonClient.Tests;

/// <summary>The client as it stands in the repository.</summary>
internal static class ClientSource
{
    public const string Switch = "CALIBRATION_UPDATE_CLIENTS";

    private static readonly Lazy<Task> Prepared = new(PrepareAsync);

    public static string Folder { get; } = Repository.PathOf("src", "Clients", "Python");

    public static string Readme => File.ReadAllText(Path.Combine(Folder, "README.md"));

    /// <summary>Asked by the environment, makes the client's part of the contract anew.</summary>
    public static Task ReadyAsync() => Prepared.Value;

    /// <summary>Makes the client's part of the contract in a folder.</summary>
    public static async Task GenerateAsync(string folder) =>
        Succeeded(
            "The client cannot be made from the contract.",
            await Command.RunAsync(Folder, Python.Executable, "scripts/generate.py", folder)
        );

    public static Command Succeeded(string otherwise, Command command)
    {
        Assert.True(command.ExitCode == 0, $"{otherwise} {command.Everything}");
        return command;
    }

    private static async Task PrepareAsync()
    {
        if (Environment.GetEnvironmentVariable(Switch) == "1")
            await GenerateAsync(Folder);
    }
}
