using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.Records;
using CalibrationApi.Storage.ScaleChecks;
using CalibrationApi.Storage.Writing;

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
        .. Idempotency(),
    ];

    public static TheoryData<string> Reading => [.. All.Where(operation => operation.Read is not null).Select(operation => operation.Name)];

    public static TheoryData<string> Writing => [.. All.Where(operation => operation.Write is not null).Select(operation => operation.Name)];

    public static TheoryData<string> Names => [.. All.Select(operation => operation.Name)];

    public static StoreOperation Get(string name) => All.Single(operation => operation.Name == name);

    private static IEnumerable<StoreOperation> DescribedRecords(RecordKind kind)
    {
        var type = typeof(DescribedRecordStore);
        var store = new DescribedRecordStore(kind);
        var variant = $"of {kind}";
        yield return StoreOperation.Finding(type, nameof(store.Find), (c, w) => store.Find(c, w, Given.Id(kind)), variant);
        yield return StoreOperation.Listing(type, nameof(store.List), (c, w) => store.List(c, w, "", 10, withRetired: false), variant);
        yield return StoreOperation.Listing(type, nameof(store.List), (c, w) => store.List(c, w, Given.Id(0), 10, withRetired: true), $"{variant} after one");
        yield return StoreOperation.Writing(type, nameof(store.Insert), (c, w) => store.Insert(c, w, Given.Described(Given.Id(New))), variant);
        yield return StoreOperation.Writing(type, nameof(store.Replace), (c, w) => store.Replace(c, w, Given.Described(kind) with { Revision = 2, Name = "other" }), variant);
    }

    private static IEnumerable<StoreOperation> CatchTests()
    {
        var type = typeof(CatchTestStore);
        yield return StoreOperation.Finding(type, nameof(CatchTestStore.Find), (c, w) => CatchTestStore.Find(c, w, Given.Id(1)));
        yield return StoreOperation.Writing(type, nameof(CatchTestStore.Insert), (c, w) => CatchTestStore.Insert(c, w, Given.Test(New)));
        yield return StoreOperation.Listing(type, nameof(CatchTestStore.OfSeries), (c, w) => CatchTestStore.OfSeries(c, w, Given.Series, Given.Noon.AddYears(1), 50))
            with { SortsBecause = "it sorts the catches of at most mostTests tests, and finds those tests in the order of an index" };
    }

    private static IEnumerable<StoreOperation> Adoptions()
    {
        var type = typeof(AdoptionStore);
        yield return StoreOperation.Finding(type, nameof(AdoptionStore.Find), (c, w) => AdoptionStore.Find(c, w, Given.Id(1)));
        yield return StoreOperation.Finding(type, nameof(AdoptionStore.InForce), (c, w) => AdoptionStore.InForce(c, w, Given.Series, Given.Noon.AddYears(1)));
        yield return StoreOperation.Listing(type, nameof(AdoptionStore.InForceOnMachine), (c, w) => AdoptionStore.InForceOnMachine(c, w, Given.Series.Machine, Given.Noon.AddYears(1)))
            with { SortsBecause = "it sorts the adoptions of one machine, series by series; there are a few for each season" };
        yield return StoreOperation.Writing(type, nameof(AdoptionStore.Insert), (c, w) => AdoptionStore.Insert(c, w, Given.Adoption(New)));
    }

    private static IEnumerable<StoreOperation> ScaleChecks()
    {
        var type = typeof(ScaleCheckStore);
        yield return StoreOperation.Finding(type, nameof(ScaleCheckStore.Find), (c, w) => ScaleCheckStore.Find(c, w, Given.Id(1)));
        yield return StoreOperation.Finding(type, nameof(ScaleCheckStore.LastBefore), (c, w) => ScaleCheckStore.LastBefore(c, w, Given.Id(RecordKind.Scales), Given.Noon.AddYears(1)));
        yield return StoreOperation.Finding(type, nameof(ScaleCheckStore.FirstAfter), (c, w) => ScaleCheckStore.FirstAfter(c, w, Given.Id(RecordKind.Scales), Given.Noon.AddYears(-1)));
        yield return StoreOperation.Writing(type, nameof(ScaleCheckStore.Insert), (c, w) => ScaleCheckStore.Insert(c, w, Given.Check(New)));
    }

    private static IEnumerable<StoreOperation> History()
    {
        yield return StoreOperation.Writing(typeof(HistoryStore), nameof(HistoryStore.Append), (c, w) => HistoryStore.Append(c, w, Given.Line(New)));
        // All filters, one by one and in pairs: HistoryPlanTests.
        yield return StoreOperation.Listing(typeof(HistoryStore), nameof(HistoryStore.List), (c, w) => HistoryStore.List(c, w, new HistoryFilter(), null, 10).Cast<object>());
        yield return StoreOperation.Finding(typeof(SupersessionStore), nameof(SupersessionStore.Find), (c, w) => SupersessionStore.Find(c, w, "catch-test", StoredWorkspace.Superseded));
        yield return StoreOperation.Writing(
            typeof(SupersessionStore),
            nameof(SupersessionStore.TryInsert),
            (c, w) => Assert.True(SupersessionStore.TryInsert(c, w, "catch-test", Given.Supersession(1, New))));
    }

    private static IEnumerable<StoreOperation> Idempotency()
    {
        var type = typeof(IdempotencyKeys);
        yield return StoreOperation.Finding(type, nameof(IdempotencyKeys.Find), (c, w) => IdempotencyKeys.Find(c, w, "POST /v1/things", "k1", Given.Noon));
        yield return StoreOperation.Writing(type, nameof(IdempotencyKeys.Remember), (c, w) => IdempotencyKeys.Remember(c, w, "POST /v1/things", "new", "f1", Given.Answer, Given.Noon));
    }
}
