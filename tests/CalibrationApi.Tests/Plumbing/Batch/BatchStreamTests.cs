using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;
using FluentValidation.Results;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;

namespace CalibrationApi.Tests.Plumbing.Batch;

/// <summary>
/// What only shows over a real connection: order among many, answers before the end, a client that goes away, failures of ours.
/// </summary>
public sealed class BatchStreamTests : IDisposable
{
    private readonly WatchedHost service = new();

    [Fact]
    public async Task Lines_TenThousandOfThem_AreAnsweredInTheirOrder()
    {
        const int Count = 10_000;
        var question = Batches.Line(Question.CatchTest);
        // Short and long lines, good and bad ones, so that chunks take different times.
        string Line(int i) =>
            (i % 7 == 0 ? "{}" : question.Replace("\"front\"", $"\"{new string('x', i % 90 + 1)}\"", StringComparison.Ordinal)) + "\n";
        using var connection = await ConnectAsync();

        // The library's client reads nothing before it has sent everything, and then both sides wait for each other once all
        // buffers are full. So this one sends and reads at the same time.
        var sending = Task.Run(async () =>
        {
            foreach (var piece in Enumerable.Range(1, Count).Select(Line).Chunk(100))
                await SendChunkAsync(connection, string.Concat(piece));
            await connection.SendAsync("0\r\n\r\n"u8.ToArray());
        });
        var lines = await ReadLinesAsync(connection);
        await sending;

        Assert.Equal(Count, lines.Length);
        for (var i = 1; i <= Count; i++)
            Assert.StartsWith($"{{\"line\":{i},\"{(i % 7 == 0 ? "problem" : "result")}\":", lines[i - 1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Answers_OfTheFirstLines_ComeWhileTheBodyIsStillOpen()
    {
        using var connection = await ConnectAsync();
        await SendChunkAsync(connection, Batches.Line(Question.CatchTest) + "\n");

        Assert.Contains("{\"line\":1,\"result\":", await ReadUntilAsync(connection, "}\n"), StringComparison.Ordinal);

        await SendChunkAsync(connection, Batches.Line(Question.CatchTest) + "\n");
        Assert.Contains("{\"line\":2,\"result\":", await ReadUntilAsync(connection, "}\n"), StringComparison.Ordinal);
        await connection.SendAsync("0\r\n\r\n"u8.ToArray());
        Assert.EndsWith("0\r\n\r\n", await ReadUntilAsync(connection, "0\r\n\r\n"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Work_OfAClientThatGoesAway_Stops()
    {
        using var connection = await ConnectAsync();
        service.Validator.Hold();
        await SendChunkAsync(connection, string.Concat(Enumerable.Repeat(Batches.Line(Question.CatchTest) + "\n", 1000)));
        await service.Validator.Entered;

        connection.LingerState = new LingerOption(true, 0);
        connection.Close();
        await service.Aborted;
        service.Validator.Release();
        await service.Ended;

        // Every thread that was at work finishes the question it had.
        Assert.InRange(service.Validator.Count, 1, 2 * Environment.ProcessorCount + 2);
    }

    [Fact]
    public async Task Failure_OfOurs_IsAProblemOfItsLine()
    {
        service.Validator.FailOnMeter = "broken";
        var good = Batches.Line(Question.CatchTest);

        using var response = await Batches.SendAsync(
            service.Caller,
            Question.CatchTest,
            Encoding.UTF8.GetBytes($"{good}\n{good.Replace("\"front\"", "\"broken\"", StringComparison.Ordinal)}\n{good}\n")
        );

        var lines = await Batches.LinesAsync(response);
        Assert.StartsWith("{\"line\":1,\"result\"", lines[0], StringComparison.Ordinal);
        Assert.Contains("\"status\":500", lines[1], StringComparison.Ordinal);
        Assert.Contains("\"code\":\"internal-error\"", lines[1], StringComparison.Ordinal);
        Assert.StartsWith("{\"line\":3,\"result\"", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Body_ThatBreaksHalfway_CutsTheAnswerOff()
    {
        using var connection = await ConnectAsync();
        await SendChunkAsync(connection, Batches.Line(Question.CatchTest) + "\n");
        await ReadUntilAsync(connection, "}\n");

        await connection.SendAsync("this is no chunk\r\n"u8.ToArray());

        // The end of the stream of chunks never comes.
        Assert.DoesNotContain("0\r\n\r\n", await ReadUntilAsync(connection, "\0"), StringComparison.Ordinal);
    }

    public void Dispose() => service.Dispose();

    private async Task<Socket> ConnectAsync()
    {
        var socket = new Socket(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        await socket.ConnectAsync(IPAddress.Loopback, service.Caller.BaseAddress!.Port);
        await socket.SendAsync(
            Encoding.ASCII.GetBytes(
                $"POST {Batches.At(Question.CatchTest)} HTTP/1.1\r\nHost: localhost\r\nContent-Type: {Batches.Ndjson}\r\nTransfer-Encoding: chunked\r\n\r\n"
            )
        );
        return socket;
    }

    private static async Task SendChunkAsync(Socket connection, string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        await connection.SendAsync((byte[])[.. Encoding.ASCII.GetBytes($"{bytes.Length:x}\r\n"), .. bytes, .. "\r\n"u8]);
    }

    // Up to a mark, or to the end of the connection.
    private static async Task<string> ReadUntilAsync(Socket connection, string mark)
    {
        var text = new StringBuilder();
        var buffer = new byte[4096];
        try
        {
            int read;
            while (!text.ToString().Contains(mark, StringComparison.Ordinal) && (read = await connection.ReceiveAsync(buffer)) > 0)
                text.Append(Encoding.UTF8.GetString(buffer, 0, read));
        }
        catch (SocketException)
        {
            // Cut is an end too.
        }

        return text.ToString();
    }

    // The lines of a whole answer, out of its chunks.
    private static async Task<string[]> ReadLinesAsync(Socket connection)
    {
        await using var stream = new BufferedStream(new NetworkStream(connection), 1 << 16);
        Assert.Equal("HTTP/1.1 200 OK", HeaderLine(stream));
        while (HeaderLine(stream).Length > 0) { }

        using var body = new MemoryStream();
        while (int.Parse(HeaderLine(stream), NumberStyles.HexNumber, CultureInfo.InvariantCulture) is > 0 and var size)
        {
            var chunk = new byte[size];
            await stream.ReadExactlyAsync(chunk);
            body.Write(chunk);
            Assert.Empty(HeaderLine(stream));
        }

        return Encoding.UTF8.GetString(body.ToArray()).Split('\n')[..^1];
    }

    private static string HeaderLine(Stream stream)
    {
        var text = new StringBuilder();
        for (var next = stream.ReadByte(); next != '\n'; next = stream.ReadByte())
            text.Append(next >= 0 ? (char)next : throw new EndOfStreamException("The answer broke off."));
        return text.ToString().TrimEnd('\r');
    }

    /// <summary>The service on a real socket, whose batches of catch tests can be held and watched.</summary>
    private sealed class WatchedHost : ApiHost
    {
        private readonly TaskCompletionSource aborted = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private readonly TaskCompletionSource ended = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public WatchedHost()
        {
            UseKestrel();
            StartServer();
            Caller = CreateClient();
        }

        public HttpClient Caller { get; }

        public WatchedValidator Validator { get; } = new();

        /// <summary>The service noticed that its client is gone.</summary>
        public Task Aborted => aborted.Task;

        /// <summary>The request is over.</summary>
        public Task Ended => ended.Task;

        protected override void ConfigureWebHost(IWebHostBuilder builder)
        {
            base.ConfigureWebHost(builder);
            builder.ConfigureTestServices(services =>
            {
                services.AddSingleton<IValidator<CatchTestRequest>>(Validator);
                services.AddSingleton<IStartupFilter>(new Watch(this));
            });
        }

        protected override void Dispose(bool disposing)
        {
            if (disposing)
                Validator.Release();
            base.Dispose(disposing);
            if (disposing)
                Validator.Dispose();
        }

        private sealed class Watch(WatchedHost host) : IStartupFilter
        {
            public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) =>
                app =>
                {
                    app.Use(
                        async (HttpContext context, RequestDelegate rest) =>
                        {
                            using var registration = context.RequestAborted.Register(host.aborted.SetResult);
                            try
                            {
                                await rest(context);
                            }
                            finally
                            {
                                host.ended.TrySetResult();
                            }
                        }
                    );
                    next(app);
                };
        }
    }

    /// <summary>The rules of a catch test, counted, and held when a test says so.</summary>
    private sealed class WatchedValidator : AbstractValidator<CatchTestRequest>, IDisposable
    {
        private readonly RequestValidator<CatchTestRequest> rules = new(TimeProvider.System);
        private readonly ManualResetEventSlim gate = new(initialState: true);
        private readonly TaskCompletionSource entered = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private int count;

        public int Count => count;

        public Task Entered => entered.Task;

        public string? FailOnMeter { get; set; }

        public void Hold() => gate.Reset();

        public void Release() => gate.Set();

        public void Dispose() => gate.Dispose();

        public override ValidationResult Validate(ValidationContext<CatchTestRequest> context)
        {
            Interlocked.Increment(ref count);
            entered.TrySetResult();
            gate.Wait();
            return context.InstanceToValidate.Meter == FailOnMeter && FailOnMeter is not null
                ? throw new InvalidOperationException("A mistake of ours.")
                : rules.Validate(context);
        }
    }
}
