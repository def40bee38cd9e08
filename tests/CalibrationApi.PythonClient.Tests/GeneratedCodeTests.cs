using CalibrationApi.Testing;

namespace CalibrationApi.PythonClient.Tests;

/// <summary>What the client knows of the contract is what the committed contract says.</summary>
public sealed class GeneratedCodeTests : IDisposable
{
    private readonly DirectoryInfo made = Directory.CreateTempSubdirectory("calibration-generated-");

    [PythonTheory]
    [InlineData("calibration_client/schema.py")]
    [InlineData("calibration_client/quantities.py")]
    [InlineData("calibration_client/operations.py")]
    [InlineData("README.md")]
    public async Task CommittedFile_ComparedWithOneMadeFromTheContract_IsEqualByteForByte(string file)
    {
        await ClientSource.ReadyAsync();

        await ClientSource.GenerateAsync(made.FullName);

        var (fresh, committed) = (
            await File.ReadAllBytesAsync(Path.Combine(made.FullName, file)),
            await File.ReadAllBytesAsync(Path.Combine(ClientSource.Folder, file))
        );
        Assert.True(
            fresh.AsSpan().SequenceEqual(committed),
            $"src/Clients/Python/{file} is not made from openapi/v1.json as it is now. Run 'python3 src/Clients/Python/scripts/generate.py', or {ClientSource.Switch}=1 dotnet test tests/CalibrationApi.PythonClient.Tests, and commit the difference."
        );
    }

    public void Dispose() => made.Delete(recursive: true);
}
