using System.Reflection;
using CalibrationApi.Storage.Access;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.Audit;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.Changes;
using CalibrationApi.Storage.Described;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.OneWriter;
using CalibrationApi.Storage.ScaleChecks;

namespace CalibrationApi.Storage.Tests.Operations;

/// <summary>Every public method of every store. <see cref="StoreOperationsTests"/> fails when one is missing here.</summary>
internal static class StoreOperations
{
    /// <summary>A number that no row of <see cref="StoredWorkspace"/> has.</summary>
    private const int New = 800;

    public static IReadOnlyList<StoreOperation> All { get; } =
    [
        .. Enum.GetValues<RecordKind>().SelectMany(DescribedRecords),
        .. CatchTests(),
        .. Adoptions(),
        .. ScaleChecks(),
        .. History(),
        .. Changes(),
        .. Idempotency(),
        .. Access(),
        .. Audit(),
    ];

    /// <summary>What concerns the whole installation and so no single workspace; tested in the folder of its store.</summary>
    public static IReadOnlyList<MethodInfo> OfTheInstallation { get; } =
    [
        typeof(HistoryStore).GetMethod(nameof(HistoryStore.Newest))!,
        typeof(WorkspaceStore).GetMethod(nameof(WorkspaceStore.Insert))!,
        typeof(WorkspaceStore).GetMethod(nameof(WorkspaceStore.ListAll))!,
        typeof(KeyStore).GetMethod(nameof(KeyStore.OfAnyWorkspace))!,
        typeof(KeyStore).GetMethod(nameof(KeyStore.AnyExists))!,
        typeof(KeyStore).GetMethod(nameof(KeyStore.AnyLive))!,
    ];

    public static TheoryData<string> Reading => [.. All.Where(operation => operation.Read is not null).Select(operation => operation.Name)];

    public static TheoryData<string> Writing =>
        [.. All.Where(operation => operation.Write is not null).Select(operation => operation.Name)];

    public static TheoryData<string> Names => [.. All.Select(operation => operation.Name)];

    public static StoreOperation Get(string name) => All.Single(operation => operation.Name == name);

    private static IEnumerable<StoreOperation> DescribedRecords(RecordKind kind)
    {
        var type = typeof(DescribedRecordStore);
        var store = new DescribedRecordStore(kind);
        var variant = $"of {kind}";
        yield return StoreOperation.Finding(type, nameof(store.Find), (c, w) => store.Find(c, w, Given.Id(kind)), variant);
        yield return StoreOperation.Listing(type, nameof(store.List), (c, w) => store.List(c, w, "", 10, withRetired: false), variant);
        yield return StoreOperation.Listing(
            type,
            nameof(store.List),
            (c, w) => store.List(c, w, Given.Id(0), 10, withRetired: true),
            $"{variant} after one"
        );
        yield return StoreOperation.Writing(
            type,
            nameof(store.Insert),
            (c, w) => store.Insert(c, w, Given.Described(Given.Id(New))),
            variant
        );
        yield return StoreOperation.Writing(
            type,
            nameof(store.Replace),
            (c, w) => store.Replace(c, w, Given.Described(kind) with { Revision = 2, Name = "other" }),
            variant
        );
    }

    private static IEnumerable<StoreOperation> CatchTests()
    {
        var type = typeof(CatchTestStore);
        yield return StoreOperation.Finding(type, nameof(CatchTestStore.Find), (c, w) => CatchTestStore.Find(c, w, Given.Id(1)));
        yield return StoreOperation.Finding(type, nameof(CatchTestStore.FindBasis), (c, w) => CatchTestStore.FindBasis(c, w, Given.Id(1)));
        yield return StoreOperation.Writing(type, nameof(CatchTestStore.Insert), (c, w) => CatchTestStore.Insert(c, w, Given.Test(New)));
        yield return StoreOperation.Listing(type, nameof(CatchTestStore.OfSeries), (c, w) =>
            CatchTestStore.OfSeries(c, w, Given.Series, Given.Noon.AddYears(1), 50)
        ) with
        {
            SortsBecause = "it sorts the catches of at most mostTests tests, and finds those tests in the order of an index",
        };
        yield return StoreOperation.Listing(type, nameof(CatchTestStore.Newest), (c, w) =>
            CatchTestStore.Newest(c, w, Given.Series, Given.Noon.AddYears(1), 10)
        );
        yield return StoreOperation.Listing(type, nameof(CatchTestStore.Between), (c, w) =>
            CatchTestStore.Between(c, w, Given.Series, Given.Test(New).Lot, null, Given.Noon.AddYears(1), 10)
        );
    }

