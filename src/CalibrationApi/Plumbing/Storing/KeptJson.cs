using System.Buffers;
using System.Text;
using System.Text.Json;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Storing;

/// <summary>Writes what is kept as JSON, in the way of answers: by the generated writing code.</summary>
internal static class KeptJson
{
    private const int UsualLength = 4096;

    /// <summary>A contract type as text.</summary>
    public static string Of<T>(T value)
        where T : class => Write(json => Write(json, value));

    /// <summary>The text that is written.</summary>
    public static string Write(Action<Utf8JsonWriter> write)
    {
        var text = new ArrayBufferWriter<byte>(UsualLength);
        using (var json = new Utf8JsonWriter(text, JsonAnswer.Writing))
            write(json);
        return Encoding.UTF8.GetString(text.WrittenSpan);
    }

    /// <summary>Writes a contract type inside something else.</summary>
    public static void Write<T>(Utf8JsonWriter json, T value)
        where T : class => JsonSerializer.Serialize(json, value, JsonSettings.Generated<T>());
}
