using System.Globalization;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Changes;

namespace CalibrationApi.Changes;

/// <summary>Lists what was stored, in the order in which it was stored.</summary>
internal static class ListChanges
{
    private static readonly ListTable Table = ListTable.Of<ChangeItem>();

    public static async Task<IResult> HandleAsync(
        ChangesQuery query,
        HttpContext context,
        CalibrationDatabase database,
        Workspace workspace,
        Cursors cursors,
        WaitingReaders readers
    )
    {
        var (format, wrongFormat) = PageFormats.Choose(context.Request);
        var (most, wrongLimit) = query.ReadLimit(format);
        var (filter, wait, wrongQuery) = query.Read();
        var (table, wrongTable) = query.ReadTable(format, Table);
        if ((wrongFormat ?? wrongLimit ?? wrongQuery ?? wrongTable) is { } problem)
            return problem;
        // A cursor holds with any filter: it is a place in the line of all changes.
        var scope = $"{workspace} changes";
        var position = ChangePosition.Beginning;
        if (query.Cursor is { } cursor)
        {
            if (cursors.Read(scope, cursor) is not { } text)
                return Pages.WrongCursor(ChangesQuery.AfterParameter);
            position = Position(text);
            if (!database.Read(connection => ChangeStore.Holds(connection, workspace, position)))
                return Restored();
        }

        var after = position.Sequence;
        if (wait > TimeSpan.Zero)
        {
            (after, var refusal) = await readers.UntilChangeAsync(context, workspace, filter, after, wait);
            if (refusal is not null)
                return refusal;
        }

        // Before the changes: what is stored between the two is on this page or after it, and never moved over.
        var newest = database.Read(connection => ChangeStore.Newest(connection, workspace));
        var connection = database.Open();
        var items = ChangeStore
            .List(connection, workspace, filter, after, most + 1)
            .Select(change =>
            {
                var place = Text(new ChangePosition(change.Sequence, change.Mark));
                return (KeptJson.Node(Item(change, cursors.Make(scope, place))), place);
            });
        return new PageResult(format, items, most, place => cursors.Make(scope, place), table, connection)
        {
            Parameter = ChangesQuery.AfterParameter,
            End = last => cursors.Make(scope, last is not null && Position(last).Sequence > newest.Sequence ? last : Text(newest)),
        };
    }

    private static ChangeItem Item(Change change, string cursor) =>
        new()
        {
            Sequence = change.Sequence,
            Kind = change.Kind,
            Id = change.Record,
            Revision = change.Revision,
            What = change.What,
            ReceivedAt = Instants.Text(change.ReceivedAt),
            OccurredAt = change.OccurredAt is { } occurredAt ? EnteredInstant.Write(occurredAt) : null,
            Machine = change.Machine,
            MachineBefore = change.MachineBefore,
            SupersededBy = change.SupersededBy,
            Cursor = cursor,
        };

    // Only a text that was signed here comes back.
    private static ChangePosition Position(string text)
    {
        var parts = text.Split('|');
        return new ChangePosition(long.Parse(parts[0], CultureInfo.InvariantCulture), long.Parse(parts[1], CultureInfo.InvariantCulture));
    }

    private static string Text(ChangePosition position) =>
        string.Create(CultureInfo.InvariantCulture, $"{position.Sequence}|{position.Mark}");

    private static ProblemResult Restored()
    {
        const string Detail =
            "A backup from before this cursor took the place of the database, so changes that you have read may be undone. Read the list from its beginning, and make what you keep equal to it.";
        return ProblemResult.Of(StatusCodes.Status410Gone, ErrorCodes.DatabaseRestored, Detail);
    }
}
