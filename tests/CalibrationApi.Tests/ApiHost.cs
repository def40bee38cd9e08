using System.Globalization;
using CalibrationApi.Testing;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.Swagger;

namespace CalibrationApi.Tests;

/// <summary>
/// The real service with its whole pipeline over a database file of its own; every answer is checked against the contract.
/// </summary>
/// <remarks>One instance serves all tests that only ask questions.</remarks>
internal class ApiHost : WebApplicationFactory<Program>
{
    private static readonly Lazy<(ApiHost Host, ContractDocument Contract)> Shared = new(() =>
    {
        var host = new ApiHost();
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        host.Services.GetRequiredService<ISwaggerProvider>().GetSwagger("v1").SerializeAsV31(new OpenApiJsonWriter(text));
        return (host, ContractDocument.Parse(text.ToString()));
    });

    private static readonly Lazy<HttpClient> SharedClient = new(() => Shared.Value.Host.CreateCheckedClient());

    private readonly string folder = Directory.CreateTempSubdirectory("calibration-tests-").FullName;

    public static HttpClient Client => SharedClient.Value;

    /// <summary>What the service says of itself.</summary>
    public static ContractDocument Contract => Shared.Value.Contract;

    /// <summary>The services of the shared host.</summary>
    public static IServiceProvider SharedServices => Shared.Value.Host.Services;

    /// <summary>A client that fails on every answer that is not what the contract says.</summary>
    /// <param name="further">Handlers between the check and the service.</param>
    public HttpClient CreateCheckedClient(params DelegatingHandler[] further) =>
        CreateDefaultClient([new ContractCheckingHandler(Shared.Value.Contract), .. further]);

    // What a user meets, not what a developer meets: no developer page, no scope checks.
    protected override void ConfigureWebHost(IWebHostBuilder builder) =>
        builder
            .UseEnvironment("Production")
            // A line for every request of every test would bury what tests have to say.
            .UseSetting("Calibration:Log", "text")
            // For tests over a real connection: any free port. Told here, because the factory sets one while the server may have started.
            .UseSetting("urls", "http://127.0.0.1:0")
            .UseSetting("Calibration:Database", Path.Combine(folder, "calibration.db"));

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
    }
}
