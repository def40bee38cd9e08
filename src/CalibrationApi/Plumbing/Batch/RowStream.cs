namespace CalibrationApi.Plumbing.Batch;

/// <summary>The bytes of a table, as long as no row of it is too long: the parser keeps a whole row in memory.</summary>
/// <param name="table">The bytes.</param>
/// <param name="mostBytes">Longest row, in bytes.</param>
/// <param name="stop">Ends the reading.</param>
internal sealed class RowStream(Stream table, int mostBytes, CancellationToken stop) : Stream
{
    // The readers above take some bytes ahead.
    private const int ReadAhead = 8 * 1024;

    private int sinceRow;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    /// <summary>A row was read to its end.</summary>
    public void RowEnds() => sinceRow = 0;

    public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
    {
        if (sinceRow > mostBytes + ReadAhead)
            throw new RowTooLongException();
        var read = await table.ReadAsync(buffer, stop);
        sinceRow += read;
        return read;
    }

    public override Task<int> ReadAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken) =>
        ReadAsync(buffer.AsMemory(offset, count), cancellationToken).AsTask();

    public override int Read(byte[] buffer, int offset, int count) =>
        throw new NotSupportedException("A table is read without blocking a thread.");

    public override void Flush() => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}

/// <summary>Where a row ends cannot be found.</summary>
internal sealed class RowTooLongException : Exception;
