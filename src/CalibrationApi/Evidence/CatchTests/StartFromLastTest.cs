using System.Text.Json.Nodes;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.History;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Reading;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>The last test of a series as a value to compare with, where nothing has been adopted.</summary>
internal static class StartFromLastTest
{
    /// <summary>The value, known as well as one test on another day knows it.</summary>
    /// <param name="reader">Reads the records.</param>
    /// <param name="last">The last test.</param>
    /// <param name="request">The test to compare.</param>
    /// <param name="at">When that was made.</param>
    /// <param name="dayToDay">Standard deviation between days, relative.</param>
    /// <param name="isPredictedForLot">The densities of both lots say what another lot changes.</param>
    public static UsedStartValue Of(
        WorkspaceReader reader,
        LastMeasured last,
        RecordCatchTestRequest request,
        DateTimeOffset at,
        double dayToDay,
        bool isPredictedForLot
    )
    {
        var unit = UnitTable.Get(JsonNode.Parse(last.Record.Answer)!["massPerRevolution"]!["unit"]!.GetValue<string>());
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
                    ValueOnRecord.UncertaintyOfLastTest(
                        last.Estimate.VarianceWithoutSpan,
                        dayToDay,
                        last.Record.Lot != request.Lot && !isPredictedForLot
                    )
                ),
                FromAnotherScale =
                    last.Record.Scale != request.Scale || reader.IsCheckedBetween(request.Scale!, last.Record.OccurredAt, at),
                MeasuredAt = occurredAt,
            },
        };
    }
}
