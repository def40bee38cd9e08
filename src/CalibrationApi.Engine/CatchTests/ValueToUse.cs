using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>The number that serves best from now on.</summary>
/// <param name="Value">kg per revolution.</param>
/// <param name="Drawn">It over the measured value, less 1: how far the old number drew it to itself.</param>
/// <remarks>
/// Adopting a number that differs by less than it is known makes the number in use worse. Where the old number has evidence behind it, the
/// number of the smallest expected squared error of ln k is the mean of what the test says and what most old numbers are off by: Student t
/// with three degrees of freedom and a scale of 1.5 %, chosen by simulation (table "Number in use" of tests/CalibrationApi.Simulation;
/// judgement), or its own uncertainty where that is larger. The last test of a meter where nothing was adopted is such a number too. Near
/// changes shrink, far ones are taken whole. A change that two tests confirm is taken as they found it.
/// </remarks>
public sealed record ValueToUse(MassPerRevolution Value, double Drawn)
{
    /// <summary>Scale of what most old numbers are off by, on ln; judgement.</summary>
    public const double OldNumberScale = 0.015;

    internal static ValueToUse Of(CatchTestQuestion test, MassPerRevolutionEstimate estimate, SecondTest? second, double dayToDay)
    {
        if (second is { Confirms: true })
            return new(new MassPerRevolution(second.Combined.Value), 0);
        var measured = estimate.Value.Value;
        if (
            test.Reference is not { IsMeasured: true, RelativeUncertainty: { } known } reference
            || test.Context.NewLot is true
            || test.Predicted is not null
        )
            return new(new MassPerRevolution(measured), 0);
        var old = reference.Value.KilogramsPerRevolution;
        var change = Math.Log(measured / old);
        var uncertainty = Math.Sqrt(estimate.RelativeVariance + dayToDay * dayToDay);
        var used = StudentTShrinkage.Estimate(change, uncertainty, Math.Max(OldNumberScale, known));
        return new(new MassPerRevolution(old * Math.Exp(used)), Math.Exp(used - change) - 1);
    }
}
