using CalibrationApi.Testing;

namespace CalibrationApi.Clients.Tests;

/// <summary>The generated part of the C# client is what the generator makes of the committed contract.</summary>
public sealed class GeneratedCodeTests(GeneratedCodeTests.MadeAnew made) : IClassFixture<GeneratedCodeTests.MadeAnew>
{
    public const string Switch = "CALIBRATION_UPDATE_CLIENTS";

    private const string CSharp = "src/Clients/CSharp/Generated";

    [Theory]
    [InlineData(CSharp, "CalibrationCore.cs")]
    public async Task GeneratedFiles_ComparedWithTheCommittedOnes_AreEqualByteForByte(string folder, string landmark)
    {
        var (fresh, committed) = (Files(made.Root, folder), Files(Repository.Root, folder));

        Assert.Contains(landmark, fresh);
        Assert.True(fresh.SequenceEqual(committed), $"{folder} should have {Listed(fresh.Except(committed))} and should not have {Listed(committed.Except(fresh))}. {MadeAnew.Advice}");
        foreach (var file in fresh)
        {
            var expected = await File.ReadAllBytesAsync(Path.Combine(made.Root, folder, file));
            var found = await File.ReadAllBytesAsync(Repository.PathOf(folder, file));
            Assert.True(expected.SequenceEqual(found), $"{folder}/{file} is not what the generator makes of the contract. {MadeAnew.Advice}");
        }
    }

    private static string[] Files(string root, string folder) =>
    [
        .. Directory.EnumerateFiles(Path.Combine(root, folder), "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Path.Combine(root, folder), file))
            .Order(StringComparer.Ordinal),
    ];

    private static string Listed(IEnumerable<string> files) => string.Join(", ", files) is { Length: > 0 } list ? list : "no other file";

    /// <summary>A copy of the contract, and what the generator makes of it. With the switch, what is committed is made anew first.</summary>
    public sealed class MadeAnew : IAsyncLifetime
    {
        public static string Advice => $"Run src/Clients/generate.sh, or {Switch}=1 dotnet test tests/CalibrationApi.Clients.Tests, and read the difference (git diff src/Clients).";

        private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calibration-clients-");

        public string Root => folder.FullName;

        public async Task InitializeAsync()
        {
            if (Environment.GetEnvironmentVariable(Switch) == "1")
                await GenerateAsync(Repository.Root);
            Directory.CreateDirectory(Path.Combine(Root, "openapi"));
            File.Copy(Repository.PathOf("openapi", "v1.json"), Path.Combine(Root, "openapi", "v1.json"));
            await GenerateAsync(Root);
        }

        public Task DisposeAsync()
        {
            folder.Delete(recursive: true);
            return Task.CompletedTask;
        }

        private static async Task GenerateAsync(string root)
        {
            var generated = await Command.RunAsync(Repository.Root, "bash", "src/Clients/generate.sh", root);
            Assert.True(generated.ExitCode == 0, generated.Everything);
        }
    }
}
