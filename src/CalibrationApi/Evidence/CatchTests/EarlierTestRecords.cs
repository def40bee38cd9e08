using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage.History;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>Finds the stored test, set up apart, that bears another one out.</summary>
internal static class EarlierTestRecords
{
    private const int MostTests = 10;

    /// <summary>The stored test to put beside a question; null when none is worth naming.</summary>
    /// <param name="reader">Reads the records.</param>
    /// <param name="question">The complete question; it names no earlier test itself.</param>
    /// <param name="request">The test as entered.</param>
    /// <param name="series">What was tested.</param>
    /// <param name="since">When the value in force was adopted; null when none is.</param>
    /// <param name="at">When the test was made.</param>
    public static EarlierTestOfTest? Of(
        WorkspaceReader reader,
        CatchTestRequest question,
        RecordCatchTestRequest request,
        Series series,
        DateTimeOffset? since,
        DateTimeOffset at
    )
    {
        if (question.ValueInForce is null && question.StartValue is null && question.FittedElement is null)
            return null;
        var test = CatchTestMapping.ToEngine(question);
        var found = reader
            .TestsBetween(series, request.Lot, since, at, MostTests)
            .Where(one => one.Id != request.Supersedes?.Record)
            .Select(one => (Record: one, Test: LastMeasured.Resolved(one)))
            .Where(one => !AreTheSameCatches(one.Test, test))
            .Select(one =>
                CatchTestEvaluation.Evaluate(one.Test) is { Result: { } result }
                    ? result.AsEarlierTest() with
                    {
                        Name = one.Record.Id,
                        OccurredAt = EnteredInstant.Write(one.Record.OccurredAt),
                        FromAnotherScale =
                            one.Record.Scale != request.Scale || reader.IsCheckedBetween(request.Scale!, one.Record.OccurredAt, at),
                    }
                    : null
            )
            .OfType<EarlierTest>()
            .ToArray();
        return EarlierTestSearch.Of(test, found) is { } chosen ? Write(chosen, question) : null;
    }

    // Catches that were sent twice are one set-up, whatever the records call them.
    private static bool AreTheSameCatches(CatchTestQuestion one, CatchTestQuestion other) =>
        one.Catches.Select(Reading).SequenceEqual(other.Catches.Select(Reading));

    private static (double Net, double Revolutions) Reading(Catch one) => (one.IndicatedNet.Kilograms, one.Revolutions.Count);

    private static EarlierTestOfTest Write(EarlierTest earlier, CatchTestRequest question)
    {
        var unit = UnitTable.Get((question.ValueInForce ?? question.StartValue)?.Unit ?? "kg/rev");
        return new EarlierTestOfTest
        {
            Value = AnswerUnits.Shown(unit.FromCanonical(earlier.Value.KilogramsPerRevolution)),
            Unit = unit.Symbol,
            Catches = earlier.Catches,
            CatchesUncertainty = AnswerUnits.Percent(earlier.Scatter!.Value),
            DegreesOfFreedom = earlier.DegreesOfFreedom,
            SharedTareUncertainty = AnswerUnits.Percent(earlier.KnownUncertainty),
            ScaleUncertainty = AnswerUnits.Percent(earlier.Span!.Value),
            FromAnotherScale = earlier.FromAnotherScale,
            OccurredAt = earlier.OccurredAt,
            Test = earlier.Name,
        };
    }
}
