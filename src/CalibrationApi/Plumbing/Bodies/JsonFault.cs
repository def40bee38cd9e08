using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Plumbing.Bodies;

/// <summary>Finds what is wrong with a body that the serializer refused, and where.</summary>
/// <remarks>
/// The serializer's messages name C# types and are not a stable interface, so the body is walked once more beside the
/// same type information that the serializer used. Only refused bodies pay for it.
/// </remarks>
internal ref struct JsonFault
{
    // A name that is longer is no known one in another spelling.
    private const int LongestName = 100;

    private Utf8JsonReader reader;
    private readonly JsonSerializerOptions options;
    private ProblemError? error;

    // Grows from its end while the walk comes back from a fault, so that a sound body makes none.
    private string below = "";

    private JsonFault(ReadOnlySpan<byte> body, JsonSerializerOptions options)
    {
        reader = new Utf8JsonReader(body, new JsonReaderOptions { MaxDepth = options.MaxDepth });
        this.options = options;
    }

    /// <summary>What is told when the serializer refuses what looks sound here.</summary>
    public static ProblemError Unclear { get; } =
        new()
        {
            Code = ErrorCodes.JsonBroken,
            Detail = "The body is not JSON that this operation can read. Check it against the contract at /openapi/v1.json.",
        };

    /// <summary>The first fault of a body that cannot be read as <paramref name="type"/>; null when there is none.</summary>
    public static ProblemError? Find(ReadOnlySpan<byte> body, JsonTypeInfo type)
    {
        var fault = new JsonFault(body, type.Options);
        try
        {
            if (fault.reader.Read())
                fault.Value(type, int.MaxValue);
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
            fault.error ??= new ProblemError
            {
                Code = ErrorCodes.JsonBroken,
                Detail = "A text in the body holds a broken escape such as half of a surrogate pair. Write the character itself in UTF-8.",
            };
        }

        return fault.error is { Pointer: not null } placed
            ? new ProblemError
            {
                Pointer = "#" + fault.below,
                Code = placed.Code,
                Detail = placed.Detail,
            }
            : fault.error;
    }

    private static ProblemError Broken(JsonException broken)
    {
        var line = (broken.LineNumber ?? 0) + 1;
        var column = (broken.BytePositionInLine ?? 0) + 1;
        return new ProblemError
        {
            Code = ErrorCodes.JsonBroken,
            Detail = string.Create(
                CultureInfo.InvariantCulture,
                $"The body is not valid JSON: look at line {line}, byte {column}. Numbers are plain digits with a decimal point; NaN and Infinity are not numbers in JSON."
            ),
        };
    }

    private void Value(JsonTypeInfo type, int mostItems)
    {
        if (reader.TokenType == JsonTokenType.Null)
            return;
        switch (type.Kind)
        {
            case JsonTypeInfoKind.Object:
                Members(type);
                break;
            case JsonTypeInfoKind.Enumerable:
                Items(type, mostItems);
                break;
            default:
                Scalar(type.Type);
                break;
        }
    }

    private void Members(JsonTypeInfo type)
    {
        if (reader.TokenType != JsonTokenType.StartObject)
        {
            Wrong("a JSON object { … }");
            return;
        }

        Span<bool> seen = stackalloc bool[type.Properties.Count];
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var at = IndexOfName(type);
            if (at < 0 || seen[at])
            {
                var name = reader.GetString()!;
                below = "/" + Escape(name);
                error =
                    at < 0
                        ? Fault(ErrorCodes.MemberUnknown, Unknown(name, type))
                        : Fault(ErrorCodes.MemberDuplicate, $"'{name}' is given twice. Give it once.");
                return;
            }

            seen[at] = true;
            var member = type.Properties[at];
            if (reader.Read())
            {
                var inner = options.GetTypeInfo(member.PropertyType);
                Value(inner, inner.Kind == JsonTypeInfoKind.Enumerable ? RequestPlan.MostItems(type.Type, member.Name) : int.MaxValue);
            }

            if (error is not null)
            {
                below = $"/{Escape(member.Name)}{below}";
                return;
            }
        }
    }

    private readonly int IndexOfName(JsonTypeInfo type)
    {
        for (var i = 0; i < type.Properties.Count; i++)
        {
            if (reader.ValueTextEquals(type.Properties[i].Name))
                return i;
        }

        return -1;
    }

    private void Items(JsonTypeInfo type, int most)
    {
        if (reader.TokenType != JsonTokenType.StartArray)
        {
            Wrong("a JSON array [ … ]");
            return;
        }

        var element = options.GetTypeInfo(type.ElementType!);
        for (var i = 0; reader.Read() && reader.TokenType != JsonTokenType.EndArray; i++)
        {
            if (i == most)
            {
                error = Fault(ErrorCodes.TooMany, ItemsAttribute.TooManyItems(most));
                return;
            }

            Value(element, int.MaxValue);
            if (error is not null)
            {
                below = string.Create(CultureInfo.InvariantCulture, $"/{i}{below}");
                return;
            }
        }
    }

    private void Scalar(Type type)
    {
        var target = Nullable.GetUnderlyingType(type) ?? type;
        var token = reader.TokenType;
        if (target == typeof(string))
        {
            if (token != JsonTokenType.String)
                Wrong("a text in quotes");
            else
                _ = reader.GetString();
        }
        else if (target == typeof(bool))
        {
            if (token is not (JsonTokenType.True or JsonTokenType.False))
                Wrong("true or false");
        }
        else if (target == typeof(int))
        {
            if (token != JsonTokenType.Number || !reader.TryGetInt32(out _))
                Wrong("a whole number without quotes");
        }
        else if (token != JsonTokenType.Number)
        {
            Wrong("a number without quotes");
        }
    }

    private void Wrong(string expected) => error = Fault(ErrorCodes.TypeWrong, $"Give {expected} here, not {Found(reader.TokenType)}.");

    // The place follows when the walk comes back.
    private static ProblemError Fault(ErrorCode code, string detail) =>
        new()
        {
            Pointer = "#",
            Code = code,
            Detail = detail,
        };

    private static string Found(JsonTokenType token) =>
        token switch
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
        var plain =
            name.Length > LongestName ? "" : name.Replace("_", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal);
        var near = type
            .Properties.Select(property => property.Name)
            .FirstOrDefault(known => string.Equals(known, plain, StringComparison.OrdinalIgnoreCase));
        return near is null
            ? $"There is no member '{shown}' here. Leave it out, or use one of: {string.Join(", ", type.Properties.Select(property => property.Name))}."
            : $"There is no member '{shown}' here. Write '{near}'; case counts.";
    }

    private static string Escape(string name) =>
        Uri.EscapeDataString(
            Excerpt.Of(name, LongestName).Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal)
        );
}
