using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Contract;

namespace CalibrationApi.Plumbing.Quantities;

/// <summary>Something the engine noticed.</summary>
public sealed class FindingAnswer
{
    /// <summary>Stable code. Which ones can come stands at the list that holds it; <c>GET /v1/codes</c> explains each.</summary>
    public required string Code { get; init; }

    /// <summary>
    /// How much it matters: <c>note</c> is worth knowing, <c>warning</c> wants a look, <c>stop</c> forbids seeding on this answer.
    /// </summary>
    [KnownWords(typeof(Severity))]
    public required string Severity { get; init; }

    /// <summary>A sentence that can be shown as it is.</summary>
    public required string Detail { get; init; }

    /// <summary>What the sentence is made of, for showing it in another language.</summary>
    public SentenceParts? Parts { get; init; }

    /// <summary>The meter it is about, where the question held several.</summary>
    public string? Meter { get; init; }
}

/// <summary>A value that was used although the question did not state it.</summary>
public sealed class AssumptionAnswer
{
    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>
    /// The member that overrides it, as a JSON pointer into the question (of a stored test, into its resolved question). Absent where
    /// nothing overrides it. Without a <c>value</c>, <c>number</c>, <c>word</c> or <c>flag</c> here, what goes there has more than one
    /// part, or was found from the question.
    /// </summary>
    public string? Pointer { get; init; }

    /// <summary>The value, where it is a quantity.</summary>
    public AnyQuantity? Value { get; init; }

    /// <summary>The value, where it is a number without a unit.</summary>
    public double? Number { get; init; }

    /// <summary>The value, where it is a word.</summary>
    public string? Word { get; init; }

    /// <summary>The value, where it is yes or no.</summary>
    public bool? Flag { get; init; }

    /// <summary>Published source, common practice or judgement, in words.</summary>
    public required string Origin { get; init; }

    /// <summary>The meter it is about, where the question held several.</summary>
    public string? Meter { get; init; }
}

/// <summary>Something that can hurt a person.</summary>
public sealed class CautionAnswer
{
    /// <summary>Stable code. Which ones can come stands at the list that holds it; <c>GET /v1/codes</c> explains each.</summary>
    public required string Code { get; init; }

    /// <summary>A sentence that should be shown as it is.</summary>
    public required string Detail { get; init; }

    /// <summary>What the sentence is made of, for showing it in another language.</summary>
    public SentenceParts? Parts { get; init; }
}

/// <summary>What a sentence is made of. Absent where the sentence holds no values: it is its own template then.</summary>
[NotInTables]
public sealed class SentenceParts
{
    /// <summary>
    /// The sentence with the name of each value in braces in its place. With the texts of the values filled in it is the sentence again.
    /// Look up your translation by it.
    /// </summary>
    public required string Template { get; init; }

    /// <summary>The values, each name once.</summary>
    public required SentenceValue[] Values { get; init; }
}

/// <summary>A value in a sentence.</summary>
public sealed class SentenceValue
{
    /// <summary>Its name in the template.</summary>
    public required string Name { get; init; }

    /// <summary>As the sentence writes it: rounded, with its unit; or a word.</summary>
    public required string Text { get; init; }

    /// <summary>Where it is a quantity or a number, that number, not rounded for reading.</summary>
    public double? Value { get; init; }

    /// <summary>The unit of a quantity.</summary>
    public string? Unit { get; init; }
}
