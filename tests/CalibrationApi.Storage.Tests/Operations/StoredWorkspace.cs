using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.Audit;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.OneWriter;
using CalibrationApi.Storage.ScaleChecks;

namespace CalibrationApi.Storage.Tests.Operations;

/// <summary>A workspace in which every reading operation finds something.</summary>
internal static class StoredWorkspace
{
    public const string Other = "other";

    private const int Rows = 300;

    private static readonly Lazy<byte[]> Filled = new(Fill);

    /// <summary>A test that another took the place of.</summary>
    public static string Superseded { get; } = Given.Id(Rows);

    /// <summary>
    /// A database with the filled workspace <see cref="TestDatabase.Local"/>, and described records in <see cref="Other"/>.
    /// </summary>
    public static TestDatabase Open() => TestDatabase.Of(Filled.Value);

    private static byte[] Fill()
    {
        using var database = TestDatabase.WithDescribedRecords(TestDatabase.Local, Other);
        Fill(database, TestDatabase.Local);
        return database.Close();
    }

    private static void Fill(TestDatabase database, string workspace)
    {
        using var connection = database.Open();
        using var transaction = connection.BeginTransaction();
        for (var i = 1; i <= Rows; i++)
        {
            // Several series, times and verdicts, so that statistics of the planner have something to tell.
            var at = Given.Noon.AddHours(i);
            var series = Given.Series with { Setting = i % 3 == 0 ? "7" : "", Element = i % 5 == 0 ? "fine" : "coarse" };
            CatchTestStore.Insert(
                connection,
                workspace,
                Given.Test(i) with
                {
                    Series = series,
                    OccurredAt = at,
                    Verdict = i % 7 == 0 ? "investigate" : "adopt",
                }
            );
            AdoptionStore.Insert(connection, workspace, Given.Adoption(i) with { Series = series, OccurredAt = at });
            ScaleCheckStore.Insert(connection, workspace, Given.Check(i) with { OccurredAt = at });
            HistoryStore.Append(
                connection,
                workspace,
                Given.Line(i) with
                {
                    Setting = series.Setting,
                    Element = series.Element,
                    OccurredAt = at,
                }
            );
            HistoryStore.Append(
                connection,
                workspace,
                Given.Line(i) with
                {
                    Kind = "adoption",
                    Scale = null,
                    Plan = null,
                    Verdict = null,
                    Element = series.Element,
                    OccurredAt = at,
                }
            );
            HistoryStore.Append(
                connection,
                workspace,
                new HistoryEntry
                {
                    Kind = "scale-check",
                    Record = Given.Id(i),
                    Scale = Given.Line(i).Scale,
                    Verdict = "passed",
                    OccurredAt = at,
                    ReceivedAt = at,
                }
            );
            AuditStore.Append(connection, workspace, Given.Deed(i));
            RefusalStore.Add(connection, workspace, Given.Refusal(i));
            IdempotencyKeys.Remember(connection, workspace, "POST /v1/things", $"k{i}", "f1", Given.Answer, Given.Noon);
        }

        SupersessionStore.TryInsert(connection, workspace, "catch-test", Given.Supersession(Rows, Rows - 1));
        transaction.Commit();
    }
}
