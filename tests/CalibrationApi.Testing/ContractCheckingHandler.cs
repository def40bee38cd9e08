using System.Collections.Frozen;
using System.Globalization;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace CalibrationApi.Testing;

/// <summary>
/// Passes requests on and fails when an answer is not what the contract says: its status, its headers and what they hold, its media type,
/// its body, its codes.
/// </summary>
/// <remarks>
/// Put it into the client of any test that calls the service:
/// <code>var client = factory.CreateDefaultClient(new ContractCheckingHandler());</code>
/// Addresses outside <c>/v1/</c> are not part of the contract and pass unchecked. Streams of events pass without a look
/// at their body, because they have no end.
/// </remarks>
/// <param name="contract">The contract; the committed one when it is left out.</param>
public sealed class ContractCheckingHandler(ContractDocument? contract = null) : DelegatingHandler
{
    private const string Covered = "/v1/";
    private const string ProblemMedia = "application/problem+json";

    // Headers of the transport and of the exchange itself, which no contract repeats for every operation.
    private static readonly FrozenSet<string> Undocumented = new[]
    {
        "Date",
        "Server",
        "Connection",
        "Keep-Alive",
        "Transfer-Encoding",
        "Content-Type",
        "Content-Length",
        "Content-Encoding",
        "Vary",
        "Allow",
        "Access-Control-Allow-Origin",
        "Access-Control-Expose-Headers",
        "X-Content-Type-Options",
        "Content-Security-Policy",
        "Referrer-Policy",
        "Strict-Transport-Security",
    }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    // The server's own failure page forbids caches by headers that no operation declares.
    private static readonly FrozenSet<string> OfFailures = new[] { "Cache-Control", "Pragma", "Expires" }.ToFrozenSet(
        StringComparer.OrdinalIgnoreCase
    );

    private readonly ContractDocument contract = contract ?? ContractDocument.Committed;

