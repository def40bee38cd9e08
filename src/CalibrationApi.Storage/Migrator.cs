using System.Reflection;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage;

/// <summary>Forward-only, numbered migrations; the number of the last one is the file's user_version.</summary>
internal static class Migrator
{
    private static readonly (int Number, string Resource)[] Migrations =
    [
        .. Assembly
            .GetExecutingAssembly()
            .GetManifestResourceNames()
            .Where(name => name.StartsWith("migrations/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(name =>
                (int.Parse(name["migrations/".Length..].Split('_')[0], System.Globalization.CultureInfo.InvariantCulture), name)
            ),
    ];

    public static int Newest => Migrations[^1].Number;

    /// <summary>The number of the file's schema; 0 for a new file.</summary>
    /// <exception cref="UnusableDatabaseException">It is newer than the newest known here, or no schema of this service.</exception>
    public static int KnownVersion(SqliteConnection connection)
    {
        // One statement, so that nobody migrates the file between the number and the tables.
        var (version, tables, own) = connection.QuerySingle<(int, int, int)>(
            "select user_version, (select count(*) from sqlite_schema), (select count(*) from sqlite_schema where name in ('machines', 'history', 'secrets')) from pragma_user_version"
        );
        if (version > Newest)
            throw new UnusableDatabaseException(
                $"It has schema {version}, this service knows schemas up to {Newest}. Start the newer service, or restore a backup from before its upgrade."
            );
        if (version == 0 ? tables > 0 : own < 3)
            throw new UnusableDatabaseException("It belongs to another program. It was left as it is. Name another file.");
        return version;
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
