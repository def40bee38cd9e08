namespace CalibrationApi.Clients.Tests;

/// <summary>Workspaces and keys are made, changed and ended, and the audit tells of it.</summary>
public sealed class AdministrationTests(Season season) : IClassFixture<Season>
{
    private static readonly KeyRequest Tablet = new()
    {
        Name = "seed shed tablet",
        Scopes = [KeyRequest_scopes.Read, KeyRequest_scopes.Calculate],
    };

    [Fact]
    public async Task CreateAsync_OfAKey_GivesATextThatOpensWhatItsScopesSay()
    {
        using var administrator = season.Connect();

        var made = await administrator.Keys.CreateAsync(Tablet);

        Assert.StartsWith(made.Start!, made.Key, StringComparison.Ordinal);
        Assert.Equal(["calculate", "read"], made.Scopes!);
        using var tablet = season.Connect(new CalibrationClientOptions { Key = made.Key });
        Assert.NotEmpty(await tablet.Scales.ListAsync().ToListAsync());
        var refused = await Assert.ThrowsAsync<CalibrationException>(() => tablet.Scales.CreateAsync(Given.Scale()));
        Assert.Equal((403, "scope-missing"), (refused.Status, refused.Code));
    }

    [Fact]
    public async Task CreateAsync_OfAKeyOnceMore_ShowsTheKeyWithoutItsText()
    {
        using var client = season.Connect();
        var request = new KeyRequest
        {
            Id = Guid.CreateVersion7().ToString(),
            Name = "spare",
            Scopes = [KeyRequest_scopes.Read],
        };

        var first = await client.Keys.CreateAsync(request);
        var second = await client.Keys.CreateAsync(request);

        Assert.NotNull(first.Key);
        Assert.Equal((first.Id, null), (second.Id, second.Key));
        Assert.Empty(second.AdditionalData);
    }