    private static IEnumerable<StoreOperation> Adoptions()
    {
        var type = typeof(AdoptionStore);
        yield return StoreOperation.Finding(type, nameof(AdoptionStore.Find), (c, w) => AdoptionStore.Find(c, w, Given.Id(1)));
        yield return StoreOperation.Finding(type, nameof(AdoptionStore.InForce), (c, w) =>
            AdoptionStore.InForce(c, w, Given.Series, Given.Noon.AddYears(1))
        );
        yield return StoreOperation.Finding(type, nameof(AdoptionStore.ValueInForce), (c, w) =>
            AdoptionStore.ValueInForce(c, w, Given.Series, Given.Noon.AddYears(1))
        );
        yield return StoreOperation.Listing(type, nameof(AdoptionStore.OfOtherProducts), (c, w) =>
            AdoptionStore.OfOtherProducts(c, w, Given.Series with { Product = "another" }, Given.Noon.AddYears(1))
        );
        yield return StoreOperation.Listing(type, nameof(AdoptionStore.InForceOnMachine), (c, w) =>
            AdoptionStore.InForceOnMachine(c, w, Given.Series.Machine, Given.Noon.AddYears(1))
        ) with
        {
            SortsBecause = "it sorts the adoptions of one machine, series by series; there are a few for each season",
        };
        yield return StoreOperation.Writing(type, nameof(AdoptionStore.Insert), (c, w) => AdoptionStore.Insert(c, w, Given.Adoption(New)));
    }

    private static IEnumerable<StoreOperation> ScaleChecks()
    {
        var type = typeof(ScaleCheckStore);
        yield return StoreOperation.Finding(type, nameof(ScaleCheckStore.Find), (c, w) => ScaleCheckStore.Find(c, w, Given.Id(1)));
        yield return StoreOperation.Finding(type, nameof(ScaleCheckStore.LastBefore), (c, w) =>
            ScaleCheckStore.LastBefore(c, w, Given.Id(RecordKind.Scales), Given.Noon.AddYears(1))
        );
        yield return StoreOperation.Finding(type, nameof(ScaleCheckStore.FirstAfter), (c, w) =>
            ScaleCheckStore.FirstAfter(c, w, Given.Id(RecordKind.Scales), Given.Noon.AddYears(-1))
        );
        yield return StoreOperation.Writing(type, nameof(ScaleCheckStore.Insert), (c, w) => ScaleCheckStore.Insert(c, w, Given.Check(New)));
    }

    private static IEnumerable<StoreOperation> History()
    {
        yield return StoreOperation.Writing(typeof(HistoryStore), nameof(HistoryStore.Append), (c, w) =>
            HistoryStore.Append(c, w, Given.Line(New))
        );
        // All filters, one by one and in pairs: HistoryPlanTests.
        yield return StoreOperation.Listing(typeof(HistoryStore), nameof(HistoryStore.List), (c, w) =>
            HistoryStore.List(c, w, new HistoryFilter(), null, 10).Cast<object>()
        );
        yield return StoreOperation.Finding(typeof(HistoryStore), nameof(HistoryStore.IsMoreKnown), (c, w) =>
            HistoryStore.IsMoreKnown(c, w, 0) ? "more" : null
        );
        yield return StoreOperation.Finding(typeof(SupersessionStore), nameof(SupersessionStore.Find), (c, w) =>
            SupersessionStore.Find(c, w, "catch-test", StoredWorkspace.Superseded)
        );
        yield return StoreOperation.Writing(typeof(SupersessionStore), nameof(SupersessionStore.TryInsert), (c, w) =>
            Assert.True(SupersessionStore.TryInsert(c, w, "catch-test", Given.Supersession(1, New)))
        );
    }

    private static IEnumerable<StoreOperation> Changes()
    {
        var type = typeof(ChangeStore);
        var machine = Given.Id(RecordKind.Machines);
        foreach (
            var (name, filter) in new[]
            {
                ("of all", new ChangeFilter()),
                ("by kind", new ChangeFilter { Kind = "plan" }),
                ("by machine", new ChangeFilter { Machine = machine }),
                ("by both", new ChangeFilter { Kind = "catch-test", Machine = machine }),
            }
        )
            yield return StoreOperation.Listing(type, nameof(ChangeStore.List), (c, w) => ChangeStore.List(c, w, filter, 0, 10), name);
        yield return StoreOperation.Finding(type, nameof(ChangeStore.Newest), (c, w) =>
            ChangeStore.Newest(c, w) is { Sequence: > 0 } position ? position : null
        );
        yield return StoreOperation.Finding(type, nameof(ChangeStore.Holds), (c, w) =>
            ChangeStore.Holds(c, w, ChangeStore.Newest(c, TestDatabase.Local)) ? "holds" : null
        );
    }

