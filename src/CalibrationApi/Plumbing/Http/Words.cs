using System.Reflection;
using System.Runtime.CompilerServices;
using System.Runtime.Serialization;
using System.Text;

namespace CalibrationApi.Plumbing.Http;

/// <summary>Kebab-case words of the contract for the names of an enumeration, in both directions.</summary>
/// <remarks>
/// Words are bound as strings and checked by the validator, so that an unknown word is told apart from a wrong type.
/// Enumerations count from zero. A dictionary with an enumeration as its key would be compiled anew for each of them, which
/// is a good part of a start.
/// </remarks>
internal static class Words
{
    public static string Of<T>(T value)
        where T : struct, Enum => Table<T>.Words.InOrder[Unsafe.BitCast<T, int>(value)];

    /// <summary>The value behind a word that passed validation; the fallback for an absent one.</summary>
    public static T Read<T>(string? word, T fallback)
        where T : struct, Enum => Read<T>(word) ?? fallback;

    public static T? Read<T>(string? word)
        where T : struct, Enum => word is null ? null : Unsafe.BitCast<int, T>(Table<T>.Words.Positions[word]);

    public static IReadOnlyList<string> All<T>()
        where T : struct, Enum => Table<T>.Words.InOrder;

    /// <summary>The words of an enumeration that is known as a type only.</summary>
    public static IReadOnlyList<string> All(Type enumeration) =>
        Array.ConvertAll(Enum.GetNames(enumeration), name => Word(enumeration, name));

    private static class Table<T>
        where T : struct, Enum
    {
        public static readonly WordList Words = new(typeof(T));
    }

    private sealed class WordList
    {
        public WordList(Type enumeration)
        {
            InOrder = [.. All(enumeration)];
            for (var i = 0; i < InOrder.Length; i++)
                Positions.Add(InOrder[i], i);
        }

        public string[] InOrder { get; }

        public Dictionary<string, int> Positions { get; } = new(StringComparer.Ordinal);
    }

    // A word of an open standard, such as the code of a region, stands beside the name.
    private static string Word(Type enumeration, string name) =>
        enumeration.GetField(name)!.GetCustomAttribute<EnumMemberAttribute>()?.Value ?? Kebab(name);

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
