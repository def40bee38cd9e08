using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Members;

namespace CalibrationApi.Plumbing.Quantities;

/// <summary>A price per mass.</summary>
public sealed class Price
{
    /// <summary>Amount of money for one <c>per</c>.</summary>
    [Needed, Number(0, 1_000_000_000)]
    public double? Value { get; set; }

    /// <summary>ISO 4217 currency code, for example EUR.</summary>
    [Needed, CurrencyCode]
    public string? Currency { get; set; }

    /// <summary>The mass that the amount buys, as a unit of mass.</summary>
    [Needed, Word(typeof(UnitWords), nameof(UnitWords.OfMass))]
    public string? Per { get; set; }

    /// <summary>Money for one kilogram; only for a price that passed validation.</summary>
    internal double PerKilogram() => Value!.Value / UnitTable.Get(Per!).Canonical(1);
}

/// <summary>An amount of money.</summary>
public sealed class Money
{
    /// <summary>The amount.</summary>
    public required double Value { get; init; }

    /// <summary>ISO 4217 currency code.</summary>
    public required string Currency { get; init; }
}

/// <summary>An amount of money for one unit of area or mass.</summary>
public class CostPerUnit
{
    /// <summary>The amount.</summary>
    public required double Value { get; init; }

    /// <summary>ISO 4217 currency code.</summary>
    public required string Currency { get; init; }

    /// <summary>The unit that it is for, one of those in <c>GET /v1/units</c>.</summary>
    public required string Per { get; init; }
}

/// <summary>The code of a currency.</summary>
internal sealed class CurrencyCodeAttribute : TextRuleAttribute
{
    public override string Pattern => "^[A-Z]{3}$";

    public override (ErrorCode Code, string Detail)? Fault(string text, TimeProvider clock) =>
        text.Length == 3 && text.All(char.IsAsciiLetterUpper)
            ? null
            : (ErrorCodes.TextWrong, "Give the three capital letters of ISO 4217, for example EUR or CAD.");
}