    private static IEnumerable<StoreOperation> Access()
    {
        var type = typeof(KeyStore);
        var key = Given.Id(700);
        yield return StoreOperation.Finding(typeof(WorkspaceStore), nameof(WorkspaceStore.Find), WorkspaceStore.Find);
        yield return StoreOperation.Writing(typeof(WorkspaceStore), nameof(WorkspaceStore.Replace), (c, w) =>
            WorkspaceStore.Replace(c, w, Given.Workspace(w) with { Revision = 2, Name = "other" })
        );
        yield return StoreOperation.Finding(type, nameof(KeyStore.Find), (c, w) => KeyStore.Find(c, w, key));
        yield return StoreOperation.Listing(type, nameof(KeyStore.List), (c, w) => KeyStore.List(c, w, "", 10));
        yield return StoreOperation.Writing(type, nameof(KeyStore.Insert), (c, w) => KeyStore.Insert(c, w, Given.Key(New)));
        yield return StoreOperation.Writing(type, nameof(KeyStore.Revoke), (c, w) => KeyStore.Revoke(c, w, key, Given.Noon, "lost"));
        yield return StoreOperation.Writing(type, nameof(KeyStore.ReplaceBy), (c, w) =>
            KeyStore.ReplaceBy(c, w, key, Given.Id(New), Given.Noon)
        );
        yield return StoreOperation.Writing(type, nameof(KeyStore.NoteUse), (c, w) => KeyStore.NoteUse(c, w, key, Given.Noon));
    }

    private static IEnumerable<StoreOperation> Audit()
    {
        var type = typeof(AuditStore);
        yield return StoreOperation.Writing(type, nameof(AuditStore.Append), (c, w) => AuditStore.Append(c, w, Given.Deed(New)));
        foreach (var (name, filter) in AuditFilters)
        {
            yield return StoreOperation.Listing(
                type,
                nameof(AuditStore.List),
                (c, w) => AuditStore.List(c, w, filter, null, 10).Cast<object>(),
                name
            );
            yield return StoreOperation.Listing(
                type,
                nameof(AuditStore.List),
                (c, w) => AuditStore.List(c, w, filter with { NewestFirst = true }, new AuditPosition("9", 1), 10).Cast<object>(),
                $"{name}, newest first, going on"
            );
        }

        yield return StoreOperation.Writing(typeof(RefusalStore), nameof(RefusalStore.Add), (c, w) =>
            RefusalStore.Add(c, w, Given.Refusal(New))
        );
        yield return StoreOperation.Listing(typeof(RefusalStore), nameof(RefusalStore.List), (c, w) =>
            RefusalStore.List(c, w, ("", "", ""), 10)
        );
    }

    private static IEnumerable<(string Name, AuditFilter Filter)> AuditFilters =>
        [
            ("of all", new AuditFilter()),
            ("by key", new AuditFilter { Key = Given.Id(700) }),
            ("by action", new AuditFilter { Action = "createMachine" }),
            ("by key and action", new AuditFilter { Key = Given.Id(700), Action = "createMachine" }),
            ("by time", new AuditFilter { From = Given.Noon.AddHours(2), Until = Given.Noon.AddYears(1) }),
            (
                "by everything",
                new AuditFilter
                {
                    Key = Given.Id(700),
                    Action = "createMachine",
                    From = Given.Noon,
                    Until = Given.Noon.AddYears(1),
                }
            ),
        ];

    private static IEnumerable<StoreOperation> Idempotency()
    {
        var type = typeof(IdempotencyKeys);
        yield return StoreOperation.Finding(type, nameof(IdempotencyKeys.Find), (c, w) =>
            IdempotencyKeys.Find(c, w, "POST /v1/things", "k1", Given.Noon)
        );
        yield return StoreOperation.Writing(type, nameof(IdempotencyKeys.Remember), (c, w) =>
            IdempotencyKeys.Remember(c, w, "POST /v1/things", "new", "f1", Given.Answer, Given.Noon)
        );
    }
}
