using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using CalibrationApi.Storage;
using CalibrationApi.Storage.OneWriter;
using Dapper;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;

namespace CalibrationApi.Tests;

/// <summary>The real service over a database file of its own, with a clock that a test can set. One for each test class.</summary>
public sealed class RecordService : IDisposable
{
    private readonly Host host = new();
    private readonly HttpClient client;

    public RecordService() => client = host.CreateCheckedClient();

    internal StandingClock Clock => host.Clock;

    /// <summary>The key that requests show; null for none.</summary>
    internal string? Key
    {
        set => client.DefaultRequestHeaders.Authorization = value is null ? null : new AuthenticationHeaderValue("Bearer", value);
    }

    internal CalibrationDatabase Database => host.Services.GetRequiredService<CalibrationDatabase>();

    internal T Service<T>()
        where T : notnull => host.Services.GetRequiredService<T>();

    internal Task<Reply> PostAsync(string path, Draft body, string? key = null) => PostAsync(path, body.Text, key);

    internal async Task<Reply> PostAsync(string path, string body, string? key = null)
    {
        using var request = Request(HttpMethod.Post, path, body);
        if (key is not null)
            request.Headers.Add("Idempotency-Key", key);
        return await SendAsync(request);
    }

    internal Task<Reply> PutAsync(string path, Draft body, string? ifMatch) => PutAsync(path, body.Text, ifMatch);

    internal async Task<Reply> PutAsync(string path, string body, string? ifMatch)
    {
        using var request = Request(HttpMethod.Put, path, body);
        if (ifMatch is not null)
            request.Headers.TryAddWithoutValidation("If-Match", ifMatch);
        return await SendAsync(request);
    }

    internal async Task<Reply> GetAsync(string path, string? accept = null, string? ifNoneMatch = null)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(path, UriKind.RelativeOrAbsolute));
        if (accept is not null)
            request.Headers.TryAddWithoutValidation("Accept", accept);
        if (ifNoneMatch is not null)
            request.Headers.TryAddWithoutValidation("If-None-Match", ifNoneMatch);
        return await SendAsync(request);
    }

    /// <summary>Sends a request as it is.</summary>
    internal async Task<Reply> SendAsync(HttpRequestMessage request) => await Reply.ReadAsync(await client.SendAsync(request));

    /// <summary>Creates a record and gives its id.</summary>
    internal async Task<string> CreateAsync(string path, Draft body) => (await PostAsync(path, body)).Expect(201).Id;

    /// <summary>The items of a list, all pages of it.</summary>
    internal async Task<IReadOnlyList<JsonNode>> ItemsAsync(string path)
    {
        var items = new List<JsonNode>();
        for (string? address = path; address is not null; )
        {
            var page = (await GetAsync(address)).Expect(200);
            items.AddRange(page.Body.List("/items")!);
            address = page.Next;
        }

        return items;
    }

    /// <summary>How many rows each table has.</summary>
    internal IReadOnlyDictionary<string, long> RowCounts()
    {
        using var connection = Database.Open();
        return connection
            .Query<string>("select name from sqlite_schema where type = 'table' and name not like 'sqlite_%' order by name")
            .ToDictionary(table => table, table => connection.QuerySingle<long>($"select count(*) from \"{table}\""));
    }

    /// <summary>Fails when the request leaves anything behind in the database.</summary>
    internal async Task<Reply> WithoutTraceAsync(Func<Task<Reply>> request)
    {
        var before = RowCounts();
        var reply = await request();
        Assert.Equal(before, RowCounts());
        return reply;
    }

    /// <summary>Changes the file behind the service's back.</summary>
    internal int Execute(string sql, object? parameters = null)
    {
        using var connection = Database.Open();
        return connection.Execute(sql, parameters);
    }

    internal T Read<T>(string sql, object? parameters = null)
    {
        using var connection = Database.Open();
        return connection.QuerySingle<T>(sql, parameters);
    }

    /// <summary>Returns once so many writes wait for their turn.</summary>
    internal async Task QueuedAsync(int writes)
    {
        var queue = Service<SingleWriter>();
        while (queue.Waiting < writes)
            await Task.Delay(5);
    }

    public void Dispose()
    {
        client.Dispose();
        host.Dispose();
    }

    private static HttpRequestMessage Request(HttpMethod method, string path, string body) =>
        new(method, new Uri(path, UriKind.Relative))
        {
            Content = new ByteArrayContent(Encoding.UTF8.GetBytes(body))
            {
                Headers = { ContentType = new MediaTypeHeaderValue("application/json") },
            },
        };

    private sealed class Host : ApiHost
    {
        public StandingClock Clock { get; } = new();

        protected override void ConfigureWebHost(IWebHostBuilder builder)
        {
            base.ConfigureWebHost(builder);
            builder.ConfigureTestServices(services => services.AddSingleton<TimeProvider>(Clock));
        }
    }
}
