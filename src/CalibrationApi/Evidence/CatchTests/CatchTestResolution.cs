using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.FieldSetUps;
using CalibrationApi.Engine.History;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using CalibrationApi.Records.Containers;
using CalibrationApi.Records.Describing;
using CalibrationApi.Records.Lots;
using CalibrationApi.Records.Machines;
using CalibrationApi.Records.Plans;
using CalibrationApi.Records.Products;
using CalibrationApi.Records.Referring;
using CalibrationApi.Records.Scales;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.Records;
using CalibrationApi.Storage.ScaleChecks;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>A stored test's question, complete: what was read at the machine joined with what its records and its history say.</summary>
internal sealed record CatchTestResolution
{
    private const int MostPastTests = 50;

    /// <summary>The complete question; nothing else is needed to evaluate it again.</summary>
    public required CatchTestRequest Question { get; init; }

    public required Series Series { get; init; }

    public required string TimeZone { get; init; }

    /// <summary>What came from the history.</summary>
    public required UsedHistory Used { get; init; }

    /// <summary>What was noticed about the records.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Resolves a request whose own members are valid.</summary>
    /// <returns>The resolution, or every error.</returns>
    public static (CatchTestResolution? Resolution, IReadOnlyList<ProblemError> Errors) Of(
        SqliteConnection connection,
        Workspace workspace,
        RecordCatchTestRequest request
    )
    {
        var records = new ReferredRecords(connection, workspace);
        var machine = records.Machine(request.Machine!, nameof(request.Machine));
        var product = records.Product(request.Product!, nameof(request.Product));
        var lot = request.Lot is { } lotId ? records.Lot(lotId, request.Product!, nameof(request.Lot)) : null;
        var scale = records.Scale(request.Scale!, nameof(request.Scale));
        var container = request.Container is { } containerId ? records.Container(containerId, nameof(request.Container)) : null;
        var plan = request.Plan is { } planId ? Plan(records, planId, request.Machine!) : null;
        var meter = machine is null ? null : records.Meter(machine, request.Meter!, nameof(request.Meter));
        var element = meter is null ? null : records.Element(meter, request.Element!, nameof(request.Element));
        if (records.Errors.Count > 0)
            return (null, records.Errors);

        var series = new Series(request.Machine!, request.Meter!, request.Element!, request.Setting ?? "", request.Product!);
        var occurredAt = EnteredInstant.Read(request.OccurredAt!);
        var findings = new List<Finding>();
        var past = PastTests(connection, workspace, series, occurredAt, request.Supersedes?.Record);
        var used = new UsedHistory
        {
            Repeatability = request.Repeatability is null ? UsedRepeatability(past) : null,
            DayToDay = request.DayToDay is null ? UsedDayToDay(past, request, plan, findings) : null,
            ScaleCheck = UsedScaleCheck(connection, workspace, request.Scale!, scale!, occurredAt, findings),
            ValueInForce =
                request.ValueInForce is null && request.StartValue is null
                    ? UsedValue(connection, workspace, series, request, occurredAt, findings)
                    : null,
        };
        if (plan is not null)
            findings.AddRange(PlanDifferences.Of(plan, request));
        if (request.ValueInForce is { } stated)
            findings.AddRange(
                TypedValueRecords.DoubtsAbout(stated, new RecordsReadOnce(connection, workspace), series, request.Lot, occurredAt)
            );
        var last =
            request.ValueInForce is null && request.StartValue is null && used.ValueInForce is null
                ? LastMeasured.Of(connection, workspace, series, occurredAt, request.Supersedes?.Record)
                : null;
        var lotBehind = used.ValueInForce is { } adopted
            ? AdoptionStore.Find(connection, workspace, adopted.Adoption)?.Lot
            : last?.Record.Lot;
        if (last is not null)
        {
            var day = (request.DayToDay ?? used.DayToDay?.Value)?.Canonical() ?? CatchTestLimits.DefaultDayToDay;
            var isPredicted = PredictedForLot.Knows(connection, workspace, lotBehind, lot);
            used = used with { StartValue = StartFromLastTest.Of(connection, workspace, last, request, occurredAt, day, isPredicted) };
            if (StartFromLastTest.OtherLot(last, request, isPredicted) is { } otherLot)
                findings.Add(otherLot);
        }

        var question = Join(
            request,
            machine!,
            meter!,
            element!,
            product!,
            lot,
            scale!,
            plan,
            used,
            (used.ValueInForce?.Value ?? used.StartValue?.Value) is { } onRecord
                ? PredictedForLot.Of(connection, workspace, onRecord, lotBehind, request.Lot, lot)
                : null
        );
        if (question.TargetRate is null && plan is not null)
            question.TargetRate = PlannedRate(connection, workspace, plan, request);
        Surround(
            question,
            container,
            MistakeContextRecords.Of(
                connection,
                workspace,
                request,
                series,
                meter!,
                question.Product!.BulkDensity,
                question.ValueInForce ?? question.StartValue,
                lotBehind,
                occurredAt
            )
        );
        return (
            new CatchTestResolution
            {
                Question = question,
                Series = series,
                TimeZone = machine!.TimeZone ?? LocalDate.Utc,
                Used = used,
                Findings = findings,
            },
            []
        );
    }

