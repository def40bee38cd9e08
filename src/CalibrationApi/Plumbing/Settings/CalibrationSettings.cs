using System.Net;

namespace CalibrationApi.Plumbing.Settings;

/// <summary>Everything in the section <c>Calibration</c>, read and checked once, when the service starts.</summary>
internal sealed record CalibrationSettings
{
    private const string Json = "json";
    private const string Text = "text";

    private static readonly TextSetting DatabaseFile = new(
        "Database",
        "`.calibration/calibration.db`; with `--demo` `.calibration/demo.db`",
        "a path",
        "the SQLite file, created when missing"
    );
    private static readonly ListSetting<IPNetwork> ProxyNetworks = new(
        "Proxies",
        "addresses or networks",
        "10.0.0.5;10.1.0.0/16",
        "proxies whose X-Forwarded-For and X-Forwarded-Proto are believed; those of anybody else are ignored",
        TryReadNetwork
    );
    private static readonly ListSetting<string> Origins = new(
        "AllowedOrigins",
        "origins as browsers write them (scheme, host and port only, in lower case)",
        "https://app.example;http://localhost:8080",
        "origins whose pages may call the service from a browser (CORS)",
        TryReadOrigin
    );
    private static readonly WordSetting LogFormat = new(
        "Log",
        "`json`; `text` with `--demo` and in development",
        [Json, Text],
        "json: one object a line, one line a request; text: for people"
    );
    private static readonly WholeSetting RefusedLines = new(
        "RefusedRequestsLoggedPerMinute",
        120,
        0,
        100_000,
        "lines a minute for requests answered 4xx, and as many for those that failed (5xx); more are only counted, in one line"
    );
    private static readonly WholeSetting LeastDisk = new(
        "LeastFreeDiskMiB",
        256,
        0,
        1_000_000,
        "free space beside the database below which the service is not ready"
    );

    /// <summary>All settings of the section, in the order of the guide.</summary>
    public static IReadOnlyList<Setting> All { get; } =
    [DatabaseFile, Origins, ProxyNetworks, LogFormat, RefusedLines, LeastDisk, .. LimitSettings.All];

    /// <summary>Path of the database; null for the usual one.</summary>
    public required string? Database { get; init; }

    /// <summary>Origins whose pages may call.</summary>
    public required IReadOnlyList<string> AllowedOrigins { get; init; }

    /// <summary>Proxies that are believed.</summary>
    public required IReadOnlyList<IPNetwork> Proxies { get; init; }

    /// <summary>The log is made for programs, not for a person at a terminal.</summary>
    public required bool LogsJson { get; init; }

    /// <summary>Lines a minute for requests that were refused.</summary>
    public required int RefusedRequestsLoggedPerMinute { get; init; }

    /// <summary>Free space beside the database that the service needs to be ready, in bytes.</summary>
    public required long LeastFreeDiskBytes { get; init; }

    /// <summary>How much anybody may ask of the service.</summary>
    public required LimitSettings Limits { get; init; }

    /// <summary>Reads the section.</summary>
    /// <param name="configuration">Of the service.</param>
    /// <param name="isAtATerminal">A person started it to look at it, by hand.</param>
    /// <param name="faults">Takes a sentence for each thing that is wrong; the service must not start then.</param>
    public static CalibrationSettings Read(IConfiguration configuration, bool isAtATerminal, ICollection<string> faults)
    {
        var section = configuration.GetSection(Setting.Section);
        foreach (
            var (name, value) in section.AsEnumerable(makePathsRelative: true).Where(one => one.Value is not null && one.Key.Length > 0)
        )
        {
            // A group has no value of its own; some sources give it an empty one.
            var isGroup = value!.Length == 0 && section.GetSection(name).GetChildren().Any();
            if (!isGroup && !All.Any(setting => setting.Name.Equals(name, StringComparison.OrdinalIgnoreCase)))
                faults.Add(
                    $"{Setting.VariableOf(name)} is no setting of this service. Correct its name or remove it; there are: {string.Join(", ", All.Select(setting => setting.Variable))}."
                );
        }

        return new CalibrationSettings
        {
            Database = DatabaseFile.Read(section),
            AllowedOrigins = Origins.Read(section, faults),
            Proxies = ProxyNetworks.Read(section, faults),
            LogsJson = (LogFormat.Read(section, faults) ?? (isAtATerminal ? Text : Json)) == Json,
            RefusedRequestsLoggedPerMinute = RefusedLines.Read(section, faults),
            LeastFreeDiskBytes = LeastDisk.Read(section, faults) * 1024L * 1024L,
            Limits = LimitSettings.Read(section, faults),
        };
    }

    // A network of all addresses would believe everybody, which is what the setting is there to prevent.
    private static bool TryReadNetwork(string text, out IPNetwork network)
    {
        if (!IPAddress.TryParse(text, out var address))
            return IPNetwork.TryParse(text, out network) && network.PrefixLength > 0;
        network = new IPNetwork(address, address.GetAddressBytes().Length * 8);
        return true;
    }

    private static bool TryReadOrigin(string text, out string origin)
    {
        origin = text;
        return IsOrigin(text);
    }

    /// <summary>Whether a text is an origin as a browser writes it in its Origin header: the two are compared letter by letter.</summary>
    private static bool IsOrigin(string text) =>
        Uri.TryCreate(text, UriKind.Absolute, out var uri)
        && (uri.Scheme == Uri.UriSchemeHttp || uri.Scheme == Uri.UriSchemeHttps)
        && uri.IdnHost.All(char.IsAscii)
        && !uri.IdnHost.Contains('*', StringComparison.Ordinal)
        && text
            == $"{uri.Scheme}://{(uri.HostNameType == UriHostNameType.IPv6 ? uri.Host : uri.IdnHost)}{(uri.IsDefaultPort ? "" : $":{uri.Port}")}";
}
