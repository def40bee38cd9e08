using System.Text.Json.Nodes;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Storage.ScaleChecks;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>The last test of a series as a value to compare with, where nothing has been adopted.</summary>
internal static class StartFromLastTest
{
    /// <summary>The value, known as well as one test on another day knows it.</summary>
    /// <param name="connection">A connection.</param>
    /// <param name="workspace">The workspace.</param>
    /// <param name="last">The last test.</param>
    /// <param name="request">The test to compare.</param>
    /// <param name="at">When that was made.</param>
    /// <param name="dayToDay">Standard deviation between days, relative.</param>
    /// <param name="isPredictedForLot">The densities of both lots say what another lot changes.</param>
    public static UsedStartValue Of(
        SqliteConnection connection,
        Workspace workspace,
        LastMeasured last,
        RecordCatchTestRequest request,
        DateTimeOffset at,
        double dayToDay,
        bool isPredictedForLot
    )
    {
        var unit = UnitTable.Get(JsonNode.Parse(last.Record.Answer)!["massPerRevolution"]!["unit"]!.GetValue<string>());
        var anotherLot = last.Record.Lot != request.Lot && !isPredictedForLot ? PredictedValue.DefaultUncertainty : 0;
        var occurredAt = EnteredInstant.Write(last.Record.OccurredAt);
        return new UsedStartValue
        {
            Test = last.Record.Id,
            OccurredAt = occurredAt,
            Value = new ReferenceOfTest
            {
                Value = AnswerUnits.Shown(unit.FromCanonical(last.Estimate.Value.Value)),
                Unit = unit.Symbol,
                RelativeUncertainty = AnswerUnits.Percent(
                    Math.Sqrt(last.Estimate.VarianceWithoutSpan + dayToDay * dayToDay + anotherLot * anotherLot)
                ),
                FromAnotherScale =
                    last.Record.Scale != request.Scale
                    || (
                        ScaleCheckStore.FirstAfter(connection, workspace, request.Scale!, last.Record.OccurredAt) is { } check
                        && check.OccurredAt <= at
                    ),
                MeasuredAt = occurredAt,
            },
        };
    }

    /// <summary>What is worth saying about its lot; null for the same one.</summary>
    public static Finding? OtherLot(LastMeasured last, RecordCatchTestRequest request, bool isPredictedForLot) =>
        last.Record.Lot == request.Lot
            ? null
            : Finding.Note(
                FindingCode.OtherLot,
                last.Record.Lot is null || request.Lot is null
                    ? (FormattableString)
                        $"The lot is named for only one of this test and the last one: a change may come from another lot and not from the meter. {Allowed}"
                    : $"The last test was made with another lot: a change may come from the product and not from the meter.{(isPredictedForLot ? $"" : (FormattableString)$" {Allowed}")}"
            );

    private static FormattableString Allowed =>
        $"{new Ratio(PredictedValue.DefaultUncertainty):0.##} were allowed for that; judgement, no published source.";
}
