using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests.Operations;

/// <summary>How SQLite would run a statement: the lines of EXPLAIN QUERY PLAN.</summary>
internal sealed record StatementPlan(string Sql, IReadOnlyList<string> Steps)
{
    public static StatementPlan Of(SqliteConnection connection, string sql, IEnumerable<(string Name, object? Value)> parameters)
    {
        if (sql.Contains(';', StringComparison.Ordinal))
            throw new NotSupportedException($"Only the first of these statements would be explained; run them one by one: {sql}");
        using var command = connection.CreateCommand();
        command.CommandText = "explain query plan " + sql;
        foreach (var (name, value) in parameters)
            command.Parameters.AddWithValue(name, value ?? DBNull.Value);
        using var reader = command.ExecuteReader();
        var steps = new List<string>();
        while (reader.Read())
            steps.Add(reader.GetString(reader.GetOrdinal("detail")));
        return new StatementPlan(sql, steps);
    }

    /// <summary>Steps that read a whole table or index, or build an index to avoid it. Reading the rows of a subquery is none.</summary>
    public IEnumerable<string> Scans =>
        Steps.Where(step =>
            step.Contains("AUTOMATIC", StringComparison.Ordinal)
            || (step.StartsWith("SCAN ", StringComparison.Ordinal) && !IsSubquery(step["SCAN ".Length..].Split(' ')[0]))
        );

    public IEnumerable<string> Sorts => Steps.Where(step => step.StartsWith("USE TEMP B-TREE", StringComparison.Ordinal));

    public override string ToString() => $"{Sql}\n  {string.Join("\n  ", Steps)}";

    private bool IsSubquery(string name) =>
        name == "CONSTANT" || Steps.Contains($"CO-ROUTINE {name}") || Steps.Contains($"MATERIALIZE {name}");
}
