using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Tests.Plumbing.Access;

/// <summary>How a request may show its key, and what a challenge says (RFC 6750 section 3).</summary>
public sealed class KeySchemeTests(TwoFarms farms) : IClassFixture<TwoFarms>
{
    private const string Path = "/v1/machines";
    private const string Realm = "Bearer realm=\"calibration\"";

    [Fact]
    public async Task Request_WithAKey_Passes()
    {
        Assert.Equal(200, (await AskAsync($"Bearer {farms.North.Full.Text}")).Status);
    }

    // RFC 9110 section 11.1: the name of a scheme is told apart without regard to case.
    [Fact]
    public async Task Request_WithTheSchemeInOtherCaseAndTwoSpaces_Passes()
    {
        Assert.Equal(200, (await AskAsync($"bearer  {farms.North.Full.Text}")).Status);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("Basic dXNlcjpwYXNz")]
    [InlineData("Digest x")]
    public async Task Request_WithoutAKey_IsChallengedWithoutAnError(string? authorization)
    {
        var reply = await AskAsync(authorization);

        await reply.RefusedAsync(401, null, "key-missing");
        Assert.Equal(Realm, reply.Header("WWW-Authenticate"));
    }

    [Theory]
    [InlineData("Bearer")]
    [InlineData("Bearer ")]
    [InlineData("Bearer one two three")]
    [InlineData("Bearer one two")]
    public async Task Request_WithAMalformedHeader_IsInvalid(string authorization)
    {
        await InvalidRequestAsync(await AskAsync(authorization));
    }

    [Fact]
    public async Task Request_WithTwoHeaders_IsInvalid()
    {
        await InvalidRequestAsync(await AskAsync($"Bearer {farms.North.Full.Text}", $"Bearer {farms.North.Full.Text}"));
    }

    [Theory]
    [InlineData("access_token", false)]
    [InlineData("key", false)]
    [InlineData("cursor", true)]
    public async Task Request_WithAKeyInTheAddress_IsInvalid(string parameter, bool alsoInTheHeader)
    {
        var key = farms.North.Full.Text;

        var reply = await AskAsync(alsoInTheHeader ? $"Bearer {key}" : null, path: $"{Path}?{parameter}={key}");

        await InvalidRequestAsync(reply);
        Assert.DoesNotContain(key, reply.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Request_WithAKeyAsTheNameOfAParameter_IsInvalidAndDoesNotHearTheKey()
    {
        var key = farms.North.Full.Text;
        var atAPublicOne = await AskAsync(null, path: $"/v1/units?{key}=1");

        await InvalidRequestAsync(await AskAsync($"Bearer {key}", path: $"{Path}?{key}"));
        Assert.Equal(400, atAPublicOne.Status);
        Assert.DoesNotContain(key[10..], atAPublicOne.Text, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("application/json", "{{\"{0}\":1}}")]
    [InlineData("application/json", "{{\"meter\":\"a\",\"scale\":{{\"{0}\":1}}}}")]
    [InlineData("application/json", "{{\"meter\":\"a\",\"scale\":{{\"division\":{{\"value\":1,\"unit\":\"{0}\"}}}}}}")]
    [InlineData("application/json", "{{\"meter\":\"a\",\"material\":\"{0}\",\"product\":{{\"material\":\"{0}\"}}}}")]
    [InlineData("application/x-ndjson", "{{\"{0}\":1}}")]
    [InlineData("text/csv", "test,{0}")]
    [InlineData("text/csv", "test,net [{0}]")]
    [InlineData("text/csv", "test,net [kg]\r\na,{0}")]
    public async Task Answer_ToABodyWithAKeyInAWrongPlace_DoesNotHoldIt(string media, string body)
    {
        var key = farms.North.Full.Text;
        using var request = new HttpRequestMessage(
            HttpMethod.Post,
            new Uri("/v1/calculations/catch-test" + (media == "application/json" ? "" : "/batch"), UriKind.Relative)
        );
        request.Content = new ByteArrayContent(
            System.Text.Encoding.UTF8.GetBytes(string.Format(System.Globalization.CultureInfo.InvariantCulture, body, key))
        );
        request.Content.Headers.TryAddWithoutValidation("Content-Type", media);
        request.Headers.TryAddWithoutValidation("Authorization", $"Bearer {key}");

        var reply = await farms.Service.SendAsync(request);

        Assert.Contains("\"code\"", reply.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(key[10..], reply.Text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(key[40..], reply.Text, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("Bearer calk_")]
    [InlineData("Bearer ../../etc/passwd")]
    [InlineData("Bearer ' or 1=1 --")]
    [InlineData("Bearer eyJhbGciOiJub25lIn0.e30.")]
    public async Task Request_WithSomethingElse_IsRefused(string authorization)
    {
        var reply = await AskAsync(authorization);

        Assert.Contains(reply.Status, (int[])[400, 401]);
        Assert.StartsWith(Realm + ", error=\"invalid_", reply.Header("WWW-Authenticate"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Request_WithAnUnknownKey_IsToldInAChallengeThatAnybodyCanRead()
    {
        var reply = await AskAsync($"Bearer {KeyText.Make(Farm.NoRecord).Text}");

        Assert.Equal(
            Realm
                + ", error=\"invalid_token\", error_description=\"This service does not know this key. Check that it was made for this installation.\"",
            reply.Header("WWW-Authenticate")
        );
        // RFC 6750 section 3: no quotation mark, no backslash, nothing but ASCII.
        Assert.Matches("^[\\x20-\\x21\\x23-\\x5B\\x5D-\\x7E]+$", reply.Body.Word("/detail"));
    }

    [Theory]
    [InlineData("/healthz/live")]
    [InlineData("/healthz/ready")]
    [InlineData("/openapi/v1.json")]
    [InlineData("/reference/index.html")]
    [InlineData("/v1/units")]
    public async Task PublicAddress_WithoutAKey_Answers(string path)
    {
        Assert.Equal(200, (await AskAsync(null, path: path)).Status);
    }

    [Fact]
    public async Task UnknownAddress_WithoutAKey_IsNotFound()
    {
        Assert.Equal(404, (await AskAsync(null, path: "/v1/nothing-here")).Status);
    }

    [Fact]
    public async Task MethodThatAnAddressDoesNotTake_WithoutAKey_IsNotAllowed()
    {
        using var request = new HttpRequestMessage(HttpMethod.Delete, new Uri(Path, UriKind.Relative));

        Assert.Equal(405, (await farms.Service.SendAsync(request)).Status);
    }

    private static async Task InvalidRequestAsync(Reply reply)
    {
        await reply.RefusedAsync(400, null, "credentials-broken");
        Assert.Equal(
            $"{Realm}, error=\"invalid_request\", error_description=\"{reply.Body.Word("/detail")}\"",
            reply.Header("WWW-Authenticate")
        );
    }

    private async Task<Reply> AskAsync(string? authorization, string? second = null, string path = Path)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(path, UriKind.Relative));
        foreach (var value in new[] { authorization, second }.OfType<string>())
            request.Headers.TryAddWithoutValidation("Authorization", value);
        return await farms.Service.SendAsync(request);
    }
}
