using CalibrationApi.Storage.Access;
using CalibrationApi.Storage.Audit;
using CalibrationApi.Storage.Described;
using CalibrationApi.Storage.OneWriter;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests;

/// <summary>Nothing is acknowledged that went into a file that nobody will find.</summary>
public sealed class FileWatchTests : IAsyncDisposable
{
    private const string Local = TestDatabase.Local;

    private readonly string folder = Directory.CreateTempSubdirectory("calibration-watch-").FullName;
    private readonly List<string?> told = [];
    private readonly CalibrationDatabase database;
    private readonly SingleWriter writer;
    private int written;

    public FileWatchTests()
    {
        database = new CalibrationDatabase(File("calibration.db")) { Tell = told.Add };
        database.Prepare();
        writer = new SingleWriter(database);
    }

    [Fact]
    public async Task Write_AfterTheFileWasDeleted_IsRefused()
    {
        await WriteAsync();
        System.IO.File.Delete(database.Path);

        await AssertRefusedAsync("Its file was deleted, moved or replaced");
        Assert.Throws<UnusableDatabaseException>(() => database.Read(KeyStore.AnyExists));
        Assert.Throws<UnusableDatabaseException>(() => database.Open());
        Assert.False(System.IO.File.Exists(database.Path));
    }

    // The moment between the look before and the commit: it was written, and nobody is told that it is safe.
    [Fact]
    public async Task Write_WhileTheFileIsDeleted_IsNotAcknowledged()
    {
        await WriteAsync();

        var writing = writer.WriteAsync(connection =>
        {
            Insert(connection);
            System.IO.File.Delete(database.Path);
            return true;
        });

        await Assert.ThrowsAsync<UnusableDatabaseException>(() => writing);
    }

    [Fact]
    public async Task Write_OnceTheFileIsBack_GoesOn()
    {
        await WriteAsync();
        System.IO.File.Move(database.Path, File("elsewhere.db"));
        await AssertRefusedAsync("Its file was deleted, moved or replaced");
        await AssertRefusedAsync("Its file was deleted, moved or replaced");

        System.IO.File.Move(File("elsewhere.db"), database.Path);
        Assert.False(database.Read(KeyStore.AnyExists));
        await WriteAsync();

        Assert.Equal(2, database.Read(connection => connection.QuerySingle<int>("select count(*) from products")));
        // Once each, however many noticed.
        Assert.Equal(2, told.Count);
        Assert.NotNull(told[0]);
        Assert.Null(told[1]);
    }

    [Fact]
    public async Task Write_AfterAnotherFileTookItsPlace_IsRefusedAndLeavesThatAlone()
    {
        await WriteAsync();
        var other = Other("other.db");
        var before = await System.IO.File.ReadAllBytesAsync(other);
        System.IO.File.Move(other, database.Path, overwrite: true);

        await AssertRefusedAsync("Its file was deleted, moved or replaced");

        Assert.Equal(before, await System.IO.File.ReadAllBytesAsync(database.Path));
    }

    [Fact]
    public async Task Write_AfterAnEqualCopyTookItsPlace_IsRefused()
    {
        await WriteAsync();
        System.IO.File.Copy(database.Path, File("copy.db"));
        System.IO.File.SetLastWriteTimeUtc(File("copy.db"), System.IO.File.GetLastWriteTimeUtc(database.Path));
        System.IO.File.Move(File("copy.db"), database.Path, overwrite: true);

        await AssertRefusedAsync("Its file was deleted, moved or replaced");
    }

    [Fact]
    public async Task Write_AfterAnotherDatabaseWasCopiedOverIt_IsRefused()
    {
        await WriteAsync();
        await Task.Delay(20);
        System.IO.File.Copy(Other("other.db"), database.Path, overwrite: true);

        await AssertRefusedAsync("Its file was overwritten");
        await AssertRefusedAsync("Its file was overwritten");
    }

