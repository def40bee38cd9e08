using System.Text.Json;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Storage.Records;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Records.Describing;

/// <summary>
/// Described records for one answer that comes back to the same few again and again: a machine with all its elements is long.
/// </summary>
internal sealed class RecordsReadOnce(SqliteConnection connection, Workspace workspace)
{
    private readonly Dictionary<(RecordKind Kind, string Id), DescribedRequest?> known = [];

    /// <summary>Where they are read.</summary>
    public SqliteConnection Connection => connection;

    /// <summary>Whose they are.</summary>
    public Workspace Workspace => workspace;

    /// <summary>A record, retired or not; null when there is none.</summary>
    public T? Find<T>(RecordKind kind, string id)
        where T : DescribedRequest
    {
        if (!known.TryGetValue((kind, id), out var record))
            known[(kind, id)] = record = Read<T>(kind, id);
        return (T?)record;
    }

    private T? Read<T>(RecordKind kind, string id)
        where T : DescribedRequest =>
        new DescribedRecordStore(kind).Find(connection, workspace, id) is { } record
            ? (T)JsonSerializer.Deserialize(record.Body, JsonSettings.Contract.GetTypeInfo(typeof(T)))!
            : null;
}
