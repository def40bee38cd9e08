using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Batch;

/// <summary>How answers are written one below the other.</summary>
internal abstract class AnswerLines
{
    public abstract string ContentType { get; }

    /// <summary>What stands before the first answer.</summary>
    public virtual ReadOnlyMemory<byte> Head => default;

    /// <summary>Writes the result of a question.</summary>
    public abstract void Write<TAnswer>(LineChunk chunk, in LineChunk.Line line, JsonAnswer<TAnswer> result)
        where TAnswer : class;

    /// <summary>Writes the problem of a question.</summary>
    public abstract void Write(LineChunk chunk, in LineChunk.Line line, Problem problem);
}
