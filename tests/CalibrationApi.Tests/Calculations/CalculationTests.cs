using System.Collections.Concurrent;
using System.Diagnostics.Metrics;
using System.Net;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Observability;

namespace CalibrationApi.Tests.Calculations;

/// <summary>What follows from the declaration of every calculation alike.</summary>
public sealed class CalculationTests
{
    [Fact]
    public async Task Answer_ToTheDemoQuestionOfEach_IsCountedUnderItsNameAndVerdict()
    {
        using var counted = new Counted();
        var expected = new List<(string Kind, string Outcome)>();
        foreach (var operation in Question.Operations)
        {
            using var response = await Question.Of(operation).AskAsync();
            var answer = JsonNode.Parse(await response.Content.ReadAsStringAsync())!;
            expected.Add((operation, answer["verdict"]!.GetValue<string>()));
        }

        Assert.Empty(expected.Except(counted.Outcomes));
    }

    // Every other answer of these tests is held to the same by the client that they ask with.
    [Fact]
    public async Task Codes_OfTheAnswerToTheDemoQuestionOfEach_AreThoseThatItsContractNames()
    {
        var sent = 0;
        foreach (var calculation in CalculationList.All)
        {
            using var response = await Question.Of(calculation.Name).AskAsync();
            var answer = JsonNode.Parse(await response.Content.ReadAsStringAsync())!.AsObject();
            var members = ApiHost.Contract.Json["components"]!["schemas"]![calculation.AnswerType.Name]!["properties"]!;
            foreach (var (name, list) in answer.Where(member => member.Value is JsonArray items && items.Any(Codes)))
            {
                var named = members[name]!["x-codes"]!.AsArray().Select(code => code!.GetValue<string>()).ToHashSet();
                Assert.All(list!.AsArray(), item => Assert.Contains(item!["code"]!.GetValue<string>(), named));
                sent += list.AsArray().Count;
            }
        }

        Assert.True(sent > 2 * CalculationList.All.Count, $"Only {sent} codes came: the demo questions no longer show what is sent.");
    }

    private static bool Codes(JsonNode? item) => item is JsonObject one && one.ContainsKey("code");

    [Fact]
    public async Task Question_ThatTheEngineRefuses_IsCountedAsRefused()
    {
        using var counted = new Counted();

        // A value known less closely than the change that matters.
        using var response = await Question
            .Of(Question.CatchTest)
            .With("/tolerance", """{ "value": 1, "unit": "%" }""")
            .With("/wantedPrecision", """{ "value": 5, "unit": "%" }""")
            .AskAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, response.StatusCode);
        Assert.Contains((Question.CatchTest, Evaluations.Refused), counted.Outcomes);
    }

    /// <summary>Listens to the counter of evaluations; what other tests ask meanwhile is counted too.</summary>
    private sealed class Counted : IDisposable
    {
        private readonly ConcurrentDictionary<(string Kind, string Outcome), bool> outcomes = new();
        private readonly MeterListener listener = new();

        public Counted()
        {
            listener.InstrumentPublished = (instrument, self) =>
            {
                if (instrument.Meter.Name == Evaluations.Meter && instrument.Name == "calibration.evaluations")
                    self.EnableMeasurementEvents(instrument);
            };
            listener.SetMeasurementEventCallback<long>(
                (_, _, tags, _) =>
                {
                    var values = tags.ToArray().ToDictionary(tag => tag.Key, tag => (string)tag.Value!);
                    outcomes[(values["calibration.kind"], values["calibration.outcome"])] = true;
                }
            );
            listener.Start();
        }

        public ICollection<(string Kind, string Outcome)> Outcomes => outcomes.Keys;

        public void Dispose() => listener.Dispose();
    }
}
