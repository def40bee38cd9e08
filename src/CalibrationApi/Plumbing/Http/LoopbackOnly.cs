using System.Net;

namespace CalibrationApi.Plumbing.Http;

/// <summary>Without keys, whoever reaches the service may use it; so without them it only listens to its own machine.</summary>
internal static class LoopbackOnly
{
    private static readonly string[] AddressSettings = ["urls", "http_ports", "https_ports"];

    /// <summary>Why the service must not start on the configured addresses without a key; null when it may.</summary>
    public static string? Refusal(IConfiguration configuration)
    {
        var endpoints = configuration.GetSection("Kestrel:Endpoints").GetChildren().Select(endpoint => endpoint["Url"]);
        var open = AddressSettings
            .SelectMany(name =>
                (configuration[name] ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            )
            .Concat(endpoints.OfType<string>())
            .FirstOrDefault(address => !IsLoopback(address));
        return open is null
            ? null
            : $"Refusing to start: '{open}' can be reached from other machines, and there is no key with the scope admin. Make one (dotnet run --project src/CalibrationApi -- keys create --name first --scopes operator,admin), or listen on http://localhost:5000 or another loopback address (ASPNETCORE_URLS).";
    }

    // Read as the server reads it: it takes every host that is neither localhost nor an IP address for all addresses of
    // the machine. A bare port number, as in http_ports, means all of them too.
    private static bool IsLoopback(string address)
    {
        if (!address.Contains("://", StringComparison.Ordinal))
            return false;
        BindingAddress binding;
        try
        {
            binding = BindingAddress.Parse(address);
        }
        catch (FormatException)
        {
            return false;
        }

        return binding.Host.Equals("localhost", StringComparison.OrdinalIgnoreCase)
            || (IPAddress.TryParse(binding.Host.Trim('[', ']'), out var ip) && IPAddress.IsLoopback(ip));
    }
}
