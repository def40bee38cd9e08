using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;

namespace CalibrationApi.Tests;

/// <summary>The real service with its whole pipeline, in memory. One instance serves all tests that only ask questions.</summary>
internal sealed class ApiHost : WebApplicationFactory<Program>
{
    private static readonly Lazy<HttpClient> SharedClient = new(() => new ApiHost().CreateClient());

    public static HttpClient Client => SharedClient.Value;

    // What a user meets, not what a developer meets: no developer page, no scope checks.
    protected override void ConfigureWebHost(IWebHostBuilder builder) => builder.UseEnvironment("Production");
}
