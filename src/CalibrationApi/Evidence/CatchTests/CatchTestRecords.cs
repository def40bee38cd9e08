using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.History;
using CalibrationApi.Evidence.Recording;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>Catch tests as evidence: what was entered, what was asked, what was answered, and what came to light since.</summary>
internal sealed class CatchTestRecords() : EvidenceRecords<RecordCatchTestRequest, CatchTestRecord>(EvidenceKind.CatchTest, "catch-tests")
{
    public static CatchTestRecords All { get; } = new();

    /// <summary>The representation of a test that nothing took the place of.</summary>
    /// <param name="test">The test.</param>
    /// <param name="context">What it was kept with.</param>
    /// <param name="timeZone">Time zone of its machine.</param>
    /// <param name="sinceThen">What came to light since.</param>
    public static byte[] Write(CatchTestRecord test, CatchTestContext context, string timeZone, IReadOnlyList<Finding> sinceThen) =>
        KeptJson.Bytes(Answer(test, context, timeZone, sinceThen, null, null));

    /// <summary>What other records say about a test by now.</summary>
    /// <param name="reader">Reads them.</param>
    /// <param name="test">The test.</param>
    /// <param name="used">What it took from the history.</param>
    /// <param name="isBasisKnown">It was told that the test behind the value in force is superseded.</param>
    public static IReadOnlyList<Finding> SinceThen(WorkspaceReader reader, TestedThen test, UsedHistory used, bool isBasisKnown) =>
        new KnownSince
        {
            ErrorOfFailedCheck = reader.FailedLater(test.Scale, test.At)?.Error,
            IsScaleCheckChanged = reader.LastCheck(test.Scale, test.At)?.Id != used.ScaleCheck?.Check,
            IsEarlierTestSuperseded = IsSuperseded(reader, used.EarlierTest?.Test),
            IsStartSuperseded = IsSuperseded(reader, used.StartValue?.Test),
            InForce = used is { ValueInForce: null, StartValue: null } ? SinceThenInForce.Same : InForce(reader, test, used, isBasisKnown),
        }.Findings();

    protected override CatchTestRecord? Find(WorkspaceReader reader, string id) => reader.Test(id);

    protected override void Insert(WorkspaceReader reader, CatchTestRecord record) =>
        CatchTestStore.Insert(reader.Connection, reader.Workspace, record);

    protected override byte[] Body(WorkspaceReader reader, CatchTestRecord record, string? units)
    {
        var context = KeptJson.Read<CatchTestContext>(record.Context);
        return KeptJson.Bytes(
            Answer(
                record,
                context,
                reader.TimeZoneOf(record.Series.Machine),
                SinceThen(
                    reader,
                    new(record.Id, record.Series, record.Scale, record.OccurredAt),
                    context.UsedHistory,
                    context.Findings.Any(finding => finding.Code == HistoryCodes.BasisSuperseded.Word)
                ),
                SupersededBy(reader, record),
                units
            )
        );
    }

    // What is kept as JSON is written as it is, and only taken apart where its units are to change.
    private static CatchTestRecordAnswer Answer(
        CatchTestRecord test,
        CatchTestContext context,
        string timeZone,
        IReadOnlyList<Finding> sinceThen,
        Supersedes? supersededBy,
        string? units
    )
    {
        var display = QuantityConversion.For(units);
        return new CatchTestRecordAnswer
        {
            Id = test.Id,
            OccurredAt = EnteredInstant.Write(test.OccurredAt),
            LocalDate = LocalDate.Of(test.OccurredAt, timeZone),
            ReceivedAt = EnteredInstant.Write(test.ReceivedAt),
            EngineVersion = test.EngineVersion,
            Entered = AsKept<RecordCatchTestRequest>.Entered(test.Entered),
            Resolved = AsKept<CatchTestRequest>.Written(test.Resolved, display),
            Evaluation = AsKept<CatchTestAnswer>.Written(test.Answer, display),
            UsedHistory = context.UsedHistory,
            Findings = context.Findings,
            SinceThen = sinceThen.Count == 0 ? null : AnswerUnits.For(UnitsWord.Metric).Findings(sinceThen),
            SupersededBy = supersededBy,
        };
    }

    private static SinceThenInForce InForce(WorkspaceReader reader, TestedThen test, UsedHistory used, bool isBasisKnown)
    {
        var inForce = reader.InForce(test.Series, test.At);
        var isOfThisTest = inForce?.Test is { } basis && basis == test.Id;
        if (used.ValueInForce is not { } compared)
            return inForce is null || isOfThisTest ? SinceThenInForce.Same : SinceThenInForce.Entered;
        if (inForce?.Id != compared.Adoption)
            return isOfThisTest ? SinceThenInForce.Same : SinceThenInForce.Changed;
        return !isBasisKnown && IsSuperseded(reader, inForce.Test) ? SinceThenInForce.BasisSuperseded : SinceThenInForce.Same;
    }

    private static bool IsSuperseded(WorkspaceReader reader, string? test) =>
        test is not null && reader.Replacement(EvidenceKind.CatchTest, test) is not null;
}

/// <summary>Which test it is, of which something may have come to light.</summary>
/// <param name="Id">Its id; null while it has none, so that no record can refer to it.</param>
/// <param name="Series">What was tested.</param>
/// <param name="Scale">Id of the scale.</param>
/// <param name="At">When it was made.</param>
internal sealed record TestedThen(string? Id, Series Series, string Scale, DateTimeOffset At);
