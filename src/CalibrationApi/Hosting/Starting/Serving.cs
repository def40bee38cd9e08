using Microsoft.AspNetCore.Connections;

namespace CalibrationApi.Hosting.Starting;

/// <summary>Serves until stopped.</summary>
internal static class Serving
{
    /// <summary>Serves; returns the exit code of the program.</summary>
    /// <param name="app">The service.</param>
    /// <param name="season">Serves with something loaded first, and says false when it refuses to; null serves what there is.</param>
    public static async Task<int> RunAsync(WebApplication app, Func<WebApplication, Task<bool>>? season)
    {
        try
        {
            if (season is not null)
                return await season(app) ? 0 : 1;
            await app.RunAsync();
            return 0;
        }
        catch (IOException failure) when (failure.InnerException is AddressInUseException)
        {
            await Console.Error.WriteLineAsync(
                $"Refusing to start: something else listens there already. {failure.Message} Stop it, or choose another port with ASPNETCORE_URLS=http://localhost:5050."
            );
            return 1;
        }
    }
}
