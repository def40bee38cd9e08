using CalibrationApi.Storage.History;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests.History;

public sealed class HistoryStoreTests : IDisposable
{
    private const string Local = TestDatabase.Local;
    private readonly TestDatabase database = TestDatabase.Empty();
    private readonly SqliteConnection connection;

    public HistoryStoreTests() => connection = database.Open();

    public static TheoryData<string> Filters => [.. HistoryFilters.Members.Select(member => member.Name)];

    [Fact]
    public void List_AfterAppend_GivesTheSameLine()
    {
        var line = Given.Line(1) with
        {
            Supersedes = Given.Id(2),
            Reason = "wrong tare",
            OccurredAt = new DateTimeOffset(2026, 4, 18, 6, 40, 0, TimeSpan.FromHours(2)),
        };

        HistoryStore.Append(connection, Local, line);

        var (entry, position) = Assert.Single(List());
        Assert.Equal(line with { Sequence = entry.Sequence }, entry);
        Assert.Equal(line.OccurredAt.Offset, entry.OccurredAt.Offset);
        Assert.Equal(new HistoryPosition("2026-04-18T04:40:00.000Z", entry.Sequence), position);
    }

    [Fact]
    public void List_LineWithOnlyWhatIsNeeded_GivesNothingForTheRest()
    {
        var line = new HistoryEntry
        {
            Kind = "scale-check",
            Record = Given.Id(1),
            OccurredAt = Given.Noon,
            ReceivedAt = Given.Noon,
        };

        HistoryStore.Append(connection, Local, line);

        var entry = Assert.Single(List()).Entry;
        Assert.Equal(line with { Sequence = entry.Sequence }, entry);
    }

    [Fact]
    public void Newest_LinesOfAnyWorkspace_IsTheNumberOfTheLast()
    {
        Assert.Equal(0, HistoryStore.Newest(connection));

        HistoryStore.Append(connection, Local, Given.Line(1));
        HistoryStore.Append(connection, Local, Given.Line(2));

        Assert.Equal(List().Max(line => line.Entry.Sequence), HistoryStore.Newest(connection));
    }

    [Theory]
    [InlineData("catch-test", false, false)]
    [InlineData("catch-test", true, true)]
    [InlineData("adoption", false, true)]
    [InlineData("scale-check", false, true)]
    public void IsMoreKnown_OfWhatWasAddedSince_DependsOnItsKind(string kind, bool supersedes, bool isMore)
    {
        HistoryStore.Append(connection, Local, Given.Line(1) with { Kind = "adoption" });
        var seen = HistoryStore.Newest(connection);
        Assert.False(HistoryStore.IsMoreKnown(connection, Local, seen));

        HistoryStore.Append(connection, Local, Given.Line(2) with { Kind = kind, Supersedes = supersedes ? Given.Id(1) : null });

        Assert.Equal(isMore, HistoryStore.IsMoreKnown(connection, Local, seen));
    }

    [Theory]
    [MemberData(nameof(Filters))]
    public void List_FilteredByOneMember_GivesTheLinesThatFitAndNoOthers(string member)
    {
        HistoryStore.Append(connection, Local, Given.Line(1));
        HistoryStore.Append(connection, Local, Other(member));
        HistoryStore.Append(
            connection,
            Local,
            new HistoryEntry
            {
                Kind = "scale-check",
                Record = Given.Id(3),
                OccurredAt = Given.Noon.AddYears(member == "Until" ? 1 : -1),
                ReceivedAt = Given.Noon,
            }
        );
        var filter = HistoryFilters.By(typeof(HistoryFilter).GetProperty(member)!);

        Assert.Equal(3, List().Count());
        Assert.Equal([Given.Id(1)], List(filter).Select(line => line.Entry.Record));
        Assert.Equal([Given.Id(1)], List(filter with { NewestFirst = true }).Select(line => line.Entry.Record));
    }

    [Fact]
    public void List_FilteredByEverything_GivesTheLineThatFitsAll()
    {
        HistoryStore.Append(connection, Local, Given.Line(1));
        foreach (var member in HistoryFilters.Members)
            HistoryStore.Append(connection, Local, Other(member.Name));

        Assert.Equal([Given.Id(1)], List(HistoryFilters.By([.. HistoryFilters.Members])).Select(line => line.Entry.Record));
    }

    [Fact]
    public void List_FromAndUntil_TakeTheFirstInstantAndNotTheLast()
    {
        for (var hour = 1; hour <= 4; hour++)
            HistoryStore.Append(connection, Local, Given.Line(hour) with { OccurredAt = Given.Noon.AddHours(hour) });

        // The same instants written with another offset.
        var filter = new HistoryFilter
        {
            From = Given.Noon.AddHours(2).ToOffset(TimeSpan.FromHours(9)),
            Until = Given.Noon.AddHours(4).ToOffset(TimeSpan.FromHours(-3)),
        };

        Assert.Equal([Given.Id(2), Given.Id(3)], List(filter).Select(line => line.Entry.Record));
    }

