using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using CalibrationApi.Storage;
using CalibrationApi.Storage.OneWriter;
using CalibrationApi.Testing;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace CalibrationApi.Contract.Tests;

/// <summary>Requests that go wrong, one for each problem that the contract shows.</summary>
internal static class ProblemCalls
{
    // The example of W3C Trace Context, section 3.2.3, so that the trace id of an example never changes.
    private const string Trace = "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01";

    private const string Product = "/v1/products";
    private const string Changes = "/v1/changes";
    private const string CatchTest = "/v1/calculations/catch-test";

    private static readonly DemoSeason Season = new();

    private static readonly Call[] Calls =
    [
        new(400, "broken-json", "The body breaks off in the middle.", () => Post(CatchTest, """{ "meter": "rear", "catches": [""")),
        new(400, "unknown-member", "A member of the body is misspelt.", () =>
            Post(Product, """{ "name": "Spring barley", "materail": "free-flowing" }""")
        ),
        new(400, "unknown-parameter", "The query has a parameter that the operation does not take.", () =>
            new(HttpMethod.Get, "/v1/units?dimension=mass")
        ),
        new(400, "key-in-address", "A key stands in the address, where logs would keep it.", () =>
            new(HttpMethod.Get, $"{Product}?access_token=calk_")
        ),
        new(401, "no-key", "No key came.", () => new(HttpMethod.Get, Product), IsKeyless: true),
        new(401, "cut-key", "The key was not copied whole.", () => Showing("calk_agoqaaaabnyabaaaaaaaaaaaae_es6h4l")),
        new(403, "scope-missing", "The key may read and write, but not look at the audit.", () => Showing(SampleKeys.LesserText)),
        new(404, "unknown-id", "There is no record with the id in the address.", () =>
            new(HttpMethod.Get, $"{Product}/019a0000-0000-7000-8000-000000000000")
        ),
        new(406, "media-type-not-given", "The list is asked for as a picture.", () => Accepting(new(HttpMethod.Get, Product), "image/png")),
        new(
            408,
            "body-too-slow",
            "The body does not come within the time for a request.",
            () => new(HttpMethod.Post, Product) { Content = new SlowBody() },
            Settings: [("Calibration:Limits:RequestSeconds", "1")]
        ),
        new(
            409,
            "first-still-running",
            "The same request is sent again while the first is still being worked on.",
            () => Post(Product, """{ "name": "Spring barley" }"""),
            IsSentTwice: true
        ),
        new(
            410,
            "database-restored",
            "The cursor stands behind changes that a backup undid.",
            () => new(HttpMethod.Get, Changes),
            IsUndone: true
        ),
        new(412, "changed-meanwhile", "If-Match names a revision that is no longer the last.", () => Put("\"r99\"")),
        new(413, "body-too-large", "The body is larger than 1 MiB.", () => Post(Product, new string(' ', 1_100_000))),
        new(415, "not-json", "The body is sent as plain text.", () => Post(Product, "barley", "text/plain")),
        new(415, "compressed", "The body is compressed.", () => Compressed(Post(Product, "barley"))),
        new(422, "several-rules-broken", "A unit is missing and a number is out of range: every error is told at once.", () =>
            CatchTestWith(test =>
            {
                test["scale"]!["division"]!.AsObject().Remove("unit");
                test["tolerance"] = new JsonObject { ["value"] = 80, ["unit"] = "%" };
            })
        ),
        new(422, "refused", "Every member is sound, but the settings cannot all be met.", () => CatchTestWith(test =>
            {
                test["tolerance"] = new JsonObject { ["value"] = 1, ["unit"] = "%" };
                test["wantedPrecision"] = new JsonObject { ["value"] = 3, ["unit"] = "%" };
            })),
        new(422, "unknown-word", "A parameter has a word that is not in its list.", () => new(HttpMethod.Get, $"{Product}?units=imperial")),
        new(428, "if-match-missing", "A record is to be changed without saying which revision.", () => Put(null)),
        new(
            429,
            "too-many-requests",
            "More requests came in a minute than are taken.",
            () => new(HttpMethod.Get, Product),
            Settings: [("Calibration:Limits:RequestsPerMinuteLocal", "1")],
            IsSentBefore: true
        ),
        new(
            500,
            "failed",
            "The service failed.",
            () => Post(Product, """{ "name": "Spring barley" }"""),
            Failure: new InvalidOperationException("A fault of the service.")
        ),
        new(
            503,
            "database-busy",
            "The database cannot be used right now.",
            () => Post(Product, """{ "name": "Spring barley" }"""),
            Failure: new SqliteException("The database is locked.", 5)
        ),
    ];

