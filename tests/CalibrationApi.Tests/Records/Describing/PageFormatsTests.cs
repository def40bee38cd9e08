namespace CalibrationApi.Tests.Records.Describing;

/// <summary>The format of a list by the Accept header, as RFC 9110, section 12.5.1, reads it.</summary>
public sealed class PageFormatsTests(RecordService service) : IClassFixture<RecordService>
{
    [Theory]
    [InlineData(null, "application/json")]
    [InlineData("*/*", "application/json")]
    [InlineData("application/*", "application/json")]
    [InlineData("text/*", "text/csv")]
    [InlineData("text/csv", "text/csv")]
    [InlineData("TEXT/CSV", "text/csv")]
    [InlineData("text/csv; header=present", "text/csv")]
    [InlineData("application/x-ndjson", "application/x-ndjson")]
    [InlineData("text/html, application/xhtml+xml, */*;q=0.8", "application/json")]
    [InlineData("application/json;q=0.5, text/csv", "text/csv")]
    [InlineData("application/json;q=0, */*", "text/csv")]
    [InlineData("*/*;q=0.1, application/x-ndjson;q=0.2", "application/x-ndjson")]
    [InlineData("text/csv;q=0.9, application/json;q=0.9", "application/json")]
    public async Task Accept_OfWhatAListOffers_ChoosesTheFormat(string? accept, string mediaType)
    {
        foreach (var path in (string[])["/v1/products", "/v1/history"])
            Assert.Equal(mediaType, (await service.GetAsync(path, accept)).Expect(200).MediaType);
    }

    [Theory]
    [InlineData("text/html")]
    [InlineData("image/png")]
    [InlineData("application/xml, text/plain;q=0.5")]
    [InlineData("application/json;q=0")]
    [InlineData("*/*;q=0")]
    [InlineData("nonsense")]
    public async Task Accept_OfNothingThatAListOffers_IsNotAcceptable(string accept)
    {
        foreach (var path in (string[])["/v1/machines", "/v1/catch-tests"])
            await (await service.GetAsync(path, accept)).RefusedAsync(406, null, "not-acceptable");
    }
}
