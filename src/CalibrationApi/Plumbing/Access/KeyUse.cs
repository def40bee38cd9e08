using System.Collections.Concurrent;
using CalibrationApi.Storage.Access;
using CalibrationApi.Storage.OneWriter;

namespace CalibrationApi.Plumbing.Access;

/// <summary>Notes when keys were used last: at most once a minute for each, and without letting a request wait for it.</summary>
internal sealed partial class KeyUse(SingleWriter writer, ILogger<KeyUse> log)
{
    private static readonly TimeSpan Grain = TimeSpan.FromMinutes(1);

    private readonly ConcurrentDictionary<(string Workspace, string Key), DateTimeOffset> noted = [];
    private volatile Task last = Task.CompletedTask;

    /// <summary>The note that was begun last.</summary>
    public Task Last => last;

    public void Note(string workspace, KeyRecord key, DateTimeOffset now)
    {
        var before = noted.GetOrAdd((workspace, key.Id), key.LastUsedAt ?? DateTimeOffset.MinValue);
        // Of many requests at once, the one that changes the entry notes it.
        if (now - before >= Grain && noted.TryUpdate((workspace, key.Id), now, before))
            last = WriteAsync(workspace, key.Id, now);
    }

    private async Task WriteAsync(string workspace, string key, DateTimeOffset now)
    {
        try
        {
            await writer.WriteAsync(connection =>
            {
                KeyStore.NoteUse(connection, workspace, key, now);
                return true;
            });
        }
        catch (Exception failure)
        {
            // Knowing when a key was used is worth no request.
            LogFailure(failure, key);
        }
    }

    [LoggerMessage(Level = LogLevel.Warning, Message = "When the key {Key} was used could not be noted.")]
    private partial void LogFailure(Exception failure, string key);
}