    /// <summary>Makes every call and returns what the contract shows of it, by status and name.</summary>
    public static async Task<JsonObject> MakeAsync()
    {
        var shown = new JsonObject();
        await using var service = await new Service().LoadAsync();
        foreach (var call in Calls)
        {
            var body =
                call.Failure is { } failure ? await SendToAFailingServiceAsync(call, failure)
                : call.IsUndone ? await SendAfterItWasUndoneAsync(call)
                : call.IsSentTwice ? await SendTwiceAtOnceAsync(service, call)
                : call.Settings is { } settings ? await SendToAnotherServiceAsync(call, settings)
                : await SendAsync(service.CreateClient(), call);
            var status = call.Status.ToString(CultureInfo.InvariantCulture);
            if (shown[status] is not JsonObject ofStatus)
                shown[status] = ofStatus = [];
            ofStatus[call.Name] = new JsonObject { ["summary"] = call.Summary, ["value"] = body };
        }

        return shown;
    }

    private static async Task<JsonNode> SendAsync(HttpClient client, Call call)
    {
        if (call.IsKeyless)
            client.DefaultRequestHeaders.Authorization = null;
        using var request = call.Request();
        request.Headers.Add("traceparent", Trace);
        using var response = await client.SendAsync(request);
        var text = await response.Content.ReadAsStringAsync();
        Assert.True((int)response.StatusCode == call.Status, $"{call.Name} answered {(int)response.StatusCode}, not {call.Status}: {text}");
        return JsonNode.Parse(text)!;
    }

    // A clock that fails stands for whatever can fail.
    private static async Task<JsonNode> SendToAFailingServiceAsync(Call call, Exception failure)
    {
        var clock = new TroubledClock(Season.DayAfter);
        await using var service = new Service(services => services.AddSingleton<TimeProvider>(clock));
        using var client = service.CreateClient();
        clock.Failure = failure;
        return await SendAsync(client, call);
    }

    // Limits that nobody would set, so that one request meets them.
    private static async Task<JsonNode> SendToAnotherServiceAsync(Call call, (string Name, string Value)[] settings)
    {
        await using var service = new Service(settings: settings);
        // The usual client collects a body before it sends any of it.
        using var client = service.CreateDefaultClient();
        if (call.IsSentBefore)
        {
            using var before = call.Request();
            using var taken = await client.SendAsync(before);
        }

        return await SendAsync(client, call);
    }

    // The writer stands, so that of two equal requests one holds the key and waits, and the other is told so at once.
    private static async Task<JsonNode> SendTwiceAtOnceAsync(Service service, Call call)
    {
        using var client = service.CreateClient();
        using var gate = new ManualResetEventSlim();
        var blocked = service.Services.GetRequiredService<SingleWriter>().WriteAsync(_ => gate.Wait(TimeSpan.FromSeconds(60)));
        var requests = new[] { call.Request(), call.Request() };
        foreach (var request in requests)
        {
            request.Headers.Add("traceparent", Trace);
            request.Headers.Add("Idempotency-Key", "\"8e03978e-40d5-43e8-bc93-6894a57f9324\"");
        }

        var answers = Array.ConvertAll(requests, request => client.SendAsync(request));
        var told = await await Task.WhenAny(answers);
        gate.Set();
        await blocked;
        await Task.WhenAll(answers);
        Assert.Equal(call.Status, (int)told.StatusCode);
        return JsonNode.Parse(await told.Content.ReadAsStringAsync())!;
    }

