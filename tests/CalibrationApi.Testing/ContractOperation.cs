using System.Collections.Frozen;
using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace CalibrationApi.Testing;

/// <summary>One operation of a contract.</summary>
public sealed partial class ContractOperation
{
    internal static readonly FrozenSet<string> Methods = new[] { "get", "put", "post", "delete", "patch" }.ToFrozenSet(
        StringComparer.Ordinal
    );

    private const string Lines = "application/x-ndjson";

    private readonly ContractDocument document;
    private readonly Regex path;

    internal ContractOperation(string method, string path, JsonObject json, ContractDocument document)
    {
        (Method, Path, Json, this.document) = (method, path, json, document);
        this.path = new Regex(
            $"^{PathParameter().Replace(Regex.Escape(path).Replace("\\{", "{", StringComparison.Ordinal), "[^/]+")}$",
            RegexOptions.CultureInvariant
        );
        ParameterCount = PathParameter().Count(path);
    }

    /// <summary>The method, in capitals.</summary>
    public string Method { get; }

    /// <summary>The path as the contract writes it, with parameters in braces.</summary>
    public string Path { get; }

    /// <summary>Its name.</summary>
    public string OperationId => Json["operationId"]!.GetValue<string>();

    /// <summary>The operation as the contract writes it.</summary>
    public JsonObject Json { get; }

    /// <summary>The schema of a JSON body that is sent; null without one.</summary>
    public JsonNode? RequestSchema => RequestMedia?["schema"];

    /// <summary>The example of what is sent; null without one.</summary>
    public JsonNode? RequestExample => RequestMedia?["example"];

    /// <summary>The example of what is answered; null without one.</summary>
    public JsonNode? AnswerExample => SuccessMedia?["example"];

    /// <summary>The schema of a successful JSON answer; null without one.</summary>
    public JsonNode? AnswerSchema => SuccessMedia?["schema"];

    /// <summary>The example of one line that is sent; null where no lines of JSON are taken.</summary>
    public JsonNode? RequestLineExample => Json["requestBody"] is { } body ? document.Resolve(body)["content"]?[Lines]?["example"] : null;

    /// <summary>The example of one line that is answered; null without one.</summary>
    public JsonNode? AnswerLineExample => Response(200)?["content"]?[Lines]?["example"];

    /// <summary>The schema of one line that is answered; null without one.</summary>
    public JsonNode? AnswerLineSchema => Response(200)?["content"]?[Lines]?["schema"];

    /// <summary>Whether the path has no parameters.</summary>
    public bool IsPlainPath => ParameterCount == 0;

    /// <summary>Whether the query has a parameter of this name.</summary>
    public bool Takes(string query) =>
        Json["parameters"]?.AsArray().Any(parameter => document.Resolve(parameter!)["name"]?.GetValue<string>() == query) == true;

    internal int ParameterCount { get; }

    private JsonObject? RequestMedia =>
        Json["requestBody"] is { } body ? document.Resolve(body)["content"]?["application/json"]?.AsObject() : null;

    // What a request is answered for the first time: a repeated one gets 200 in place of 201.
    private JsonObject? SuccessMedia =>
        Json["responses"]!.AsObject().Where(response => response.Key.StartsWith('2')).MaxBy(response => response.Key == "201").Value
            is { } answer
            ? document.Resolve(answer)["content"]?["application/json"]?.AsObject()
            : null;

    /// <summary>The answer that the contract describes for a status; null when it describes none.</summary>
    public JsonObject? Response(int status)
    {
        var responses = Json["responses"]!.AsObject();
        var code = status.ToString(CultureInfo.InvariantCulture);
        return (responses[code] ?? responses[$"{code[0]}XX"] ?? responses["default"]) is { } found ? document.Resolve(found) : null;
    }

    /// <inheritdoc/>
    public override string ToString() => OperationId;

    internal bool Matches(string requested) => path.IsMatch(requested);

    [GeneratedRegex(@"\{[^}]+\}")]
    private static partial Regex PathParameter();
}
