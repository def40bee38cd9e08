using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Plumbing.Keeping;

/// <summary>A part of a record as JSON that was kept: it is given back as it was written then, whatever its type became since.</summary>
[JsonConverter(typeof(AsKeptConverter))]
public sealed class AsKept<T> : AsKept
    where T : class
{
    private AsKept(Action<Utf8JsonWriter> write)
        : base(write) { }

    /// <summary>A body as it was sent.</summary>
    internal static AsKept<T> Entered(string json) => new(writer => EnteredBody.Write(writer, json));

    /// <summary>What was answered or asked, as it was written then.</summary>
    /// <param name="json">What was written.</param>
    /// <param name="units">Other units for its quantities; null keeps them.</param>
    internal static AsKept<T> Written(string json, DisplayUnits? units) =>
        new(writer =>
        {
            if (units is null)
            {
                writer.WriteRawValue(json, skipInputValidation: true);
                return;
            }

            var converted = JsonNode.Parse(json);
            QuantityConversion.Apply(converted, units);
            converted!.WriteTo(writer);
        });
}

/// <summary>The same, of any type.</summary>
public abstract class AsKept
{
    private readonly Action<Utf8JsonWriter> write;

    private protected AsKept(Action<Utf8JsonWriter> write) => this.write = write;

    internal void WriteTo(Utf8JsonWriter writer) => write(writer);
}

/// <summary>Writes what was kept.</summary>
internal sealed class AsKeptConverter : JsonConverter<AsKept>
{
    public override bool CanConvert(Type typeToConvert) => typeToConvert.IsAssignableTo(typeof(AsKept));

    public override AsKept Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        throw new NotSupportedException("What was kept is only answered.");

    public override void Write(Utf8JsonWriter writer, AsKept value, JsonSerializerOptions options) => value.WriteTo(writer);
}