    /// <summary>The same beside the stored test that bears it out, where there is one. Its question has to be valid.</summary>
    public CatchTestResolution WithEarlierTest(SqliteConnection connection, Workspace workspace, RecordCatchTestRequest request)
    {
        var at = EnteredInstant.Read(request.OccurredAt!);
        // What the change is counted from cannot bear it out.
        var since = Used.StartValue is { } start
            ? EnteredInstant.Read(start.OccurredAt)
            : AdoptionStore.InForce(connection, workspace, Series, at)?.OccurredAt;
        if (
            Question.EarlierTest is not null
            || EarlierTestRecords.Of(connection, workspace, Question, request, Series, since, at) is not { } earlier
        )
            return this;
        Question.EarlierTest = earlier;
        return this with
        {
            Used = Used with
            {
                EarlierTest = new UsedEarlierTest { Test = earlier.Test!, OccurredAt = earlier.OccurredAt! },
            },
        };
    }

    private static PlanRequest? Plan(ReferredRecords records, string id, string machine)
    {
        const string Member = nameof(RecordCatchTestRequest.Plan);
        var plan = records.Find<PlanRequest>(RecordKind.Plans, id, Member);
        if (plan is not null && plan.Machine != machine)
            records.Add(Member, ErrorCode.RecordsAtOdds, "This plan is for another machine. Check plan and machine.");
        return plan;
    }

    private static CatchTestRequest Join(
        RecordCatchTestRequest data,
        MachineRequest machine,
        MeterOfMachine meter,
        ElementOfMachine element,
        ProductRequest product,
        LotRequest? lot,
        ScaleRequest scale,
        PlanRequest? plan,
        UsedHistory used,
        PredictedValueOfTest? predicted
    )
    {
        var planned = plan?.Meters?.FirstOrDefault(one => one!.Meter == data.Meter && one.Product == data.Product);
        return new CatchTestRequest
        {
            TareReading = data.TareReading,
            SharedTare = data.SharedTare,
            CountStart = data.CountStart,
            TurnResolution = data.TurnResolution,
            MeterSpeed = data.MeterSpeed,
            TimeResolution = data.TimeResolution,
            ValueTypedIn = data.ValueTypedIn,
            IndicatedMassResolution = data.IndicatedMassResolution,
            CaughtPoints = data.CaughtPoints,
            ValueInForce = data.ValueInForce ?? used.ValueInForce?.Value,
            StartValue = data.StartValue
                ?? used.StartValue?.Value
                ?? (data.ValueInForce is null && used.ValueInForce is null ? StartValueOf(plan, data) : null),
            TargetRate = data.TargetRate ?? planned?.TargetRate,
            Area = data.Area ?? plan?.Area,
            Catches = data.Catches,
            Repeatability = data.Repeatability ?? used.Repeatability?.Value,
            RepeatabilityDegreesOfFreedom = data.RepeatabilityDegreesOfFreedom ?? used.Repeatability?.DegreesOfFreedom,
            DayToDay = data.DayToDay ?? used.DayToDay?.Value,
            Tolerance = data.Tolerance,
            WantedPrecision = data.WantedPrecision ?? plan?.WantedPrecision,
            PredictedValue = data.PredictedValue ?? predicted,
            EarlierTest = data.EarlierTest,
            PrecisionProbability = data.PrecisionProbability,
            SecondTestChange = data.SecondTestChange,
            CoverageProbability = data.CoverageProbability,
            CatchPoints = data.CatchPoints ?? data.CaughtPoints?.Caught ?? meter.Outlets,
            RuledOutMistakes = data.RuledOutMistakes,
            Meter = NameOf(machine, meter),
            Product = new ProductOfTest
            {
                Name = product.Name,
                Material = product.Material,
                BulkDensity = lot?.BulkDensity ?? product.BulkDensity,
                Price = product.Price,
            },
            Scale = new ScaleOfTest
            {
                Division = scale.Division,
                AccuracyClass = scale.AccuracyClass,
                VerificationInterval = scale.VerificationInterval,
                StatedAccuracy = scale.StatedAccuracy,
                Capacity = scale.Capacity,
                KnownError = used.ScaleCheck is { } check
                    ? new KnownScaleErrorOfTest
                    {
                        Error = check.Error,
                        StandardUncertainty = check.StandardUncertainty,
                        CheckFailed = check.Failed,
                    }
                    : null,
            },
            CounterResolution = meter.CounterResolution,
            FittedElement = element.DisplacementPerRevolution is { } displacement
                ? new FittedElement
                {
                    Name = element.Name,
                    Kind = element.Kind,
                    DisplacementPerRevolution = displacement,
                }
                : null,
            Conditions = data.Conditions,
            SowingConditions = plan?.SowingConditions,
            PocketsPerRevolution = element.PocketsPerRevolution,
            PulsesPerRevolution = meter.PulsesPerRevolution,
            MeterRevolutionsPerTurn = meter.MeterRevolutionsPerTurn,
            ControllerEntry = meter.ControllerEntry,
        };
    }

