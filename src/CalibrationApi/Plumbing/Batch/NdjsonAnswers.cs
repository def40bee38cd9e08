using System.Buffers;
using System.Buffers.Text;
using System.Text.Json;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;

namespace CalibrationApi.Plumbing.Batch;

/// <summary>Answers as lines of JSON, see <see cref="BatchLine{TAnswer}"/>. Each result has the bytes that it has alone.</summary>
internal sealed class NdjsonAnswers : AnswerLines
{
    private const int LongestNumber = 20;

    public override string ContentType => $"{PageFormats.Ndjson}; charset=utf-8";

    public override void Write<TAnswer>(LineChunk chunk, in LineChunk.Line line, JsonAnswer<TAnswer> result)
    {
        Begin(chunk, line, ",\"result\":"u8);
        result.WriteTo(chunk.Json);
        End(chunk);
    }

    public override void Write(LineChunk chunk, in LineChunk.Line line, Problem problem)
    {
        Begin(chunk, line, ",\"problem\":"u8);
        JsonSerializer.Serialize(chunk.Json, problem, ProblemJson.Default.Problem);
        End(chunk);
    }

    private static void Begin(LineChunk chunk, in LineChunk.Line line, ReadOnlySpan<byte> member)
    {
        var output = chunk.Output;
        output.Write("{\"line\":"u8);
        Utf8Formatter.TryFormat(line.Number, output.GetSpan(LongestNumber), out var written);
        output.Advance(written);
        if (line.Rows is { Test: { } test })
        {
            output.Write(",\"test\":\""u8);
            output.Write(JsonEncodedText.Encode(test, JsonSettings.Encoder).EncodedUtf8Bytes);
            output.Write("\""u8);
        }

        if (line.Rows is { } rows)
            WriteGiven(output, rows);

        output.Write(member);
    }

    private static void WriteGiven(ArrayBufferWriter<byte> output, TableRows rows)
    {
        var before = ",\"given\":["u8;
        var isAny = false;
        foreach (var (column, text) in rows.Header.Given.Zip(rows.Given))
        {
            if (text.Length == 0)
                continue;
            output.Write(before);
            output.Write("{\"column\":\""u8);
            output.Write(JsonEncodedText.Encode(column.Name, JsonSettings.Encoder).EncodedUtf8Bytes);
            output.Write("\",\"text\":\""u8);
            output.Write(JsonEncodedText.Encode(text, JsonSettings.Encoder).EncodedUtf8Bytes);
            output.Write("\"}"u8);
            before = ","u8;
            isAny = true;
        }

        if (isAny)
            output.Write("]"u8);
    }

    private static void End(LineChunk chunk)
    {
        chunk.Json.Flush();
        chunk.Json.Reset();
        chunk.Output.Write("}\n"u8);
    }
}
