using System.Text;

namespace CalibrationApi.Tests.Plumbing.Http;

/// <summary>Bodies that are not JSON, or not the JSON of a question.</summary>
public sealed class BrokenBodyTests
{
    private static readonly string Good = Question.Of(Question.CatchTest).Text;

    public static TheoryData<string, string> Broken =>
        new()
        {
            { "empty", "" },
            { "blank", "  \n" },
            { "truncated", Good[..200] },
            { "truncated by one", Good[..^1] },
            { "trailing text", Good + "x" },
            { "two values", Good + Good },
            { "trailing comma", Good[..^1] + ",}" },
            { "comment", "/* mine */" + Good },
            { "single quotes", Good.Replace('"', '\'') },
            { "bare NaN", Good.Replace("18.7,", "NaN,", StringComparison.Ordinal) },
            { "bare Infinity", Good.Replace("18.7,", "Infinity,", StringComparison.Ordinal) },
            { "bare -Infinity", Good.Replace("18.7,", "-Infinity,", StringComparison.Ordinal) },
            { "decimal comma", Good.Replace("18.7,", "18,7,", StringComparison.Ordinal) },
            { "leading plus", Good.Replace("18.7,", "+18.7,", StringComparison.Ordinal) },
            { "leading zero", Good.Replace("18.7,", "018.7,", StringComparison.Ordinal) },
            { "bare decimal point", Good.Replace("18.7,", "18.,", StringComparison.Ordinal) },
            { "hexadecimal", Good.Replace("18.7,", "0x12,", StringComparison.Ordinal) },
            { "line break in a text", Good.Replace("front", "fr\nont", StringComparison.Ordinal) },
            { "half a surrogate pair", Good.Replace("front", "\\ud800", StringComparison.Ordinal) },
            { "the other half", Good.Replace("front", "\\udc00", StringComparison.Ordinal) },
            { "half a pair in a unit", Good.Replace("kg/hL", "\\ud83d", StringComparison.Ordinal) },
            { "half a pair in a name of a member", Good.Replace("\"meter\"", "\"\\ud800\"", StringComparison.Ordinal) },
            { "unknown escape", Good.Replace("front", "\\x41", StringComparison.Ordinal) },
        };

    [Theory]
    [MemberData(nameof(Broken))]
    public async Task Post_BodyThatIsNotJson_IsToldSo(string what, string text)
    {
        using var response = await Question.AskAsync(ApiHost.Client, Question.CatchTest, text);

        var fault = (await ProblemBody.ReadAsync(response, 400)).Only();
        Assert.True(fault.Code == "json-broken", $"{what}: {fault}");
        Assert.Null(fault.Pointer);
    }

