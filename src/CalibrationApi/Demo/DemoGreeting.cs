using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace CalibrationApi.Demo;

/// <summary>Tells a newcomer what to try, with the address the service really listens on.</summary>
internal static class DemoGreeting
{
    public static void PrintOnStart(WebApplication app) => app.Lifetime.ApplicationStarted.Register(() =>
    {
        var address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()?.Addresses.FirstOrDefault()
            ?? "http://localhost:5000";
        Console.WriteLine($"""

            Try it from the top folder of the repository:
              curl --json @demo-data/catch-plan.json  {address}/v1/calculations/catch-plan
              curl --json @demo-data/catch-test.json  {address}/v1/calculations/catch-test
              curl --json @demo-data/meter-speed.json {address}/v1/calculations/meter-speed
            Reference page: {address}/reference   Contract: {address}/openapi/v1.json

            """);
    });
}
