using System.Reflection;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Members;

/// <summary>What may be sent as a text, or as each text of a list.</summary>
internal abstract class TextRuleAttribute : MemberRuleAttribute
{
    /// <summary>A regular expression that every allowed text matches, for the contract.</summary>
    public virtual string? Pattern => null;

    /// <summary>A format of JSON Schema, for the contract.</summary>
    public virtual string? Format => null;

    /// <summary>What is wrong with a text; null when nothing is.</summary>
    /// <param name="text">The text.</param>
    /// <param name="clock">For texts that state a time.</param>
    public abstract (ErrorCode Code, string Detail)? Fault(string text, TimeProvider clock);
}

/// <summary>A text of limited length that is not blank.</summary>
internal sealed class TextAttribute(int most) : TextRuleAttribute
{
    public int Most => most;

    // Not blank.
    public override string Pattern => @"\S";

    public override (ErrorCode Code, string Detail)? Fault(string text, TimeProvider clock)
    {
        // The contract counts characters as JSON Schema does, by code points; a char of C# is half of some.
        if (text.Length > most && (text.Length > 2 * most || text.EnumerateRunes().Count() > most))
            return (ErrorCodes.TextTooLong, $"This text is longer than {most} characters. Shorten it.");
        // Where a text is handed on, many a reader ends it here; the database counts its length so.
        if (text.Contains('\0', StringComparison.Ordinal))
            return (ErrorCodes.TextWrong, "This text holds the character U+0000, which ends a text for many programs. Leave it out.");
        return string.IsNullOrWhiteSpace(text)
            ? (ErrorCodes.TextWrong, "This text is blank. Write something or leave the member out.")
            : null;
    }
}

/// <summary>One word of a closed list.</summary>
internal class WordAttribute : TextRuleAttribute
{
    /// <param name="enumeration">Its names are the words.</param>
    public WordAttribute(Type enumeration) => All = Words.All(enumeration);

    /// <param name="home">The class that has the list.</param>
    /// <param name="list">The static property that is the list.</param>
    public WordAttribute(Type home, string list) => All = Read(home, list);

    public IReadOnlyList<string> All { get; }

    public static IReadOnlyList<string> Read(Type home, string list) =>
        home.GetProperty(list, BindingFlags.Public | BindingFlags.Static)!.GetValue(null) switch
        {
            IEnumerable<Code> codes => [.. codes.Select(code => code.Word)],
            var words => (IReadOnlyList<string>)words!,
        };

    public override (ErrorCode Code, string Detail)? Fault(string text, TimeProvider clock) =>
        All.Contains(text)
            ? null
            : (ErrorCodes.WordUnknown, $"'{Excerpt.Of(text, 40)}' is not a word known here. Use one of: {string.Join(", ", All)}.");
}

/// <summary>Tells the contract a closed list that a rule between members enforces with codes of its own.</summary>
internal sealed class ToldWordAttribute(Type home, string list) : WordAttribute(home, list)
{
    public override (ErrorCode Code, string Detail)? Fault(string text, TimeProvider clock) => null;
}
