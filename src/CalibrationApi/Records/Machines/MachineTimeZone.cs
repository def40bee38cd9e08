using System.Text.Json;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Storage.Records;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Records.Machines;

/// <summary>The time zone in which a machine counts its days.</summary>
internal static class MachineTimeZone
{
    public static string Of(SqliteConnection connection, Workspace workspace, string machine) =>
        new DescribedRecordStore(RecordKind.Machines).Find(connection, workspace, machine) is { } record
            ? ((MachineRequest)JsonSerializer.Deserialize(record.Body, JsonSettings.Contract.GetTypeInfo(typeof(MachineRequest)))!).TimeZone
                ?? LocalDate.Utc
            : LocalDate.Utc;
}
