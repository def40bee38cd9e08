using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace CalibrationApi.Plumbing.Http;

/// <summary>The text of a key: <c>calk_</c>, its id, a secret of 256 random bits, and a checksum.</summary>
/// <remarks>
/// The checksum tells a cut or mistyped text apart before the database is asked, and lets a scanner of sources know a key
/// when it meets one. It keeps nothing safe: that is the secret's part, of which only the hash is stored.
/// </remarks>
/// <param name="Id">Id of the key.</param>
/// <param name="SecretHash">SHA-256 of the secret.</param>
internal sealed partial record KeyText(string Id, byte[] SecretHash)
{
    /// <summary>What every key begins with.</summary>
    public const string Prefix = "calk_";

    /// <summary>How a key looks, as a regular expression.</summary>
    public const string Pattern = "^calk_[a-z2-7]{26}_[a-z2-7]{59}$";

    private const int IdBytes = 16;
    private const int SecretBytes = 32;
    private const int ChecksumBytes = 4;
    private const string Alphabet = "abcdefghijklmnopqrstuvwxyz234567";

    private static readonly int IdLength = Base32Length(IdBytes);
    private static readonly int SecretLength = Base32Length(SecretBytes);
    private static readonly int Length = Prefix.Length + IdLength + 1 + SecretLength + Base32Length(ChecksumBytes);

    /// <summary>A new secret for a key: the text to show once, and what to store.</summary>
    public static (string Text, KeyText Key) Make(string id)
    {
        Span<byte> secret = stackalloc byte[SecretBytes];
        RandomNumberGenerator.Fill(secret);
        var text = Start(id) + "_" + Base32(secret);
        return (text + Checksum(text), new KeyText(id, SHA256.HashData(secret)));
    }

    /// <summary>What the text of a key begins with. It is no secret, and says which key a text belongs to.</summary>
    public static string Start(string id) => Prefix + Base32(Guid.ParseExact(id, "D").ToByteArray(bigEndian: true));

    /// <summary>Reads a text; null when it is not a whole key.</summary>
    public static KeyText? Read(string text)
    {
        if (text.Length != Length || !text.StartsWith(Prefix, StringComparison.Ordinal) || text[Prefix.Length + IdLength] != '_')
            return null;
        var checkedPart = text[..(Prefix.Length + IdLength + 1 + SecretLength)];
        if (
            !text.EndsWith(Checksum(checkedPart), StringComparison.Ordinal)
            || FromBase32(text.AsSpan(Prefix.Length, IdLength), IdBytes) is not { } id
            || FromBase32(checkedPart.AsSpan(Prefix.Length + IdLength + 1), SecretBytes) is not { } secret
        )
            return null;
        return new KeyText(new Guid(id, bigEndian: true).ToString(), SHA256.HashData(secret));
    }

    /// <summary>Whether a text holds something that begins as a key does.</summary>
    public static bool IsIn(string? text) => text?.Contains(Prefix, StringComparison.OrdinalIgnoreCase) == true;

    /// <summary>A text without what may be a key in it, be it cut or mistyped; only its beginning is left.</summary>
    public static string? Hidden(string? text) => IsIn(text) ? AnyKey().Replace(text!, "$1") : text;

    /// <summary>Whether a stored hash is that of this key's secret. Takes as long whatever it finds.</summary>
    public bool Fits(byte[] storedHash) => CryptographicOperations.FixedTimeEquals(storedHash, SecretHash);

    [GeneratedRegex("(calk_)[0-9a-z_-]+", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex AnyKey();

    private static string Checksum(string text) => Base32(SHA256.HashData(Encoding.ASCII.GetBytes(text)).AsSpan(0, ChecksumBytes));

    private static int Base32Length(int bytes) => ((bytes * 8) + 4) / 5;

    // RFC 4648 section 6 in lower case and without padding.
    private static string Base32(ReadOnlySpan<byte> bytes)
    {
        var text = new StringBuilder(Base32Length(bytes.Length));
        int bits = 0,
            held = 0;
        foreach (var one in bytes)
        {
            (held, bits) = ((held << 8) | one, bits + 8);
            for (; bits >= 5; bits -= 5)
                text.Append(Alphabet[(held >> (bits - 5)) & 31]);
            held &= (1 << bits) - 1;
        }

        return bits == 0 ? text.ToString() : text.Append(Alphabet[(held << (5 - bits)) & 31]).ToString();
    }

    // Null for a letter that is none of the alphabet, and for left over bits that say something.
    private static byte[]? FromBase32(ReadOnlySpan<char> text, int length)
    {
        var bytes = new byte[length];
        int bits = 0,
            held = 0,
            filled = 0;
        foreach (var letter in text)
        {
            var value = Alphabet.IndexOf(letter, StringComparison.Ordinal);
            if (value < 0)
                return null;
            (held, bits) = ((held << 5) | value, bits + 5);
            if (bits < 8)
                continue;
            bits -= 8;
            bytes[filled++] = (byte)(held >> bits);
            held &= (1 << bits) - 1;
        }

        return held == 0 ? bytes : null;
    }
}
