using Microsoft.Kiota.Abstractions.Helpers;

namespace CalibrationApi.Client.Models;

/// <summary>
/// The words of the contract's closed lists. The generator makes one type for each place, so equal words have unequal types.
/// </summary>
internal static class Word
{
    /// <summary>A word of the contract as a value of a list.</summary>
    /// <exception cref="NotSupportedException">The word is newer than this client. Leaving it out would change the meaning.</exception>
    public static T? Read<T>(string? word)
        where T : struct, Enum
    {
        if (word is null)
            return null;
        foreach (var value in Enum.GetValues<T>())
        {
            if (Write(value) == word)
                return value;
        }

        throw new NotSupportedException($"This version of the client does not know '{word}'. Update the package.");
    }

    /// <summary>The word of the contract.</summary>
    public static string Write<T>(T value)
        where T : struct, Enum => EnumHelpers.GetEnumStringValue(value)!;

    /// <summary>The same word in another list.</summary>
    public static TTo? Same<TFrom, TTo>(TFrom? value)
        where TFrom : struct, Enum
        where TTo : struct, Enum => value is { } known ? Read<TTo>(Write(known)) : null;
}
