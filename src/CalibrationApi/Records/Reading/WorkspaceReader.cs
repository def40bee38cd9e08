using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Containers;
using CalibrationApi.Records.Describing;
using CalibrationApi.Records.Lots;
using CalibrationApi.Records.Machines;
using CalibrationApi.Records.Products;
using CalibrationApi.Records.Scales;
using CalibrationApi.Storage.Described;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Records.Reading;

/// <summary>What is known in a workspace, for one request: each fact is read when it is first asked for, and once.</summary>
/// <remarks>
/// A machine with all its elements is long, and one answer comes back to the same few records again and again. What is written meanwhile
/// is not seen, so whoever writes reads anew.
/// </remarks>
internal sealed partial class WorkspaceReader(SqliteConnection connection, Workspace workspace)
{
    private readonly Dictionary<object, object?> known = [];

    /// <summary>Where it is read.</summary>
    public SqliteConnection Connection => connection;

    /// <summary>Whose it is.</summary>
    public Workspace Workspace => workspace;

    /// <summary>A machine, retired or not; null when there is none with that id. So with the other records.</summary>
    public MachineRequest? Machine(string id) => Find<MachineRequest>(RecordKind.Machines, id);

    public ProductRequest? Product(string id) => Find<ProductRequest>(RecordKind.Products, id);

    public LotRequest? Lot(string id) => Find<LotRequest>(RecordKind.Lots, id);

    public ScaleRequest? Scale(string id) => Find<ScaleRequest>(RecordKind.Scales, id);

    public ContainerRequest? Container(string id) => Find<ContainerRequest>(RecordKind.Containers, id);

    /// <summary>A record, retired or not; null when there is none.</summary>
    public T? Find<T>(RecordKind kind, string id)
        where T : DescribedRequest =>
        Once((kind, id), () => new DescribedRecordStore(kind).Find(connection, workspace, id) is { } record ? Read<T>(record) : null);

    /// <summary>Containers in use, with their ids.</summary>
    public IReadOnlyList<(string Id, ContainerRequest Container)> Containers(int most) =>
        [
            .. new DescribedRecordStore(RecordKind.Containers)
                .List(connection, workspace, "", most, withRetired: false)
                .Select(record => (record.Id, Read<ContainerRequest>(record))),
        ];

    /// <summary>The time zone in which a machine counts its days.</summary>
    public string TimeZoneOf(string machine) => Machine(machine)?.TimeZone ?? LocalDate.Utc;

    /// <summary>Bulk density of a lot, or of the product; null when neither has one.</summary>
    public BulkDensityQuantity? DensityOf(string product, string? lot) =>
        (lot is null ? null : Lot(lot)?.BulkDensity) ?? Product(product)?.BulkDensity;

    private static T Read<T>(DescribedRecord record)
        where T : DescribedRequest => KeptJson.Read<T>(record.Body);

    private T Once<T>(object fact, Func<T> read)
    {
        if (!known.TryGetValue(fact, out var value))
            known[fact] = value = read();
        return (T)value!;
    }
}
