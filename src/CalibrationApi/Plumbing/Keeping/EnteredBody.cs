using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Keeping;

/// <summary>
/// A body as it was sent, for an answer: without the members that are null. They say no more than absent ones, and the contract knows no
/// null.
/// </summary>
internal static class EnteredBody
{
    private static readonly JsonReaderOptions Reading = new() { MaxDepth = JsonSettings.MaxDepth };

    /// <summary>As a tree.</summary>
    public static JsonObject Node(string json)
    {
        var body = new ArrayBufferWriter<byte>(json.Length);
        using (var writer = new Utf8JsonWriter(body, JsonAnswer.Writing))
            Write(writer, json);
        return JsonNode.Parse(body.WrittenSpan)!.AsObject();
    }

    /// <summary>Writes it inside something else; numbers digit by digit as they were sent.</summary>
    public static void Write(Utf8JsonWriter writer, string json)
    {
        var length = Encoding.UTF8.GetMaxByteCount(json.Length);
        var text = ArrayPool<byte>.Shared.Rent(length);
        try
        {
            Copy(writer, new Utf8JsonReader(text.AsSpan(0, Encoding.UTF8.GetBytes(json, text)), Reading));
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(text);
        }
    }

    private static void Copy(Utf8JsonWriter writer, Utf8JsonReader reader)
    {
        while (reader.Read())
        {
            switch (reader.TokenType)
            {
                case JsonTokenType.StartObject:
                    writer.WriteStartObject();
                    break;
                case JsonTokenType.EndObject:
                    writer.WriteEndObject();
                    break;
                case JsonTokenType.StartArray:
                    writer.WriteStartArray();
                    break;
                case JsonTokenType.EndArray:
                    writer.WriteEndArray();
                    break;
                case JsonTokenType.PropertyName:
                    var name = reader.GetString()!;
                    var value = reader;
                    value.Read();
                    if (value.TokenType == JsonTokenType.Null)
                        reader.Read();
                    else
                        writer.WritePropertyName(name);
                    break;
                case JsonTokenType.String:
                    writer.WriteStringValue(reader.GetString());
                    break;
                default:
                    writer.WriteRawValue(reader.ValueSpan, skipInputValidation: true);
                    break;
            }
        }
    }
}
