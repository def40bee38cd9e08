using System.Net.Http.Headers;
using System.Text;

namespace CalibrationApi.Tests.Plumbing.Http;

public sealed class MediaTypeTests
{
    [Theory]
    [InlineData("text/plain")]
    [InlineData("text/json")]
    [InlineData("application/xml")]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData("multipart/form-data; boundary=x")]
    [InlineData("application/vnd.something+json")]
    [InlineData("application/json; charset=utf-16")]
    [InlineData("application/json; charset=iso-8859-1")]
    [InlineData("*/*")]
    [InlineData(null)]
    public async Task Post_AnotherMediaType_IsUnsupported(string? mediaType)
    {
        foreach (var operation in Question.Operations)
        {
            using var response = await SendAsync(operation, mediaType);

            var fault = (await ProblemBody.ReadAsync(response, 415)).Only();
            Assert.Equal("media-type-unsupported", fault.Code);
            Assert.Contains("application/json", fault.Detail, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("application/json")]
    [InlineData("Application/JSON")]
    [InlineData("application/json; charset=utf-8")]
    [InlineData("application/json;charset=\"UTF-8\"")]
    public async Task Post_JsonInUtf8_IsTaken(string mediaType)
    {
        using var response = await SendAsync(Question.CatchTest, mediaType);

        Assert.True(response.IsSuccessStatusCode);
    }

    private static async Task<HttpResponseMessage> SendAsync(string operation, string? mediaType)
    {
        using var content = new ByteArrayContent(Encoding.UTF8.GetBytes(Question.Of(operation).Text));
        content.Headers.ContentType = mediaType is null ? null : MediaTypeHeaderValue.Parse(mediaType);
        return await ApiHost.Client.PostAsync(new Uri(Question.PathOf(operation), UriKind.Relative), content);
    }
}
