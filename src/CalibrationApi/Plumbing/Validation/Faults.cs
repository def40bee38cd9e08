using System.Globalization;
using CalibrationApi.Plumbing.Http;
using FluentValidation.Results;

namespace CalibrationApi.Plumbing.Validation;

/// <summary>What is wrong with a request; nothing is made while nothing is.</summary>
/// <param name="clock">For rules about times.</param>
internal struct Faults(TimeProvider clock)
{
    private List<ValidationFailure>? found;

    public readonly TimeProvider Clock => clock;

    public readonly int Count => found?.Count ?? 0;

    /// <summary>No further part is looked at once there are more faults than an answer tells.</summary>
    public readonly bool AreEnough => Count >= ProblemResult.MostErrors;

    public readonly ValidationResult Result => found is null ? new() : new() { Errors = found };

    public void Add(Place place, ErrorCode code, string detail, string below = "") =>
        (found ??= []).Add(Failure(place.Path + below, code, detail));

    /// <summary>A fault, with its code beside it: that of the library is a text.</summary>
    public static ValidationFailure Failure(string path, ErrorCode code, string detail) => new(path, detail) { CustomState = code };

    /// <summary>The code of a fault.</summary>
    public static ErrorCode CodeOf(ValidationFailure fault) => (ErrorCode)fault.CustomState;

    public void Add(List<ValidationFailure> more)
    {
        if (more.Count > 0)
            (found ??= []).AddRange(more);
    }

    /// <summary>Says of faults of a part where in the whole it is.</summary>
    /// <param name="first">Number of the first of them.</param>
    /// <param name="place">The place of the part.</param>
    public readonly void Place(int first, Place place)
    {
        for (var i = first; i < Count; i++)
            found![i].PropertyName = found[i].PropertyName is { Length: > 0 } path ? $"{place.Path}.{path}" : place.Path;
    }
}

/// <summary>A member, or an item of one.</summary>
/// <param name="Member">Its name in C#.</param>
/// <param name="Item">Number of the item; negative for the member itself.</param>
internal readonly record struct Place(string Member, int Item = -1)
{
    public string Path => Item < 0 ? Member : string.Create(CultureInfo.InvariantCulture, $"{Member}[{Item}]");
}
