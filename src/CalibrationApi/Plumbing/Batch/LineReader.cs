namespace CalibrationApi.Plumbing.Batch;

/// <summary>Reads the questions of a batch one chunk after the other, no faster than they are asked for.</summary>
internal abstract class LineReader
{
    /// <summary>Puts the questions that have arrived into an empty chunk, at least one; false when there are no more.</summary>
    public abstract ValueTask<bool> FillAsync(LineChunk chunk, CancellationToken stop);
}
