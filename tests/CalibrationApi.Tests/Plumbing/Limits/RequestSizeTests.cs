using System.IO.Compression;
using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Http.Json;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;

namespace CalibrationApi.Tests.Plumbing.Limits;

/// <summary>Bodies that are packed, too long or too slow, heads that are too long, and too many connections.</summary>
public sealed class RequestSizeTests
{
    private static readonly string Path = Question.PathOf(Question.CatchTest);

    [Theory]
    [InlineData("gzip")]
    [InlineData("br")]
    [InlineData("identity, gzip")]
    [InlineData("whatever")]
    public async Task Body_Compressed_IsUnsupportedAndSaysWhatIsTaken(string coding)
    {
        using var packed = new MemoryStream();
        await using (var gzip = new GZipStream(packed, CompressionLevel.Optimal, leaveOpen: true))
            await gzip.WriteAsync(Encoding.UTF8.GetBytes(Question.Of(Question.CatchTest).Text));
        using var content = Question.Json(packed.ToArray());
        content.Headers.TryAddWithoutValidation("Content-Encoding", coding);

        using var response = await ApiHost.Client.PostAsync(new Uri(Path, UriKind.Relative), content);

        Assert.Equal("encoding-unsupported", (await ProblemBody.ReadAsync(response, 415)).Only().Code);
        Assert.Equal("identity", Assert.Single(response.Headers.GetValues("Accept-Encoding")));
    }

    [Theory]
    [InlineData("application/x-ndjson", "line")]
    [InlineData("text/csv", "row")]
    public async Task Line_LongerThanTheSettingAllows_IsRefusedWithItsLength(string media, string word)
    {
        await using var host = new ArrangedHost(("Calibration:Limits:LineKiB", "1"));
        using var content = new ByteArrayContent(
            Encoding.UTF8.GetBytes(
                media == "text/csv" ? "test,note\na," + new string('x', 40_000) : $"{{\"meter\":\"{new string('x', 2000)}\"}}\n"
            )
        );
        content.Headers.TryAddWithoutValidation("Content-Type", media);

        using var response = await host.SendAsync(HttpMethod.Post, Path + "/batch", content: content);

        var text = await response.Content.ReadAsStringAsync();
        Assert.Contains($"This {word} is longer than 1 KiB", text, StringComparison.Ordinal);
        Assert.Contains("line-too-long", text, StringComparison.Ordinal);
    }

    // The client compares with the contract, which has to know this status.
    [Fact]
    public async Task Header_OfATable_LongerThanTheSettingAllows_RefusesTheWholeTable()
    {
        await using var host = new ArrangedHost(("Calibration:Limits:LineKiB", "1"));
        using var content = new ByteArrayContent(Encoding.UTF8.GetBytes("test,note," + new string('x', 40_000)));
        content.Headers.TryAddWithoutValidation("Content-Type", "text/csv");

        using var response = await host.SendAsync(HttpMethod.Post, Path + "/batch", content: content);

        Assert.Equal("line-too-long", (await ProblemBody.ReadAsync(response, 413)).Only().Code);
    }

    // Whatever is deeper than the contract is refused for its type first, so the reader itself is looked at.
    [Fact]
    public async Task Body_IsReadToTheDepthOfTheSetting()
    {
        await using var host = new ArrangedHost(("Calibration:Limits:JsonDepth", "8"));

        var json = host.Services.GetRequiredService<IOptions<JsonOptions>>().Value.SerializerOptions;

        Assert.Equal(8, json.MaxDepth);
        Assert.Throws<JsonException>(() =>
            JsonSerializer.Deserialize(new string('[', 9) + new string(']', 9), json.GetTypeInfo(typeof(JsonElement)))
        );
    }

    [Theory]
    [InlineData("DELETE", "/v1/calculations/catch-test", 405)]
    [InlineData("POST", "/v1/nothing", 404)]
    [InlineData("GET", "/v1/units", 200)]
    public async Task Body_CompressedWhereNobodyReadsIt_DoesNotMatter(string method, string path, int status)
    {
        using var content = Question.Json([0x1F, 0x8B]);
        content.Headers.TryAddWithoutValidation("Content-Encoding", "gzip");
        using var request = new HttpRequestMessage(new HttpMethod(method), new Uri(path, UriKind.Relative)) { Content = content };

        using var response = await ApiHost.Client.SendAsync(request);

        Assert.Equal(status, (int)response.StatusCode);
    }

    [Theory]
    [InlineData(Question.CatchTest, "application/x-ndjson, text/csv, text/tab-separated-values")]
    [InlineData(Question.CatchPlan, "application/x-ndjson")]
    public async Task Batch_Compressed_IsUnsupportedAndSaysWhatIsTaken(string operation, string media)
    {
        using var content = new ByteArrayContent([0x1F, 0x8B]);
        content.Headers.TryAddWithoutValidation("Content-Type", "application/x-ndjson");
        content.Headers.TryAddWithoutValidation("Content-Encoding", "gzip");

        using var response = await ApiHost.Client.PostAsync(new Uri(Question.PathOf(operation) + "/batch", UriKind.Relative), content);

        Assert.Equal("encoding-unsupported", (await ProblemBody.ReadAsync(response, 415)).Only().Code);
        Assert.Equal(media, string.Join(", ", response.Headers.GetValues("Accept-Post")));
    }

