using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Keeping;

/// <summary>Reads and writes what is kept as JSON; written in the way of answers, by the generated code.</summary>
internal static class KeptJson
{
    private const int UsualLength = 8192;

    /// <summary>A contract type as text.</summary>
    public static string Of<T>(T value)
        where T : class => Encoding.UTF8.GetString(Bytes(value));

    /// <summary>A contract type from its text.</summary>
    public static T Read<T>(string json)
        where T : class => (T)JsonSerializer.Deserialize(json, JsonSettings.Contract.GetTypeInfo(typeof(T)))!;

    /// <summary>A contract type as the bytes of an answer.</summary>
    public static byte[] Bytes<T>(T value)
        where T : class
    {
        var body = new ArrayBufferWriter<byte>(UsualLength);
        using (var json = new Utf8JsonWriter(body, JsonAnswer.Writing))
            JsonSerializer.Serialize(json, value, JsonSettings.Generated<T>());
        return body.WrittenSpan.ToArray();
    }

    /// <summary>A contract type as a tree, for a list.</summary>
    public static JsonObject Node<T>(T value)
        where T : class => JsonSerializer.SerializeToNode(value, JsonSettings.Contract.GetTypeInfo(typeof(T)))!.AsObject();
}
