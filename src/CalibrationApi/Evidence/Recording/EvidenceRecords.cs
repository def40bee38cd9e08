using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.OneWriter;

namespace CalibrationApi.Evidence.Recording;

/// <summary>One kind of evidence. It is only added, and corrected by another record with a reason; all kinds go the same way.</summary>
/// <param name="kind">The kind, see <see cref="EvidenceKind"/>.</param>
/// <param name="path">Plural of its path, for example <c>catch-tests</c>.</param>
internal abstract class EvidenceRecords<TRequest, TRecord>(string kind, string path)
    where TRequest : class, IEvidenceRequest
    where TRecord : class, IEvidenceRecord
{
    /// <summary>The answer to an earlier, equal request, or why there is none; null for a new one.</summary>
    public IResult? Earlier(StoringRequest storing, WorkspaceReader reader, JsonBody<TRequest> body) =>
        storing.Earlier(reader.Connection, body.Fingerprint, () => OfOwnId(reader, body.Value.Id, body.Fingerprint));

    /// <summary>Stores a record with its line in the history, and answers with it.</summary>
    /// <param name="storing">The request.</param>
    /// <param name="workspace">The workspace.</param>
    /// <param name="body">What was sent.</param>
    /// <param name="record">What is kept of it.</param>
    /// <param name="line">Completes the line of the history.</param>
    /// <param name="write">Makes the body of the answer once the record is there; the usual one when null.</param>
    public Task<IResult> StoreAsync(
        StoringRequest storing,
        Workspace workspace,
        JsonBody<TRequest> body,
        TRecord record,
        Func<HistoryEntry, HistoryEntry> line,
        Func<WorkspaceReader, byte[]>? write = null
    ) => storing.RunAsync(body.Fingerprint, connection =>
        {
            var reader = new WorkspaceReader(connection, workspace);
            if (OfOwnId(reader, body.Value.Id, body.Fingerprint) is { } earlier)
                return earlier;
            if (body.Value.Supersedes is { } supersedes && Supersede(reader, supersedes, record) is { } problem)
                return problem;
            Insert(reader, record);
            HistoryStore.Append(connection, workspace, line(Line(body.Value, record)));
            return StoreOutcome.Stored(
                Answer(record, write is null ? Body(reader, record, null) : write(reader), StatusCodes.Status201Created)
            );
        });

    /// <summary>Answers with a stored record; it is never recomputed on the way.</summary>
    public IResult Get(string id, CalibrationDatabase database, Workspace workspace, string? units)
    {
        using var connection = database.Open();
        var reader = new WorkspaceReader(connection, workspace);
        return Find(reader, id) is { } record ? new RecordResult(Body(reader, record, units)) : Pages.NotFound();
    }

    protected abstract TRecord? Find(WorkspaceReader reader, string id);

    protected abstract void Insert(WorkspaceReader reader, TRecord record);

    /// <summary>The representation of a record, with what came to light since.</summary>
    /// <param name="reader">Reads what came to light.</param>
    /// <param name="record">The record.</param>
    /// <param name="units">The word of the query, already checked; null is as asked.</param>
    protected abstract byte[] Body(WorkspaceReader reader, TRecord record, string? units);

    /// <summary>What took the place of a record, as answers say it.</summary>
    protected Supersedes? SupersededBy(WorkspaceReader reader, TRecord record) =>
        reader.Replacement(kind, record.Id) is { } superseded
            ? new Supersedes { Record = superseded.Replacement, Reason = superseded.Reason }
            : null;

    private HistoryEntry Line(TRequest request, TRecord record) =>
        new()
        {
            Kind = kind,
            Record = record.Id,
            RecordedBy = request.RecordedBy,
            OccurredAt = record.OccurredAt,
            ReceivedAt = record.ReceivedAt,
            Supersedes = request.Supersedes?.Record,
            Reason = request.Supersedes?.Reason,
        };

    private StoreOutcome? OfOwnId(WorkspaceReader reader, string? id, string fingerprint)
    {
        if (id is null || Find(reader, id) is not { } earlier)
            return null;
        return earlier.Fingerprint == fingerprint
            ? StoreOutcome.Replayed(Answer(earlier, Body(reader, earlier, null), StatusCodes.Status200OK))
            : Wrong(
                "#/id",
                ErrorCodes.IdTaken,
                "This id already belongs to a record that was created by another body. Use a new id; to correct that record, supersede it."
            );
    }

    private StoredAnswer Answer(TRecord record, byte[] body, int status) =>
        new(status, $"/v1/{path}/{record.Id}", RecordResult.Tag(body), body);

    // Says that a record takes the place of another; a problem when it cannot.
    private ProblemResult? Supersede(WorkspaceReader reader, Supersedes supersedes, TRecord record)
    {
        const string Pointer = "#/supersedes/record";
        if (Find(reader, supersedes.Record!) is null)
            return Wrong(Pointer, ErrorCodes.IdUnknown, "There is no such record of this kind to supersede. Check the id.");
        var supersession = new Supersession(supersedes.Record!, record.Id, supersedes.Reason!, record.ReceivedAt);
        return SupersessionStore.TryInsert(reader.Connection, reader.Workspace, kind, supersession)
            ? null
            : Wrong(Pointer, ErrorCodes.AlreadySuperseded, "That record was already superseded. Supersede the record that took its place.");
    }

    private static ProblemResult Wrong(string pointer, ErrorCode code, string detail) =>
        ProblemResult.Invalid([
            new ProblemError
            {
                Pointer = pointer,
                Code = code,
                Detail = detail,
            },
        ]);
}
