using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.MeteringElements;

/// <summary>Defaults of a volume check with their origins; each is listed in an answer that used it.</summary>
public static class ElementDefaults
{
    /// <summary>Median of the fill efficiency of an element of which no history is known.</summary>
    public static DefaultValue FillEfficiency { get; } =
        new(new Ratio(0.9), "median fill efficiency of metering elements; judgement, no published source");

    /// <summary>Spread of that fill efficiency: standard deviation of its natural logarithm.</summary>
    public static DefaultValue Spread { get; } =
        new(
            new Ratio(0.15),
            "spread of fill efficiency from element to element, standard deviation of its logarithm; judgement, no published source"
        );

    /// <summary>
    /// How much the fill efficiency of one element changes from one product to another: standard deviation of its natural logarithm.
    /// </summary>
    public static DefaultValue ProductToProduct { get; } =
        new(
            new Ratio(0.05),
            "change of fill efficiency from one product to another on the same element, standard deviation of its logarithm; judgement, no published source"
        );

    /// <summary>Standard uncertainty of a displacement, relative.</summary>
    public static DefaultValue Displacement { get; } =
        new(new Ratio(0.02), "standard uncertainty of a displacement; judgement, no published source");

    /// <summary>Standard uncertainty of a bulk density, relative.</summary>
    public static DefaultValue Density { get; } =
        new(new Ratio(0.03), "standard uncertainty of a bulk density; judgement, no published source");

    /// <summary>Standard uncertainty of a mass per revolution measured or in force, relative; the same as in a catch plan.</summary>
    public static DefaultValue MassPerRevolution { get; } = ReferenceValues.ReferenceValue.UncertaintyInForce;

    /// <summary>
    /// Above this fill efficiency more would come out than the element holds; a little above 1 because product settles in it. Judgement, no
    /// published source.
    /// </summary>
    public const double MostFillEfficiency = 1.05;

    /// <summary>Standard deviations from the expected value from which a value is unusual; judgement, about one in twenty.</summary>
    public const double Unusual = 2;
}
