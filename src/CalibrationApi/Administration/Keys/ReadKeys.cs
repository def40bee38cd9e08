using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Access;

namespace CalibrationApi.Administration.Keys;

/// <summary>Reads keys, without their texts.</summary>
internal static class ReadKeys
{
    /// <summary>Reads a key.</summary>
    /// <remarks>Everything but its text, which nobody keeps.</remarks>
    /// <param name="id">Id of the key.</param>
    /// <response code="200">The key.</response>
    public static IResult Get(string id, CalibrationDatabase database, Workspace workspace, TimeProvider clock) =>
        database.Read(connection => KeyStore.Find(connection, workspace, id)) is { } key
            ? new RecordResult(KeyBody.Write(workspace, key, clock.GetUtcNow()))
            : Pages.NotFound();

    public static IResult List(
        PageQuery query,
        HttpContext context,
        CalibrationDatabase database,
        Workspace workspace,
        Cursors cursors,
        TimeProvider clock
    ) =>
        SimpleList.Of(query, context, cursors, $"{workspace} keys", KeyBody.Table, database, (connection, after, most) =>
            KeyStore.List(connection, workspace, after, most).Select(key => (KeyBody.Node(workspace, key, clock.GetUtcNow()), key.Id))
        );
}
