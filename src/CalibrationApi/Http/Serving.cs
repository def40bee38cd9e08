using CalibrationApi.Demo;
using Microsoft.AspNetCore.Connections;

namespace CalibrationApi.Http;

/// <summary>Serves until stopped.</summary>
internal static class Serving
{
    /// <summary>Serves, with the invented season where asked for; returns the exit code of the program.</summary>
    public static async Task<int> RunAsync(WebApplication app, bool isDemo)
    {
        try
        {
            if (isDemo)
                return await DemoSeason.RunAsync(app) ? 0 : 1;
            await app.RunAsync();
            return 0;
        }
        catch (IOException failure) when (failure.InnerException is AddressInUseException)
        {
            await Console.Error.WriteLineAsync($"Refusing to start: something else listens there already. {failure.Message} Stop it, or choose another port with ASPNETCORE_URLS=http://localhost:5050.");
            return 1;
        }
    }
}
