using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests;

public sealed class MigratorTests
{
    [Fact]
    public void Prepare_NewFile_RecordsTheNewestSchema()
    {
        using var database = TestDatabase.Empty();

        Assert.True(Migrator.Newest > 0);
        Assert.Equal(Migrator.Newest, Version(database));
    }

    [Fact]
    public void Prepare_Again_ChangesNothing()
    {
        using var database = TestDatabase.WithDescribedRecords();
        var (schema, before) = (Schema(database), Changes(database));

        database.Database.Prepare();

        Assert.Equal(schema, Schema(database));
        Assert.Equal(before, Changes(database));
        Assert.Equal(1, database.Count("machines"));
    }

    [Fact]
    public void Prepare_AtTheSameTimeByMany_MigratesOnce()
    {
        using var database = TestDatabase.Unprepared();

        Parallel.For(0, 8, _ =>
        {
            using var one = new CalibrationDatabase(database.Path);
            one.Prepare();
        });

        Assert.Equal(Migrator.Newest, Version(database));
        Assert.Equal(1, database.Count("secrets"));
    }

    [Fact]
    public void Prepare_NewerSchema_RefusesWithASentence()
    {
        using var database = WithSchema(Migrator.Newest + 1);

        var refusal = Assert.Throws<UnusableDatabaseException>(database.Database.Prepare);

        Assert.Equal(
            $"It has schema {Migrator.Newest + 1}, this service knows schemas up to {Migrator.Newest}. Start the newer service, or restore a backup from before its upgrade.",
            refusal.Message
        );
    }

    [Fact]
    public void Prepare_NewerSchema_LeavesTheFileAsItWas()
    {
        using var database = WithSchema(Migrator.Newest + 1);
        var before = database.Close();

        Assert.Throws<UnusableDatabaseException>(database.Database.Prepare);

        Assert.Equal(before, database.Close());
    }

    [Fact]
    public void Prepare_FileThatIsNoDatabase_ThrowsAndLeavesIt()
    {
        var text = "Not a database, but somebody's notes about the harvest, long enough to hold a header."u8.ToArray();
        using var database = TestDatabase.Of(text);

        var refusal = Assert.Throws<UnusableDatabaseException>(database.Database.Prepare);

        Assert.Equal("The file is no database. It was left as it is. Name another file, or restore the last backup.", refusal.Message);
        Assert.Equal(text, database.Close());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Prepare_DatabaseOfAnotherProgram_RefusesAndLeavesIt(int version)
    {
        using var database = TestDatabase.Unprepared();
        using (var other = new SqliteConnection($"Data Source={database.Path};Pooling=False"))
        {
            other.Open();
            other.Execute($"create table machines (number); pragma user_version = {version}");
        }

        var before = File.ReadAllBytes(database.Path);

        Assert.StartsWith(
            "It belongs to another program.",
            Assert.Throws<UnusableDatabaseException>(database.Database.Prepare).Message,
            StringComparison.Ordinal
        );
        Assert.Equal(before, database.Close());
    }

    // The first page stays whole, so that the file opens; what it leads to is gone.
    [Fact]
    public void Prepare_DamagedFile_Refuses()
    {
        using var database = TestDatabase.WithDescribedRecords();
        var content = database.Close();
        content.AsSpan(8 * 4096, 16 * 4096).Fill(0x5a);
        File.WriteAllBytes(database.Path, content);

        Assert.StartsWith(
            "It is damaged.",
            Assert.Throws<UnusableDatabaseException>(database.Database.Prepare).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Prepare_FileCutShort_Refuses()
    {
        using var database = TestDatabase.WithDescribedRecords();
        var content = database.Close();
        File.WriteAllBytes(database.Path, content[..(content.Length / 2)]);

        Assert.StartsWith(
            "It is damaged.",
            Assert.Throws<UnusableDatabaseException>(database.Database.Prepare).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Prepare_PathOfAFolder_Refuses()
    {
        using var database = TestDatabase.Unprepared();
        Directory.CreateDirectory(database.Path);

        Assert.Equal("It is a folder. Name a file.", Assert.Throws<UnusableDatabaseException>(database.Database.Prepare).Message);
    }

    [Fact]
    public void Prepare_FolderThatCannotBeMade_Refuses()
    {
        using var database = TestDatabase.Of("A file where a folder should be."u8.ToArray());
        using var below = new CalibrationDatabase(Path.Combine(database.Path, "calibration.db"));

        Assert.StartsWith(
            "Its folder does not exist and cannot be made.",
            Assert.Throws<UnusableDatabaseException>(below.Prepare).Message,
            StringComparison.Ordinal
        );
    }

    // As a newer version might leave it, with a journal of its own choice.
    private static TestDatabase WithSchema(int version)
    {
        var database = TestDatabase.Empty();
        using var connection = database.Open();
        connection.Execute($"pragma user_version = {version}");
        database.Database.Dispose();
        connection.Close();
        using var alone = new SqliteConnection($"Data Source={database.Path};Pooling=False");
        alone.Open();
        alone.Execute("pragma journal_mode = delete");
        return database;
    }

    private static int Version(TestDatabase database)
    {
        using var connection = database.Open();
        return connection.QuerySingle<int>("pragma user_version");
    }

    private static string[] Schema(TestDatabase database)
    {
        using var connection = database.Open();
        return [.. connection.Query<string>("select coalesce(sql, '') from sqlite_schema order by name")];
    }

    // Goes up with every change of the schema.
    private static int Changes(TestDatabase database)
    {
        using var connection = database.Open();
        return connection.QuerySingle<int>("pragma schema_version");
    }
}
