using System.Data;
using System.Data.Common;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage;

/// <summary>A connection that stays open for many units of work and prepares each statement once.</summary>
/// <remarks>
/// Statements here are few and short-lived, so that parsing and planning them costs more than running them. A command that is
/// done leaves its prepared statement behind; the next one with the same text takes it up. A statement that somebody is still
/// reading from is nobody else's: a second command with its text prepares its own.
/// </remarks>
internal sealed class PreparingConnection(string connectionString) : SqliteConnection(connectionString)
{
    // Lists can be filtered in many ways; a connection does not keep them all.
    private const int MostPrepared = 64;

    private readonly Dictionary<string, SqliteCommand> prepared = new(StringComparer.Ordinal);
    private int running;

    /// <summary>Nothing is left open that the next user would stumble over.</summary>
    public bool IsIdle => running == 0 && Transaction is null && State == ConnectionState.Open;

    /// <summary>Workspaces in which what ran here changed something; whoever commits takes them out.</summary>
    public HashSet<string> ChangedWorkspaces { get; } = new(StringComparer.Ordinal);

    /// <inheritdoc/>
    public override SqliteCommand CreateCommand() => new Command(this) { Transaction = Transaction, CommandTimeout = DefaultTimeout };

    private SqliteCommand Take(string text)
    {
        running++;
        if (prepared.Remove(text, out var command))
            return command;
        // Without being asked, a command whose reader is left early does not count as prepared.
        command = new SqliteCommand(text, this);
        command.Prepare();
        return command;
    }

    private void Give(SqliteCommand command)
    {
        running--;
        if (prepared.Count >= MostPrepared || !prepared.TryAdd(command.CommandText, command))
            command.Dispose();
    }

    /// <summary>Runs the prepared command of its text in its own place.</summary>
    private sealed class Command : SqliteCommand
    {
        private readonly PreparingConnection owner;
        private SqliteCommand? taken;

        public Command(PreparingConnection owner)
        {
            this.owner = owner;
            Connection = owner;
        }

        public override int ExecuteNonQuery() => Start().ExecuteNonQuery();

        public override object? ExecuteScalar() => Start().ExecuteScalar();

        public override SqliteDataReader ExecuteReader(CommandBehavior behavior) => Start().ExecuteReader(behavior);

        protected override DbDataReader ExecuteDbDataReader(CommandBehavior behavior) => ExecuteReader(behavior);

        protected override void Dispose(bool disposing)
        {
            if (taken is { } done)
            {
                taken = null;
                owner.Give(done);
            }

            base.Dispose(disposing);
        }

        private SqliteCommand Start()
        {
            if (taken?.CommandText != CommandText)
            {
                if (taken is { } other)
                    owner.Give(other);
                taken = owner.Take(CommandText);
            }

            taken.Transaction = Transaction;
            taken.CommandTimeout = CommandTimeout;
            taken.Parameters.Clear();
            foreach (SqliteParameter parameter in Parameters)
            {
                // Without it the driver tries three prefixes for each value of each statement.
                if (parameter.ParameterName is [not '@', ..])
                    parameter.ParameterName = '@' + parameter.ParameterName;
                taken.Parameters.Add(parameter);
            }

            return taken;
        }
    }
}
