using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.History;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>What the history of a series gives to a test of it, and what is worth saying about that.</summary>
internal sealed class HistoryOfTest(WorkspaceReader reader, RecordCatchTestRequest request, NamedRecords named, Series series)
{
    private const int MostPastTests = 50;

    private readonly DateTimeOffset at = EnteredInstant.Read(request.OccurredAt!);

    public List<Finding> Findings { get; } = [];

    /// <summary>The lot that the value on record was found with; null when none was named, or a stated value is compared with.</summary>
    public string? LotBehind { get; private set; }

    public UsedHistory Read()
    {
        var past = PastTests();
        var used = new UsedHistory
        {
            Repeatability = request.Repeatability is null ? Repeatability(past) : null,
            DayToDay = request.DayToDay is null ? DayToDay(past) : null,
            ScaleCheck = ScaleCheck(),
            ValueInForce = request.ValueInForce is null && request.StartValue is null ? ValueInForce() : null,
        };
        if (DifferenceFromPlan() is { } difference)
            Findings.Add(difference);
        if (request.ValueInForce is { } stated)
            Findings.AddRange(TypedValueRecords.DoubtsAbout(stated, reader, series, request.Lot, at));
        return request.ValueInForce is null && request.StartValue is null && used.ValueInForce is null ? WithLastTest(used) : used;
    }

    private Finding? DifferenceFromPlan() =>
        named.Plan is { } plan
            ? TestAgainstPlan.Difference(
                plan.Meters!.Select(one => new NamedMeter(one!.Meter!, one.Product!, one.Element!, one.Setting, one.Lot)),
                new NamedMeter(request.Meter!, request.Product!, request.Element!, request.Setting, request.Lot)
            )
            : null;

    private UsedHistory WithLastTest(UsedHistory used)
    {
        if (LastMeasured.Of(reader, series, at, request.Supersedes?.Record) is not { } last)
            return used;
        LotBehind = last.Record.Lot;
        var day = (request.DayToDay ?? used.DayToDay?.Value)?.Canonical() ?? CatchTestLimits.DefaultDayToDay;
        var isPredicted = PredictedForLot.Knows(reader, LotBehind, named.Lot);
        if (ValueOnRecord.OtherLotOfLastTest(LotBehind, request.Lot, isPredicted) is { } otherLot)
            Findings.Add(otherLot);
        return used with { StartValue = StartFromLastTest.Of(reader, last, request, at, day, isPredicted) };
    }

    private PastTest[] PastTests() =>
        [
            .. reader
                .PastTests(series, at, MostPastTests)
                .Where(test => test.Id != request.Supersedes?.Record)
                .Select(test => new PastTest(test.Value, test.Random, test.Lot, test.Values, test.Variances)),
        ];

    private static UsedRepeatability? Repeatability(PastTest[] past) =>
        RepeatabilityFromHistory.Of(past) is { } prior
            ? new UsedRepeatability
            {
                Value = AnswerUnits.Percent(prior.Relative),
                DegreesOfFreedom = prior.DegreesOfFreedom,
                Tests = past.Count(test => test.Values.Count > 1),
                Catches = past.Where(test => test.Values.Count > 1).Sum(test => test.Values.Count),
            }
            : null;

    // The store gives the newest test first; neighbours are what counts, so the direction does not matter.
    private UsedDayToDay? DayToDay(PastTest[] past)
    {
        var limits = CatchTestMapping.ReadLimits(request) with
        {
            WantedPrecision = (request.WantedPrecision ?? named.Plan?.WantedPrecision)?.Canonical(),
        };
        if (CountedDayToDay.Of(past, limits) is not { } day)
            return null;
        if (day.Finding is { } finding)
            Findings.Add(finding);
        return new UsedDayToDay { Value = AnswerUnits.Percent(day.Relative), Tests = past.Length };
    }

    private UsedScaleCheck? ScaleCheck()
    {
        var check = reader.LastCheck(request.Scale!, at);
        if (LastScaleCheck.Overdue(at - check?.OccurredAt, named.Scale.DaysBetweenChecks) is { } overdue)
            Findings.Add(overdue);
        return check is null
            ? null
            : new UsedScaleCheck
            {
                Check = check.Id,
                OccurredAt = EnteredInstant.Write(check.OccurredAt),
                Error = AnswerUnits.Percent(check.Error),
                StandardUncertainty = AnswerUnits.Percent(check.Uncertainty),
                Failed = check.Passed ? null : true,
            };
    }

    private UsedValueInForce? ValueInForce()
    {
        if (reader.InForce(series, at) is not { } adoption)
            return null;
        LotBehind = adoption.Lot;
        var basis = adoption.Test is { } id ? reader.Test(id) : null;
        if (ValueOnRecord.OtherLotOfValueInForce(adoption.Lot, request.Lot) is { } otherLot)
            Findings.Add(otherLot);
        var isSuperseded = basis is not null && reader.Replacement(EvidenceKind.CatchTest, basis.Id) is not null;
        if (isSuperseded)
            Findings.Add(ValueOnRecord.BasisSuperseded);
        var unit = UsualUnits.PerRevolution(adoption.EnteredUnit);
        return new UsedValueInForce
        {
            Adoption = adoption.Id,
            Since = EnteredInstant.Write(adoption.OccurredAt),
            Value = new ReferenceOfTest
            {
                Value = AnswerUnits.Shown(unit.FromCanonical(adoption.Value)),
                Unit = unit.Symbol,
                // A test that turned out wrong says nothing of how well the number is known.
                RelativeUncertainty = basis is null || isSuperseded ? null : AnswerUnits.Percent(basis.Random),
                ScaleErrorFoundLater = basis is null ? null : FoundLater(basis),
                FromAnotherScale = basis is null
                    ? null
                    : basis.Scale != request.Scale || reader.IsCheckedBetween(request.Scale!, basis.OccurredAt, at),
            },
        };
    }

    // Beyond what was corrected when the test behind the value was made.
    private KnownScaleErrorOfTest? FoundLater(CatchTestRecord basis)
    {
        if (reader.NextCheck(basis.Scale, basis.OccurredAt) is not { } check || check.OccurredAt > at)
            return null;
        var corrected = reader.LastCheck(basis.Scale, basis.OccurredAt)?.Error ?? 0;
        var counted = LaterScaleError.Counted(check.Error, check.Uncertainty, corrected);
        return new KnownScaleErrorOfTest
        {
            Error = AnswerUnits.Percent(counted.Error),
            StandardUncertainty = AnswerUnits.Percent(counted.StandardUncertainty),
        };
    }
}
