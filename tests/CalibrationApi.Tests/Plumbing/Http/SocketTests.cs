using System.Net;
using System.Net.Sockets;
using System.Text;
using Microsoft.AspNetCore.Mvc.Testing.Handlers;

namespace CalibrationApi.Tests.Plumbing.Http;

/// <summary>What only shows over a real connection: limits of the server, and what it says of itself.</summary>
public sealed class SocketTests(SocketTests.Host host) : IClassFixture<SocketTests.Host>
{
    private const int TwentyMegabytes = 20_000_000;

    private static readonly Uri CatchTest = new(Question.PathOf(Question.CatchTest), UriKind.Relative);

    [Fact]
    public async Task Post_TwentyMegabytesAnnounced_IsTooLargeBeforeTheyAreSent()
    {
        // The head alone: the service must not wait for what it will not take.
        var answer = await SendAsync(
            $"POST {CatchTest} HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: {TwentyMegabytes}\r\n\r\n"
        );

        Assert.StartsWith("HTTP/1.1 413 ", answer, StringComparison.Ordinal);
        Assert.Contains("application/problem+json", answer, StringComparison.Ordinal);
        Assert.Contains($"\"code\":\"{"body-too-large"}\"", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Post_TwentyMegabytesOfUnknownLength_IsTooLarge()
    {
        using var content = new Endless(TwentyMegabytes);
        content.Headers.ContentType = new("application/json");

        using var response = await host.Client.PostAsync(CatchTest, content);

        Assert.Equal("body-too-large", (await ProblemBody.ReadAsync(response, 413)).Only().Code);
    }

    [Theory]
    [InlineData(1024 * 1024 + 1, 413)]
    [InlineData(1024 * 1024, 200)]
    public async Task Post_AroundOneMebibyte_IsTakenUpToTheLimit(int length, int status)
    {
        var text = Question.Of(Question.CatchTest).Text.PadRight(length);

        using var response = await Question.AskAsync(host.Client, Question.CatchTest, text);

        Assert.Equal(status, (int)response.StatusCode);
    }

    [Fact]
    public async Task Put_Calculation_IsNotAllowed()
    {
        using var content = Question.Json(Encoding.UTF8.GetBytes("{}"));

        using var response = await host.Client.PutAsync(CatchTest, content);

        Assert.Equal("method-not-allowed", (await ProblemBody.ReadAsync(response, 405)).Only().Code);
        Assert.Equal(["POST"], response.Content.Headers.Allow);
    }

    [Fact]
    public async Task Post_Text_IsUnsupported()
    {
        using var content = new StringContent("{}", Encoding.UTF8, "text/plain");

        using var response = await host.Client.PostAsync(CatchTest, content);

        Assert.Equal("media-type-unsupported", (await ProblemBody.ReadAsync(response, 415)).Only().Code);
    }

    [Fact]
    public async Task Head_Units_HasHeadersAndNoBody()
    {
        var answer = await SendAsync("HEAD /v1/units HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");

        Assert.StartsWith("HTTP/1.1 200 ", answer, StringComparison.Ordinal);
        Assert.Contains("application/json", answer, StringComparison.Ordinal);
        Assert.EndsWith("\r\n\r\n", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Head_AddressThatOnlyTakesPost_IsNotAllowedAndHasNoBody()
    {
        var answer = await SendAsync($"HEAD {CatchTest} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");

        Assert.StartsWith("HTTP/1.1 405 ", answer, StringComparison.Ordinal);
        Assert.Contains("Allow: POST\r\n", answer, StringComparison.Ordinal);
        Assert.EndsWith("\r\n\r\n", answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/v1/units")]
    [InlineData("/healthz/live")]
    [InlineData("/reference/index.html")]
    [InlineData("/nothing")]
    public async Task Answer_AnyAddress_DoesNotNameTheServer(string path)
    {
        using var response = await host.Client.GetAsync(new Uri(path, UriKind.Relative));

        Assert.False(response.Headers.Contains("Server"));
        Assert.False(response.Headers.Contains("X-Powered-By"));
        Assert.Equal("nosniff", Assert.Single(response.Headers.GetValues("X-Content-Type-Options")));
    }

    [Theory]
    [InlineData("GET /%00 HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n")]
    [InlineData("GET / HTTP/1.1\r\nConnection: close\r\n\r\n")]
    [InlineData("nonsense\r\n\r\n")]
    public async Task Answer_BrokenHttp_IsABadRequestWithoutABodyAsTheContractTells(string head)
    {
        var answer = await SendAsync(head);

        Assert.StartsWith("HTTP/1.1 400 ", answer, StringComparison.Ordinal);
        Assert.Contains("\r\nContent-Length: 0\r\n", answer, StringComparison.Ordinal);
        Assert.Contains("\r\nConnection: close\r\n", answer, StringComparison.Ordinal);
        Assert.Contains("is not HTTP", ApiHost.Contract.Json["info"]!["description"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("xn--")]
    [InlineData("xn--a")]
    [InlineData("farm.xn--.example:5000")]
    public async Task Answer_ToANameThatIsNone_IsABadRequestAtEveryAddress(string name)
    {
        foreach (var path in (string[])["/v1/units", "/v1/machines", "/healthz/live", "/openapi/v1.json", "/nothing"])
        {
            var answer = await SendAsync($"GET {path} HTTP/1.1\r\nHost: {name}\r\nConnection: close\r\n\r\n");

            Assert.StartsWith("HTTP/1.1 400 ", answer, StringComparison.Ordinal);
            Assert.Contains($"\"code\":\"{"text-wrong"}\"", answer, StringComparison.Ordinal);
        }
    }

    private async Task<string> SendAsync(string head)
    {
        using var socket = new Socket(SocketType.Stream, ProtocolType.Tcp);
        await socket.ConnectAsync(IPAddress.Loopback, host.Client.BaseAddress!.Port);
        await socket.SendAsync(Encoding.ASCII.GetBytes(head));
        var answer = new StringBuilder();
        var buffer = new byte[4096];
        int read;
        while (!IsWhole(answer.ToString()) && (read = await socket.ReceiveAsync(buffer)) > 0)
            answer.Append(Encoding.UTF8.GetString(buffer, 0, read));
        return answer.ToString();
    }

    // A problem is one JSON object; other answers end with the connection.
    private static bool IsWhole(string answer) => answer.EndsWith("]}", StringComparison.Ordinal);

    public sealed class Host : IDisposable
    {
        private readonly ApiHost service = new();

        public Host()
        {
            service.UseKestrel();
            service.StartServer();
            // The handler of redirects keeps a body in memory, so that it can be refused before it is sent.
            Client = service.CreateCheckedClient(new RedirectHandler());
            // A large body is only sent when the service has said that it will take it.
            Client.DefaultRequestHeaders.ExpectContinue = true;
        }

        public HttpClient Client { get; }

        public void Dispose()
        {
            Client.Dispose();
            service.Dispose();
        }
    }

    /// <summary>A body whose length is not known beforehand.</summary>
    private sealed class Endless(int bytes) : HttpContent
    {
        protected override async Task SerializeToStreamAsync(Stream stream, TransportContext? context)
        {
            var blanks = new byte[64 * 1024];
            Array.Fill(blanks, (byte)' ');
            for (var sent = 0; sent < bytes; sent += blanks.Length)
                await stream.WriteAsync(blanks);
        }

        protected override bool TryComputeLength(out long length)
        {
            length = 0;
            return false;
        }
    }
}
