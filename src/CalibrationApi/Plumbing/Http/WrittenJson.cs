using System.Buffers;
using System.Text.Json;
using Microsoft.Extensions.ObjectPool;

namespace CalibrationApi.Plumbing.Http;

/// <summary>Memory for an answer while it is written and sent, used again for the next one.</summary>
/// <remarks>Made anew for each, it was a third of the memory that a calculation over HTTP takes.</remarks>
internal sealed class WrittenJson : IResettable, IDisposable
{
    private const int UsualLength = 8 * 1024;

    // A rare large answer does not stay in memory.
    private const int LongestKept = 64 * 1024;

    private static readonly ObjectPool<WrittenJson> Free = ObjectPool.Create(new DefaultPooledObjectPolicy<WrittenJson>());

    private readonly ArrayBufferWriter<byte> bytes = new(UsualLength);

    /// <summary>Made by the pool.</summary>
    public WrittenJson() => Json = new Utf8JsonWriter(bytes, JsonAnswer.Writing);

    /// <summary>Writes the answer.</summary>
    public Utf8JsonWriter Json { get; }

    /// <summary>What was written and flushed.</summary>
    public ReadOnlyMemory<byte> Bytes => bytes.WrittenMemory;

    /// <summary>Empty memory for one answer.</summary>
    public static WrittenJson Take() => Free.Get();

    /// <summary>Ends the use for this answer; nothing of it may be read any more.</summary>
    public void GiveBack() => Free.Return(this);

    /// <inheritdoc/>
    public bool TryReset()
    {
        bytes.ResetWrittenCount();
        Json.Reset();
        return bytes.Capacity <= LongestKept;
    }

    /// <inheritdoc/>
    public void Dispose() => Json.Dispose();
}
