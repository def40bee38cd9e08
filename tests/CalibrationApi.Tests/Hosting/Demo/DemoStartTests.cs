using System.Globalization;
using CalibrationApi.Testing;

namespace CalibrationApi.Tests.Hosting.Demo;

/// <summary>Invented data never mixes with other data.</summary>
public sealed class DemoStartTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calibration-demo-");

    private string Database => Path.Combine(folder.FullName, "some.db");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public async Task Start_OnADatabaseWithOtherData_EndsWithASentence()
    {
        await StoreAsync("/v1/products", """{ "name": "oats" }""");

        var (exitCode, errors) = await StartDemoAsync();

        Assert.Equal(1, exitCode);
        Assert.Equal(
            $"Refusing to start: --demo would mix invented data into a database that holds other data ({Database}). Set Calibration__Database to another file, or start without --demo.",
            errors.TrimEnd()
        );
    }

    [Fact]
    public async Task Start_OnTheSeasonOfAnotherVersion_EndsWithASentence()
    {
        var (path, machine) = SeasonFile.Requests[0];
        await StoreAsync(
            path,
            string.Create(
                CultureInfo.InvariantCulture,
                $$"""{ "id": "{{SeasonFile.Id(machine)}}", "name": "as it was", "meters": [{ "position": "front", "coveredWidth": { "value": 9, "unit": "m" }, "elements": [{ "name": "roller" }] }] }"""
            )
        );

        var (exitCode, errors) = await StartDemoAsync();

        Assert.Equal(1, exitCode);
        Assert.Equal(
            $"Refusing to start: the database {Database} holds the invented season of another version. Delete that file and start again.",
            errors.TrimEnd()
        );
    }

    private async Task StoreAsync(string path, string body)
    {
        await using var service = ServiceProcess.Start("--urls", "http://127.0.0.1:0", "--Calibration:Database", Database);
        using var client = CheckedClient.Of(await service.ListeningAsync());
        using var content = new StringContent(
            body,
            System.Text.Encoding.UTF8,
            new System.Net.Http.Headers.MediaTypeHeaderValue("application/json")
        );
        using var response = await client.PostAsync(new Uri(path, UriKind.Relative), content);
        Assert.True(response.IsSuccessStatusCode, await response.Content.ReadAsStringAsync());
    }

    private async Task<(int ExitCode, string Errors)> StartDemoAsync()
    {
        await using var service = ServiceProcess.Start("--demo", "--urls", "http://127.0.0.1:0", "--Calibration:Database", Database);
        return await service.EndAsync();
    }
}