    /// <inheritdoc/>
    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        // Method and address are read before the answer: a test may send the message on.
        var (method, path) = (request.Method, request.RequestUri!.AbsolutePath);
        var response = await base.SendAsync(request, cancellationToken);
        // Over a real connection, whoever has left hears nothing any more.
        cancellationToken.ThrowIfCancellationRequested();
        if (!path.StartsWith(Covered, StringComparison.Ordinal) || method == HttpMethod.Options)
            return response;
        var faults = await FaultsAsync(method, path, response, cancellationToken);
        return faults.Count == 0
            ? response
            : throw new ContractViolationException(
                $"{method} {path} answered {(int)response.StatusCode} against the contract:{string.Concat(faults.Select(fault => $"{Environment.NewLine}  {fault}"))}"
            );
    }

    private async Task<List<string>> FaultsAsync(
        HttpMethod method,
        string path,
        HttpResponseMessage response,
        CancellationToken cancellationToken
    )
    {
        var status = (int)response.StatusCode;
        var at = contract.At(path);
        var operation = at.FirstOrDefault(one =>
            HttpMethod.Parse(one.Method) == method || (method == HttpMethod.Head && one.Method == "GET")
        );
        if (operation is null)
            return await MisaddressedAsync(method, at.Count > 0, status, response, cancellationToken);
        if (operation.Response(status) is not { } described)
            return [$"The contract has no status {status} for {operation.OperationId}."];
        var faults = Headers(operation, described, response).ToList();
        if (method != HttpMethod.Head)
            faults.AddRange(await BodyAsync(described, response, cancellationToken));
        return faults;
    }

    // Where the contract has no operation, the service still says so by a problem.
    private async Task<List<string>> MisaddressedAsync(
        HttpMethod method,
        bool pathExists,
        int status,
        HttpResponseMessage response,
        CancellationToken cancellationToken
    )
    {
        var expected = pathExists ? 405 : 404;
        // Whoever asks too often is not told even that.
        if (status != expected && status != 429)
            return
            [
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The contract has no such {(pathExists ? "method at this path" : "path")}, so the answer has to be {expected}."
                ),
            ];
        if (method == HttpMethod.Head)
            return [];
        return await BodyAsync(
            new JsonObject
            {
                ["content"] = new JsonObject
                {
                    [ProblemMedia] = new JsonObject { ["schema"] = new JsonObject { ["$ref"] = "#/components/schemas/Problem" } },
                },
            },
            response,
            cancellationToken
        );
    }

    private IEnumerable<string> Headers(ContractOperation operation, JsonObject described, HttpResponseMessage response)
    {
        var documented = described["headers"]?.AsObject() ?? [];
        var sent = response
            .Headers.Concat(response.Content.Headers)
            .Select(header => header.Key)
            .ToHashSet(StringComparer.OrdinalIgnoreCase);
        foreach (var (name, header) in documented)
        {
            if (contract.Resolve(header!)["required"]?.GetValue<bool>() == true && !sent.Contains(name))
                yield return $"The contract promises the header {name} for {operation.OperationId}; it is missing.";
            foreach (var value in Values(response, name))
            {
                if (
                    contract.Resolve(header!)["schema"] is { } schema
                    && contract.Faults(schema, AsJson(contract.Resolve(schema), value)) is { Count: > 0 } faults
                )
                    yield return $"The header {name} of {operation.OperationId} holds '{value}', against its schema: {string.Join(", ", faults)}.";
            }
        }

        // What no operation says anything of is not to be kept by any cache.
        if (response.Headers.CacheControl is { NoStore: true, Private: false, NoCache: false })
            sent.Remove("Cache-Control");
        foreach (
            var name in sent.Where(name =>
                !Undocumented.Contains(name)
                && !((int)response.StatusCode >= 500 && OfFailures.Contains(name))
                && !documented.Any(header => header.Key.Equals(name, StringComparison.OrdinalIgnoreCase))
            )
        )
            yield return $"The contract does not know the header {name} of {operation.OperationId}. Declare it on the route.";
    }

    private static HeaderStringValues Values(HttpResponseMessage response, string name) =>
        response.Headers.NonValidated.TryGetValues(name, out var values)
        || response.Content.Headers.NonValidated.TryGetValues(name, out values)
            ? values
            : default;

    // A header is text; where its schema says number, it reads as one.
    private static JsonElement AsJson(JsonObject schema, string value) =>
        schema["type"]?.GetValue<string>() is "integer" or "number"
        && double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? JsonSerializer.SerializeToElement(number)
            : JsonSerializer.SerializeToElement(value);

    private async Task<List<string>> BodyAsync(JsonObject expected, HttpResponseMessage response, CancellationToken cancellationToken)
    {
        var content = expected["content"]?.AsObject();
        var media = response.Content.Headers.ContentType?.MediaType;
        if (media == "text/event-stream")
            return content?[media] is null ? [$"The contract does not know the media type {media} here."] : [];
        await response.Content.LoadIntoBufferAsync(cancellationToken);
        var body = await response.Content.ReadAsByteArrayAsync(cancellationToken);
        // A list without items is an empty body where each line is an item.
        if (body.Length == 0 && media is "application/x-ndjson" or "text/csv" && content?[media] is not null)
            return [];
        if (media is null || body.Length == 0)
            return content is { Count: > 0 } ? ["The contract promises a body; none came."] : [];
        if (content?[media] is not { } described)
            return [$"The contract does not know the media type {media} here."];
        if (media == "text/csv")
            return Csv(response, body);
        return described["schema"] is not { } schema || !media.EndsWith("json", StringComparison.Ordinal)
            ? []
            : [.. Parts(media, body).SelectMany(part => JsonFaults(expected, schema, part, (int)response.StatusCode))];
    }

    // RFC 4180: the media type says that there is a header row, and lines end with CR LF.
    private static List<string> Csv(HttpResponseMessage response, byte[] body)
    {
        var faults = new List<string>();
        if (response.Content.Headers.ContentType?.Parameters.Any(parameter => parameter is { Name: "header", Value: "present" }) != true)
            faults.Add("The media type of the CSV does not say header=present.");
        var header = Encoding.UTF8.GetString(body.AsSpan(0, Math.Max(0, body.AsSpan().IndexOf((byte)'\n') + 1)));
        if (!header.EndsWith("\r\n", StringComparison.Ordinal))
            faults.Add("The header row of the CSV does not end with CR LF.");
        string[] columns = [.. header.TrimEnd().Split(',')];
        if (columns.Any(column => column.Length == 0) || columns.Distinct(StringComparer.Ordinal).Count() != columns.Length)
            faults.Add("The header row of the CSV has a column without a name, or one twice.");
        return faults;
    }

    // A schema of newline-delimited JSON describes one line.
    private static List<ReadOnlyMemory<byte>> Parts(string media, byte[] body)
    {
        if (!media.EndsWith("ndjson", StringComparison.Ordinal))
            return [body];
        var lines = new List<ReadOnlyMemory<byte>>();
        ReadOnlyMemory<byte> rest = body;
        while (rest.Length > 0)
        {
            var end = rest.Span.IndexOf((byte)'\n');
            if (end != 0)
                lines.Add(end < 0 ? rest : rest[..end]);
            rest = end < 0 ? default : rest[(end + 1)..];
        }

        return lines;
    }

    private IReadOnlyList<string> JsonFaults(JsonObject expected, JsonNode schema, ReadOnlyMemory<byte> body, int status)
    {
        try
        {
            using var instance = JsonDocument.Parse(body, new JsonDocumentOptions { AllowDuplicateProperties = false });
            var answer = instance.RootElement;
            return
            [
                .. contract.Faults(schema, answer),
                .. contract.Codes.Faults(answer, status),
                .. contract.Sent.Faults(schema, answer),
                .. status >= 400 ? contract.Sent.OfProblem(expected, answer) : [],
            ];
        }
        catch (JsonException broken)
        {
            return [$"The body is not JSON: {broken.Message}"];
        }
    }
}
