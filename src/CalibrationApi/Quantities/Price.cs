using CalibrationApi.Engine.Quantities;
using CalibrationApi.Http;
using FluentValidation;

namespace CalibrationApi.Quantities;

/// <summary>A price per mass.</summary>
public sealed class Price
{
    /// <summary>Amount of money for one <c>per</c>.</summary>
    public double? Value { get; set; }

    /// <summary>ISO 4217 currency code, for example EUR.</summary>
    public string? Currency { get; set; }

    /// <summary>The mass that the amount buys, as a unit of mass.</summary>
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

internal sealed class PriceValidator : RequestValidator<Price>
{
    public PriceValidator()
    {
        RuleFor(price => price.Value).Needed();
        RuleFor(price => price.Value).Number(0, 1_000_000_000);
        RuleFor(price => price.Currency).Needed();
        RuleFor(price => price.Currency).CurrencyCode();
        RuleFor(price => price.Per).Needed();
        RuleFor(price => price.Per).Word([.. UnitTable.Of(Dimension.Mass).Select(unit => unit.Symbol)]);
    }
}

internal static class CurrencyRule
{
    /// <summary>The code of a currency.</summary>
    public static IRuleBuilderOptions<T, string?> CurrencyCode<T>(this IRuleBuilder<T, string?> rule)
    {
        const string Advice = "Give the three capital letters of ISO 4217, for example EUR or CAD.";
        // For .NET, unlike the contract's readers, $ also matches before a line break at the end.
        return rule.Matches("^[A-Z]{3}$").WithErrorCode(ErrorCode.TextWrong).WithMessage(Advice)
            .MaximumLength(3).WithErrorCode(ErrorCode.TextWrong).WithMessage(Advice);
    }
}
