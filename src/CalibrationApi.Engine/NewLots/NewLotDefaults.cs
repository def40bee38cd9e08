using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.NewLots;

/// <summary>Defaults of a change of lots; each is listed in an answer that used it.</summary>
/// <remarks>
/// The search for mistakes takes 4 % as the scale of an ordinary change with the same lot and 8 % with a new one. Here the larger is taken
/// apart: 8 % is about 4 % and 7 % in quadrature. Once both densities are known their ratio accounts for the 7 %, and the 4 % that remain
/// are how the kernels of another lot slide into the element: size, shape, dust. A treatment changes friction, so it counts as much as
/// another lot. A lot is mixed to be even, so another delivery of it differs in moisture and packing only: of its 4 %, 2 % are density, and
/// the rest is day and value in force, which count by themselves here. All of these are judgement; no published source was found.
/// </remarks>
public static class NewLotDefaults
{
    /// <summary>Scale of an unknown change of density with a new lot, relative.</summary>
    public const double UnknownDensityOfNewLot = 0.07;

    /// <summary>The same with another delivery of the same lot.</summary>
    public const double UnknownDensityOfSameLot = 0.02;

    /// <summary>Degrees of freedom of the scales of an unknown change: their tails are long.</summary>
    public const double DegreesOfFreedom = 3;

    /// <summary>Change of kernel mass, relative, beyond which two samples are hardly of one lot in one coat; judgement.</summary>
    public const double KernelsOfOneLot = 0.05;

    /// <summary>Probability from which a value counts as good enough.</summary>
    public const double SureEnough = 0.95;

    /// <summary>Probability from which a test may wait until the next fill: four in five.</summary>
    public const double GoodEnoughForOneFill = 0.80;

    /// <summary>Ratio of two densities, on ln, beyond which one of them is rather a slip: a quarter more; judgement.</summary>
    public static readonly double DensitiesFarApart = Math.Log(1.25);

    /// <summary>Default of the uncertainty of the value in force.</summary>
    public static DefaultValue ValueUncertainty => ReferenceValues.ReferenceValue.UncertaintyInForce;

    /// <summary>Default of the uncertainty of a bulk density.</summary>
    public static DefaultValue DensityUncertainty { get; } =
        new(new Ratio(0.01), "a weighed litre, or a test weight, repeats to about this; judgement, no published source");

    /// <summary>Default of the tolerance.</summary>
    public static DefaultValue Tolerance => CatchTestDefaults.Tolerance;

    /// <summary>Default of the change from day to day.</summary>
    public static DefaultValue DayToDay => CatchTestDefaults.DayToDay;

    /// <summary>Default of the change of fill from lot to lot.</summary>
    public static DefaultValue FillOfLots { get; } =
        new(
            new Ratio(0.04),
            "another lot fills the element differently even at the same density; judgement, 3 degrees of freedom, no published source"
        );

    /// <summary>Default of the change of fill with another treatment.</summary>
    public static DefaultValue FillOfTreatments { get; } =
        new(new Ratio(0.04), "a coating changes friction; judgement, 3 degrees of freedom, no published source");

    /// <summary>Default of an unknown change of density.</summary>
    /// <param name="sameLot">Both are the same lot.</param>
    public static DefaultValue UnknownDensity(bool sameLot) =>
        new(
            new Ratio(sameLot ? UnknownDensityOfSameLot : UnknownDensityOfNewLot),
            sameLot
                ? "2 % with another delivery of the same lot; judgement, 3 degrees of freedom, no published source"
                : "7 % with a new lot; judgement, 3 degrees of freedom, no published source"
        );
}