    [Theory]
    [InlineData(Question.CatchTest)]
    [InlineData(Question.CatchPlan)]
    [InlineData(Question.MeterSpeed)]
    [InlineData(Question.SeedRowLimit)]
    [InlineData(Question.ProductRate)]
    public async Task Post_TruncatedBody_IsToldTheLineAndByte(string operation)
    {
        var text = Question.Of(operation).Text[..100].TrimEnd();

        using var response = await Question.AskAsync(ApiHost.Client, operation, "\n" + text);

        var fault = (await ProblemBody.ReadAsync(response, 400)).Only();
        Assert.Contains("line 2, byte ", fault.Detail, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("true")]
    [InlineData("5")]
    [InlineData("\"front\"")]
    [InlineData("[{}]")]
    public async Task Post_BodyThatIsNoObject_IsRefusedAtTheRoot(string text)
    {
        foreach (var operation in Question.Operations)
        {
            using var response = await Question.AskAsync(ApiHost.Client, operation, text);

            var fault = (await ProblemBody.ReadAsync(response, 400)).Only();
            Assert.Equal(("#", "type-wrong"), (fault.Pointer, fault.Code));
        }
    }

    [Theory]
    [InlineData("[", "]")]
    [InlineData("{\"scale\":", "}")]
    public async Task Post_NestedThirtyThreeDeep_IsRefused(string open, string close)
    {
        var text = string.Concat(Enumerable.Repeat(open, 33)) + "1" + string.Concat(Enumerable.Repeat(close, 33));

        using var response = await Question.AskAsync(ApiHost.Client, Question.CatchTest, text);

        await ProblemBody.ReadAsync(response, 400);
    }

    [Fact]
    public async Task Post_NestedHundredThousandDeep_IsRefused()
    {
        using var response = await Question.AskAsync(ApiHost.Client, Question.CatchTest, new string('[', 100_000));

        await ProblemBody.ReadAsync(response, 400);
    }

    [Theory]
    [InlineData(0xFF)]
    [InlineData(0xC0)]
    [InlineData(0x80)]
    public async Task Post_InvalidUtf8_IsToldToSendUtf8(byte wrong)
    {
        var bytes = Encoding.UTF8.GetBytes(Good);
        bytes[Good.IndexOf("front", StringComparison.Ordinal)] = wrong;

        using var response = await SendAsync(bytes);

        var fault = (await ProblemBody.ReadAsync(response, 400)).Only();
        Assert.Equal("json-broken", fault.Code);
        Assert.Contains("UTF-8", fault.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Post_Utf16_IsToldToSendUtf8()
    {
        using var response = await SendAsync([.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(Good)]);

        Assert.Equal("json-broken", (await ProblemBody.ReadAsync(response, 400)).Only().Code);
    }

    [Fact]
    public async Task Post_Utf8WithByteOrderMark_IsAnsweredAsWithout()
    {
        using var with = await SendAsync([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Good)]);
        using var without = await SendAsync(Encoding.UTF8.GetBytes(Good));

        Assert.True(with.IsSuccessStatusCode);
        Assert.Equal(await without.Content.ReadAsByteArrayAsync(), await with.Content.ReadAsByteArrayAsync());
    }

    [Fact]
    public async Task Post_ByteOrderMarkAlone_IsBroken()
    {
        using var response = await SendAsync([0xEF, 0xBB, 0xBF]);

        Assert.Equal("json-broken", (await ProblemBody.ReadAsync(response, 400)).Only().Code);
    }

    [Fact]
    public async Task Post_UnknownMemberWithSlashTildeAndSpace_HasAnEscapedPointer()
    {
        // RFC 6901 sections 3 and 6: ~ is ~0, / is ~1, and what a URI fragment cannot hold is percent-encoded.
        using var response = await Question.Of(Question.CatchTest).AskAsync();
        using var broken = await Question.AskAsync(ApiHost.Client, Question.CatchTest, "{\"a/b~ ü\": 1," + Good[1..]);

        Assert.True(response.IsSuccessStatusCode);
        Assert.Equal("#/a~1b~0%20%C3%BC", (await ProblemBody.ReadAsync(broken, 400)).Only().Pointer);
    }

    [Theory]
    [InlineData(39)]
    [InlineData(59)]
    [InlineData(99)]
    public async Task Post_UnknownMemberOfAnyLength_IsRepeatedWithoutBreakingACharacter(int before)
    {
        var name = new string('m', before) + string.Concat(Enumerable.Repeat("😀", 300));

        using var response = await Question.AskAsync(ApiHost.Client, Question.CatchTest, $"{{\"{name}\": 1," + Good[1..]);

        var fault = (await ProblemBody.ReadAsync(response, 400)).Only();
        Assert.True(fault.Detail.Length < 1000);
        Assert.DoesNotContain('\uFFFD', fault.Detail);
        Assert.DoesNotContain('\uFFFD', Uri.UnescapeDataString(fault.Pointer!));
    }

    [Fact]
    public async Task Post_UnknownUnitOfAnyLength_IsRepeatedWithoutBreakingACharacter()
    {
        var unit = "a" + string.Concat(Enumerable.Repeat("😀", 300));

        using var response = await Question.Of(Question.CatchTest).With("/targetRate/unit", $"\"{unit}\"").AskAsync();

        var fault = (await ProblemBody.ReadAsync(response, 422)).Only();
        Assert.Equal(("#/targetRate", "unit-unknown"), (fault.Pointer, fault.Code));
        Assert.DoesNotContain('\uFFFD', fault.Detail);
        Assert.True(fault.Detail.Length < 200);
    }

    private static Task<HttpResponseMessage> SendAsync(byte[] bytes) =>
        ApiHost.Client.PostAsync(new Uri(Question.PathOf(Question.CatchTest), UriKind.Relative), Question.Json(bytes));
}
