using Microsoft.Kiota.Abstractions.Serialization;

namespace CalibrationApi.Client.Models;

/// <summary>A new key.</summary>
/// <remarks>By hand, because the generator makes one type for the two answers that making a key has, and leaves this one out.</remarks>
public sealed class NewKeyAnswer : KeyAnswer
{
    /// <summary>
    /// The key itself, to be kept in a safe place. It is shown in this answer only; null when the same request had made the key earlier.
    /// </summary>
    public string? Key { get; set; }

    /// <summary>Creates an empty answer to read into.</summary>
    /// <param name="parseNode">What is read.</param>
    public static new NewKeyAnswer CreateFromDiscriminatorValue(IParseNode parseNode) => new();

    /// <inheritdoc/>
    public override IDictionary<string, Action<IParseNode>> GetFieldDeserializers() =>
        new Dictionary<string, Action<IParseNode>>(base.GetFieldDeserializers()) { ["key"] = node => Key = node.GetStringValue() };

    /// <inheritdoc/>
    public override void Serialize(ISerializationWriter writer)
    {
        ArgumentNullException.ThrowIfNull(writer);
        base.Serialize(writer);
        writer.WriteStringValue("key", Key);
    }
}
