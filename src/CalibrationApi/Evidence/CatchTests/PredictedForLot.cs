using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.NewLots;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Lots;
using CalibrationApi.Records.Reading;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>What a lot is expected to give where the value in force was found with another one.</summary>
internal static class PredictedForLot
{
    /// <summary>The prediction; null for the same lot, and unless both lots have a bulk density of their own.</summary>
    /// <param name="reader">Reads the records.</param>
    /// <param name="value">The value in force, or the one measured last.</param>
    /// <param name="lotOfValue">Id of the lot that it was found with; null when none was named.</param>
    /// <param name="lotOfTest">Id of the lot at hand.</param>
    /// <param name="after">That lot.</param>
    public static PredictedValueOfTest? Of(
        WorkspaceReader reader,
        ReferenceOfTest value,
        string? lotOfValue,
        string? lotOfTest,
        LotRequest? after
    )
    {
        if (
            after?.BulkDensity is not { } now
            || lotOfValue is not { } lotBefore
            || lotBefore == lotOfTest
            || reader.Lot(lotBefore) is not { BulkDensity: { } earlier } before
        )
            return null;
        var prediction = NewLotEvaluation
            .Evaluate(
                new NewLotQuestion
                {
                    ValueInForce = value.Read(),
                    ValueUncertainty = value.RelativeUncertainty?.Canonical(),
                    Before = new SeedLot { Density = earlier.Read(), Treatment = before.Treatment },
                    After = new SeedLot { Density = now.Read(), Treatment = after.Treatment },
                }
            )
            .Prediction;
        return new PredictedValueOfTest
        {
            Value = AnswerUnits.Shown(UnitTable.Get(value.Unit!).FromCanonical(prediction.Value.KilogramsPerRevolution)),
            Unit = value.Unit,
            RelativeUncertainty = AnswerUnits.Percent(prediction.Uncertainty.StandardUncertainty),
        };
    }

    /// <summary>Both lots have a bulk density of their own.</summary>
    public static bool Knows(WorkspaceReader reader, string? before, LotRequest? after) =>
        after?.BulkDensity is not null && before is not null && reader.Lot(before) is { BulkDensity: not null };
}
