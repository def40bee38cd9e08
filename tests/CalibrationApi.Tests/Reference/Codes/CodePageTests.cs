using System.Net;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace CalibrationApi.Tests.Reference.Codes;

/// <summary>The page of codes holds what the service lists, and needs nothing from anywhere.</summary>
public sealed partial class CodePageTests
{
    [Fact]
    public async Task Page_HoldsEveryCodeOfTheList()
    {
        var page = await ReadAsync("/reference/codes");
        var codes = JsonNode.Parse(await ReadAsync("/v1/codes"))!["codes"]!.AsArray();

        Assert.NotEmpty(codes);
        Assert.Equal(
            codes.Select(code => code!["code"]!.GetValue<string>()).Order(StringComparer.Ordinal),
            Articles().Matches(page).Select(match => match.Groups[1].Value).Order(StringComparer.Ordinal)
        );
        var text = WebUtility
            .HtmlDecode(page)
            .Replace("<code>", "`", StringComparison.Ordinal)
            .Replace("</code>", "`", StringComparison.Ordinal);
        Assert.All(codes, code =>
        {
            Assert.Contains(code!["cause"]!.GetValue<string>(), text, StringComparison.Ordinal);
            Assert.Contains(code["remedy"]!.GetValue<string>(), text, StringComparison.Ordinal);
        });
    }

    [Fact]
    public async Task Page_LinksLeadSomewhere()
    {
        var page = await ReadAsync("/reference/codes");
        var links = Links().Matches(page).Select(match => match.Groups[1].Value).Distinct().ToArray();

        Assert.True(links.Length > 80);
        Assert.All(links.Where(link => link.StartsWith('#')), link =>
            Assert.Contains($"id=\"{link[1..]}\"", page, StringComparison.Ordinal)
        );
        foreach (var link in links.Where(link => !link.StartsWith('#')))
            Assert.NotEmpty(await ReadAsync(link));
    }

    [Fact]
    public async Task Page_HoldsAllCodesWithoutItsScriptAndNeedsNoOtherHost()
    {
        using var response = await ApiHost.Client.GetAsync(new Uri("/reference/codes", UriKind.Relative));

        var page = await response.Content.ReadAsStringAsync();
        Assert.Equal("text/html; charset=utf-8", response.Content.Headers.ContentType?.ToString());
        Assert.Equal(
            "default-src 'none'; script-src 'self'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
            Assert.Single(response.Headers.GetValues("Content-Security-Policy"))
        );
        Assert.Equal("<script src=\"/reference/codes-page.js\">", Assert.Single(Scripts().Matches(page)).Value);
        Assert.DoesNotMatch("<link|<img|//[a-z]|url\\(|@import", page);
        // The box is there for those only for whom it searches.
        Assert.Contains("<label hidden>", page, StringComparison.Ordinal);
        Assert.DoesNotContain("http", await ReadAsync("/reference/codes-page.js"), StringComparison.Ordinal);
    }

    private static async Task<string> ReadAsync(string path)
    {
        using var response = await ApiHost.Client.GetAsync(new Uri(path, UriKind.Relative));
        Assert.True(response.IsSuccessStatusCode, path);
        return await response.Content.ReadAsStringAsync();
    }

    [GeneratedRegex("<article id=\"([^\"]+)\">")]
    private static partial Regex Articles();

    [GeneratedRegex("<script[^>]*>")]
    private static partial Regex Scripts();

    [GeneratedRegex("href=\"([^\"]+)\"")]
    private static partial Regex Links();
}
