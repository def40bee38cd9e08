using System.Globalization;

namespace CalibrationApi.Plumbing.Settings;

/// <summary>One setting of the section, told once: what it is called, what it may be and what it is when nobody says.</summary>
/// <param name="Name">Its name inside the section, with a colon between group and setting.</param>
/// <param name="Default">What it is when it is not set, for people.</param>
/// <param name="Range">What it may be, for people.</param>
/// <param name="Meaning">What it does, for people.</param>
internal abstract record Setting(string Name, string Default, string Range, string Meaning)
{
    /// <summary>The section of the configuration that holds all of them.</summary>
    public const string Section = "Calibration";

    /// <summary>Its name in the environment.</summary>
    public string Variable => VariableOf(Name);

    /// <summary>The name in the environment of something in the section.</summary>
    public static string VariableOf(string name) => $"{Section}__{name.Replace(":", "__", StringComparison.Ordinal)}";

    protected static string? Text(IConfiguration section, string name) =>
        section[name] is { } text && !string.IsNullOrWhiteSpace(text) ? text.Trim() : null;
}

/// <summary>A whole number between two bounds, both allowed.</summary>
internal sealed record WholeSetting(string Name, int Usual, int Least, int Most, string Meaning)
    : Setting(Name, Shown(Usual), $"{Shown(Least)} to {Shown(Most)}", Meaning)
{
    public int Read(IConfiguration section, ICollection<string> faults)
    {
        if (Text(section, Name) is not { } text)
            return Usual;
        if (
            int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value)
            && value >= Least
            && value <= Most
        )
            return value;
        faults.Add(
            $"{Variable} is '{text}'. It has to be a whole number from {Shown(Least)} to {Shown(Most)}, for example {Variable}={Shown(Usual)}."
        );
        return Usual;
    }

    private static string Shown(int number) => number.ToString(CultureInfo.InvariantCulture);
}

/// <summary>A text of any kind.</summary>
internal sealed record TextSetting(string Name, string Default, string Range, string Meaning) : Setting(Name, Default, Range, Meaning)
{
    public string? Read(IConfiguration section) => Text(section, Name);
}

/// <summary>One of a few words.</summary>
internal sealed record WordSetting(string Name, string Default, string[] Words, string Meaning)
    : Setting(Name, Default, string.Join(" or ", Words), Meaning)
{
    public string? Read(IConfiguration section, ICollection<string> faults)
    {
        if (Text(section, Name) is not { } text)
            return null;
        if (Words.Contains(text))
            return text;
        faults.Add($"{Variable} is '{text}'. It has to be {Range}, for example {Variable}={Words[0]}.");
        return null;
    }
}

/// <summary>Several values, separated by semicolons; none when it is not set.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Range">What each value may be.</param>
/// <param name="Example">Values that are allowed.</param>
/// <param name="Meaning">What it does.</param>
/// <param name="TryParse">Reads one value; false when it is wrong.</param>
internal sealed record ListSetting<T>(string Name, string Range, string Example, string Meaning, ListSetting<T>.Reading TryParse)
    : Setting(Name, "none", Range, Meaning)
{
    public delegate bool Reading(string text, out T value);

    public IReadOnlyList<T> Read(IConfiguration section, ICollection<string> faults)
    {
        var values = new List<T>();
        foreach (var text in (Text(section, Name) ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (TryParse(text, out var value))
                values.Add(value);
            else
                faults.Add($"{Variable} holds '{text}'. Give {Range}, separated by semicolons, for example {Variable}={Example}.");
        }

        return values;
    }
}
