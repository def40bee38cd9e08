using System.Text.Json;
using System.Text.Json.Serialization;
using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Plumbing.Http;

/// <summary>The stable code of an error: the comment of each is its cause.</summary>
[JsonConverter(typeof(WordConverter))]
public sealed record ErrorCode : Code
{
    internal ErrorCode(string word, string remedy, params int[] statuses)
        : base(word, remedy) => Statuses = statuses;

    /// <summary>The HTTP statuses that it comes with.</summary>
    public IReadOnlyList<int> Statuses { get; }

    /// <inheritdoc/>
    public bool Equals(ErrorCode? other) => base.Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => base.GetHashCode();

    /// <summary>In a problem, what the engine refuses is an error like any other.</summary>
    public static implicit operator ErrorCode(RefusalCode refusal) => FromRefusal(refusal);

    internal static ErrorCode FromRefusal(RefusalCode refusal) =>
        new(refusal.Word, refusal.Remedy, StatusCodes.Status422UnprocessableEntity);

    /// <summary>Answers carry the word; nobody sends one.</summary>
    internal sealed class WordConverter : JsonConverter<ErrorCode>
    {
        public override ErrorCode Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            throw new NotSupportedException("Codes are answered only.");

        public override void Write(Utf8JsonWriter writer, ErrorCode value, JsonSerializerOptions options) =>
            writer.WriteStringValue(value.Word);
    }
}
