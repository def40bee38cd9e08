using System.Globalization;
using CalibrationApi.Storage.Access;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.Audit;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.Described;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.OneWriter;
using CalibrationApi.Storage.ScaleChecks;

namespace CalibrationApi.Storage.Tests;

/// <summary>Records that tests begin with and change by <c>with</c>. Storage keeps what it is given, so the numbers mean nothing.</summary>
internal static class Given
{
    /// <summary>Noon of a day in April.</summary>
    public static DateTimeOffset Noon { get; } = new(2026, 4, 18, 12, 0, 0, TimeSpan.Zero);

    /// <summary>The series of <see cref="Test"/> and <see cref="Adoption"/>.</summary>
    public static Series Series { get; } = new(Id(RecordKind.Machines), "front", "coarse", "", Id(RecordKind.Products));

    /// <summary>An id that is well formed and easy to tell apart.</summary>
    public static string Id(int number) => $"01900000-0000-7000-8000-{number.ToString("D12", CultureInfo.InvariantCulture)}";

    /// <summary>The id of the record of a kind that <see cref="Described(RecordKind)"/> gives.</summary>
    public static string Id(RecordKind kind) => Id(900 + (int)kind);

    public static DescribedRecord Described(RecordKind kind) => Described(Id(kind));

    public static DescribedRecord Described(string id) => new(id, 1, "thing", false, """{"name":"thing"}""", "f1", Noon, Noon);

    public static CatchTestRecord Test(int number) =>
        new()
        {
            Id = Id(number),
            Series = Series,
            Lot = Id(RecordKind.Lots),
            Scale = Id(RecordKind.Scales),
            Plan = Id(RecordKind.Plans),
            Verdict = "adopt",
            Value = 0.36,
            Random = 0.004,
            OccurredAt = Noon,
            ReceivedAt = Noon.AddMinutes(1),
            Entered = """{"as":"entered"}""",
            Resolved = """{"as":"resolved"}""",
            Answer = """{"as":"answered"}""",
            Context = """{"usedHistory":{}}""",
            EngineVersion = "1.0.0",
            Fingerprint = "f1",
            Catches = [Catch(0.361), Catch(0.359)],
        };

    public static CatchRow Catch(double value) => new(true, 17.08, "kg", 17.08, 47, value, 1e-6);

    public static AdoptionRecord Adoption(int number) =>
        new()
        {
            Id = Id(number),
            Series = Series,
            Lot = Id(RecordKind.Lots),
            EnteredValue = 0.363,
            EnteredUnit = "kg/rev",
            Value = 0.363,
            OccurredAt = Noon,
            ReceivedAt = Noon.AddMinutes(1),
            Body = """{"as":"entered"}""",
            Fingerprint = "f1",
        };

    public static ScaleCheckRecord Check(int number) =>
        new()
        {
            Id = Id(number),
            Scale = Id(RecordKind.Scales),
            Error = 0.001,
            Uncertainty = 0.0002,
            Passed = true,
            OccurredAt = Noon,
            ReceivedAt = Noon.AddMinutes(1),
            Body = """{"as":"entered"}""",
            Answer = """{"as":"answered"}""",
            Fingerprint = "f1",
        };

    public static HistoryEntry Line(int number) =>
        new()
        {
            Kind = "catch-test",
            Record = Id(number),
            Machine = Series.Machine,
            Meter = Series.Meter,
            Element = Series.Element,
            Setting = "7",
            Product = Series.Product,
            Lot = Id(RecordKind.Lots),
            Scale = Id(RecordKind.Scales),
            Plan = Id(RecordKind.Plans),
            Verdict = "adopt",
            Value = 0.36,
            Expanded = 0.006,
            Change = 0.05,
            EnteredUnit = "kg/rev",
            RecordedBy = "A",
            OccurredAt = Noon,
            ReceivedAt = Noon.AddMinutes(1),
        };

    public static Supersession Supersession(int superseded, int replacement) =>
        new(Id(superseded), Id(replacement), "wrong tare", Noon.AddHours(1));

    public static WorkspaceRecord Workspace(string id) => new(id, 1, "farm", false, "f1", Noon, Noon);

    /// <summary>The key that every workspace with described records has is number 700.</summary>
    public static KeyRecord Key(int number) =>
        new()
        {
            Id = Id(number),
            Name = "yard tablet",
            Scopes = ["read", "write"],
            SecretHash = new byte[32],
            Fingerprint = "f1",
            CreatedAt = Noon,
        };

    public static AuditEntry Deed(int number) =>
        new()
        {
            At = Noon.AddHours(number),
            Actor = AuditEntry.ByKey,
            Key = Id(700),
            Action = "createMachine",
            Target = $"/v1/machines/{Id(number)}",
            Trace = "t",
        };

    public static RefusalCount Refusal(int day) =>
        new(Instants.Text(Noon.AddDays(day))[..10], Id(700), "key-expired", 1, Noon.AddDays(day));

    public static StoredAnswer Answer { get; } = new(201, "/v1/things/1", "\"r1\"", [1, 2, 3]);
}
