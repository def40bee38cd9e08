namespace CalibrationApi.Engine.Quantities;

/// <summary>A value above 0 with what is known of its uncertainty.</summary>
/// <param name="Value">The value.</param>
/// <param name="RelativeUncertainty">Its standard uncertainty, relative, &gt;= 0; null takes a default.</param>
public readonly record struct Uncertain<T>(T Value, double? RelativeUncertainty = null)
    where T : struct, IQuantity<T>;
