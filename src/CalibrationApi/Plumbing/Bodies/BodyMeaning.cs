using System.Buffers;
using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Bodies;

/// <summary>
/// What a body says, whichever way it is written: white space, the order of members, escapes, the digits of a number and members that are
/// null make no difference. The rules are those of RFC 8785, but for the nulls, which say no more here than absent members.
/// </summary>
internal static class BodyMeaning
{
    /// <summary>SHA-256 of what a body says.</summary>
    /// <param name="body">JSON that was read without a fault.</param>
    public static string Fingerprint(ReadOnlySpan<byte> body)
    {
        var reader = new Utf8JsonReader(body, new JsonReaderOptions { MaxDepth = JsonSettings.MaxDepth });
        using var document = JsonDocument.ParseValue(ref reader);
        var text = new ArrayBufferWriter<byte>(body.Length);
        using (var writer = new Utf8JsonWriter(text))
            Write(writer, document.RootElement);
        return Convert.ToHexStringLower(SHA256.HashData(text.WrittenSpan));
    }

    private static void Write(Utf8JsonWriter writer, JsonElement value)
    {
        switch (value.ValueKind)
        {
            case JsonValueKind.Object:
                writer.WriteStartObject();
                foreach (var member in value.EnumerateObject().OrderBy(member => member.Name, StringComparer.Ordinal))
                {
                    if (member.Value.ValueKind == JsonValueKind.Null)
                        continue;
                    writer.WritePropertyName(member.Name);
                    Write(writer, member.Value);
                }

                writer.WriteEndObject();
                break;
            case JsonValueKind.Array:
                writer.WriteStartArray();
                foreach (var item in value.EnumerateArray())
                    Write(writer, item);
                writer.WriteEndArray();
                break;
            case JsonValueKind.Number when double.IsFinite(value.GetDouble()):
                // Adding zero takes the sign from a negative zero.
                writer.WriteRawValue((value.GetDouble() + 0).ToString("R", CultureInfo.InvariantCulture));
                break;
            default:
                value.WriteTo(writer);
                break;
        }
    }
}
