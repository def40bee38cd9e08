using System.Net;

namespace CalibrationApi.Tests.Hosting.OpenApi;

/// <summary>The address without a path.</summary>
public sealed class FrontDoorTests
{
    [Theory]
    [InlineData(null)]
    [InlineData("*/*")]
    [InlineData("application/json")]
    public async Task Root_AProgram_IsToldWhereEverythingIs(string? accept)
    {
        using var response = await AskAsync(accept);

        var answer = await Answer.ReadAsync(response);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Contains("rel=\"service-desc\"", Assert.Single(response.Headers.GetValues("Link")), StringComparison.Ordinal);
        foreach (var member in (string[])["contract", "reference", "codes", "units", "health"])
        {
            using var told = await ApiHost.Client.GetAsync(new Uri(answer.Word("/" + member), UriKind.Relative));
            Assert.True(told.IsSuccessStatusCode, $"{member}: {answer.Word("/" + member)} answers {told.StatusCode}.");
        }
    }

    [Fact]
    public async Task Root_ABrowser_IsSentToTheReference()
    {
        using var response = await AskAsync("text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8");

        Assert.Equal(HttpStatusCode.Redirect, response.StatusCode);
        Assert.Equal("/reference/", response.Headers.Location?.ToString());
        Assert.Contains("Accept", response.Headers.Vary);
    }

    private static Task<HttpResponseMessage> AskAsync(string? accept)
    {
        var request = new HttpRequestMessage(HttpMethod.Get, new Uri("/", UriKind.Relative));
        if (accept is not null)
            request.Headers.Add("Accept", accept);
        return ApiHost.Client.SendAsync(request);
    }
}
