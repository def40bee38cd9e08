using CalibrationApi.Storage.Access;
using CalibrationApi.Storage.Described;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests;

/// <summary>A database file of its own for one test, in a temporary folder that goes away with it.</summary>
internal sealed class TestDatabase : IDisposable
{
    public const string Local = "local";

    private readonly string folder = Directory.CreateTempSubdirectory("calibration-storage-").FullName;

    private TestDatabase()
    {
        Path = System.IO.Path.Combine(folder, "calibration.db");
        Database = new CalibrationDatabase(Path);
    }

    public string Path { get; }

    public CalibrationDatabase Database { get; }

    /// <summary>A file that does not exist yet.</summary>
    public static TestDatabase Unprepared() => new();

    /// <summary>A file with this content, not yet opened.</summary>
    public static TestDatabase Of(byte[] content)
    {
        var database = new TestDatabase();
        File.WriteAllBytes(database.Path, content);
        return database;
    }

    /// <summary>The newest schema without a row.</summary>
    public static TestDatabase Empty()
    {
        var database = new TestDatabase();
        database.Database.Prepare();
        return database;
    }

    /// <summary>The newest schema with the described records that evidence refers to and a key, in the given workspaces.</summary>
    public static TestDatabase WithDescribedRecords(params string[] workspaces)
    {
        var database = Empty();
        using var connection = database.Open();
        foreach (var workspace in workspaces is [] ? [Local] : workspaces)
        {
            foreach (var kind in Enum.GetValues<RecordKind>())
                new DescribedRecordStore(kind).Insert(connection, workspace, Given.Described(kind));
            if (workspace != Local)
                WorkspaceStore.Insert(connection, workspace, Given.Workspace(workspace));
            KeyStore.Insert(connection, workspace, Given.Key(700));
        }

        return database;
    }

    public SqliteConnection Open() => Database.Open();

    public long Count(string table)
    {
        using var connection = Open();
        return connection.QuerySingle<long>($"select count(*) from {table}");
    }

    /// <summary>Closes the file, so that all of its content is in it, and gives that.</summary>
    public byte[] Close()
    {
        Database.Dispose();
        return File.ReadAllBytes(Path);
    }

    public void Dispose()
    {
        // Pooled handles keep the file open.
        Database.Dispose();
        Directory.Delete(folder, recursive: true);
    }
}
