using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.MeteringElements;

/// <summary>The codes of what a metering element can hold and delivers.</summary>
public static class ElementCodes
{
    /// <summary>A mass per revolution would need more product than the element holds.</summary>
    public static WarningOrStopCode MoreThanTheElementHolds { get; } =
        new(
            "more-than-the-element-holds",
            "Check the unit of the value, the element that is fitted, its displacement, and the bulk density. On a severity of stop the value cannot be: use none of it before the reason is found."
        );

    /// <summary>A mass per revolution is far from what displacement, density and fill efficiency let expect.</summary>
    public static WarningCode FillUnlikeExpected { get; } =
        new(
            "fill-unlike-expected",
            "Check the element, its displacement, the density and the units. If all are right, the value stands: learn the fill efficiency from it."
        );

    /// <summary>A mass per revolution does not fit what the same element delivers of other products.</summary>
    public static WarningCode UnlikeOtherProducts { get; } =
        new(
            "unlike-other-products",
            "Check which product and which element it was, the bulk densities and the count. If all are right, the value stands."
        );

    /// <summary>What the volume of an element says of a mass per revolution.</summary>
    public static IReadOnlyList<FindingCode> Findings { get; } = [MoreThanTheElementHolds, FillUnlikeExpected];
}
