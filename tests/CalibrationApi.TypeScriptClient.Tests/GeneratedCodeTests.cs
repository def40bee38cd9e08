namespace CalibrationApi.TypeScriptClient.Tests;

/// <summary>What the client knows of the contract is what the committed contract says.</summary>
public sealed class GeneratedCodeTests : IDisposable
{
    private readonly DirectoryInfo made = Directory.CreateTempSubdirectory("calibration-generated-");

    [Theory]
    [InlineData("schema.d.ts")]
    [InlineData("operations.ts")]
    public async Task CommittedFile_ComparedWithOneMadeFromTheContract_IsEqualByteForByte(string file)
    {
        await ClientSource.ReadyAsync();

        await ClientSource.GenerateAsync(made.FullName);

        Assert.True(
            await File.ReadAllTextAsync(Path.Combine(made.FullName, file))
                == await File.ReadAllTextAsync(Path.Combine(ClientSource.Folder, "src", file)),
            $"src/Clients/TypeScript/src/{file} is not made from openapi/v1.json as it is now. Run 'npm run generate' in src/Clients/TypeScript, or {ClientSource.Switch}=1 dotnet test tests/CalibrationApi.TypeScriptClient.Tests, and read the difference."
        );
    }

    public void Dispose() => made.Delete(recursive: true);
}
