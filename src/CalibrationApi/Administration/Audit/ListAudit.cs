using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Audit;

namespace CalibrationApi.Administration.Audit;

/// <summary>Lists what was done, and what was refused.</summary>
internal static class ListAudit
{
    private static readonly ListTable Deed = ListTable.Of<AuditItem>();
    private static readonly ListTable Refusal = ListTable.Of<RefusalItem>();

    public static IResult Deeds(AuditQuery query, HttpContext context, CalibrationDatabase database, Workspace workspace, Cursors cursors)
    {
        var (filter, problem) = query.Read();
        if (problem is not null)
            return problem;
        return SimpleList.Of(query, context, cursors, $"{workspace} audit {filter}", Deed, database, (connection, after, most) =>
        {
            var position = after.Split('|') is [var at, var sequence]
                ? new AuditPosition(at, long.Parse(sequence, CultureInfo.InvariantCulture))
                : null;
            return AuditStore
                .List(connection, workspace, filter, position, most)
                .Select(line => (Item(line.Entry), $"{line.Position.At}|{line.Position.Sequence}"));
        });
    }

    public static async Task<IResult> RefusalsAsync(
        PageQuery query,
        HttpContext context,
        CalibrationDatabase database,
        string workspace,
        Cursors cursors,
        RefusalCounts counts
    )
    {
        // What was counted a moment ago is told too.
        await counts.StoreAsync();
        return SimpleList.Of(query, context, cursors, $"{workspace} refusals", Refusal, database, (connection, after, most) =>
        {
            var position = after.Split('|') is [var day, var key, var code] ? (day, key, code) : ("", "", "");
            return RefusalStore.List(connection, workspace, position, most).Select(one => (Item(one), $"{one.Day}|{one.Key}|{one.Code}"));
        });
    }

    private static JsonObject Item(AuditEntry entry) =>
        Node(
            new AuditItem
            {
                At = Instants.Text(entry.At),
                Actor = entry.Actor,
                Key = entry.Key,
                Action = entry.Action,
                Target = entry.Target,
                TraceId = entry.Trace,
            }
        );

    private static JsonObject Item(RefusalCount refusal) =>
        Node(
            new RefusalItem
            {
                Day = refusal.Day,
                Key = refusal.Key.Length == 0 ? null : refusal.Key,
                Code = refusal.Code,
                Count = refusal.Count,
                LastAt = Instants.Text(refusal.LastAt),
            }
        );

    private static JsonObject Node<T>(T item) =>
        JsonSerializer.SerializeToNode(item, JsonSettings.Contract.GetTypeInfo(typeof(T)))!.AsObject();
}
