using System.Text.Json;
using CalibrationApi.Testing;

namespace CalibrationApi.TypeScriptClient.Tests;

/// <summary>A project as a caller has it: the client built, packed, and installed from the tarball.</summary>
public sealed class InstalledPackage : IAsyncLifetime
{
    private static readonly string[] Scripts = ["Node", "Uses", "Browser", "Service"];

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calibration-typescript-");

    /// <summary>Top folder of the project.</summary>
    public string Folder => folder.FullName;

    /// <summary>Files in the tarball.</summary>
    public IReadOnlyList<string> Packed { get; private set; } = [];

    public async Task InitializeAsync()
    {
        await ClientSource.ReadyAsync();
        ClientSource.Succeeded(
            "The client does not compile.",
            await Command.RunAsync(ClientSource.Folder, "npm", "run", "--silent", "build")
        );
        var pack = ClientSource.Succeeded(
            "The client cannot be packed.",
            await Command.RunAsync(ClientSource.Folder, "npm", "pack", "--json", "--pack-destination", Folder)
        );
        var packed = JsonDocument.Parse(pack.Output).RootElement[0];
        Packed = [.. packed.GetProperty("files").EnumerateArray().Select(file => file.GetProperty("path").GetString()!)];
        await File.WriteAllTextAsync(Path.Combine(Folder, "package.json"), """{ "name": "caller", "private": true, "type": "module" }""");
        ClientSource.Succeeded(
            "The tarball cannot be installed.",
            await Command.RunAsync(
                Folder,
                "npm",
                "install",
                packed.GetProperty("filename").GetString()!,
                "--prefer-offline",
                "--no-audit",
                "--no-fund",
                "--ignore-scripts"
            )
        );
        foreach (
            var file in Scripts.SelectMany(name =>
                Directory.GetFiles(Repository.PathOf("tests", "CalibrationApi.TypeScriptClient.Tests", name))
            )
        )
            File.Copy(file, Path.Combine(Folder, Path.GetFileName(file)));
    }

    /// <summary>Compiles a module of the project as a careful caller does.</summary>
    public Task<Command> CompileAsync(params IEnumerable<string> files) =>
        Command.RunAsync(
            Folder,
            "node",
            [
                ClientSource.Compiler,
                .. files,
                "--strict",
                "--exactOptionalPropertyTypes",
                "--noUncheckedIndexedAccess",
                "--skipLibCheck",
                "false",
                "--target",
                "es2022",
                "--module",
                "nodenext",
                "--lib",
                "es2022,dom,dom.iterable",
                "--pretty",
                "false",
            ]
        );

    public Task DisposeAsync()
    {
        folder.Delete(recursive: true);
        return Task.CompletedTask;
    }
}

/// <summary>The package is built once for all tests, which share no more than that.</summary>
[CollectionDefinition(Name)]
public sealed class OnePackage : ICollectionFixture<InstalledPackage>
{
    public const string Name = "package";
}
