using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;

namespace CalibrationApi.Tests.Plumbing.Batch;

/// <summary>Sends batches and takes their answers apart.</summary>
internal static class Batches
{
    public const string Ndjson = "application/x-ndjson";
    public const string Csv = "text/csv";

    public static Uri At(string operation, string query = "") => new($"{Question.PathOf(operation)}/batch{query}", UriKind.Relative);

    /// <summary>One line of a question of the demo data.</summary>
    public static string Line(string operation) => JsonSerializer.Serialize(JsonDocument.Parse(Question.Of(operation).Text).RootElement);

    public static Task<HttpResponseMessage> SendAsync(string operation, string body, string query = "") =>
        SendAsync(ApiHost.Client, operation, Encoding.UTF8.GetBytes(body), query);

    public static async Task<HttpResponseMessage> SendAsync(
        HttpClient client,
        string operation,
        byte[] body,
        string query = "",
        string? mediaType = Ndjson,
        string? accept = null
    )
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, At(operation, query)) { Content = new ByteArrayContent(body) };
        request.Content.Headers.ContentType = mediaType is null ? null : MediaTypeHeaderValue.Parse(mediaType);
        if (accept is not null)
            request.Headers.Add("Accept", accept);
        return await client.SendAsync(request);
    }

    /// <summary>The lines of an answer.</summary>
    public static async Task<string[]> LinesAsync(HttpResponseMessage response)
    {
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, text);
        Assert.Equal(Ndjson, response.Content.Headers.ContentType?.MediaType);
        Assert.True(text.Length == 0 || text.EndsWith('\n'), "The last line has no end.");
        return text.Split('\n')[..^1];
    }

    public static async Task<JsonElement[]> AnswersAsync(string operation, string body, string query = "")
    {
        using var response = await SendAsync(operation, body, query);
        return [.. (await LinesAsync(response)).Select(line => JsonSerializer.Deserialize<JsonElement>(line))];
    }

    public static long Number(JsonElement line) => line.GetProperty("line").GetInt64();

    /// <summary>The one error of a line that has one.</summary>
    public static (int Status, Fault Fault) Only(JsonElement line) =>
        (
            line.GetProperty("problem").GetProperty("status").GetInt32(),
            Fault.Read(Assert.Single(line.GetProperty("problem").GetProperty("errors").EnumerateArray()))
        );
}
