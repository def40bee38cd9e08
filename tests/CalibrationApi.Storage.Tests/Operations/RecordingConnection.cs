using System.Data;
using System.Data.Common;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests.Operations;

/// <summary>A connection that notes every statement that goes through it, and tells how SQLite would run each.</summary>
internal sealed class RecordingConnection : SqliteConnection
{
    private readonly List<(string Sql, (string Name, object? Value)[] Parameters)> statements = [];
    private bool isNoting;

    public RecordingConnection(string path)
        : base(
            new SqliteConnectionStringBuilder
            {
                DataSource = path,
                ForeignKeys = true,
                Pooling = false,
            }.ToString()
        )
    {
        Open();
        isNoting = true;
    }

    public override SqliteCommand CreateCommand() => new RecordingCommand(this);

    /// <summary>The plans of all statements so far, with the parameters they ran with.</summary>
    public IReadOnlyList<StatementPlan> Plans()
    {
        isNoting = false;
        return [.. statements.Select(statement => StatementPlan.Of(this, statement.Sql, statement.Parameters))];
    }

    private void Note(SqliteCommand command)
    {
        if (isNoting)
            statements.Add(
                (
                    command.CommandText,
                    [.. command.Parameters.Cast<SqliteParameter>().Select(parameter => (parameter.ParameterName, parameter.Value))]
                )
            );
    }

    private sealed class RecordingCommand : SqliteCommand
    {
        private readonly RecordingConnection connection;

        public RecordingCommand(RecordingConnection connection)
        {
            this.connection = connection;
            Connection = connection;
        }

        public override int ExecuteNonQuery()
        {
            connection.Note(this);
            return base.ExecuteNonQuery();
        }

        public override object? ExecuteScalar()
        {
            connection.Note(this);
            return base.ExecuteScalar();
        }

        protected override DbDataReader ExecuteDbDataReader(CommandBehavior behavior)
        {
            connection.Note(this);
            return base.ExecuteDbDataReader(behavior);
        }
    }
}