    [Fact]
    public async Task Key_AsText_IsNotShown()
    {
        using var client = season.Connect();

        var made = await client.Keys.CreateAsync(Tablet);

        Assert.DoesNotContain(made.Key!, $"{made}", StringComparison.Ordinal);
        Assert.DoesNotContain(made.Key!, Json.Of(await client.Keys.GetAsync(made.Id!)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task RotateAsync_OfAKey_GivesAnotherInItsPlace()
    {
        using var client = season.Connect();
        var old = await client.Keys.CreateAsync(Tablet);

        var made = await client.Keys.RotateAsync(old.Id!, new() { Until = old.CreatedAt!.Value.AddDays(7) });

        Assert.NotNull(made.Key);
        Assert.Equal((old.Id, old.Name), (made.Replaces, made.Name));
        var replaced = await client.Keys.GetAsync(old.Id!);
        Assert.Equal((made.Id, "live"), (replaced.ReplacedBy, replaced.State));
        Assert.Equal(old.CreatedAt.Value.AddDays(7), replaced.ExpiresAt);
    }

    [Fact]
    public async Task RevokeAsync_OfAKey_EndsItAtOnce()
    {
        using var client = season.Connect();
        var made = await client.Keys.CreateAsync(Tablet);

        var revoked = await client.Keys.RevokeAsync(made.Id!, new() { Reason = "The tablet was lost." });

        Assert.Equal(("revoked", "The tablet was lost."), (revoked.State, revoked.RevokedBecause));
        using var tablet = season.Connect(new CalibrationClientOptions { Key = made.Key });
        var refused = await Assert.ThrowsAsync<CalibrationException>(() => tablet.Scales.ListAsync().ToListAsync().AsTask());
        Assert.Equal((401, "key-revoked"), (refused.Status, refused.Code));
    }

    [Fact]
    public async Task ListAsync_OfKeys_FollowsTheirPages()
    {
        using var client = season.Connect();
        var made = await client.Keys.CreateAsync(Tablet);

        var keys = await client.Keys.ListAsync(pageSize: 2).Select(key => key.Id).ToListAsync();

        Assert.True(keys.Count > 2);
        Assert.Equal(keys.Count, keys.Distinct().Count());
        Assert.Contains(made.Id, keys);
    }

    [Fact]
    public async Task Workspace_CreatedAndGivenAKey_IsOpenToThatKeyAlone()
    {
        using var operating = season.Connect();
        var workspace = await operating.Workspaces.CreateAsync(new() { Name = "Ottermere farm" });

        var first = await operating.Workspaces.CreateKeyAsync(
            workspace.Id,
            new() { Name = "first administrator", Scopes = [KeyRequest_scopes.Admin, KeyRequest_scopes.Read] }
        );

        Assert.Equal(workspace.Id, first.Workspace);
        using var inside = season.Connect(new CalibrationClientOptions { Key = first.Key });
        Assert.Empty(await inside.Machines.ListAsync().ToListAsync());
        Assert.Equal([first.Id], await inside.Keys.ListAsync().Select(key => key.Id).ToListAsync());
        await Assert.ThrowsAsync<RecordNotFoundException>(() => inside.Machines.GetAsync(Season.Machine));
    }

    [Fact]
    public async Task SaveAsync_OfAWorkspace_RetiresItUnlessSomebodyElseWasFaster()
    {
        using var client = season.Connect();
        var id = (await client.Workspaces.CreateAsync(new() { Name = "lower farm" })).Id;
        var (mine, theirs) = (await client.Workspaces.GetAsync(id), await client.Workspaces.GetAsync(id));
        theirs.Draft.Retired = true;
        await client.Workspaces.SaveAsync(theirs);
        mine.Draft.Name = "Lower Farm";

        await Assert.ThrowsAsync<RecordChangedException>(() => client.Workspaces.SaveAsync(mine));

        Assert.DoesNotContain(id, await client.Workspaces.ListAsync(pageSize: 1).Select(one => one.Id).ToListAsync());
        var kept = (await client.Workspaces.ListAsync(includeRetired: true, pageSize: 1).ToListAsync()).Single(one => one.Id == id);
        Assert.Equal(("lower farm", true), (kept.Name, kept.Retired));
    }

    [Fact]
    public async Task ListAsync_OfTheAudit_TellsWhatAKeyDid()
    {
        using var client = season.Connect();
        var key = await client.Keys.CreateAsync(new() { Name = "weigher", Scopes = [KeyRequest_scopes.Write] });
        using var weigher = season.Connect(new CalibrationClientOptions { Key = key.Key });
        var (first, second) = (
            await weigher.Scales.CreateAsync(Given.Scale("first")),
            await weigher.Scales.CreateAsync(Given.Scale("second"))
        );

        var done = await client
            .Audit.ListAsync(
                new()
                {
                    Key = key.Id,
                    Action = "createScale",
                    OldestFirst = true,
                    PageSize = 1,
                }
            )
            .ToListAsync();

        Assert.Equal([$"/v1/scales/{first.Id}", $"/v1/scales/{second.Id}"], done.Select(item => item.Target));
        Assert.All(done, item => Assert.Equal(("key", key.Id), (item.Actor, item.Key)));
    }

    [Fact]
    public async Task ListRefusals_OfTheWorkspaceAndOfTheInstallation_CountByDayAndCode()
    {
        using var client = season.Connect();

        var ofKeys = await client.Audit.ListRefusalsAsync(pageSize: 1).ToListAsync();
        var ofNobody = await client.Audit.ListRefusalsWithoutKeyAsync(pageSize: 1).ToListAsync();

        Assert.Contains(ofKeys, item => (item.Key, item.Code, item.Count) == (SampleKeys.Revoked, "key-revoked", 3));
        Assert.Contains(ofNobody, item => (item.Key, item.Code) == (null, "key-missing") && item.Count >= 12);
    }
}
