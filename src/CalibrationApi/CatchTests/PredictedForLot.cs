using System.Text.Json;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.NewLots;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Http;
using CalibrationApi.Lots;
using CalibrationApi.Quantities;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.Records;
using CalibrationApi.Storing;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.CatchTests;

/// <summary>What a lot is expected to give where the value in force was found with another one.</summary>
internal static class PredictedForLot
{
    /// <summary>The prediction; null for the same lot, and unless both lots have a bulk density of their own.</summary>
    public static PredictedValueOfTest? Of(SqliteConnection connection, Workspace workspace, UsedValueInForce inForce, string? lotOfTest, LotRequest? after)
    {
        if (after?.BulkDensity is not { } now || AdoptionStore.Find(connection, workspace, inForce.Adoption)?.Lot is not { } lotBefore || lotBefore == lotOfTest
            || LotOf(connection, workspace, lotBefore) is not { BulkDensity: { } earlier } before)
            return null;
        var prediction = NewLotEvaluation.Evaluate(new NewLotQuestion
        {
            ValueInForce = inForce.Value.Read(),
            ValueUncertainty = inForce.Value.RelativeUncertainty?.Canonical(),
            Before = new SeedLot { Density = earlier.Read(), Treatment = before.Treatment },
            After = new SeedLot { Density = now.Read(), Treatment = after.Treatment },
        }).Prediction;
        return new PredictedValueOfTest
        {
            Value = AnswerUnits.Shown(UnitTable.Get(inForce.Value.Unit!).FromCanonical(prediction.Value.KilogramsPerRevolution)),
            Unit = inForce.Value.Unit,
            RelativeUncertainty = AnswerUnits.Percent(prediction.Uncertainty.StandardUncertainty),
        };
    }

    private static LotRequest? LotOf(SqliteConnection connection, Workspace workspace, string id) =>
        new DescribedRecordStore(RecordKind.Lots).Find(connection, workspace, id) is { } record
            ? (LotRequest)JsonSerializer.Deserialize(record.Body, JsonSettings.Contract.GetTypeInfo(typeof(LotRequest)))!
            : null;
}
