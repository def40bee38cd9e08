using Microsoft.AspNetCore.Connections;

namespace CalibrationApi.Http;

/// <summary>Somebody else listens where the service should; that is told in a sentence, not by a stack of calls.</summary>
internal static class TakenAddress
{
    /// <summary>Serves; false when it came to nothing.</summary>
    public static async Task<bool> ToldAsync(Func<Task<bool>> serve)
    {
        try
        {
            return await serve();
        }
        catch (IOException failure) when (failure.InnerException is AddressInUseException)
        {
            await Console.Error.WriteLineAsync($"Refusing to start: something else listens there already. {failure.Message} Stop it, or choose another port with ASPNETCORE_URLS=http://localhost:5050.");
            return false;
        }
    }
}
