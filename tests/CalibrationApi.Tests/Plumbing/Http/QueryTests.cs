namespace CalibrationApi.Tests.Plumbing.Http;

public sealed class QueryTests
{
    [Theory]
    [InlineData("?units=as-asked")]
    [InlineData("?units=metric")]
    [InlineData("?units=us")]
    public async Task Units_WordOfTheContract_IsTaken(string query)
    {
        foreach (var operation in Question.Operations)
        {
            using var response = await Question.Of(operation).AskAsync(query);

            Assert.True(response.IsSuccessStatusCode);
        }
    }

    [Theory]
    [InlineData("?units=Metric")]
    [InlineData("?units=UnitedStates")]
    [InlineData("?units=AsAsked")]
    [InlineData("?units=0")]
    [InlineData("?units=77")]
    [InlineData("?units=")]
    [InlineData("?units")]
    [InlineData("?units=metric%20")]
    [InlineData("?units=%00")]
    [InlineData("?units=%ff")]
    public async Task Units_AnotherWord_IsUnknown(string query)
    {
        foreach (var operation in Question.Operations)
        {
            using var response = await Question.Of(operation).AskAsync(query);

            var fault = (await ProblemBody.ReadAsync(response, 422)).Only();
            Assert.Equal(("units", "word-unknown"), (fault.Parameter, fault.Code));
            Assert.Null(fault.Pointer);
        }
    }

    [Theory]
    [InlineData("?Units=us", "Units", "member-unknown")]
    [InlineData("?unit=us", "unit", "member-unknown")]
    [InlineData("?units=us&verbose=1", "verbose", "member-unknown")]
    [InlineData("?units=us&units=us", "units", "member-duplicate")]
    [InlineData("?units=us&Units=metric", "Units", "member-unknown")]
    public async Task Query_UnknownOrRepeatedParameter_IsRefused(string query, string parameter, string code)
    {
        using var response = await Question.Of(Question.CatchTest).AskAsync(query);

        var fault = (await ProblemBody.ReadAsync(response, 400)).Only();
        Assert.Equal((parameter, code), (fault.Parameter, fault.Code));
    }

    [Fact]
    public async Task Query_OfAWrongWordAndAnUnknownParameter_TellsWhatCannotBeRead()
    {
        using var response = await Question.Of(Question.CatchTest).AskAsync("?units=imperial&verbose=1");

        Assert.Equal("member-unknown", (await ProblemBody.ReadAsync(response, 400)).Only().Code);
    }

    [Fact]
    public async Task Query_ValueLongerThanTheContractSays_IsRefused()
    {
        async Task<ProblemBody> AskAsync(int length)
        {
            using var response = await ApiHost.Client.GetAsync(
                new Uri($"/v1/history?meter={new string('a', length)}&order=sideways", UriKind.Relative)
            );
            return await ProblemBody.ReadAsync(response, 422);
        }

        Assert.Equal("order", (await AskAsync(500)).Only().Parameter);
        Assert.Equal(("meter", "text-too-long"), ((await AskAsync(501)).Only().Parameter, (await AskAsync(501)).Only().Code));
    }

    [Fact]
    public async Task Query_AtAnOperationWithoutParameters_IsRefused()
    {
        using var response = await ApiHost.Client.GetAsync(new Uri("/v1/units?units=us", UriKind.Relative));

        var fault = (await ProblemBody.ReadAsync(response, 400)).Only();
        Assert.Equal(("units", "member-unknown"), (fault.Parameter, fault.Code));
    }
}
