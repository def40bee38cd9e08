using System.Collections.Frozen;
using System.Text;

namespace CalibrationApi.Http;

/// <summary>Kebab-case words of the contract for the names of an enumeration, in both directions.</summary>
/// <remarks>Words are bound as strings and checked by the validator, so that an unknown word is told apart from a wrong type.</remarks>
internal static class Words
{
    public static string Of<T>(T value)
        where T : struct, Enum => Table<T>.ToWord[value];

    /// <summary>The value behind a word that passed validation; the fallback for an absent one.</summary>
    public static T Read<T>(string? word, T fallback)
        where T : struct, Enum => word is null ? fallback : Table<T>.FromWord[word];

    public static T? Read<T>(string? word)
        where T : struct, Enum => word is null ? null : Table<T>.FromWord[word];

    public static IReadOnlyList<string> All<T>()
        where T : struct, Enum => Table<T>.Words;

    private static class Table<T>
        where T : struct, Enum
    {
        public static readonly FrozenDictionary<T, string> ToWord = Enum.GetValues<T>().ToFrozenDictionary(value => value, value => Kebab(value.ToString()));
        public static readonly FrozenDictionary<string, T> FromWord = ToWord.ToFrozenDictionary(pair => pair.Value, pair => pair.Key, StringComparer.Ordinal);
        public static readonly string[] Words = [.. Enum.GetValues<T>().Select(value => ToWord[value])];
    }

    // FreeFlowing becomes free-flowing; a roman numeral such as III, a name of its standard, stays.
    private static string Kebab(string name)
    {
        if (name.All(char.IsUpper))
            return name;
        var word = new StringBuilder(name.Length + 4);
        foreach (var letter in name)
        {
            if (char.IsUpper(letter) && word.Length > 0)
                word.Append('-');
            word.Append(char.ToLowerInvariant(letter));
        }

        return word.ToString();
    }
}
