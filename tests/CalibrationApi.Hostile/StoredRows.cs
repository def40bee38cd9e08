using Microsoft.Data.Sqlite;

namespace CalibrationApi.Hostile;

/// <summary>What the database holds, looked at from outside while the service runs.</summary>
public sealed class StoredRows : IDisposable
{
    /// <summary>The table that also says who took data out: a list read as a table is noted there.</summary>
    public const string Audit = "audit";

    // What is counted of requests that were turned away is meant to be stored.
    private const string Refusals = "refusals";

    private readonly SqliteConnection connection;
    private readonly string counts;

    /// <summary>Opens the file.</summary>
    public StoredRows(string database)
    {
        connection = new SqliteConnection(
            new SqliteConnectionStringBuilder
            {
                DataSource = database,
                Mode = SqliteOpenMode.ReadWrite,
                Pooling = false,
            }.ToString()
        );
        connection.Open();
        var tables = Texts("select name from sqlite_schema where type = 'table' and name not like 'sqlite_%' order by name")
            .Where(table => table != Refusals);
        // A replacement adds no row; it raises the revision of one.
        counts = string.Join(
            " union all ",
            tables.Select(table =>
                $"select '{table}', (select count(*) from \"{table}\"), {(Texts($"select name from pragma_table_info('{table}')").Contains("revision") ? $"(select total(revision) from \"{table}\")" : "0")}"
            )
        );
    }

    /// <summary>Differs from an earlier one when anything at all was committed between.</summary>
    public long Version()
    {
        using var command = connection.CreateCommand();
        command.CommandText = "pragma data_version";
        return (long)command.ExecuteScalar()!;
    }

    /// <summary>Rows and revisions of every table that a refused request leaves alone, by its name.</summary>
    public IReadOnlyDictionary<string, string> Counts()
    {
        using var command = connection.CreateCommand();
        command.CommandText = counts;
        using var reader = command.ExecuteReader();
        var found = new Dictionary<string, string>();
        while (reader.Read())
            found.Add(reader.GetString(0), $"{reader.GetInt64(1)} rows, {reader.GetDouble(2):0} revisions");
        return found;
    }

    /// <inheritdoc/>
    public void Dispose() => connection.Dispose();

    private List<string> Texts(string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        var found = new List<string>();
        while (reader.Read())
            found.Add(reader.GetString(0));
        return found;
    }
}
