using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests;

/// <summary>The tables themselves refuse what makes no sense, whoever writes.</summary>
public sealed class SchemaTests
{
    private const string NotText = "x'00'";

    public static TheoryData<string, string, string> BrokenChecks
    {
        get
        {
            var cases = new TheoryData<string, string, string>();
            foreach (var table in new[] { "machines", "products", "lots", "scales", "containers", "plans" })
            {
                cases.Add(table, "id", "'short'");
                cases.Add(table, "revision", "0");
                cases.Add(table, "retired", "2");
                cases.Add(table, "body", "'{'");
            }

            foreach (var table in new[] { "catch_tests", "adoptions", "scale_checks" })
                cases.Add(table, "id", "'short'");
            foreach (var column in new[] { "entered", "resolved", "answer", "context" })
                cases.Add("catch_tests", column, "'{'");
            cases.Add("catch_tests", "verdict", "'passed'");
            cases.Add("catch_tests", "value", "0");
            cases.Add("catch_tests", "random", "-1e-9");
            cases.Add("catches", "position", "-1");
            cases.Add("catches", "counted", "2");
            cases.Add("catches", "net_kilograms", "0");
            cases.Add("catches", "revolutions", "0");
            cases.Add("catches", "value", "0");
            cases.Add("catches", "variance", "-1e-9");
            cases.Add("adoptions", "value", "0");
            cases.Add("adoptions", "body", "'{'");
            cases.Add("scale_checks", "uncertainty", "-1e-9");
            cases.Add("scale_checks", "passed", "2");
            cases.Add("scale_checks", "body", "'{'");
            cases.Add("scale_checks", "answer", "'{'");
            cases.Add("supersessions", "kind", "'plan'");
            cases.Add("history", "kind", "'plan'");
            cases.Add("workspaces", "workspace", "''");
            cases.Add("workspaces", "revision", "0");
            cases.Add("workspaces", "name", "''");
            cases.Add("workspaces", "retired", "2");
            cases.Add("keys", "id", "'short'");
            cases.Add("keys", "name", "''");
            cases.Add("keys", "scopes", "'read'");
            cases.Add("keys", "secret_hash", "x'00'");
            cases.Add("keys", "revoked_at", "'without a reason'");
            cases.Add("keys", "revoked_because", "'at no time'");
            cases.Add("audit", "actor", "'nobody'");
            cases.Add("audit", "key", "'of no key'");
            cases.Add("refusals", "day", "'today'");
            cases.Add("refusals", "count", "0");
            cases.Add("changes", "seq", "0");
            cases.Add("changes", "kind", "''");
            cases.Add("changes", "record", "'short'");
            cases.Add("changes", "revision", "0");
            cases.Add("changes", "what", "''");
            cases.Add("changes", "occurred_at", "'without an offset'");
            return cases;
        }
    }

    public static TheoryData<string> Tables => ["secrets", .. Rows.Keys];

    // One row of each table that is in order; the columns not named here may be null.
    private static Dictionary<string, Dictionary<string, string>> Rows { get; } =
        new(StringComparer.Ordinal)
        {
            ["machines"] = Described(),
            ["products"] = Described(),
            ["lots"] = Described(),
            ["scales"] = Described(),
            ["containers"] = Described(),
            ["plans"] = Described(),
            ["catch_tests"] = Row(
                "workspace 'w' id 'ID' machine 'ID' meter 'm' element 'e' setting '' product 'ID' scale 'ID' verdict 'adopt' value 0.3 random 0.01 occurred_at 't' received_at 't' entered '{}' resolved '{}' answer '{}' context '{}' offset_minutes 0 engine_version '1' fingerprint 'f'"
            ),
            ["catches"] = Row(
                "workspace 'w' test 1 position 0 counted 1 net_entered 17 net_unit 'kg' net_kilograms 17 revolutions 47 value 0.3 variance 0"
            ),
            ["adoptions"] = Row(
                "workspace 'w' id 'ID' machine 'ID' meter 'm' element 'e' setting '' product 'ID' entered_value 0.3 entered_unit 'kg/rev' value 0.3 occurred_at 't' offset_minutes 0 received_at 't' body '{}' fingerprint 'f'"
            ),
            ["scale_checks"] = Row(
                "workspace 'w' id 'ID' scale 'ID' error 0 uncertainty 0 passed 1 occurred_at 't' offset_minutes 0 received_at 't' body '{}' answer '{}' fingerprint 'f'"
            ),
            ["supersessions"] = Row("workspace 'w' superseded 'ID' kind 'adoption' replacement 'ID' reason 'r' received_at 't'"),
            ["history"] = Row("workspace 'w' kind 'adoption' record 'ID' occurred_at 't' offset_minutes 0 received_at 't'"),
            ["workspaces"] = Row("workspace 'w' revision 1 name 'n' retired 0 fingerprint 'f' created_at 't' updated_at 't'"),
            ["keys"] = Row(
                $"workspace 'w' id 'ID' name 'n' scopes ',read,' secret_hash x'{new string('0', 64)}' fingerprint 'f' created_at 't'"
            ),
            ["audit"] = Row("workspace 'w' at 't' actor 'local' action 'a'"),
            ["refusals"] = Row("workspace 'w' day '2026-04-18' key 'k' code 'c' count 1 last_at 't'"),
            ["changes"] = Row("workspace 'w' seq 1 mark 1 kind 'plan' record 'ID' revision 1 what 'created' received_at 't'"),
            ["idempotency_keys"] = Row("workspace 'w' route 'r' key 'k' fingerprint 'f' status 201 body x'00' created_at 't'"),
        };

