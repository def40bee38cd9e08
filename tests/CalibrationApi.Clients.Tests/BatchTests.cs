using System.Net;
using System.Text;
using System.Text.Json.Nodes;

namespace CalibrationApi.Clients.Tests;

/// <summary>Many questions in one stream, their answers in another.</summary>
public sealed class BatchTests(Season season) : IClassFixture<Season>
{
    [Fact]
    public async Task Batch_WithABadLine_AnswersTheOthersAndPutsTheProblemOnItsLine()
    {
        using var client = season.Connect();
        CatchTestRequest[] questions = [Given.CatchTest(), Given.CatchTestWithoutTurns(), Given.CatchTest()];

        var lines = await client.Calculations.EvaluateCatchTestsAsync(questions.ToAsyncEnumerable()).ToListAsync();

        Assert.Equal([1L, 2L, 3L], lines.Select(line => line.Line));
        Assert.Equal(questions, lines.Select(line => line.Question));
        Assert.Equal("0.363 kg/rev", lines[0].AnswerOrThrow().Enter!.ToString());
        Assert.Null(lines[0].Problem);
        Assert.Null(lines[1].Answer);
        Assert.Equal(422, lines[1].Problem!.Status);
        Assert.Equal("#/catches/1/revolutions", Assert.Single(lines[1].Problem!.Errors).Pointer);
        Assert.Equal("revolutions-not-positive", Assert.Throws<CalibrationException>(() => lines[1].AnswerOrThrow()).Code);
        Assert.Equal(Verdicts.Adopt, lines[2].Answer!.Verdict);
    }

    [Fact]
    public async Task Batch_OfManyQuestions_IsAnsweredAsOneByOne()
    {
        using var client = season.Connect();
        var question = Given.CatchTest();
        var alone = Json.Of(await client.Calculations.EvaluateCatchTestAsync(question));

        var lines = await client.Calculations.EvaluateCatchTestsAsync(Enumerable.Repeat(question, 2500).ToAsyncEnumerable()).ToListAsync();

        Assert.Equal(2500, lines.Count);
        Assert.All(lines, line => Assert.Equal(alone, Json.Of(line.Answer!)));
    }

    [Fact]
    public async Task Batch_OfManyPieces_KeepsTheOrderAcrossThem()
    {
        var wire = new Wire();
        using var client = season.Connect(wire, new AnswersEveryLine());

        var lines = await client.Calculations.EvaluateCatchTestsAsync(Numbered(2500)).ToListAsync();

        Assert.True(wire.Requests.Count > 2);
        Assert.All(wire.Requests, request => Assert.InRange(request.Body!.Length, 1, 512 * 1024));
        Assert.Equal(Enumerable.Range(1, 2500), lines.Select(line => (int)line.Line));
        Assert.All(lines, line => Assert.Equal(line.Question.Meter, line.Answer!.Headline));
    }

    [Fact]
    public async Task Batch_LeftEarly_ReadsNoMoreQuestionsThanOnePiece()
    {
        using var client = season.Connect(new AnswersEveryLine());
        var read = 0;

        var first = await client.Calculations.EvaluateCatchTestsAsync(Endless()).Take(3).ToListAsync();

        Assert.Equal(3, first.Count);
        Assert.InRange(read, 3, 1001);

        async IAsyncEnumerable<CatchTestRequest> Endless()
        {
            while (true)
            {
                await Task.Yield();
                yield return new CatchTestRequest { Meter = $"{++read}" };
            }
        }
    }

    [Fact]
    public async Task Batch_OfABusyService_IsSentAgainByThePiece()
    {
        using var client = season.Connect(
            new CalibrationClientOptions { Clock = new ImpatientClock() },
            new BusyAtFirst(2, retryAfter: "1"),
            new AnswersEveryLine()
        );

        var lines = await client.Calculations.EvaluateCatchTestsAsync(Numbered(10)).ToListAsync();

        Assert.Equal(Enumerable.Range(1, 10).Select(number => $"{number}"), lines.Select(line => line.Answer!.Headline));
    }

