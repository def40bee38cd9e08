using Microsoft.Kiota.Abstractions.Serialization;
using Microsoft.Kiota.Serialization.Json;

namespace CalibrationApi.Clients.Tests;

/// <summary>What the client would send.</summary>
internal static class Json
{
    public static string Of<T>(T value)
        where T : IParsable
    {
        using var writer = new JsonSerializationWriter();
        writer.WriteObjectValue(null, value);
        using var text = new StreamReader(writer.GetSerializedContent());
        return text.ReadToEnd();
    }
}