    [Theory]
    [InlineData(Question.CatchTest)]
    [InlineData(Question.CatchPlan)]
    [InlineData(Question.MeterSpeed)]
    [InlineData(Question.SeedRowLimit)]
    public async Task Batch_OfEveryCalculation_CountsAsMuchWork(string operation)
    {
        using var content = new ByteArrayContent("{}\n"u8.ToArray());
        content.Headers.TryAddWithoutValidation("Content-Type", "application/x-ndjson");
        await using var host = new ArrangedHost();

        using var response = await host.SendAsync(HttpMethod.Post, Question.PathOf(operation) + "/batch", "192.0.2.1", "one", content);

        Assert.Equal(200, (int)response.StatusCode);
        Assert.Contains("\"batches\";r=1", Assert.Single(response.Headers.GetValues("RateLimit")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Body_SaidToBeAsItIs_IsTaken()
    {
        using var content = Question.Json(Encoding.UTF8.GetBytes(Question.Of(Question.CatchTest).Text));
        content.Headers.ContentEncoding.Add("identity");

        using var response = await ApiHost.Client.PostAsync(new Uri(Path, UriKind.Relative), content);

        Assert.Equal(200, (int)response.StatusCode);
    }

    [Theory]
    [InlineData(20 * 1024, 200)]
    [InlineData(20 * 1024 + 1, 413)]
    public async Task Body_AroundALengthThatIsSet_IsTakenUpToIt(int length, int status)
    {
        await using var host = new ArrangedHost(("Calibration:Limits:BodyKiB", "20"));
        using var content = Question.Json(Encoding.UTF8.GetBytes(Question.Of(Question.CatchTest).Text.PadRight(length)));

        using var response = await host.SendAsync(HttpMethod.Post, Path, content: content);

        Assert.Equal(status, (int)response.StatusCode);
        if (status == 413)
            Assert.Contains("20 KiB", (await ProblemBody.ReadAsync(response, 413)).Detail, StringComparison.Ordinal);
    }

    [Theory]
    // Kestrel looks at the speed after its grace; the time for the whole request is ours.
    [InlineData("BodyBytesPerSecond", "1000000")]
    [InlineData("RequestSeconds", "1")]
    public async Task Body_ThatDoesNotCome_IsCutOff(string limit, string value)
    {
        await using var host = Listening(($"Calibration:Limits:{limit}", value));

        var answer = await SendAsync(
            host,
            $"POST {Path} HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: 1000\r\n\r\n{{"
        );

        Assert.StartsWith("HTTP/1.1 408 ", answer, StringComparison.Ordinal);
        Assert.Contains($"\"code\":\"{"body-too-slow"}\"", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Head_LongerThanItsLimits_IsRefused()
    {
        await using var host = Listening(
            ("Calibration:Limits:HeadersKiB", "4"),
            ("Calibration:Limits:Headers", "10"),
            ("Calibration:Limits:RequestLineKiB", "1")
        );
        var longHeader = new string('a', 4096);
        var many = string.Concat(Enumerable.Range(0, 11).Select(i => $"X-{i}: 1\r\n"));

        Assert.StartsWith(
            "HTTP/1.1 431 ",
            await SendAsync(host, $"GET /v1/units HTTP/1.1\r\nHost: localhost\r\nX-Long: {longHeader}\r\n\r\n"),
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "HTTP/1.1 431 ",
            await SendAsync(host, $"GET /v1/units HTTP/1.1\r\nHost: localhost\r\n{many}\r\n"),
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "HTTP/1.1 414 ",
            await SendAsync(host, $"GET /v1/units?x={longHeader} HTTP/1.1\r\nHost: localhost\r\n\r\n"),
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "HTTP/1.1 200 ",
            await SendAsync(host, "GET /v1/units HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Head_ThatDoesNotCome_IsCutOff()
    {
        await using var host = Listening(("Calibration:Limits:HeadersSeconds", "1"));

        Assert.StartsWith("HTTP/1.1 408 ", await SendAsync(host, "GET /v1/units HTTP/1.1\r\nHost: loc"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Connections_BeyondTheirNumber_AreClosed()
    {
        await using var host = Listening(("Calibration:Limits:Connections", "1"));
        using var first = await ConnectAsync(host);
        await first.SendAsync("GET /healthz/live HTTP/1.1\r\nHost: localhost\r\n\r\n"u8.ToArray());
        Assert.True(await first.ReceiveAsync(new byte[4096]) > 0);

        Assert.Equal("", await SendAsync(host, "GET /healthz/live HTTP/1.1\r\nHost: localhost\r\n\r\n"));
    }

    private static ArrangedHost Listening(params (string Name, string Value)[] settings)
    {
        var host = new ArrangedHost(settings);
        host.UseKestrel();
        host.StartServer();
        return host;
    }

    private static async Task<Socket> ConnectAsync(ArrangedHost host)
    {
        var socket = new Socket(SocketType.Stream, ProtocolType.Tcp);
        await socket.ConnectAsync(IPAddress.Loopback, host.ClientOptions.BaseAddress.Port);
        return socket;
    }

    /// <summary>What comes back until the service closes the connection; nothing when it does so at once.</summary>
    private static async Task<string> SendAsync(ArrangedHost host, string text)
    {
        using var socket = await ConnectAsync(host);
        var answer = new StringBuilder();
        try
        {
            await socket.SendAsync(Encoding.ASCII.GetBytes(text));
            var buffer = new byte[4096];
            int read;
            while ((read = await socket.ReceiveAsync(buffer)) > 0)
                answer.Append(Encoding.UTF8.GetString(buffer, 0, read));
        }
        catch (SocketException)
        {
            // A connection that is closed before it was read may be reset.
        }

        return answer.ToString();
    }
}