    [Fact]
    public void List_EachOrder_IsTheOtherBackwards()
    {
        Scatter();

        var oldestFirst = List(new HistoryFilter()).Select(line => line.Entry).ToArray();
        var newestFirst = List(new HistoryFilter { NewestFirst = true }).Select(line => line.Entry);

        Assert.Equal(oldestFirst.OrderBy(entry => entry.OccurredAt).ThenBy(entry => entry.Sequence), oldestFirst);
        Assert.Equal(oldestFirst.Reverse(), newestFirst);
    }

    [Theory]
    [InlineData(1, false)]
    [InlineData(1, true)]
    [InlineData(7, false)]
    [InlineData(7, true)]
    [InlineData(60, false)]
    [InlineData(60, true)]
    public void List_PageByPage_LosesAndRepeatsNothingAmongEqualTimes(int most, bool newestFirst)
    {
        Scatter();
        var filter = new HistoryFilter { NewestFirst = newestFirst };
        var seen = new List<HistoryEntry>();
        HistoryPosition? after = null;
        while (true)
        {
            var page = HistoryStore.List(connection, Local, filter, after, most).ToArray();
            if (page is [])
                break;
            seen.AddRange(page.Select(line => line.Entry));
            after = page[^1].Position;
        }

        Assert.Equal(List(filter).Select(line => line.Entry), seen);
        Assert.Equal(60, seen.Select(entry => entry.Record).Distinct().Count());
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void List_PageByPageWithAFilter_StaysWithinIt(bool newestFirst)
    {
        Scatter();
        var filter = new HistoryFilter
        {
            Verdict = "keep",
            From = Given.Noon.AddHours(1),
            NewestFirst = newestFirst,
        };
        var first = HistoryStore.List(connection, Local, filter, null, 4).ToArray();

        var rest = HistoryStore.List(connection, Local, filter, first[^1].Position, 1000);

        Assert.Equal(List(filter).Select(line => line.Entry), first.Concat(rest).Select(line => line.Entry));
    }

    [Fact]
    public void List_SaysWhatTookThePlaceOfALine()
    {
        HistoryStore.Append(connection, Local, Given.Line(1));
        HistoryStore.Append(connection, Local, Given.Line(2) with { Supersedes = Given.Id(1) });
        SupersessionStore.TryInsert(connection, Local, "catch-test", Given.Supersession(1, 2));

        Assert.Equal(
            [(Given.Id(1), Given.Id(2)), (Given.Id(2), null)],
            List().Select(line => (line.Entry.Record, line.Entry.SupersededBy))
        );
    }

    [Fact]
    public void List_IsReadLineByLine()
    {
        Scatter();

        // What was read stays readable while more is appended through another connection.
        using var lines = HistoryStore.List(connection, Local, new HistoryFilter(), null, 1000).GetEnumerator();
        Assert.True(lines.MoveNext());
        using (var other = database.Open())
        {
            HistoryStore.Append(other, Local, Given.Line(100) with { OccurredAt = Given.Noon.AddYears(1) });
        }

        var count = 1;
        while (lines.MoveNext())
            count++;
        Assert.Equal(60, count);
    }

    public void Dispose()
    {
        connection.Dispose();
        database.Dispose();
    }

    // A line that differs in the one member that is filtered by.
    private static HistoryEntry Other(string member)
    {
        var line = Given.Line(2);
        switch (member)
        {
            case nameof(HistoryFilter.From):
                return line with { OccurredAt = Given.Noon.AddHours(-1) };
            case nameof(HistoryFilter.Until):
                return line with { OccurredAt = Given.Noon.AddHours(1) };
            default:
                typeof(HistoryEntry)
                    .GetProperty(member)!
                    .SetValue(line, member == nameof(HistoryFilter.Kind) ? "adoption" : "something else");
                return line;
        }
    }

    // Sixty lines at five times, in no order.
    private void Scatter()
    {
        for (var i = 0; i < 60; i++)
            HistoryStore.Append(
                connection,
                Local,
                Given.Line(i) with
                {
                    OccurredAt = Given.Noon.AddHours(i * 7 % 5),
                    Verdict = i % 3 == 0 ? "keep" : "adopt",
                }
            );
    }

    private IEnumerable<(HistoryEntry Entry, HistoryPosition Position)> List(HistoryFilter? filter = null) =>
        HistoryStore.List(connection, Local, filter ?? new HistoryFilter(), null, 1000);
}
