using CalibrationApi.Hosting.Demo;

namespace CalibrationApi.Hosting.Starting;

/// <summary>
/// What may stand behind the name of the program. Anything else ends the start: a slip must not start the real service on the real
/// database.
/// </summary>
internal static class StartArguments
{
    private const string Usage = $"""
        Serves the computation behind calibrating machines that meter seed, fertilizer and other dry products.

          dotnet run --project src/CalibrationApi -- [switches]

          --urls <addresses>             where to listen, for example http://localhost:5000
          {DemoSeason.Switch}                         with an invented season loaded, on a database of its own
          --Calibration:<name> <value>   a setting; without one, the variable Calibration__<name> counts
          --help                         this page

          keys create|list|revoke        makes, lists and revokes keys; keys --help tells more

        The settings stand in src/CalibrationApi/README.md. The service tells the rest itself: open its address in a browser.
        """;

    // What the framework takes beside the settings of this service.
    private static readonly string[] Switches =
    [
        "urls",
        "http_ports",
        "https_ports",
        "environment",
        "contentRoot",
        "applicationName",
        "AllowedHosts",
    ];

    private static readonly string[] Beginnings = ["Calibration:", "Logging:", "Kestrel:", "OTEL_"];

    /// <summary>Ends the program when help is asked for or an argument is not known; null when it may start.</summary>
    /// <returns>The exit code.</returns>
    public static int? Answer(IReadOnlyList<string> arguments, TextWriter output, TextWriter errors)
    {
        if (arguments.Any(argument => argument is "--help" or "-h" or "-?"))
        {
            output.WriteLine(Usage);
            return 0;
        }

        if (Unknown(arguments) is not { } unknown)
            return null;
        errors.WriteLine($"Refusing to start: {unknown} --help lists what there is.");
        return 1;
    }

    private static string? Unknown(IReadOnlyList<string> arguments)
    {
        for (var i = 0; i < arguments.Count; i++)
        {
            var argument = arguments[i];
            if (argument == DemoSeason.Switch)
                continue;
            if (!argument.StartsWith("--", StringComparison.Ordinal))
                return $"'{argument}' is no switch and belongs to none.";
            var (name, hasValue) = argument.IndexOf('=', StringComparison.Ordinal) is > 0 and var at
                ? (argument[2..at], true)
                : (argument[2..], false);
            if (!IsKnown(name))
                return $"there is no switch '--{name}'.{Nearest(name)}";
            if (hasValue)
                continue;
            if (++i == arguments.Count || arguments[i].StartsWith("--", StringComparison.Ordinal))
                return $"'--{name}' needs a value behind it.";
        }

        return null;
    }

    // A whole section may be named too, as those who start the service by a program do.
    private static bool IsKnown(string name) =>
        Switches.Contains(name, StringComparer.OrdinalIgnoreCase)
        || Beginnings.Any(beginning =>
            name.Equals(beginning.TrimEnd(':'), StringComparison.OrdinalIgnoreCase)
            || (name.Length > beginning.Length && name.StartsWith(beginning, StringComparison.OrdinalIgnoreCase))
        );

    private static string Nearest(string name)
    {
        const int MostSlips = 2;
        var nearest = Switches.Append(DemoSeason.Switch[2..]).MinBy(known => Slips(name, known))!;
        return Slips(name, nearest) <= MostSlips ? $" Was --{nearest} meant?" : "";
    }

    // Letters to change, add or leave out (Levenshtein).
    private static int Slips(string from, string to)
    {
        int[] row = [.. Enumerable.Range(0, to.Length + 1)];
        for (var i = 1; i <= from.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= to.Length; j++)
            {
                var changed = diagonal + (char.ToUpperInvariant(from[i - 1]) == char.ToUpperInvariant(to[j - 1]) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(changed, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[^1];
    }
}