    // A rate that follows from the stand or the nutrients of the plan; null when it cannot be told.
    private static MassPerAreaQuantity? PlannedRate(
        SqliteConnection connection,
        Workspace workspace,
        PlanRequest plan,
        RecordCatchTestRequest data
    )
    {
        // A test beside the plan has no rate in it; the records behind the plan need not be read.
        if (!plan.Meters!.Any(one => one!.Meter == data.Meter && one.Product == data.Product))
            return null;
        var field = PlannedField.Read(plan, new ReferredRecords(connection, workspace), ElementsRead.None);
        var (place, rate) = FieldRates
            .Of(FieldSetUpMapping.ToEngine(field))
            .Meters.Index()
            .FirstOrDefault(one => one.Item.Meter.Position == data.Meter && one.Item.Meter.Product.Key == data.Product);
        return rate is { IsOn: true } ? new FieldSetUpUnits(field, choice: null).Stated(rate, place) : null;
    }

    // A predicted value holds for the element and setting that it was planned with.
    private static ReferenceOfTest? StartValueOf(PlanRequest? plan, RecordCatchTestRequest data) =>
        plan
            ?.Meters?.FirstOrDefault(one =>
                one!.Meter == data.Meter
                && one.Product == data.Product
                && one.Element == data.Element
                && (one.Setting ?? "") == (data.Setting ?? "")
            )
            ?.StartValue;

    private static void Surround(CatchTestRequest question, ContainerRequest? container, MistakeContextRecords records)
    {
        question.Container = container is null ? null : new ContainerOfTest { Volume = container.Volume, Tare = container.Tare };
        question.NewLot = records.NewLot;
        question.OtherContainers = records.OtherContainers;
        question.OtherElements = records.OtherElements;
        question.OtherProducts = records.OtherProducts;
    }

    private static string NameOf(MachineRequest machine, MeterOfMachine meter)
    {
        var whole = $"{machine.Name}, {meter.Position}";
        return whole.EnumerateRunes().Count() <= Rules.LongestName ? whole : meter.Position!;
    }

    private static PastTest[] PastTests(
        SqliteConnection connection,
        Workspace workspace,
        Series series,
        DateTimeOffset before,
        string? corrected
    ) =>
        [
            .. CatchTestStore
                .OfSeries(connection, workspace, series, before, MostPastTests)
                .Where(test => test.Id != corrected)
                .Select(test => new PastTest(test.Value, test.Random, test.Lot, test.Values, test.Variances)),
        ];

    private static UsedRepeatability? UsedRepeatability(PastTest[] past) =>
        RepeatabilityFromHistory.Of(past) is { } prior
            ? new UsedRepeatability
            {
                // Evidence is kept whatever the history says, so what it says stays inside what a question may state.
                Value = AnswerUnits.Percent(Math.Min(prior.Relative, CatchTestData.MostRepeatability / 100)),
                DegreesOfFreedom = prior.DegreesOfFreedom,
                Tests = past.Count(test => test.Values.Count > 1),
                Catches = past.Where(test => test.Values.Count > 1).Sum(test => test.Values.Count),
            }
            : null;

    // The store gives the newest test first; neighbours are what counts, so the direction does not matter.
    private static UsedDayToDay? UsedDayToDay(PastTest[] past, RecordCatchTestRequest request, PlanRequest? plan, List<Finding> findings)
    {
        if (DayToDayFromHistory.Of(past) is not { } day)
            return null;
        var limits = CatchTestMapping.ReadLimits(request) with
        {
            WantedPrecision = (request.WantedPrecision ?? plan?.WantedPrecision)?.Canonical(),
        };
        var most = CatchTestSettings.LargestDayToDay(limits);
        if (day > most && most > 0)
        {
            // Evidence is kept whatever the history says: a test is not refused because the meter is unsteady.
            findings.Add(
                Finding.Warning(
                    FindingCode.VariesFromDayToDay,
                    $"From test to test this meter has varied by {new Ratio(day):F1}; {new Ratio(most):F1} was counted, the most that a tolerance of {new Ratio(limits.Tolerance ?? CatchTestLimits.DefaultTolerance):0.##} leaves room for. Find out what differs from day to day, for example the tank level, and test again soon."
                )
            );
            day = most;
        }

        return new UsedDayToDay { Value = AnswerUnits.Percent(Math.Min(day, CatchTestData.MostDayToDay / 100)), Tests = past.Length };
    }

