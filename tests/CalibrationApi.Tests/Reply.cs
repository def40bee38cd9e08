using System.Text.Json.Nodes;

namespace CalibrationApi.Tests;

/// <summary>An answer of the service, whatever its status, read whole.</summary>
internal sealed class Reply
{
    private readonly HttpResponseMessage response;

    private Reply(HttpResponseMessage response, byte[] bytes, string text) => (this.response, Bytes, Text) = (response, bytes, text);

    public int Status => (int)response.StatusCode;

    public byte[] Bytes { get; }

    public string Text { get; }

    public string? MediaType => response.Content.Headers.ContentType?.MediaType;

    public string ContentType => response.Content.Headers.ContentType!.ToString();

    public JsonNode Json => JsonNode.Parse(Text)!;

    public Answer Body => new(Json);

    public string Id => Body.Word("/id");

    public string ETag => response.Headers.ETag!.ToString();

    /// <summary>Address of the next page by the Link header; null on the last page.</summary>
    public string? Next => Header("Link") is { } link ? link[1..link.IndexOf('>', StringComparison.Ordinal)] : null;

    public static async Task<Reply> ReadAsync(HttpResponseMessage response) =>
        new(response, await response.Content.ReadAsByteArrayAsync(), await response.Content.ReadAsStringAsync());

    /// <summary>A header of the answer or of its body; null when it is absent.</summary>
    public string? Header(string name) =>
        response.Headers.TryGetValues(name, out var values) || response.Content.Headers.TryGetValues(name, out values)
            ? string.Join(", ", values)
            : null;

    /// <summary>This answer, which has to have that status.</summary>
    public Reply Expect(int status)
    {
        Assert.True(Status == status, $"Expected {status}, got {Status}: {Text}");
        return this;
    }

    /// <summary>The problem in this answer.</summary>
    public Task<ProblemBody> ProblemAsync(int status) => ProblemBody.ReadAsync(response, status);

    /// <summary>The one fault of a refusal, which has to be at that pointer and have that code.</summary>
    public async Task<Fault> RefusedAsync(int status, string? pointer, string code)
    {
        var fault = (await ProblemAsync(status)).Only();
        Assert.Equal((pointer, code), (fault.Pointer, fault.Code));
        return fault;
    }
}
