using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace CalibrationApi.Http;

/// <summary>Finds what is wrong with a body that the serializer refused, and where.</summary>
/// <remarks>
/// The serializer's messages name C# types and are not a stable interface, so the body is walked once more beside the
/// same type information that the serializer used. Only refused bodies pay for it.
/// </remarks>
internal ref struct JsonFault
{
    private Utf8JsonReader reader;
    private readonly JsonSerializerOptions options;
    private ProblemError? error;

    private JsonFault(ReadOnlySpan<byte> body, JsonSerializerOptions options)
    {
        reader = new Utf8JsonReader(body, new JsonReaderOptions { MaxDepth = options.MaxDepth });
        this.options = options;
    }

    /// <summary>The first fault of a body that cannot be read as <paramref name="type"/>.</summary>
    public static ProblemError Find(ReadOnlySpan<byte> body, JsonTypeInfo type)
    {
        var fault = new JsonFault(body, type.Options);
        try
        {
            if (fault.reader.Read())
                fault.Value(type, "#");
            while (fault.error is null && fault.reader.Read())
            {
                // Reading on finds trailing text and a missing end.
            }
        }
        catch (JsonException broken)
        {
            fault.error ??= Broken(broken);
        }
        catch (InvalidOperationException)
        {
            fault.error ??= new ProblemError { Code = ErrorCode.JsonBroken, Detail = "A text in the body holds a broken escape such as half of a surrogate pair. Write the character itself in UTF-8." };
        }

        return fault.error ?? new ProblemError { Code = ErrorCode.JsonBroken, Detail = "The body is not JSON that this operation can read. Check it against the contract at /openapi/v1.json." };
    }

    private static ProblemError Broken(JsonException broken)
    {
        var line = (broken.LineNumber ?? 0) + 1;
        var column = (broken.BytePositionInLine ?? 0) + 1;
        return new ProblemError
        {
            Code = ErrorCode.JsonBroken,
            Detail = string.Create(CultureInfo.InvariantCulture, $"The body is not valid JSON: look at line {line}, byte {column}. Numbers are plain digits with a decimal point; NaN and Infinity are not numbers in JSON."),
        };
    }

    private void Value(JsonTypeInfo type, string pointer)
    {
        if (reader.TokenType == JsonTokenType.Null)
            return;
        switch (type.Kind)
        {
            case JsonTypeInfoKind.Object:
                Members(type, pointer);
                break;
            case JsonTypeInfoKind.Enumerable:
                Items(type, pointer);
                break;
            default:
                Scalar(type.Type, pointer);
                break;
        }
    }

    private void Members(JsonTypeInfo type, string pointer)
    {
        if (reader.TokenType != JsonTokenType.StartObject)
        {
            Wrong(pointer, "a JSON object { … }");
            return;
        }

        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (error is null && reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var name = reader.GetString()!;
            var here = $"{pointer}/{Escape(name)}";
            var member = type.Properties.FirstOrDefault(property => property.Name == name);
            if (member is null)
                error = new ProblemError { Pointer = here, Code = ErrorCode.MemberUnknown, Detail = Unknown(name, type) };
            else if (!seen.Add(name))
                error = new ProblemError { Pointer = here, Code = ErrorCode.MemberDuplicate, Detail = $"'{name}' is given twice. Give it once." };
            else if (reader.Read())
                Value(options.GetTypeInfo(member.PropertyType), here);
        }
    }

    private void Items(JsonTypeInfo type, string pointer)
    {
        if (reader.TokenType != JsonTokenType.StartArray)
        {
            Wrong(pointer, "a JSON array [ … ]");
            return;
        }

        var element = options.GetTypeInfo(type.ElementType!);
        for (var i = 0; error is null && reader.Read() && reader.TokenType != JsonTokenType.EndArray; i++)
            Value(element, string.Create(CultureInfo.InvariantCulture, $"{pointer}/{i}"));
    }

    private void Scalar(Type type, string pointer)
    {
        var target = Nullable.GetUnderlyingType(type) ?? type;
        var token = reader.TokenType;
        if (target == typeof(string))
        {
            if (token != JsonTokenType.String)
                Wrong(pointer, "a text in quotes");
            else
                _ = reader.GetString();
        }
        else if (target == typeof(bool))
        {
            if (token is not (JsonTokenType.True or JsonTokenType.False))
                Wrong(pointer, "true or false");
        }
        else if (target == typeof(int))
        {
            if (token != JsonTokenType.Number || !reader.TryGetInt32(out _))
                Wrong(pointer, "a whole number without quotes");
        }
        else if (token != JsonTokenType.Number)
        {
            Wrong(pointer, "a number without quotes");
        }
    }

    private void Wrong(string pointer, string expected) =>
        error = new ProblemError { Pointer = pointer, Code = ErrorCode.TypeWrong, Detail = $"Give {expected} here, not {Found(reader.TokenType)}." };

    private static string Found(JsonTokenType token) => token switch
    {
        JsonTokenType.StartObject => "an object",
        JsonTokenType.StartArray => "an array",
        JsonTokenType.String => "a text",
        JsonTokenType.Number => "this number",
        JsonTokenType.True or JsonTokenType.False => "true or false",
        _ => "this",
    };

    private static string Unknown(string name, JsonTypeInfo type)
    {
        var shown = Excerpt.Of(name, 60);
        var near = type.Properties
            .Select(property => property.Name)
            .FirstOrDefault(known => string.Equals(known, name.Replace("_", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase));
        return near is null
            ? $"There is no member '{shown}' here. Leave it out, or use one of: {string.Join(", ", type.Properties.Select(property => property.Name))}."
            : $"There is no member '{shown}' here. Write '{near}'; case counts.";
    }

    private static string Escape(string name) =>
        Uri.EscapeDataString(Excerpt.Of(name, 100).Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal));
}
