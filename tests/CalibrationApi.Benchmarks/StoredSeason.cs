using System.Net.Http.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Storage;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;

namespace CalibrationApi.Benchmarks;

/// <summary>Records for the comparisons: the machine of the demo data, and as many of its tests as wanted.</summary>
internal static class StoredSeason
{
    private const string Workspace = "local";

    /// <summary>Creates machine, product and scale and gives the body of a catch test on them.</summary>
    public static async Task<JsonObject> CatchTestAsync(HttpClient client)
    {
        var question = JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "demo-data", "catch-test.json")))!;
        var machine = await PostAsync(
            client,
            "/v1/machines",
            JsonNode.Parse(
                """
                { "name": "seeder", "timeZone": "Europe/Vienna",
                  "meters": [ { "position": "front", "coveredWidth": { "value": 9, "unit": "m" }, "counterResolution": { "value": 0.1, "unit": "rev" },
                                "elements": [ { "name": "coarse" } ], "controllerEntry": { "form": "mass-per-revolution", "unit": "kg/rev", "decimals": 3 } } ] }
                """
            )!
        );
        var product = await PostAsync(client, "/v1/products", question["product"]!.DeepClone());
        var scale = await PostAsync(
            client,
            "/v1/scales",
            new JsonObject
            {
                ["name"] = "platform",
                ["division"] = question["scale"]!["division"]!.DeepClone(),
                ["accuracyClass"] = "III",
            }
        );
        return new JsonObject
        {
            ["machine"] = machine["id"]!.GetValue<string>(),
            ["meter"] = "front",
            ["element"] = "coarse",
            ["product"] = product["id"]!.GetValue<string>(),
            ["scale"] = scale["id"]!.GetValue<string>(),
            ["occurredAt"] = "2026-04-18T06:40:00+02:00",
            ["recordedBy"] = "A. Operator",
            ["catches"] = question["catches"]!.DeepClone(),
        };
    }

    public static async Task<JsonNode> PostAsync(HttpClient client, string path, JsonNode body)
    {
        using var response = await client.PostAsJsonAsync(new Uri(path, UriKind.Relative), body);
        var answer = await response.Content.ReadAsStringAsync();
        return response.IsSuccessStatusCode
            ? JsonNode.Parse(answer)!
            : throw new InvalidOperationException($"The service refused the request of the benchmark: {answer}");
    }

    /// <summary>Adds tests like <paramref name="test"/>, an hour apart, straight through the stores.</summary>
    public static void AddTests(CalibrationDatabase database, JsonNode test, int count)
    {
        string Member(string name) => test[name]!.GetValue<string>();
        var series = new Series(Member("machine"), Member("meter"), Member("element"), "", Member("product"));
        var begin = new DateTimeOffset(2000, 1, 1, 0, 0, 0, TimeSpan.Zero);
        var text = test.ToJsonString();
        using var connection = database.Open();
        using var transaction = connection.BeginTransaction();
        for (var i = 0; i < count; i++)
        {
            var at = begin.AddHours(i);
            var record = new CatchTestRecord
            {
                Id = Guid.CreateVersion7(at).ToString(),
                Series = series,
                Scale = Member("scale"),
                Verdict = i % 10 == 0 ? "adopt" : "keep",
                Value = 0.363,
                Random = 0.006,
                OccurredAt = at,
                ReceivedAt = at,
                Entered = text,
                Resolved = text,
                Answer = text,
                Context = "{}",
                EngineVersion = "1.0.0",
                Fingerprint = "",
                Catches =
                [
                    new CatchRow(true, 17.08, "kg", 17.08, 47, 0.363, 1e-6),
                    new CatchRow(true, 16.94, "kg", 16.94, 46.8, 0.362, 1e-6),
                ],
            };
            CatchTestStore.Insert(connection, Workspace, record);
            HistoryStore.Append(
                connection,
                Workspace,
                new HistoryEntry
                {
                    Kind = "catch-test",
                    Record = record.Id,
                    Machine = series.Machine,
                    Meter = series.Meter,
                    Element = series.Element,
                    Product = series.Product,
                    Scale = record.Scale,
                    Verdict = record.Verdict,
                    Value = record.Value,
                    Expanded = 0.006,
                    Change = 0.06,
                    EnteredUnit = "kg/rev",
                    RecordedBy = Member("recordedBy"),
                    OccurredAt = at,
                    ReceivedAt = at,
                }
            );
        }

        transaction.Commit();
    }
}
