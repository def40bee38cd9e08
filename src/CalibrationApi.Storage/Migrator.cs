using System.Reflection;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage;

/// <summary>Forward-only, numbered migrations; the number of the last one is the file's user_version.</summary>
internal static class Migrator
{
    private static readonly (int Number, string Resource)[] Migrations =
    [
        .. Assembly.GetExecutingAssembly().GetManifestResourceNames()
            .Where(name => name.StartsWith("migrations/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(name => (int.Parse(name["migrations/".Length..].Split('_')[0], System.Globalization.CultureInfo.InvariantCulture), name)),
    ];

    public static int Newest => Migrations[^1].Number;

    /// <summary>The number of the file's schema.</summary>
    /// <exception cref="NewerSchemaException">It is newer than the newest known here.</exception>
    public static int KnownVersion(SqliteConnection connection)
    {
        var version = connection.QuerySingle<int>("pragma user_version");
        return version <= Newest ? version : throw new NewerSchemaException(version, Newest);
    }

    public static void Apply(SqliteConnection connection)
    {
        using var transaction = connection.BeginTransaction();
        var version = KnownVersion(connection);
        foreach (var (number, resource) in Migrations.Where(migration => migration.Number > version))
        {
            using var reader = new StreamReader(Assembly.GetExecutingAssembly().GetManifestResourceStream(resource)!);
            connection.Execute(reader.ReadToEnd(), transaction: transaction);
            // A pragma takes no parameters; the number is ours.
            connection.Execute($"pragma user_version = {number}", transaction: transaction);
        }

        transaction.Commit();
    }
}
