using System.Text;

namespace CalibrationApi.Tests.Plumbing.Batch;

/// <summary>Many questions in one request are answered as each would be alone.</summary>
public sealed class BatchTests
{
    public static TheoryData<string, string> EveryOperation
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var operation in Question.Operations)
            {
                foreach (var query in (string[])["", "?units=us", "?units=metric"])
                    data.Add(operation, query);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(EveryOperation))]
    public async Task Result_OfEachLine_HasTheBytesOfTheSingleAnswer(string operation, string query)
    {
        using var single = await Question.Of(operation).AskAsync(query);
        var expected = await single.Content.ReadAsStringAsync();
        var line = Batches.Line(operation);

        using var response = await Batches.SendAsync(operation, $"{line}\n{line}\n", query);

        Assert.Equal(
            [$$"""{"line":1,"result":{{expected}}}""", $$"""{"line":2,"result":{{expected}}}"""],
            await Batches.LinesAsync(response)
        );
    }

    [Theory]
    [InlineData("{\"x\":1}")]
    [InlineData("{\"catches\":[")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("{}")]
    [InlineData("{\"scale\":{\"division\":{\"value\":\"1\",\"unit\":\"kg\"}}}")]
    [InlineData("{\"scale\":{\"division\":{\"value\":1,\"unit\":\"kgs\"}},\"catches\":[]}")]
    public async Task Problem_OfALine_IsThatOfTheSingleRequestButForItsTrace(string question)
    {
        using var single = await Question.AskAsync(ApiHost.Client, Question.CatchTest, question);
        var expected = await single.Content.ReadAsStringAsync();

        var lines = await Batches.AnswersAsync(Question.CatchTest, $"{question}\n{Batches.Line(Question.CatchTest)}\n");

        Assert.Equal(2, lines.Length);
        var problem = lines[0].GetProperty("problem");
        Assert.Equal((int)single.StatusCode, problem.GetProperty("status").GetInt32());
        Assert.Equal(WithoutTrace(expected), WithoutTrace(problem.GetRawText()));
        Assert.True(lines[1].TryGetProperty("result", out _));
    }

    [Fact]
    public async Task Lines_BlankOnes_AreCountedButAskNothing()
    {
        var line = Batches.Line(Question.MeterSpeed);

        var lines = await Batches.AnswersAsync(Question.MeterSpeed, $"\n \t\n{line}\n\r\n\n{line}\n\n");

        Assert.Equal([3, 6], lines.Select(Batches.Number));
        Assert.All(lines, answered => Assert.True(answered.TryGetProperty("result", out _)));
    }

    [Theory]
    [InlineData("{0}\r\n{0}\r\n")]
    [InlineData("{0}\n{0}")]
    [InlineData("{0}\r\n{0}\r")]
    [InlineData("\uFEFF{0}\n{0}\n")]
    [InlineData("  {0}  \n\t{0}\n")]
    public async Task Lines_HoweverTheyEndOrBegin_AreAnswered(string form)
    {
        var body = form.Replace("{0}", Batches.Line(Question.CatchTest), StringComparison.Ordinal);

        var lines = await Batches.AnswersAsync(Question.CatchTest, body);

        Assert.Equal(2, lines.Length);
        Assert.All(lines, line => Assert.True(line.TryGetProperty("result", out _)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n\n")]
    [InlineData("\uFEFF")]
    public async Task Body_WithoutQuestions_IsAnsweredByNothing(string body)
    {
        Assert.Empty(await Batches.AnswersAsync(Question.CatchTest, body));
    }

    [Theory]
    [InlineData(64 * 1024, true)]
    [InlineData(64 * 1024 + 1, false)]
    [InlineData(300 * 1024, false)]
    public async Task Line_AroundTheLimit_IsTakenOrRefusedAndTheNextGoesOn(int length, bool isTaken)
    {
        var good = Batches.Line(Question.CatchTest);

        var lines = await Batches.AnswersAsync(Question.CatchTest, $"{good}\n{good.PadRight(length)}\r\n{good}\n{good.PadRight(length)}");

        Assert.Equal([1, 2, 3, 4], lines.Select(Batches.Number));
        foreach (var line in (int[])[1, 3])
        {
            Assert.Equal(isTaken, lines[line].TryGetProperty("result", out _));
            if (!isTaken)
                Assert.Equal((413, "line-too-long"), (Batches.Only(lines[line]).Status, Batches.Only(lines[line]).Fault.Code));
        }

        Assert.True(lines[0].TryGetProperty("result", out _));
        Assert.True(lines[2].TryGetProperty("result", out _));
    }

    [Fact]
    public async Task Line_ThatIsNotUtf8_HasAProblemAndTheNextGoesOn()
    {
        var good = Encoding.UTF8.GetBytes(Batches.Line(Question.CatchTest) + "\n");
        byte[] body = [.. "{\"meter\":\""u8, 0xC3, 0x28, .. "\"}\n"u8, .. good];

        using var response = await Batches.SendAsync(ApiHost.Client, Question.CatchTest, body);

        var lines = await Batches.LinesAsync(response);
        Assert.Contains("not valid UTF-8", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("{\"line\":2,\"result\":", lines[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("application/json")]
    [InlineData("text/plain")]
    [InlineData("application/x-ndjson; charset=utf-16")]
    [InlineData(null)]
    public async Task MediaType_AnotherOne_IsUnsupportedAndTheRightOneNamed(string? mediaType)
    {
        foreach (var operation in Question.Operations)
        {
            using var response = await Batches.SendAsync(ApiHost.Client, operation, "{}"u8.ToArray(), mediaType: mediaType);

            Assert.Equal("media-type-unsupported", (await ProblemBody.ReadAsync(response, 415)).Only().Code);
            Assert.Contains(Batches.Ndjson, Assert.Single(response.Headers.GetValues("Accept-Post")), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("text/csv", 415)]
    [InlineData("application/x-ndjson;charset=\"UTF-8\"", 200)]
    public async Task MediaType_OfATable_IsForCatchTestsOnly(string mediaType, int status)
    {
        using var response = await Batches.SendAsync(ApiHost.Client, Question.MeterSpeed, [], mediaType: mediaType);

        Assert.Equal(status, (int)response.StatusCode);
    }

    [Theory]
    [InlineData("application/json", 406)]
    [InlineData("application/x-ndjson;q=0", 406)]
    [InlineData("text/html, */*;q=0.1", 200)]
    [InlineData("application/*", 200)]
    public async Task Accept_WithoutLines_IsNotAcceptable(string accept, int status)
    {
        using var response = await Batches.SendAsync(ApiHost.Client, Question.CatchPlan, [], accept: accept);

        if (status == 200)
            Assert.Equal(status, (int)response.StatusCode);
        else
            Assert.Equal("not-acceptable", (await ProblemBody.ReadAsync(response, status)).Only().Code);
    }

    [Fact]
    public async Task Query_WrongUnits_RefuseTheWholeBatch()
    {
        using var response = await Batches.SendAsync(Question.CatchTest, Batches.Line(Question.CatchTest), "?units=stones");

        Assert.Equal("word-unknown", (await ProblemBody.ReadAsync(response, 422)).Only().Code);
    }

    private static string WithoutTrace(string problem)
    {
        var node = System.Text.Json.Nodes.JsonNode.Parse(problem)!.AsObject();
        Assert.True(node.Remove("traceId"));
        return node.ToJsonString();
    }
}
