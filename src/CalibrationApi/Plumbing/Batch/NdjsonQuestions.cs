using System.Buffers;
using System.IO.Pipelines;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Batch;

/// <summary>Questions as lines of JSON.</summary>
/// <param name="body">The lines.</param>
/// <param name="mostBytes">Longest line, in bytes, without its end.</param>
/// <remarks>
/// A line ends with LF or CR LF, the last one also with the body. Blank lines are counted but ask nothing. A line that is too
/// long is read over without being kept.
/// </remarks>
internal sealed class NdjsonQuestions(PipeReader body, int mostBytes) : LineReader
{
    private readonly ProblemResult tooLong = ProblemResult.Of(
        StatusCodes.Status413PayloadTooLarge,
        ErrorCodes.LineTooLong,
        $"This line is longer than {mostBytes / 1024} KiB. Split the question, or look whether a line break is missing."
    );

    private long number;
    private bool isReadingOver;

    public override async ValueTask<bool> FillAsync(LineChunk chunk, CancellationToken stop)
    {
        while (true)
        {
            var read = await body.ReadAsync(stop);
            var rest = read.Buffer;
            while (!chunk.IsFull && TakeLine(ref rest, read.IsCompleted, out var line))
                Add(chunk, line);
            var wantsMore = !chunk.IsFull && !read.IsCompleted;
            body.AdvanceTo(rest.Start, wantsMore ? rest.End : rest.Start);
            if (chunk.Lines.Count > 0)
                return true;
            if (read.IsCompleted && rest.IsEmpty)
                return false;
        }
    }

    private bool TakeLine(ref ReadOnlySequence<byte> rest, bool isLast, out ReadOnlySequence<byte> line)
    {
        var reader = new SequenceReader<byte>(rest);
        if (reader.TryReadTo(out line, (byte)'\n'))
        {
            rest = reader.UnreadSequence;
            return true;
        }

        line = rest;
        if (isLast)
        {
            rest = rest.Slice(rest.End);
            return !line.IsEmpty || isReadingOver;
        }

        // One byte more, because the line may end with a carriage return.
        if (isReadingOver || rest.Length > mostBytes + 1)
        {
            isReadingOver = true;
            rest = rest.Slice(rest.End);
        }

        return false;
    }

    private void Add(LineChunk chunk, ReadOnlySequence<byte> line)
    {
        number++;
        var isTooLong = isReadingOver;
        isReadingOver = false;
        if (!isTooLong && line.Length > 0 && LastOf(line) == '\r')
            line = line.Slice(0, line.Length - 1);
        if (isTooLong || line.Length > mostBytes)
            chunk.Add(number, tooLong);
        else if (!IsBlank(line))
            chunk.Add(number, line);
    }

    private static byte LastOf(in ReadOnlySequence<byte> line) => line.Slice(line.Length - 1).FirstSpan[0];

    private static bool IsBlank(in ReadOnlySequence<byte> line)
    {
        foreach (var part in line)
        {
            // A byte order mark is nothing either.
            if (part.Span.ContainsAnyExcept(" \t\r\uFEFF"u8))
                return false;
        }

        return true;
    }
}
