using System.Text.Json;
using CalibrationApi.Testing;

namespace CalibrationApi.TypeScriptClient.Tests;

/// <summary>The installed client in a page of another origin than the service's, in a real browser.</summary>
[Collection(OnePackage.Name)]
public sealed class BrowserTests(InstalledPackage package)
{
    [ChromiumFact]
    public async Task Page_OfAnAllowedOrigin_DoesTheWholeJob()
    {
        await using var pages = await PageServer.StartAsync(package.Folder);

        var seen = await OpenAsync(pages, allowed: pages.Origin);

        Assert.Equal(
            """{"verdict":"keep","etag":"\u0022r1\u0022","replayed":[false,true],"unchanged":true,"note":"from a page","conflict":"precondition-failed","problem":[422,"#/catches","too-few"],"pages":true,"link":true,"batch":["1 keep","2 net-negative","3 adopt"]}""",
            JsonSerializer.Serialize(seen.Where(member => member.Key is not "outside" and not "errors").ToDictionary())
        );
        Assert.Equal("[]", seen["outside"].GetRawText());
    }

    [ChromiumFact]
    public async Task Page_OfAnyOtherOrigin_ReadsNothing()
    {
        await using var pages = await PageServer.StartAsync(package.Folder);

        var seen = await OpenAsync(pages, allowed: "http://localhost:1");

        Assert.Equal("TypeError: Failed to fetch", seen["failure"].GetString());
    }

    private static async Task<Dictionary<string, JsonElement>> OpenAsync(PageServer pages, string allowed)
    {
        var browser = Chromium.Executable;
        var service = new RunningService { Settings = new Dictionary<string, string> { ["Calibration__AllowedOrigins"] = allowed } };
        await service.InitializeAsync();
        try
        {
            var address = $"{pages.Origin}/page.html?service={Uri.EscapeDataString(service.Address)}";
            var script = Repository.PathOf("tests", "CalibrationApi.TypeScriptClient.Tests", "Browser", "open-page.mjs");
            var run = ClientSource.Succeeded("The page could not be opened.", await NodeTools.RunScriptAsync(script, browser, address));
            return JsonSerializer.Deserialize<Dictionary<string, JsonElement>>(run.Output)!;
        }
        finally
        {
            await service.DisposeAsync();
        }
    }
}
