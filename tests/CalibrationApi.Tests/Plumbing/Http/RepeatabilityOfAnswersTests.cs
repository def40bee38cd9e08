namespace CalibrationApi.Tests.Plumbing.Http;

/// <summary>The same question has the same answer, to the byte, alone or among others.</summary>
public sealed class RepeatabilityOfAnswersTests
{
    [Theory]
    [InlineData(Question.CatchTest)]
    [InlineData(Question.CatchPlan)]
    [InlineData(Question.MeterSpeed)]
    [InlineData(Question.DistanceSensor)]
    [InlineData(Question.DriveWheelTurns)]
    [InlineData(Question.SeedRowLimit)]
    [InlineData(Question.SeedingRate)]
    [InlineData(Question.NewLot)]
    [InlineData(Question.ProductRate)]
    public async Task Answer_SameQuestionAgainAndOnAnotherHost_IsTheSameToTheByte(string operation)
    {
        await using var otherHost = new ApiHost();
        using var other = otherHost.CreateCheckedClient();

        var first = await BytesAsync(ApiHost.Client, operation);

        Assert.Equal(first, await BytesAsync(ApiHost.Client, operation));
        Assert.Equal(first, await BytesAsync(other, operation));
    }

    [Fact]
    public async Task Answer_ManyQuestionsAtOnce_IsThatOfEachAlone()
    {
        var alone = new Dictionary<(string, string), byte[]>();
        foreach (var operation in Question.Operations)
        {
            foreach (var query in (string[])["", "?units=us", "?units=metric"])
                alone[(operation, query)] = await BytesAsync(ApiHost.Client, operation, query);
        }

        var asked = Enumerable.Range(0, 40).SelectMany(_ => alone.Keys).ToArray();

        var together = await Task.WhenAll(asked.Select(one => Task.Run(() => BytesAsync(ApiHost.Client, one.Item1, one.Item2))));

        Assert.All(asked.Zip(together), pair => Assert.Equal(alone[pair.First], pair.Second));
    }

    private static async Task<byte[]> BytesAsync(HttpClient client, string operation, string query = "")
    {
        using var response = await Question.Of(operation).AskAsync(client, query);
        Assert.True(response.IsSuccessStatusCode);
        return await response.Content.ReadAsByteArrayAsync();
    }
}
