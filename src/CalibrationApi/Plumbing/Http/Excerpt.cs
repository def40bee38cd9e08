namespace CalibrationApi.Plumbing.Http;

/// <summary>What a sender wrote is repeated only in part: it may be long.</summary>
internal static class Excerpt
{
    /// <summary>The beginning of a text, never half of a surrogate pair.</summary>
    public static string Of(string text, int most)
    {
        if (text.Length <= most)
            return text;
        var end = char.IsHighSurrogate(text[most - 1]) ? most - 1 : most;
        return text[..end] + "…";
    }
}
