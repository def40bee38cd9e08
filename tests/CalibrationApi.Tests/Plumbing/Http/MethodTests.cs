namespace CalibrationApi.Tests.Plumbing.Http;

public sealed class MethodTests
{
    [Theory]
    [InlineData("GET")]
    [InlineData("PUT")]
    [InlineData("PATCH")]
    [InlineData("DELETE")]
    [InlineData("PROPFIND")]
    public async Task Calculation_AnotherMethod_IsNotAllowed(string method)
    {
        foreach (var operation in Question.Operations)
        {
            using var response = await SendAsync(method, Question.PathOf(operation));

            Assert.Equal("method-not-allowed", (await ProblemBody.ReadAsync(response, 405)).Only().Code);
            Assert.Equal(["POST"], response.Content.Headers.Allow);
        }
    }

    [Theory]
    [InlineData("POST")]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    public async Task Units_AnotherMethod_IsNotAllowed(string method)
    {
        using var response = await SendAsync(method, "/v1/units");

        Assert.Equal("method-not-allowed", (await ProblemBody.ReadAsync(response, 405)).Only().Code);
        Assert.Contains("GET", response.Content.Headers.Allow);
    }

    [Theory]
    [InlineData("GET", "/v1")]
    [InlineData("GET", "/v1/unit")]
    [InlineData("GET", "/v2/units")]
    [InlineData("POST", "/v1/calculations")]
    [InlineData("POST", "/v1/calculations/catch-tests")]
    [InlineData("POST", "/calculations/catch-test")]
    [InlineData("GET", "/healthz")]
    [InlineData("GET", "/openapi/v2.json")]
    [InlineData("GET", "/v1/../etc/passwd")]
    [InlineData("GET", "/v1/units/")]
    [InlineData("GET", "/v1/Units")]
    [InlineData("GET", "/V1/units")]
    [InlineData("POST", "/v1/machines/")]
    [InlineData("DELETE", "/v1/units/")]
    [InlineData("POST", "/v1/calculations/catch-test/batch/")]
    public async Task UnknownAddress_AnyMethod_IsNotFound(string method, string path)
    {
        using var response = await SendAsync(method, path);

        Assert.Equal("not-found", (await ProblemBody.ReadAsync(response, 404)).Only().Code);
    }

    [Theory]
    [InlineData("127.0.0.1:99999")]
    [InlineData("localhost:99999999999999999999")]
    public async Task Host_ThatNoAddressCanHave_IsRefused(string host)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/v1/machines");
        request.Headers.TryAddWithoutValidation("Host", host);

        using var response = await ApiHost.Client.SendAsync(request);

        Assert.Contains("\"header\":\"Host\"", (await ProblemBody.ReadAsync(response, 400)).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/v1/units", "GET")]
    [InlineData("/v1/calculations/catch-test", "POST")]
    public async Task Options_KnownAddress_ListsTheMethods(string path, string method)
    {
        using var response = await SendAsync("OPTIONS", path);

        Assert.Equal(204, (int)response.StatusCode);
        Assert.Contains(method, response.Content.Headers.Allow);
        Assert.Empty(await response.Content.ReadAsByteArrayAsync());
    }

    [Fact]
    public async Task Options_UnknownAddress_IsNotFound()
    {
        using var response = await SendAsync("OPTIONS", "/v1/nothing");

        await ProblemBody.ReadAsync(response, 404);
    }

    [Theory]
    [InlineData("/v1/units")]
    [InlineData("/healthz/live")]
    [InlineData("/healthz/ready")]
    [InlineData("/openapi/v1.json")]
    [InlineData("/reference/index.html")]
    public async Task Head_AddressThatCanBeRead_AnswersAsGetWithoutBody(string path)
    {
        using var got = await SendAsync("GET", path);
        using var head = await SendAsync("HEAD", path);

        Assert.True(got.IsSuccessStatusCode);
        Assert.Equal(got.StatusCode, head.StatusCode);
        Assert.Equal(got.Content.Headers.ContentType, head.Content.Headers.ContentType);
        Assert.Empty(await head.Content.ReadAsByteArrayAsync());
    }

    private static async Task<HttpResponseMessage> SendAsync(string method, string path)
    {
        using var request = new HttpRequestMessage(new HttpMethod(method), new Uri(path, UriKind.Relative));
        return await ApiHost.Client.SendAsync(request);
    }
}
