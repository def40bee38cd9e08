using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;

namespace CalibrationApi.Tests;

/// <summary>A question of the demo data that a test changes at single places before it asks.</summary>
internal sealed class Question
{
    public const string CatchTest = "catch-test";
    public const string CatchPlan = "catch-plan";
    public const string MeterSpeed = "meter-speed";
    public const string BulkDensity = "bulk-density";
    public const string VolumeCheck = "volume-check";
    public const string DistanceSensor = "distance-sensor";
    public const string DriveWheelTurns = "drive-wheel-turns";
    public const string SeedRowLimit = "seed-row-limit";
    public const string SeedingRate = "seeding-rate";
    public const string NewLot = "new-lot";
    public const string StandCount = "stand-count";
    public const string StandRisk = "stand-risk";
    public const string ProductRate = "product-rate";

    private readonly Draft body;

    private Question(string operation, Draft body)
    {
        Operation = operation;
        this.body = body;
    }

    public static IReadOnlyList<string> Operations { get; } = [.. CalculationList.All.Select(calculation => calculation.Name)];

    public string Operation { get; }

    public string Text => body.Text;

    public static Question Of(string operation) =>
        new(operation, Draft.Of(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "demo-data", operation + ".json"))));

    public static string PathOf(string operation) => $"/v1/calculations/{operation}";

    /// <summary>Puts raw JSON at a pointer such as <c>/catches/0/gross/value</c>.</summary>
    public Question With(string pointer, string json)
    {
        body.With(pointer, JsonNode.Parse(json));
        return this;
    }

    public Question Without(string pointer)
    {
        body.Without(pointer);
        return this;
    }

    /// <summary>Writes the quantity at a pointer in another unit, of which one is <paramref name="factor"/> of the unit it has.</summary>
    public Question Convert(string pointer, string unit, double factor)
    {
        var quantity = body.At(pointer)!;
        quantity["value"] = quantity["value"]!.GetValue<double>() / factor;
        quantity["unit"] = unit;
        return this;
    }

    /// <summary>Appends raw JSON to the array at a pointer.</summary>
    public Question Add(string pointer, string json)
    {
        body.Add(pointer, JsonNode.Parse(json)!);
        return this;
    }

    public Task<HttpResponseMessage> AskAsync(string query = "") => AskAsync(ApiHost.Client, query);

    public Task<HttpResponseMessage> AskAsync(HttpClient client, string query = "") => AskAsync(client, Operation, Text, query);

    public static Task<HttpResponseMessage> AskAsync(HttpClient client, string operation, string text, string query = "") =>
        client.PostAsync(new Uri(PathOf(operation) + query, UriKind.Relative), Json(Encoding.UTF8.GetBytes(text)));

    /// <summary>The answer to a question that is in order.</summary>
    public async Task<Answer> AnswerAsync(string query = "")
    {
        using var response = await AskAsync(query);
        return await Answer.ReadAsync(response);
    }

    public static ByteArrayContent Json(byte[] bytes)
    {
        var content = new ByteArrayContent(bytes);
        content.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        return content;
    }
}
