using System.Net;
using System.Net.Sockets;
using System.Text;
using CalibrationApi.Plumbing.Limits;
using CalibrationApi.Testing;

namespace CalibrationApi.Tests.Plumbing.Limits;

/// <summary>What happens where the system lets the service open few files, and somebody holds more connections than that.</summary>
public sealed class OpenFilesTests
{
    private const int MostFiles = 1024;
    private const int Connections = MostFiles + 100;

    private static readonly string[] Paths =
    [
        "/v1/units",
        "/v1/codes",
        "/openapi/v1.json",
        "/reference",
        "/reference/codes",
        "/v1/machines",
        "/v1/history",
        "/healthz/live",
        "/healthz/ready",
    ];

    [LinuxFact]
    public async Task Service_WithMoreConnectionsThanFiles_AnswersAndIsWhollyWellAfterwards()
    {
        await using var service = ServiceProcess.StartBy(
            ["sh", "-c", $"ulimit -n {MostFiles}; exec \"$@\"", "sh"],
            "--urls",
            "http://127.0.0.1:0"
        );
        var address = await service.ListeningAsync();
        using (var client = CheckedClient.Of(address))
        {
            // A connection that is open before the others come.
            Assert.Equal(200, await GetAsync(client, "/healthz/live"));
            using var held = new Held(new IPEndPoint(IPAddress.Loopback, address.Port), Connections);
            Assert.Equal(200, await GetAsync(client, "/healthz/live"));
            await AskEverythingAsync(client);
        }

        using var another = CheckedClient.Of(address);
        await AskEverythingAsync(another);
    }

    // An assembly that is loaded when it is first used cannot be loaded while no file can be opened, and never after.
    [LinuxFact]
    public async Task Service_SoonAfterItsStart_HasNothingLeftToLoad()
    {
        await using var service = ServiceProcess.Start("--urls", "http://127.0.0.1:0");
        using var client = CheckedClient.Of(await service.ListeningAsync());
        var loaded = await AllLoadedAsync(service);

        await AskEverythingAsync(client);

        Assert.Empty(service.Assemblies().Except(loaded));
    }

    [Fact]
    public void Connections_NeverMoreThanAreWanted()
    {
        Assert.Equal(1, OpenFiles.Connections(1));
        Assert.InRange(OpenFiles.Connections(int.MaxValue), 8, int.MaxValue);
    }

    private static async Task<IReadOnlySet<string>> AllLoadedAsync(ServiceProcess service)
    {
        var before = service.Assemblies();
        while (true)
        {
            await Task.Delay(2000);
            var now = service.Assemblies();
            if (now.Count == before.Count)
                return now;
            before = now;
        }
    }

    private static async Task AskEverythingAsync(HttpClient client)
    {
        foreach (var operation in Question.Operations)
        {
            using var answer = await Question.Of(operation).AskAsync(client);
            Assert.True(answer.IsSuccessStatusCode, $"{operation}: {(int)answer.StatusCode}");
        }

        foreach (var path in Paths)
            Assert.Equal(200, await GetAsync(client, path));
        Assert.Equal(404, await GetAsync(client, "/nothing"));
        Assert.Equal(201, await PostAsync(client, "/v1/products", Farm.ProductDraft.Text, "application/json"));
        Assert.Equal(422, await PostAsync(client, "/v1/products", "{}", "application/json"));
        var line = Question.Of(Question.MeterSpeed).Text.ReplaceLineEndings(" ");
        Assert.Equal(200, await PostAsync(client, Question.PathOf(Question.MeterSpeed) + "/batch", line + "\n", "application/x-ndjson"));
        using var table = new HttpRequestMessage(HttpMethod.Get, new Uri("/v1/products", UriKind.Relative));
        table.Headers.Accept.ParseAdd("text/csv");
        using var rows = await client.SendAsync(table);
        Assert.Equal(200, (int)rows.StatusCode);
    }

    private static async Task<int> GetAsync(HttpClient client, string path)
    {
        using var response = await client.GetAsync(new Uri(path, UriKind.Relative));
        return (int)response.StatusCode;
    }

    private static async Task<int> PostAsync(HttpClient client, string path, string text, string media)
    {
        using var body = new StringContent(text, Encoding.UTF8);
        body.Headers.ContentType = new System.Net.Http.Headers.MediaTypeHeaderValue(media);
        using var response = await client.PostAsync(new Uri(path, UriKind.Relative), body);
        return (int)response.StatusCode;
    }

    /// <summary>Connections on which nothing is sent.</summary>
    private sealed class Held : IDisposable
    {
        private readonly List<Socket> sockets = [];

        public Held(IPEndPoint address, int count)
        {
            for (var i = 0; i < count; i++)
            {
                var socket = new Socket(address.AddressFamily, SocketType.Stream, ProtocolType.Tcp);
                sockets.Add(socket);
                socket.Connect(address);
            }
        }

        public void Dispose() => sockets.ForEach(socket => socket.Dispose());
    }
}

/// <summary>A test of what only Linux tells of its processes.</summary>
public sealed class LinuxFactAttribute : FactAttribute
{
    public LinuxFactAttribute() => Skip = OperatingSystem.IsLinux() ? null : "The system does not tell what a process has open.";
}