    private static UsedScaleCheck? UsedScaleCheck(
        SqliteConnection connection,
        Workspace workspace,
        string scaleId,
        ScaleRequest scale,
        DateTimeOffset at,
        List<Finding> findings
    )
    {
        var days = scale.DaysBetweenChecks ?? ScaleRequest.UsualDaysBetweenChecks;
        if (ScaleCheckStore.LastBefore(connection, workspace, scaleId, at) is not { } check)
        {
            findings.Add(
                Finding.Note(
                    FindingCode.ScaleCheckOverdue,
                    $"This scale had not been checked against known masses before the test. A check finds its error, which is then corrected."
                )
            );
            return null;
        }

        var age = (at - check.OccurredAt).TotalDays;
        if (age > days)
            findings.Add(
                Finding.Warning(
                    FindingCode.ScaleCheckOverdue,
                    $"The last check of this scale was {age:F0} days before the test; after {days} days it is overdue."
                )
            );
        return new UsedScaleCheck
        {
            Check = check.Id,
            OccurredAt = EnteredInstant.Write(check.OccurredAt),
            Error = AnswerUnits.Percent(check.Error),
            StandardUncertainty = AnswerUnits.Percent(check.Uncertainty),
            Failed = check.Passed ? null : true,
        };
    }

    private static UsedValueInForce? UsedValue(
        SqliteConnection connection,
        Workspace workspace,
        Series series,
        RecordCatchTestRequest request,
        DateTimeOffset at,
        List<Finding> findings
    )
    {
        if (AdoptionStore.InForce(connection, workspace, series, at) is not { } adoption)
            return null;
        var basis = adoption.Test is { } id ? CatchTestStore.Find(connection, workspace, id) : null;
        if (request.Lot != adoption.Lot)
            findings.Add(
                Finding.Note(
                    FindingCode.OtherLot,
                    adoption.Lot is null || request.Lot is null
                        ? (FormattableString)
                            $"The lot is named for only one of this test and the value in force: a change may come from another lot and not from the meter."
                        : $"The value in force was adopted with another lot: a change may come from the product and not from the meter."
                )
            );
        var isSuperseded = basis is not null && SupersessionStore.Find(connection, workspace, RecordCatchTest.Kind, basis.Id) is not null;
        if (isSuperseded)
            findings.Add(
                Finding.Warning(FindingCode.BasisSuperseded, $"The value in force rests on a test that has since been superseded.")
            );
        var unit = UnitTable.Find(adoption.EnteredUnit) is { Dimension: Dimension.MassPerRevolution } entered
            ? entered
            : UnitTable.Get("kg/rev");
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
                ScaleErrorFoundLater = basis is null ? null : FoundLater(connection, workspace, basis, at),
                FromAnotherScale = basis is null
                    ? null
                    : basis.Scale != request.Scale || CheckedBetween(connection, workspace, request.Scale!, basis.OccurredAt, at),
            },
        };
    }

    // Beyond what was corrected when the test behind the value was made.
    private static KnownScaleErrorOfTest? FoundLater(
        SqliteConnection connection,
        Workspace workspace,
        CatchTestRecord basis,
        DateTimeOffset until
    )
    {
        if (ScaleCheckStore.FirstAfter(connection, workspace, basis.Scale, basis.OccurredAt) is not { } check || check.OccurredAt > until)
            return null;
        var corrected = ScaleCheckStore.LastBefore(connection, workspace, basis.Scale, basis.OccurredAt)?.Error ?? 0;
        return new KnownScaleErrorOfTest
        {
            Error = AnswerUnits.Percent(
                Math.Clamp((1 + check.Error) / (1 + corrected) - 1, -KnownScaleErrorOfTest.Most / 100, KnownScaleErrorOfTest.Most / 100)
            ),
            StandardUncertainty = AnswerUnits.Percent(Math.Min(check.Uncertainty, KnownScaleErrorOfTest.Most / 100)),
        };
    }

    private static bool CheckedBetween(
        SqliteConnection connection,
        Workspace workspace,
        string scale,
        DateTimeOffset from,
        DateTimeOffset until
    ) => ScaleCheckStore.FirstAfter(connection, workspace, scale, from) is { } check && check.OccurredAt <= until;
}
