using System.Buffers;
using System.Text.Json;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Batch;

/// <summary>
/// Some neighbouring questions of a batch, which one thread answers one after the other. Its buffers serve again and again.
/// </summary>
internal sealed class LineChunk
{
    // Enough work to be worth handing to another thread, little enough to keep all of them busy and the memory small.
    private const int MostLines = 64;
    private const int MostBytes = 32 * 1024;

    private readonly ArrayBufferWriter<byte> text = new(MostBytes);
    private readonly List<Line> lines = new(MostLines);

    public LineChunk() => Json = new Utf8JsonWriter(Output, JsonAnswer.Writing);

    public IReadOnlyList<Line> Lines => lines;

    public bool IsFull => lines.Count >= MostLines || text.WrittenCount >= MostBytes;

    /// <summary>The answers, in the order of the lines.</summary>
    public ArrayBufferWriter<byte> Output { get; } = new(MostBytes);

    /// <summary>Writes one JSON value after the other into <see cref="Output"/>; to be reset between them.</summary>
    public Utf8JsonWriter Json { get; }

    /// <summary>Adds a question.</summary>
    public void Add(long number, in ReadOnlySequence<byte> question, TableRows? rows = null)
    {
        var length = (int)question.Length;
        lines.Add(new Line(number, text.WrittenCount, length, null, rows));
        question.CopyTo(text.GetSpan(length));
        text.Advance(length);
    }

    /// <summary>Adds a question that cannot even be read.</summary>
    public void Add(long number, ProblemResult problem, TableRows? rows = null) => lines.Add(new Line(number, 0, 0, problem, rows));

    public ReadOnlySpan<byte> TextOf(in Line line) => text.WrittenSpan.Slice(line.Start, line.Length);

    public void Clear()
    {
        lines.Clear();
        text.ResetWrittenCount();
        Output.ResetWrittenCount();
    }

    /// <summary>One question.</summary>
    /// <param name="Number">Its line in what was sent.</param>
    /// <param name="Start">Where its text begins in the chunk.</param>
    /// <param name="Length">Bytes of its text.</param>
    /// <param name="Problem">Why there is no text.</param>
    /// <param name="Rows">The rows it was made of; null when no table was sent.</param>
    internal readonly record struct Line(long Number, int Start, int Length, ProblemResult? Problem, TableRows? Rows);
}
