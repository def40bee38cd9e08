using CalibrationApi.Storage;
using Dapper;

namespace CalibrationApi.Tests.Plumbing.Keeping;

/// <summary>A database that cannot be used stops the start, with a sentence that says what to do.</summary>
public sealed class UnusableFileAtStartTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("calibration-start-").FullName;

    private string Database => Path.Combine(folder, "calibration.db");

    [Fact]
    public async Task Start_WithTheDatabaseOfANewerService_EndsWithASentence()
    {
        Prepare("pragma user_version = 9999");

        await AssertRefusedAsync(Database, "It has schema 9999, this service knows schemas up to ");
    }

    [Fact]
    public async Task Start_WithTheDatabaseOfAnotherProgram_EndsWithASentence()
    {
        Prepare("pragma user_version = 0");

        await AssertRefusedAsync(Database, "It belongs to another program.");
    }

    [Fact]
    public async Task Start_WithAFileThatIsNoDatabase_EndsWithASentence()
    {
        await File.WriteAllTextAsync(Database, "Somebody's notes about the harvest, long enough to hold the header of a database.");

        await AssertRefusedAsync(Database, "The file is no database.");
    }

    [Fact]
    public async Task Start_WithADamagedFile_EndsWithASentence()
    {
        Prepare();
        var content = await File.ReadAllBytesAsync(Database);
        content.AsSpan(4096, 8 * 4096).Fill(0x5a);
        await File.WriteAllBytesAsync(Database, content);

        await AssertRefusedAsync(Database, "It is damaged.");
    }

    [Fact]
    public async Task Start_WithAFolderInThePlaceOfTheFile_EndsWithASentence() => await AssertRefusedAsync(folder, "It is a folder.");

    [Fact]
    public async Task Start_WithAFolderThatCannotBeMade_EndsWithASentence()
    {
        Prepare();

        await AssertRefusedAsync(Path.Combine(Database, "below", "calibration.db"), "Its folder does not exist and cannot be made.");
    }

    [UnixFact]
    public async Task Start_WithAFileThatMayOnlyBeRead_EndsWithASentence()
    {
        Prepare();
        Limit(Database, UnixFileMode.UserRead);

        await AssertRefusedAsync(Database, "It cannot be written:");
    }

    [UnixFact]
    public async Task Start_InAFolderThatMayOnlyBeRead_EndsWithASentence()
    {
        Limit(folder, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        try
        {
            await AssertRefusedAsync(Database, "It cannot be opened.");
        }
        finally
        {
            Limit(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static async Task AssertRefusedAsync(string file, string sentence)
    {
        await using var service = ServiceProcess.StartBy(Unprivileged(), "--urls", "http://127.0.0.1:0", "--Calibration:Database", file);

        var (exitCode, errors) = await service.EndAsync();

        Assert.Equal(1, exitCode);
        Assert.StartsWith($"Refusing to start: The database {file} cannot be used. {sentence}", errors, StringComparison.Ordinal);
        Assert.Single(errors.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    // Permissions hold nobody up who may override them, as an administrator may.
    private static string[] Unprivileged() =>
        Environment.IsPrivilegedProcess && OperatingSystem.IsLinux() ? ["setpriv", "--bounding-set=-all", "--inh-caps=-all"] : [];

    private static void Limit(string path, UnixFileMode mode)
    {
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(path, mode);
    }

    private void Prepare(string? change = null)
    {
        using var database = new CalibrationDatabase(Database);
        database.Prepare();
        if (change is null)
            return;
        using var connection = database.Open();
        connection.Execute(change);
    }
}

/// <summary>A test of what only Unix has.</summary>
public sealed class UnixFactAttribute : FactAttribute
{
    public UnixFactAttribute() => Skip = OperatingSystem.IsWindows() ? "The system has no such permissions." : null;
}
