using System.Text;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Storage.Audit;
using CalibrationApi.Storage.OneWriter;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Plumbing.Keeping;

/// <summary>
/// Runs a storing request: once for each Idempotency-Key, in one transaction with the answer that is remembered for it and with its line in
/// the audit.
/// </summary>
/// <remarks>The only way for a handler to write.</remarks>
internal sealed class StoringRequest(HttpContext context)
{
    private const string KeyHeader = "Idempotency-Key";
    private const string ReplayHeader = "Idempotent-Replayed";
    private const int LongestKey = 200;

    private readonly Caller caller = Caller.Of(context);
    private readonly SingleWriter writer = context.RequestServices.GetRequiredService<SingleWriter>();
    private readonly TimeProvider clock = context.RequestServices.GetRequiredService<TimeProvider>();
    private readonly KeysInFlight inFlight = context.RequestServices.GetRequiredService<KeysInFlight>();

    /// <summary>The answer to an earlier, equal request; null when there was none.</summary>
    /// <remarks>Asked before anything is looked up: an answer that was given stands, whatever became of the records it refers to.</remarks>
    /// <param name="reading">A connection.</param>
    /// <param name="fingerprint">Of the request's body.</param>
    /// <param name="ownId">What the sender's own id says; null when no record has it.</param>
    public IResult? Earlier(SqliteConnection reading, string fingerprint, Func<StoreOutcome?> ownId)
    {
        if (!TryReadKey(out var key, out var wrong))
            return wrong;
        var earlier = (key is null ? null : Remembered(reading, key, fingerprint)) ?? ownId();
        return earlier is null ? null : Answer(earlier);
    }

    /// <summary>Stores and answers.</summary>
    /// <param name="fingerprint">Of the request's body.</param>
    /// <param name="store">Writes inside the transaction and gives the answer, or a problem that undoes what it wrote.</param>
    /// <param name="first">Makes the body of the first answer, where that says what is not kept for a repetition.</param>
    public async Task<IResult> RunAsync(string fingerprint, Func<SqliteConnection, StoreOutcome> store, Func<byte[], byte[]>? first = null)
    {
        if (!TryReadKey(out var key, out var wrong))
            return wrong!;
        if (key is null)
            return Answer(await writer.WriteAsync(connection => Noted(connection, store(connection)), Keep, context.RequestAborted), first);

        using var held = inFlight.Take($"{caller.Workspace}\n{Route}\n{key}");
        if (held is null)
        {
            context.Response.Headers.RetryAfter = "1";
            return ProblemResult.Of(
                StatusCodes.Status409Conflict,
                ErrorCodes.IdempotencyInFlight,
                "A request with this Idempotency-Key is being worked on. Wait a second and send it again to get its answer."
            );
        }

        return Answer(
            await writer.WriteAsync(connection => Once(connection, key, fingerprint, store), Keep, context.RequestAborted),
            first
        );
    }

    /// <summary>Replaces what is there already, which no key has to make safe to repeat, and answers.</summary>
    /// <param name="replace">Writes inside the transaction and gives the answer, or a problem that undoes what it wrote.</param>
    public async Task<IResult> ReplaceAsync(Func<SqliteConnection, StoreOutcome> replace) =>
        Answer(await writer.WriteAsync(connection => Noted(connection, replace(connection)), Keep, context.RequestAborted));

    private string Route => $"{context.Request.Method} {context.Request.Path}";

    private static bool Keep(StoreOutcome outcome) => outcome.Problem is null;

    private StoreOutcome Once(SqliteConnection connection, string key, string fingerprint, Func<SqliteConnection, StoreOutcome> store)
    {
        if (Remembered(connection, key, fingerprint) is { } earlier)
            return earlier;
        var outcome = Noted(connection, store(connection));
        if (outcome.Answer is { } answer)
            IdempotencyKeys.Remember(connection, caller.Workspace, Route, key, fingerprint, answer, clock.GetUtcNow());
        return outcome;
    }

    private StoreOutcome? Remembered(SqliteConnection connection, string key, string fingerprint)
    {
        if (IdempotencyKeys.Find(connection, caller.Workspace, Route, key, clock.GetUtcNow()) is not { } earlier)
            return null;
        return earlier.Fingerprint == fingerprint
            ? StoreOutcome.Replayed(earlier.Answer)
            : ProblemResult.Of(
                StatusCodes.Status422UnprocessableEntity,
                ErrorCodes.IdempotencyKeyReused,
                "This Idempotency-Key was used for another body in the last 24 hours. Make a new key for a new request."
            );
    }

    private StoreOutcome Noted(SqliteConnection connection, StoreOutcome outcome)
    {
        if (outcome is { Answer: { } answer, IsReplay: false })
            AuditStore.Append(connection, caller.Workspace, AuditLine.Of(context, caller, answer.Location, clock.GetUtcNow()));
        return outcome;
    }

    private IResult Answer(StoreOutcome outcome, Func<byte[], byte[]>? first = null)
    {
        if (outcome.Problem is { } problem)
            return problem;
        if (outcome.IsReplay)
            context.Response.Headers[ReplayHeader] = "true";
        return !outcome.IsReplay && first is not null
            ? new RecordResult(outcome.Answer! with { Body = first(outcome.Answer.Body) }, isKept: false)
            : new RecordResult(outcome.Answer!);
    }

    // The draft asks for a quoted structured string; scripts send bare tokens, which cannot be mistaken.
    private bool TryReadKey(out string? key, out ProblemResult? wrong)
    {
        (key, wrong) = (null, null);
        var values = context.Request.Headers[KeyHeader];
        if (values.Count == 0)
            return true;
        var text = values[0]!.Trim();
        if (text.Length >= 2 && text[0] == '"' && text[^1] == '"')
            text = text[1..^1];
        if (values.Count == 1 && text.Length is > 0 and <= LongestKey && Ascii.IsValid(text) && !text.Any(char.IsControl))
        {
            key = text;
            return true;
        }

        wrong = ProblemResult.Unreadable(
            new ProblemError
            {
                Header = KeyHeader,
                Code = ErrorCodes.TextWrong,
                Detail = $"Give one text of up to {LongestKey} ASCII characters, for example a new UUID in quotes.",
            }
        );
        return false;
    }
}
