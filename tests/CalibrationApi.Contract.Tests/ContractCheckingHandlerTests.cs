using System.Net;
using System.Net.Http.Headers;
using System.Text;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The handler that other tests rely on lets good answers through and stops each kind of bad one.</summary>
public sealed class ContractCheckingHandlerTests
{
    private const string Problem = """{ "code": "not-found" }""";

    private static readonly ContractDocument Contract = ContractDocument.Parse(
        """
        {
          "openapi": "3.1.2",
          "paths": {
            "/v1/things/{id}": {
              "get": {
                "operationId": "getThing",
                "responses": {
                  "200": {
                    "description": "The thing.",
                    "headers": { "ETag": { "required": true, "schema": { "type": "string", "pattern": "^\"" } } },
                    "content": {
                      "application/json": { "schema": { "$ref": "#/components/schemas/Thing" } },
                      "text/csv": { "schema": { "type": "string" } },
                      "application/x-ndjson": { "schema": { "$ref": "#/components/schemas/Part" } }
                    }
                  },
                  "304": { "description": "The thing has not changed." },
                  "404": { "description": "There is none.", "x-codes": ["stray-catch"], "content": { "application/problem+json": { "schema": { "$ref": "#/components/schemas/Problem" } } } }
                }
              }
            },
            "/v1/codes": {
              "get": {
                "operationId": "listCodes",
                "responses": {
                  "200": { "description": "The codes.", "content": { "application/json": { "schema": { "type": "object" }, "example": { "codes": [
                    { "code": "not-found", "statuses": [404], "severities": ["warning"] }, { "code": "stray-catch", "severities": ["warning", "stop"] }
                  ] } } } }
                }
              }
            }
          },
          "components": {
            "schemas": {
              "Thing": { "type": "object", "required": ["parts"], "properties": { "parts": { "type": "array", "items": { "$ref": "#/components/schemas/Part" } }, "made": { "type": "string", "format": "date-time" }, "findings": { "type": "array", "x-codes": ["stray-catch"], "items": { "$ref": "#/components/schemas/Finding" } } } },
              "Finding": { "type": "object", "required": ["code"], "properties": { "code": { "type": "string" } } },
              "ProblemError": { "type": "object", "properties": { "code": { "type": "string", "examples": ["not-found"] } } },
              "Part": { "type": "object", "required": ["mass"], "properties": { "mass": { "type": "number", "format": "double" } } },
              "Problem": { "type": "object", "required": ["code"], "properties": { "code": { "type": "string" } } }
            }
          }
        }
        """
    );

    [Theory]
    [InlineData(
        "GET",
        "/v1/things/7",
        200,
        "application/json",
        """{ "parts": [{ "mass": 1.5 }], "made": "2026-05-01T10:00:00+02:00", "added": "later" }"""
    )]
    [InlineData("GET", "/v1/things/7", 200, "application/x-ndjson", "{ \"mass\": 1 }\n{ \"mass\": 2 }\n")]
    [InlineData("GET", "/v1/things/7", 304, null, "")]
    [InlineData("GET", "/v1/things/7", 404, "application/problem+json", Problem)]
    [InlineData("HEAD", "/v1/things/7", 200, "application/json", "")]
    [InlineData("POST", "/v1/things/7", 405, "application/problem+json", Problem)]
    [InlineData("GET", "/v1/no/such/path", 404, "application/problem+json", Problem)]
    [InlineData("GET", "/healthz/live", 200, "text/plain", "Healthy")]
    public async Task SendAsync_AnswerOfTheContract_IsPassedOn(string method, string path, int status, string? media, string body)
    {
        using var client = ClientOf(status, media, body, etag: path.StartsWith("/v1/things", StringComparison.Ordinal) && status == 200);

        using var response = await client.SendAsync(new HttpRequestMessage(new HttpMethod(method), path));

        Assert.Equal(status, (int)response.StatusCode);
        Assert.Equal(body, await response.Content.ReadAsStringAsync());
    }

