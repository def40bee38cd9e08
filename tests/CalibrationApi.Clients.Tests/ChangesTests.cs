using System.Globalization;

namespace CalibrationApi.Clients.Tests;

/// <summary>A record is read, changed and saved, and nobody overwrites what somebody else did.</summary>
public sealed class ChangesTests(Season season) : IClassFixture<Season>
{
    [Fact]
    public async Task SaveAsync_OfADraft_ChangesWhatWasChangedAndNothingElse()
    {
        using var client = season.Connect();
        var before = await client.Scales.CreateAsync(Given.Scale());
        before.Draft.Note = "Moved to the new shed.";
        before.Draft.Capacity = Mass.Pounds(200);

        var after = await client.Scales.SaveAsync(before);

        Assert.Equal(before.Id, after.Id);
        Assert.Equal(2, after.Answer.Revision);
        Assert.Equal("Moved to the new shed.", after.Answer.Note);
        Assert.Equal("200 lb", after.Answer.Capacity!.ToString());
        Assert.Equal("0.05 kg", after.Answer.Division!.ToString());
        Assert.Equal(before.Answer.Name, after.Answer.Name);
    }

    [Fact]
    public async Task SaveAsync_Twice_GoesOnFromWhatWasSaved()
    {
        using var client = season.Connect();
        var scale = await client.Scales.CreateAsync(Given.Scale());

        for (var i = 1; i <= 3; i++)
        {
            scale.Draft.Note = i.ToString(CultureInfo.InvariantCulture);
            scale = await client.Scales.SaveAsync(scale);
        }

        Assert.Equal(4, scale.Answer.Revision);
        Assert.Equal("3", scale.Answer.Note);
    }

    [Fact]
    public async Task SaveAsync_AfterSomebodyElseSaved_IsATypedConflictAndKeepsTheirs()
    {
        using var client = season.Connect();
        var id = (await client.Scales.CreateAsync(Given.Scale())).Id;
        var (mine, theirs) = (await client.Scales.GetAsync(id), await client.Scales.GetAsync(id));
        theirs.Draft.Note = "theirs";
        await client.Scales.SaveAsync(theirs);
        mine.Draft.Note = "mine";

        var refused = await Assert.ThrowsAsync<RecordChangedException>(() => client.Scales.SaveAsync(mine));

        Assert.Equal(412, refused.Status);
        Assert.Equal("precondition-failed", refused.Code);
        Assert.Equal("theirs", (await client.Scales.GetAsync(id)).Answer.Note);
    }

    // Each kind has members of its own that a draft must carry through; a machine has the deepest.
    [Fact]
    public async Task SaveAsync_OfEveryKindUnchanged_StoresTheSameDescription()
    {
        using var client = season.Connect();

        await Unchanged(client.Machines, answer => answer.UpdatedAt, answer => answer.Revision);
        await Unchanged(client.Products, answer => answer.UpdatedAt, answer => answer.Revision);
        await Unchanged(client.Lots, answer => answer.UpdatedAt, answer => answer.Revision);
        await Unchanged(client.Scales, answer => answer.UpdatedAt, answer => answer.Revision);
        await Unchanged(client.Containers, answer => answer.UpdatedAt, answer => answer.Revision);
        await Unchanged(client.Plans, answer => answer.UpdatedAt, answer => answer.Revision);
    }

    [Fact]
    public async Task GetAsync_OfAnUnknownId_IsATypedProblem()
    {
        using var client = season.Connect();

        var refused = await Assert.ThrowsAsync<RecordNotFoundException>(() =>
            client.Scales.GetAsync("019d0000-0004-7000-8000-0000000000ff")
        );

        Assert.Equal(404, refused.Status);
    }

    private static async Task Unchanged<TDraft, TAnswer>(
        DescribedRecords<TDraft, TAnswer> records,
        Func<TAnswer, DateTimeOffset?> updatedAt,
        Func<TAnswer, long?> revision
    )
        where TDraft : Microsoft.Kiota.Abstractions.Serialization.IParsable
        where TAnswer : Microsoft.Kiota.Abstractions.Serialization.IParsable
    {
        var id = await records.ListAsync().Select(answer => (string)answer.GetType().GetProperty("Id")!.GetValue(answer)!).FirstAsync();
        var before = await records.GetAsync(id);

        var after = await records.SaveAsync(before);

        Assert.Equal(revision(before.Answer) + 1, revision(after.Answer));
        Assert.Equal(WithoutVersion(before.Answer), WithoutVersion(after.Answer));

        string WithoutVersion(TAnswer answer) =>
            Json.Of(answer)
                .Replace($"\"revision\":{revision(answer)}", "", StringComparison.Ordinal)
                .Replace(
                    updatedAt(answer)!.Value.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture),
                    "",
                    StringComparison.Ordinal
                );
    }
}
