using System.Text.RegularExpressions;

namespace CalibrationApi.Tests.Hosting.OpenApi;

public sealed partial class ReferencePageTests
{
    [Fact]
    public async Task Reference_Page_NeedsNothingFromAnotherHost()
    {
        var page = await ReadAsync("/reference/index.html");
        var references = References().Matches(page).Select(match => match.Groups[1].Value).ToArray();

        Assert.True(references.Length >= 4);
        Assert.DoesNotContain(references, reference => reference.Contains("//", StringComparison.Ordinal));
        foreach (var reference in references)
        {
            var text = await ReadAsync("/reference/" + reference.TrimStart('.', '/'));
            if (reference.EndsWith(".css", StringComparison.Ordinal))
                Assert.DoesNotMatch(OutsideStyle(), text);
        }
    }

    [Fact]
    public async Task Reference_Page_ReadsTheContractOfThisService()
    {
        var script = await ReadAsync("/reference/index.js");

        Assert.Contains("/openapi/v1.json", script, StringComparison.Ordinal);
        // The page would send the contract to a public validator if it were not told not to.
        Assert.Matches("\"validatorUrl\": *(\"none\"|null)", script);
        Assert.DoesNotMatch("""(src|href|url)["']?\s*[:=]\s*["'](https?:)?//""", script);
    }

    [Fact]
    public async Task Contract_IsServedAsJson()
    {
        using var response = await ApiHost.Client.GetAsync(new Uri("/openapi/v1.json", UriKind.Relative));

        var contract = await Answer.ReadAsync(response);
        Assert.StartsWith("3.1", contract.Word("/openapi"), StringComparison.Ordinal);
    }

    private static async Task<string> ReadAsync(string path)
    {
        using var response = await ApiHost.Client.GetAsync(new Uri(path, UriKind.Relative));
        Assert.True(response.IsSuccessStatusCode, path);
        return await response.Content.ReadAsStringAsync();
    }

    [GeneratedRegex("(?:src|href)=\"([^\"]+)\"")]
    private static partial Regex References();

    [GeneratedRegex(@"@import|url\(\s*[""']?(https?:)?//")]
    private static partial Regex OutsideStyle();
}