    [Theory]
    [MemberData(nameof(BrokenChecks))]
    public void Insert_ValueThatMakesNoSense_BreaksACheck(string table, string column, string value)
    {
        using var database = TestDatabase.Empty();

        AssertRefused(database, "CHECK", table, new(Rows[table]) { [column] = value });
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void EveryTable_IsStrict(string table)
    {
        using var database = TestDatabase.Empty();
        using var connection = database.Open();

        Assert.Equal(
            1,
            connection.QuerySingle<long>("select strict from pragma_table_list where name = @table and schema = 'main'", new { table })
        );
    }

    [Fact]
    public void Tables_AreAllKnownHere()
    {
        using var database = TestDatabase.Empty();
        using var connection = database.Open();

        var tables = connection.Query<string>("select name from sqlite_schema where type = 'table' and name not like 'sqlite_%'");

        Assert.Equal(Rows.Keys.Append("secrets").Order(StringComparer.Ordinal), tables.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Insert_EveryColumn_RefusesAnotherTypeAndNullWhereItIsNeeded()
    {
        using var database = TestDatabase.Empty();
        foreach (var (table, row) in Rows)
        {
            foreach (var column in row.Keys)
            {
                AssertRefused(database, "NOT NULL", table, new(row) { [column] = "null" });
                AssertRefused(
                    database,
                    "cannot store",
                    table,
                    new(row) { [column] = row[column].StartsWith("x'", StringComparison.Ordinal) ? "'text'" : NotText }
                );
            }
        }
    }

    [Fact]
    public void Insert_RowInOrder_IsTaken()
    {
        using var database = TestDatabase.Empty();
        using var connection = database.Open();

        // Parents stand before their children.
        Assert.All(Rows, row => Assert.Equal(1, connection.Execute(Insert(row.Key, row.Value))));
        Assert.Empty(connection.Query("pragma foreign_key_check"));
    }

    [Theory]
    [InlineData("machines", "id")]
    [InlineData("catch_tests", "id")]
    [InlineData("adoptions", "id")]
    [InlineData("scale_checks", "id")]
    [InlineData("supersessions", "superseded")]
    [InlineData("idempotency_keys", "key")]
    [InlineData("workspaces", "workspace")]
    [InlineData("keys", "id")]
    [InlineData("refusals", "code")]
    [InlineData("changes", "seq")]
    public void Insert_SameKeyTwice_IsRefused(string table, string key)
    {
        using var database = TestDatabase.Empty();
        using var connection = database.Open();
        foreach (var row in Rows)
            connection.Execute(Insert(row.Key, row.Value));

        AssertRefused(database, "UNIQUE", table, Rows[table]);
        Assert.True(Rows[table].ContainsKey(key));
    }

    private static void AssertRefused(TestDatabase database, string why, string table, Dictionary<string, string> row)
    {
        using var connection = database.Open();
        // The constraint in question is to be the one that bites.
        connection.Execute("pragma foreign_keys = off");

        var failure = Record.Exception(() => connection.Execute(Insert(table, row)));

        Assert.True(
            failure is SqliteException && failure.Message.Contains(why, StringComparison.Ordinal),
            $"{table} ({string.Join(", ", row)}) should break {why}: {failure?.Message ?? "it was taken"}"
        );
    }

    private static string Insert(string table, Dictionary<string, string> row) =>
        $"insert into {table} ({string.Join(", ", row.Keys)}) values ({string.Join(", ", row.Values)})";

    private static Dictionary<string, string> Described() =>
        Row("workspace 'w' id 'ID' revision 1 name 'n' retired 0 body '{}' fingerprint 'f' created_at 't' updated_at 't'");

    private static Dictionary<string, string> Row(string pairs) =>
        pairs
            .Replace("ID", Given.Id(1), StringComparison.Ordinal)
            .Split(' ')
            .Chunk(2)
            .ToDictionary(pair => pair[0], pair => pair[1], StringComparer.Ordinal);
}
