using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using CalibrationApi.Storage;

namespace CalibrationApi.Plumbing.Keeping;

/// <summary>Cursors of lists: a position, signed together with the list and the filters it belongs to.</summary>
/// <remarks>A cursor that was altered, or that comes from another list, filter, workspace or database, is recognised and refused.</remarks>
internal sealed class Cursors(CalibrationDatabase database)
{
    private const int SignatureBytes = 16;

    // Cursors stand in tables too, and what begins with a hyphen is changed there, or a spreadsheet would take it for a formula.
    private const char Lead = 'c';

    public string Make(string scope, string position)
    {
        var text = Encoding.UTF8.GetBytes(position);
        return Lead + Base64Url.EncodeToString([.. Sign(scope, text), .. text]);
    }

    /// <summary>The position of a cursor; null when it is not one of this list.</summary>
    public string? Read(string scope, string cursor)
    {
        if (cursor.Length is 0 or > 500 || cursor[0] != Lead || !Base64Url.IsValid(cursor.AsSpan(1)))
            return null;
        var bytes = Base64Url.DecodeFromChars(cursor.AsSpan(1));
        if (bytes.Length <= SignatureBytes)
            return null;
        var text = bytes.AsSpan(SignatureBytes);
        return CryptographicOperations.FixedTimeEquals(bytes.AsSpan(0, SignatureBytes), Sign(scope, text))
            ? Encoding.UTF8.GetString(text)
            : null;
    }

    private byte[] Sign(string scope, ReadOnlySpan<byte> position)
    {
        var signed = new byte[Encoding.UTF8.GetByteCount(scope) + 1 + position.Length];
        var length = Encoding.UTF8.GetBytes(scope, signed);
        position.CopyTo(signed.AsSpan(length + 1));
        return HMACSHA256.HashData(database.CursorSecret, signed)[..SignatureBytes];
    }
}
