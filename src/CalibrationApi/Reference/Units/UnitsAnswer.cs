using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Reference.Units;

/// <summary>Every unit that payloads take.</summary>
public sealed class UnitsAnswer
{
    /// <summary>The units, ordered by dimension; the first of each dimension is its usual metric unit.</summary>
    public required IReadOnlyList<UnitAnswer> Units { get; init; }

    // Dimensions are camelCase because they name the schemas of quantities, not words of a choice.
    internal static string Word(Dimension dimension)
    {
        var name = dimension.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }
}

/// <summary>One unit.</summary>
public sealed class UnitAnswer
{
    /// <summary>The symbol as payloads write it; case counts.</summary>
    public required string Symbol { get; init; }

    /// <summary>What it measures, as the schemas of quantities are named: <c>mass</c> for MassQuantity.</summary>
    public required string Dimension { get; init; }

    /// <summary>
    /// Exact factor: a value in this unit times the factor, plus <c>offsetInSi</c> where there is one, is the value in the SI unit of the
    /// dimension (kg, m, s, Pa, K, revolutions as a plain count).
    /// </summary>
    public required FactorAnswer ToSi { get; init; }

    /// <summary>
    /// What is added after the factor: the SI value of zero in this unit, in kelvin for a temperature. Absent for zero, which every other
    /// unit has.
    /// </summary>
    public double? OffsetInSi { get; init; }

    /// <summary>Code in the Unified Code for Units of Measure.</summary>
    public string? Ucum { get; init; }

    /// <summary>Common code of UN/ECE Recommendation 20.</summary>
    public string? UnitedNations { get; init; }

    /// <summary>Unit code of the AgGateway ADAPT standard.</summary>
    public string? Adapt { get; init; }

    /// <summary>What a reader must know, for example which acre is meant.</summary>
    public string? Note { get; init; }
}

/// <summary>An exact ratio of two whole numbers, both below 2^53.</summary>
public sealed class FactorAnswer
{
    /// <summary>Above the line.</summary>
    public required long Numerator { get; init; }

    /// <summary>Below the line.</summary>
    public required long Denominator { get; init; }
}
