using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Bodies;

/// <summary>
/// Members that an answer has beside those of the request. When replacing they may come along as they are, so that what was read can be
/// sent back.
/// </summary>
/// <param name="names">Their names in the contract.</param>
[AttributeUsage(AttributeTargets.Class)]
internal sealed class ReadOnlyMembersAttribute(params string[] names) : Attribute
{
    public static readonly IReadOnlyDictionary<string, JsonElement> None = new Dictionary<string, JsonElement>();

    public IReadOnlyList<string> Names => names;

    /// <summary>Takes them out of a body, which has blanks in their places then; none where the body cannot be read.</summary>
    public static IReadOnlyDictionary<string, JsonElement> TakeFrom(Type request, Span<byte> body)
    {
        if (request.GetCustomAttribute<ReadOnlyMembersAttribute>(inherit: true) is not { } attribute)
            return None;
        try
        {
            var taken = new Dictionary<string, JsonElement>(StringComparer.Ordinal);
            var blanks = attribute.Find(body, taken);
            foreach (var (start, end) in blanks)
                body[start..end].Fill((byte)' ');
            return taken;
        }
        // The second is what the reader throws at half of a surrogate pair.
        catch (Exception fault) when (fault is JsonException or InvalidOperationException)
        {
            // Whoever reads the body next finds the fault again and tells it.
            return None;
        }
    }

    // Each with the comma that parts it from the next member, the last ones with that before them.
    private List<(int Start, int End)> Find(ReadOnlySpan<byte> body, Dictionary<string, JsonElement> taken)
    {
        var blanks = new List<(int Start, int End)>();
        var reader = new Utf8JsonReader(body, new JsonReaderOptions { MaxDepth = JsonSettings.MaxDepth });
        if (!reader.Read() || reader.TokenType != JsonTokenType.StartObject)
            return blanks;
        var keptUpTo = (int)reader.BytesConsumed;
        var isAnyKept = false;
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var start = (int)reader.TokenStartIndex;
            var name = reader.GetString()!;
            reader.Read();
            var isTaken = names.Contains(name) && !taken.ContainsKey(name);
            // Read here, because what is compared later has to be a text.
            if (isTaken && reader.TokenType == JsonTokenType.String)
                _ = reader.GetString();
            if (isTaken)
                taken[name] = JsonElement.ParseValue(ref reader);
            else
                reader.Skip();
            var end = (int)reader.BytesConsumed;
            var comma = body[end..].IndexOfAnyExcept(" \t\r\n"u8) is var gap and >= 0 && body[end + gap] == ',' ? end + gap + 1 : -1;
            if (isTaken)
                blanks.Add(comma > 0 ? (start, comma) : (isAnyKept ? keptUpTo : start, end));
            else
                (keptUpTo, isAnyKept) = (end, true);
        }

        return blanks;
    }

    /// <summary>What is wrong with members that came along and are not what the record has.</summary>
    public static ProblemError[] Changed(IReadOnlyDictionary<string, JsonElement> sent, JsonObject record) =>
        [
            .. sent.Where(member => !JsonNode.DeepEquals(JsonNode.Parse(member.Value.GetRawText()), record[member.Key]))
                .Select(member => new ProblemError
                {
                    Pointer = $"#/{member.Key}",
                    Code = ErrorCodes.RecordsAtOdds,
                    Detail =
                        "The service keeps this member itself, and it is not what the record has. Leave it out, or send it as you read it.",
                }),
        ];
}
