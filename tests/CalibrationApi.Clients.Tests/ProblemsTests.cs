using System.Net;

namespace CalibrationApi.Clients.Tests;

/// <summary>What is refused is refused with code, place and sentence.</summary>
public sealed class ProblemsTests(Season season) : IClassFixture<Season>
{
    [Fact]
    public async Task Refusal_WithTwoErrors_TellsBothWithCodePlaceAndSentence()
    {
        using var client = season.Connect();
        var question = Given.CatchTestWithoutTurns();
        question.Catches![0].Tare = Mass.Kilograms(20);

        var refused = await Assert.ThrowsAsync<CalibrationException>(() => client.Calculations.EvaluateCatchTestAsync(question));

        Assert.Equal(422, refused.Status);
        Assert.Equal(
            ["#/catches/0/tare", "#/catches/1/revolutions"],
            refused.Errors.Select(error => error.Pointer).Order(StringComparer.Ordinal)
        );
        Assert.Contains(refused.Errors, error => error.Code == "tare-above-gross");
        Assert.Contains(refused.Errors, error => error.Code == "revolutions-not-positive");
        Assert.NotEmpty(refused.TraceId!);
        Assert.All(refused.Errors, error =>
            Assert.Contains($"{error.Pointer}: {error.Sentence} ({error.Code})", refused.Message, StringComparison.Ordinal)
        );
        Assert.StartsWith($"422: {refused.Sentence}", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Refusal_WithOneError_SaysItOnce()
    {
        using var client = season.Connect();

        var refused = await Assert.ThrowsAsync<CalibrationException>(() =>
            client.Calculations.EvaluateCatchTestAsync(Given.CatchTestWithoutTurns())
        );

        Assert.Equal(
            "422: #/catches/1/revolutions: The meter has to turn forward during a catch. Give a count above zero. (revolutions-not-positive)",
            refused.Message
        );
    }

    [Fact]
    public async Task Refusal_AboutTheQuery_NamesTheParameter()
    {
        using var client = season.Connect();

        var refused = await Assert.ThrowsAsync<CalibrationException>(() =>
            client.History.ListAsync(new() { Verdict = "perhaps" }).ToListAsync().AsTask()
        );

        Assert.Equal("verdict", Assert.Single(refused.Errors).Parameter);
    }

    [Fact]
    public async Task Refusal_ThroughTheGeneratedClient_IsTypedAlike()
    {
        using var client = season.Connect();

        var refused = await Assert.ThrowsAsync<RecordNotFoundException>(() =>
            client.Core.V1.Scales["019d0000-0004-7000-8000-0000000000ff"].GetAsync()
        );

        Assert.Equal("not-found", refused.Code);
    }

    [Fact]
    public async Task Answer_OfSomethingInBetween_IsStillTyped()
    {
        using var client = season.Connect(new AnswersInHtml());

        var refused = await Assert.ThrowsAsync<CalibrationException>(() => client.GetUnitsAsync());

        Assert.Equal(502, refused.Status);
        Assert.Null(refused.Code);
        Assert.Contains("502", refused.Message, StringComparison.Ordinal);
    }

    private sealed class AnswersInHtml : DelegatingHandler
    {
        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken) =>
            Task.FromResult(new HttpResponseMessage(HttpStatusCode.BadGateway) { Content = new StringContent("<html>Bad gateway</html>") });
    }
}
