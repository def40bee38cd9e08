using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.ScaleChecks;

namespace CalibrationApi.Records.Reading;

/// <content>What was recorded: tests, values in force, checks of scales, and what took the place of what.</content>
internal sealed partial class WorkspaceReader
{
    /// <summary>Up to which line of the history is known what is read; asked for before anything else.</summary>
    public long NewestLine() => HistoryStore.Newest(connection);

    /// <summary>Something was recorded after a line that can change what is known about a test.</summary>
    public bool IsMoreKnownSince(long line) => HistoryStore.IsMoreKnown(connection, workspace, line);

    public CatchTestRecord? Test(string id) => Once((nameof(Test), id), () => CatchTestStore.Find(connection, workspace, id));

    /// <summary>What an adopted value needs of the test behind it.</summary>
    public BasisRecord? TestBehind(string id) => Once((nameof(TestBehind), id), () => CatchTestStore.FindBasis(connection, workspace, id));

    /// <summary>What the statistics of a series need of its newest tests before an instant.</summary>
    public IReadOnlyList<SeriesTest> PastTests(Series series, DateTimeOffset before, int most) =>
        CatchTestStore.OfSeries(connection, workspace, series, before, most);

    /// <summary>The newest tests of a series before an instant, whole.</summary>
    public IReadOnlyList<CatchTestRecord> NewestTests(Series series, DateTimeOffset before, int most) =>
        CatchTestStore.Newest(connection, workspace, series, before, most);

    /// <summary>The tests of a series with one lot between two instants, newest first.</summary>
    public IReadOnlyList<CatchTestRecord> TestsBetween(
        Series series,
        string? lot,
        DateTimeOffset? after,
        DateTimeOffset before,
        int most
    ) => CatchTestStore.Between(connection, workspace, series, lot, after, before, most);

    public AdoptionRecord? Adoption(string id) => Once((nameof(Adoption), id), () => AdoptionStore.Find(connection, workspace, id));

    /// <summary>The adoption in force for a series at an instant; null when none is.</summary>
    public AdoptionRecord? InForce(Series series, DateTimeOffset at, string? except = null) =>
        Once((nameof(InForce), series, at, except), () => AdoptionStore.InForce(connection, workspace, series, at, except));

    /// <summary>What calculations need of it.</summary>
    public AdoptedValue? ValueInForce(Series series, DateTimeOffset at) =>
        Once((nameof(ValueInForce), series, at), () => AdoptionStore.ValueInForce(connection, workspace, series, at));

    /// <summary>What is in force on a machine at an instant, for each of its series.</summary>
    public IReadOnlyList<AdoptionRecord> InForceOn(string machine, DateTimeOffset at) =>
        Once((nameof(InForceOn), machine, at), () => AdoptionStore.InForceOnMachine(connection, workspace, machine, at));

    /// <summary>What is in force at an instant for the other products of a meter, element and setting.</summary>
    public IReadOnlyList<ValueOfProduct> InForceForOtherProducts(Series series, DateTimeOffset at) =>
        AdoptionStore.OfOtherProducts(connection, workspace, series, at);

    public ScaleCheckRecord? ScaleCheck(string id) => Once((nameof(ScaleCheck), id), () => ScaleCheckStore.Find(connection, workspace, id));

    /// <summary>The last check of a scale at or before an instant; null when there was none.</summary>
    public ScaleCheckRecord? LastCheck(string scale, DateTimeOffset at) =>
        Once((nameof(LastCheck), scale, at), () => ScaleCheckStore.LastBefore(connection, workspace, scale, at));

    /// <summary>The first check of a scale after an instant; null when there was none.</summary>
    public ScaleCheckRecord? NextCheck(string scale, DateTimeOffset after) =>
        Once((nameof(NextCheck), scale, after), () => ScaleCheckStore.FirstAfter(connection, workspace, scale, after));

    /// <summary>
    /// The first check of its scale after a test, when it failed: then nobody knows whether the scale was good during the test.
    /// </summary>
    public ScaleCheckRecord? FailedLater(string scale, DateTimeOffset testedAt) =>
        NextCheck(scale, testedAt) is { Passed: false } failed ? failed : null;

    /// <summary>A scale was checked after an instant and not after another.</summary>
    public bool IsCheckedBetween(string scale, DateTimeOffset after, DateTimeOffset until) =>
        NextCheck(scale, after) is { } check && check.OccurredAt <= until;

    /// <summary>What took the place of a record of a kind of evidence; null while it stands.</summary>
    public Supersession? Replacement(string kind, string id) =>
        Once((nameof(Replacement), kind, id), () => SupersessionStore.Find(connection, workspace, kind, id));
}