    [Theory]
    [InlineData("GET", "/v1/things/7", 500, "application/problem+json", Problem, "no status 500")]
    [InlineData("GET", "/v1/things/7", 404, "application/json", Problem, "media type application/json")]
    [InlineData("GET", "/v1/things/7", 404, null, "", "promises a body")]
    [InlineData("GET", "/v1/things/7", 404, "application/problem+json", "{ broken", "not JSON")]
    [InlineData("GET", "/v1/things/7", 404, "application/problem+json", """{ "code": "a", "code": "b" }""", "not JSON")]
    [InlineData("GET", "/v1/things/7", 404, "application/problem+json", "{ }", "code")]
    [InlineData("GET", "/v1/things/7", 200, "application/json", """{ "parts": [{ "mass": "heavy" }] }""", "#/parts/0/mass")]
    [InlineData("GET", "/v1/things/7", 200, "application/json", """{ "parts": [], "made": "yesterday" }""", "#/made")]
    [InlineData("GET", "/v1/things/7", 200, "application/x-ndjson", "{ \"mass\": 1 }\n{ \"mass\": \"2\" }\n", "#/mass")]
    [InlineData("POST", "/v1/things/7", 200, "application/json", """{ "parts": [] }""", "no such method")]
    [InlineData("GET", "/v1/no/such/path", 200, "application/json", "{ }", "no such path")]
    public async Task SendAsync_AnswerAgainstTheContract_FailsWithThePlace(
        string method,
        string path,
        int status,
        string? media,
        string body,
        string said
    )
    {
        using var client = ClientOf(status, media, body, etag: status == 200);

        var failure = await Assert.ThrowsAsync<ContractViolationException>(() =>
            client.SendAsync(new HttpRequestMessage(new HttpMethod(method), path))
        );

        Assert.Contains(said, failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task SendAsync_PromisedHeaderMissing_FailsWithItsName()
    {
        using var client = ClientOf(200, "application/json", """{ "parts": [] }""", etag: false);

        var failure = await Assert.ThrowsAsync<ContractViolationException>(() =>
            client.GetAsync(new Uri("/v1/things/7", UriKind.Relative))
        );

        Assert.Contains("ETag", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task SendAsync_HeaderThatTheContractDoesNotKnow_FailsWithItsName()
    {
        using var client = ClientOf(304, null, "", etag: true);

        var failure = await Assert.ThrowsAsync<ContractViolationException>(() =>
            client.GetAsync(new Uri("/v1/things/7", UriKind.Relative))
        );

        Assert.Contains("ETag", failure.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("GET", "not-found", 404, true)]
    [InlineData("GET", "never-heard-of", 404, false)]
    [InlineData("GET", "stray-catch", 404, true)]
    [InlineData("POST", "not-found", 405, false)]
    public async Task SendAsync_CodesOfAnAnswer_AreHeldToTheListOfCodes(string method, string code, int status, bool isGood)
    {
        using var client = ClientOf(
            status,
            "application/problem+json",
            $$"""{ "code": "{{code}}", "detail": "Said.", "severity": "warning" }""",
            etag: false
        );
        var asked = client.SendAsync(new HttpRequestMessage(new HttpMethod(method), "/v1/things/7"));

        if (isGood)
            Assert.Equal(status, (int)(await asked).StatusCode);
        else
            Assert.Contains(code, (await Assert.ThrowsAsync<ContractViolationException>(() => asked)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(200, "application/json", """{ "parts": [], "findings": [{ "code": "stray-catch" }] }""", true)]
    [InlineData(200, "application/json", """{ "parts": [], "findings": [{ "code": "not-found" }] }""", false)]
    [InlineData(
        404,
        "application/problem+json",
        """{ "code": "not-found", "errors": [{ "code": "not-found" }, { "code": "stray-catch" }] }""",
        true
    )]
    [InlineData(404, "application/problem+json", """{ "code": "not-found", "errors": [{ "code": "tare-swapped" }] }""", false)]
    public async Task SendAsync_CodesOfAList_AreThoseThatTheContractNamesForIt(int status, string media, string body, bool isGood)
    {
        using var client = ClientOf(status, media, body, etag: status == 200);
        var asked = client.GetAsync(new Uri("/v1/things/7", UriKind.Relative));

        if (isGood)
            Assert.Equal(status, (int)(await asked).StatusCode);
        else
            Assert.Contains(
                "The code ",
                (await Assert.ThrowsAsync<ContractViolationException>(() => asked)).Message,
                StringComparison.Ordinal
            );
    }

    [Fact]
    public async Task SendAsync_SeverityThatTheListOfCodesDoesNotTell_Fails()
    {
        using var client = ClientOf(
            404,
            "application/problem+json",
            """{ "code": "stray-catch", "detail": "Said.", "severity": "note" }""",
            etag: false
        );

        var failure = await Assert.ThrowsAsync<ContractViolationException>(() =>
            client.GetAsync(new Uri("/v1/things/7", UriKind.Relative))
        );

        Assert.Contains("severity note", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task SendAsync_HeaderAgainstItsSchema_FailsWithItsName()
    {
        using var client = ClientOf(200, "application/json", """{ "parts": [] }""", etag: true, weak: true);

        var failure = await Assert.ThrowsAsync<ContractViolationException>(() =>
            client.GetAsync(new Uri("/v1/things/7", UriKind.Relative))
        );

        Assert.Contains("The header ETag of getThing holds 'W/", failure.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("text/csv; charset=utf-8; header=present", "id,mass\r\n1,2\r\n", null)]
    [InlineData("text/csv; charset=utf-8; header=present", "", null)]
    [InlineData("text/csv; charset=utf-8", "id,mass\r\n", "header=present")]
    [InlineData("text/csv; charset=utf-8; header=present", "id,mass\n", "CR LF")]
    [InlineData("text/csv; charset=utf-8; header=present", "id,id\r\n", "twice")]
    public async Task SendAsync_Csv_IsHeldToItsHeaderRow(string media, string body, string? said)
    {
        using var client = ClientOf(200, media, body, etag: true);
        var asked = client.GetAsync(new Uri("/v1/things/7", UriKind.Relative));

        if (said is null)
            Assert.Equal(200, (int)(await asked).StatusCode);
        else
            Assert.Contains(said, (await Assert.ThrowsAsync<ContractViolationException>(() => asked)).Message, StringComparison.Ordinal);
    }

    private static HttpClient ClientOf(int status, string? media, string body, bool etag, bool weak = false) =>
        new(new ContractCheckingHandler(Contract) { InnerHandler = new Canned(status, media, body, etag, weak) })
        {
            BaseAddress = new Uri("http://localhost"),
        };

    /// <summary>Answers every request alike.</summary>
    private sealed class Canned(int status, string? media, string body, bool etag, bool weak) : HttpMessageHandler
    {
        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
        {
            var content = new ByteArrayContent(Encoding.UTF8.GetBytes(body));
            content.Headers.ContentType = media is null ? null : MediaTypeHeaderValue.Parse(media);
            var response = new HttpResponseMessage((HttpStatusCode)status) { Content = content };
            if (etag)
                response.Headers.ETag = new EntityTagHeaderValue("\"r7\"", weak);
            return Task.FromResult(response);
        }
    }
}