    [Fact]
    public async Task Batch_WhoseAnswersBreakOff_SaysAfterWhichLine()
    {
        using var client = season.Connect(new AnswersEveryLine(most: 4));
        var answered = 0;

        var broken = await Assert.ThrowsAsync<HttpIOException>(async () =>
        {
            await foreach (var line in client.Calculations.EvaluateCatchTestsAsync(Numbered(10)))
                answered++;
        });

        Assert.Equal(4, answered);
        Assert.Contains("line 4", broken.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Batch_WhoseAnswersAreOutOfOrder_IsNotTakenForGood()
    {
        using var client = season.Connect(new AnswersEveryLine(skip: 2));

        await Assert.ThrowsAsync<InvalidDataException>(() =>
            client.Calculations.EvaluateCatchTestsAsync(Numbered(5)).ToListAsync().AsTask()
        );
    }

    [Fact]
    public async Task Batch_Cancelled_Ends()
    {
        using var client = season.Connect(new AnswersEveryLine());
        using var stop = new CancellationTokenSource();
        var answered = 0;

        await Assert.ThrowsAnyAsync<OperationCanceledException>(async () =>
        {
            await foreach (var line in client.Calculations.EvaluateCatchTestsAsync(Numbered(5000), cancellationToken: stop.Token))
            {
                if (++answered == 10)
                    await stop.CancelAsync();
            }
        });

        Assert.Equal(10, answered);
    }

    [Fact]
    public async Task Batch_OfEveryCalculation_GoesBesideItAndTakesUnits()
    {
        var wire = new Wire();
        using var client = season.Connect(wire, new AnswersEveryLine());

        await client.Calculations.PlanCatchesAsync(new[] { new CatchPlanRequest() }.ToAsyncEnumerable(), UnitSystem.Us).ToListAsync();
        await client
            .Calculations.EvaluateMeterSpeedsAsync(new[] { new MeterSpeedRequest() }.ToAsyncEnumerable(), UnitSystem.Metric)
            .ToListAsync();

        Assert.Equal(
            ["/v1/calculations/catch-plan/batch?units=us", "/v1/calculations/meter-speed/batch?units=metric"],
            wire.Requests.Select(request => request.Target)
        );
    }

    [Fact]
    public async Task Batch_WithoutQuestions_AsksNothing()
    {
        var wire = new Wire();
        using var client = season.Connect(wire);

        Assert.Empty(await client.Calculations.EvaluateCatchTestsAsync(AsyncEnumerable.Empty<CatchTestRequest>()).ToListAsync());
        Assert.Empty(wire.Requests);
    }

    private static IAsyncEnumerable<CatchTestRequest> Numbered(int count) =>
        Enumerable.Range(1, count).Select(number => new CatchTestRequest { Meter = $"{number}" }).ToAsyncEnumerable();

    private static HttpResponseMessage Ndjson(IEnumerable<JsonObject> lines) =>
        new(HttpStatusCode.OK)
        {
            Content = new StringContent(
                string.Concat(lines.Select(line => line.ToJsonString() + "\n")),
                Encoding.UTF8,
                "application/x-ndjson"
            ),
        };

    private static async Task<string[]> LinesOf(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        Assert.Equal("application/x-ndjson", request.Content!.Headers.ContentType!.ToString());
        return (await request.Content.ReadAsStringAsync(cancellationToken)).Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    /// <summary>Answers every line with the name of the meter in it; at most so many, or without one of them.</summary>
    private sealed class AnswersEveryLine(int most = int.MaxValue, int skip = 0) : DelegatingHandler
    {
        protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken) =>
            Ndjson(
                (await LinesOf(request, cancellationToken))
                    .Select(
                        (line, i) =>
                            new JsonObject
                            {
                                ["line"] = i + 1,
                                ["result"] = new JsonObject { ["headline"] = JsonNode.Parse(line)!["meter"]?.DeepClone() },
                            }
                    )
                    .Where((_, i) => i + 1 != skip)
                    .Take(most)
            );
    }
}
