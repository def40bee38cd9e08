using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage.History;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>A stored test's question, complete: what was read at the machine joined with what its records and its history say.</summary>
internal sealed record JoinedTest
{
    /// <summary>The complete question; nothing else is needed to evaluate it again.</summary>
    public required CatchTestRequest Question { get; init; }

    public required Series Series { get; init; }

    public required string TimeZone { get; init; }

    /// <summary>What came from the history.</summary>
    public required UsedHistory Used { get; init; }

    /// <summary>Up to which line of the history that is known.</summary>
    public long KnownUpTo { get; init; }

    /// <summary>What was noticed about the records.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Joins a request whose own members are valid.</summary>
    /// <returns>The joined test, or every error.</returns>
    public static (JoinedTest? Joined, IReadOnlyList<ProblemError> Errors) Of(WorkspaceReader reader, RecordCatchTestRequest request)
    {
        var knownUpTo = reader.NewestLine();
        var (named, errors) = NamedRecords.Read(reader, request);
        if (named is null)
            return (null, errors);
        var series = new Series(request.Machine!, request.Meter!, request.Element!, request.Setting ?? "", request.Product!);
        var history = new HistoryOfTest(reader, request, named, series);
        var used = history.Read();
        var predicted = (used.ValueInForce?.Value ?? used.StartValue?.Value) is { } onRecord
            ? PredictedForLot.Of(reader, onRecord, history.LotBehind, request.Lot, named.Lot)
            : null;
        var question = JoinedQuestion.Of(request, named, used, predicted);
        if (question.TargetRate is null && named.Plan is { } plan)
            question.TargetRate = JoinedQuestion.PlannedRate(reader, plan, request);
        if (named.Container is { } container)
            question.Container = new ContainerOfTest { Volume = container.Volume, Tare = container.Tare };
        MistakeContextRecords
            .Of(
                reader,
                request,
                series,
                named.Meter,
                question.Product!.BulkDensity,
                question.ValueInForce ?? question.StartValue,
                history.LotBehind,
                EnteredInstant.Read(request.OccurredAt!)
            )
            .Surround(question);
        return (
            new JoinedTest
            {
                Question = question,
                Series = series,
                TimeZone = named.TimeZone,
                Used = used,
                Findings = history.Findings,
                KnownUpTo = knownUpTo,
            },
            []
        );
    }

    /// <summary>The same beside the stored test that bears it out, where there is one. Its question has to be valid.</summary>
    public JoinedTest WithEarlierTest(WorkspaceReader reader, RecordCatchTestRequest request)
    {
        var at = EnteredInstant.Read(request.OccurredAt!);
        // What the change is counted from cannot bear it out.
        var since = Used.StartValue is { } start ? EnteredInstant.Read(start.OccurredAt) : reader.InForce(Series, at)?.OccurredAt;
        if (Question.EarlierTest is not null || EarlierTestRecords.Of(reader, Question, request, Series, since, at) is not { } earlier)
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
}