    [Fact]
    public async Task Write_AfterTheFileWasEmptied_IsRefusedUntilItsContentIsBack()
    {
        await WriteAsync();
        System.IO.File.Copy(database.Path, File("copy.db"));
        await Task.Delay(20);
        await System.IO.File.WriteAllBytesAsync(database.Path, []);

        await AssertRefusedAsync("Its file was overwritten");
        Assert.Throws<UnusableDatabaseException>(() => database.Read(KeyStore.AnyExists));
        System.IO.File.Copy(File("copy.db"), database.Path, overwrite: true);

        Assert.False(database.Read(KeyStore.AnyExists));
        await WriteAsync();
    }

    [Fact]
    public async Task Write_AfterAnEarlierCopyWasCopiedOverIt_IsRefused()
    {
        await WriteAsync();
        using (var connection = database.Open())
        {
            connection.Execute("vacuum into @file", new { file = File("earlier.db") });
            await WriteAsync();
            connection.Execute("pragma wal_checkpoint(truncate)");
        }

        await WriteAsync();
        await Task.Delay(20);
        System.IO.File.Copy(File("earlier.db"), database.Path, overwrite: true);

        await AssertRefusedAsync("Its file was overwritten");
    }

    [Fact]
    public async Task Write_AfterTheLogWasDeleted_IsRefusedAndStoppingSavesWhatWasAcknowledged()
    {
        await WriteAsync();
        System.IO.File.Delete(database.Path + "-wal");

        await AssertRefusedAsync("The file beside it that ends in -wal was deleted");
        await writer.DisposeAsync();
        database.Dispose();

        using var again = new CalibrationDatabase(database.Path);
        again.Prepare();
        Assert.InRange(again.Read(connection => connection.QuerySingle<int>("select count(*) from products")), 1, 2);
    }

    [Fact]
    public async Task Write_AfterTheLogWentIntoTheFile_GoesOn()
    {
        for (var i = 0; i < 3; i++)
        {
            await WriteAsync();
            // As SQLite does it by itself when the log has grown.
            await Task.Delay(20);
            using var connection = database.Open();
            connection.Execute("pragma wal_checkpoint(truncate)");
        }

        await WriteAsync();

        Assert.Empty(told);
    }

    // While pages are moved, the file holds some of two states side by side.
    [Fact]
    public async Task Writes_WhileAnotherConnectionMovesTheLogIntoTheFile_AreNotRefused()
    {
        using var enough = new CancellationTokenSource();
        var moving = Task.Run(() =>
        {
            using var other = new SqliteConnection($"Data Source={database.Path};Pooling=False");
            other.Open();
            while (!enough.IsCancellationRequested)
                other.Execute("pragma wal_checkpoint(passive)");
        });

        for (var i = 0; i < 300; i++)
            await Task.WhenAll(WriteAsync(), WriteAsync(), WriteAsync());
        await enough.CancelAsync();
        await moving;

        Assert.Empty(told);
    }

    public async ValueTask DisposeAsync()
    {
        await writer.DisposeAsync();
        database.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    private string File(string name) => Path.Combine(folder, name);

    private string Other(string name)
    {
        using var other = new CalibrationDatabase(File(name));
        other.Prepare();
        return other.Path;
    }

    private Task<bool> WriteAsync() => writer.WriteAsync(Insert);

    private bool Insert(SqliteConnection connection)
    {
        var number = ++written;
        new DescribedRecordStore(RecordKind.Products).Insert(connection, Local, Given.Described(Given.Id(number)));
        AuditStore.Append(
            connection,
            Local,
            new AuditEntry
            {
                At = Given.Noon,
                Actor = AuditEntry.ByLocal,
                Action = "createProduct",
            }
        );
        return true;
    }

    private async Task AssertRefusedAsync(string sentence)
    {
        var refusal = await Assert.ThrowsAsync<UnusableDatabaseException>(WriteAsync);
        Assert.StartsWith(sentence, refusal.Message, StringComparison.Ordinal);
        Assert.Equal(refusal.Message, told[^1]);
    }
}