    // As a backup from before the last change would have it.
    private static async Task<JsonNode> SendAfterItWasUndoneAsync(Call call)
    {
        await using var service = await new Service().LoadAsync();
        using var client = service.CreateClient();
        var page = JsonNode.Parse(await client.GetStringAsync(new Uri($"{Changes}?limit=1000", UriKind.Relative)))!;
        using (var connection = service.Services.GetRequiredService<CalibrationDatabase>().Open())
        {
            using var command = connection.CreateCommand();
            command.CommandText = "drop trigger changes_are_not_deleted; delete from changes where seq = (select max(seq) from changes)";
            command.ExecuteNonQuery();
        }

        var address = new Uri($"{Changes}?after={page["after"]}", UriKind.Relative);
        return await SendAsync(client, call with { Request = () => new HttpRequestMessage(HttpMethod.Get, address) });
    }

    private static HttpRequestMessage Post(string path, string body, string media = "application/json") =>
        new(HttpMethod.Post, path) { Content = new StringContent(body, Encoding.UTF8, media) };

    private static HttpRequestMessage Showing(string key)
    {
        var request = new HttpRequestMessage(HttpMethod.Get, "/v1/audit");
        request.Headers.Authorization = new AuthenticationHeaderValue("Bearer", key);
        return request;
    }

    private static HttpRequestMessage Put(string? revision)
    {
        var request = new HttpRequestMessage(HttpMethod.Put, $"{Product}/{Season.FirstOf(Product)}")
        {
            Content = new StringContent("""{ "name": "Spring barley" }""", Encoding.UTF8, "application/json"),
        };
        if (revision is not null)
            request.Headers.IfMatch.Add(new EntityTagHeaderValue(revision));
        return request;
    }

    private static HttpRequestMessage Accepting(HttpRequestMessage request, string media)
    {
        request.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue(media));
        return request;
    }

    private static HttpRequestMessage Compressed(HttpRequestMessage request)
    {
        request.Content!.Headers.ContentEncoding.Add("gzip");
        return request;
    }

    private static HttpRequestMessage CatchTestWith(Action<JsonObject> change)
    {
        var test = JsonNode.Parse(File.ReadAllText(Repository.PathOf("demo-data", "catch-test.json")))!.AsObject();
        change(test);
        return Post(CatchTest, test.ToJsonString());
    }

    private sealed record Call(
        int Status,
        string Name,
        string Summary,
        Func<HttpRequestMessage> Request,
        bool IsSentTwice = false,
        bool IsKeyless = false,
        Exception? Failure = null,
        (string Name, string Value)[]? Settings = null,
        bool IsSentBefore = false,
        bool IsUndone = false
    );

    private sealed class TroubledClock(DateTimeOffset now) : TimeProvider
    {
        public Exception? Failure { get; set; }

        public override DateTimeOffset GetUtcNow() => Failure is null ? now : throw Failure;

        // What counts seconds, such as the limits, stands still with it.
        public override long GetTimestamp() => 0;
    }

    /// <summary>A body that comes little by little and takes much longer than the time for a request.</summary>
    private sealed class SlowBody : HttpContent
    {
        public SlowBody() => Headers.ContentType = new MediaTypeHeaderValue("application/json");

        protected override async Task SerializeToStreamAsync(Stream stream, TransportContext? context)
        {
            for (var i = 0; i < 100; i++)
            {
                await stream.WriteAsync(" "u8.ToArray());
                await stream.FlushAsync();
                await Task.Delay(TimeSpan.FromMilliseconds(50));
            }
        }

        protected override bool TryComputeLength(out long length)
        {
            length = 0;
            return false;
        }
    }
}
