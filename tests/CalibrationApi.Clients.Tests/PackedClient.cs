using CalibrationApi.Testing;

namespace CalibrationApi.Clients.Tests;

/// <summary>The client as a package in a folder, and programs that take it from there.</summary>
public sealed class PackedClient : IAsyncLifetime
{
    // No released version, so that no cache has it.
    private const string Version = "0.0.0-packed";

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calibration-package-");

    public async Task InitializeAsync()
    {
        // For both frameworks; only one of them was built for these tests. The folder of this build says in which configuration that
        // was.
        var configuration = new DirectoryInfo(AppContext.BaseDirectory).Parent!.Name;
        var project = Repository.PathOf("src", "Clients", "CSharp", "CalibrationApi.Client.csproj");
        var packed = await Command.RunAsync(
            Repository.Root,
            "dotnet",
            "pack",
            project,
            "--configuration",
            configuration,
            $"-p:PackageVersion={Version}",
            "--output",
            Path.Combine(folder.FullName, "feed")
        );
        Assert.True(packed.ExitCode == 0, packed.Everything);
    }

    public Task DisposeAsync()
    {
        folder.Delete(recursive: true);
        return Task.CompletedTask;
    }

    /// <summary>The packed file.</summary>
    internal string PackageFile => Path.Combine(folder.FullName, "feed", $"CalibrationApi.Client.{Version}.nupkg");

    /// <summary>
    /// Builds a program that refers to the package and to nothing else; the packages it stands on come from where this machine gets its
    /// packages.
    /// </summary>
    internal async Task<Command> BuildAsync(string name, string program, string framework = "net10.0")
    {
        var consumer = folder.CreateSubdirectory(name).FullName;
        await File.WriteAllTextAsync(Path.Combine(consumer, "Program.cs"), program);
        await File.WriteAllTextAsync(
            Path.Combine(consumer, "consumer.csproj"),
            $"""
            <Project Sdk="Microsoft.NET.Sdk">
              <PropertyGroup>
                <OutputType>Exe</OutputType>
                <TargetFramework>{framework}</TargetFramework>
                <Nullable>enable</Nullable>
                <ImplicitUsings>enable</ImplicitUsings>
                <TreatWarningsAsErrors>true</TreatWarningsAsErrors>
                <UseAppHost>false</UseAppHost>
              </PropertyGroup>
              <ItemGroup>
                <PackageReference Include="CalibrationApi.Client" Version="[{Version}]" />
              </ItemGroup>
            </Project>
            """
        );
        // Unpacked beside the program, not into the machine's cache, which would keep the first one for ever. What that cache has is used.
        await File.WriteAllTextAsync(
            Path.Combine(consumer, "nuget.config"),
            $"""
            <configuration>
              <config><add key="globalPackagesFolder" value="../packages-{name}" /></config>
              <fallbackPackageFolders><add key="machine" value="{await MachinePackagesAsync()}" /></fallbackPackageFolders>
              <packageSources><add key="packed" value="../feed" /></packageSources>
            </configuration>
            """
        );
        // Without servers that outlive the build: they would hold its output open, and the test would wait for them.
        return await Command.RunAsync(
            consumer,
            "dotnet",
            "build",
            "--output",
            "built",
            "-nodeReuse:false",
            "-p:UseSharedCompilation=false"
        );
    }

    /// <summary>Runs a program that was built.</summary>
    internal Task<Command> RunAsync(string name) =>
        Command.RunAsync(Path.Combine(folder.FullName, name), "dotnet", Path.Combine("built", "consumer.dll"));

    private static async Task<string> MachinePackagesAsync()
    {
        var told = await Command.RunAsync(Repository.Root, "dotnet", "nuget", "locals", "global-packages", "--list");
        var path = told.Output.Split("global-packages:")[1].Trim();
        // A folder that is missing would be an error, and has nothing anyway.
        Directory.CreateDirectory(path);
        return path;
    }
}
