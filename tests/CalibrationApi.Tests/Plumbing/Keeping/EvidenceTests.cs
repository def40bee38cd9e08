using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Plumbing.Keeping;

/// <summary>Evidence is only ever added; what was wrong is superseded by another record with a reason, and both stay.</summary>
public sealed class EvidenceTests(RecordService service) : IClassFixture<RecordService>
{
    public static TheoryData<string> Paths => StoringKinds.Evidence;

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Supersede_WrongRecord_BothStayAndSayWhatTookWhosePlace(string path)
    {
        var (farm, draft, first) = await PrepareAsync(path);
        var before = (await service.GetAsync($"/v1/{path}/{first.Id}")).Expect(200);

        var second = (
            await service.PostAsync($"/v1/{path}", draft.With("/supersedes", Farm.Supersedes(first.Id, "the tare was wrong")))
        ).Expect(201);

        var old = (await service.GetAsync($"/v1/{path}/{first.Id}", ifNoneMatch: before.ETag)).Expect(200);
        Assert.Equal(second.Id, old.Body.Word("/supersededBy/record"));
        Assert.Equal("the tare was wrong", old.Body.Word("/supersededBy/reason"));
        Assert.True(JsonNode.DeepEquals(before.Json["entered"], old.Json["entered"]));
        Assert.False(second.Body.Has("/supersededBy"));
        Assert.Equal(first.Id, second.Body.Word("/entered/supersedes/record"));
        var lines = (await service.ItemsAsync($"/v1/history?{Filter(path, farm)}")).ToDictionary(line => line["id"]!.GetValue<string>());
        Assert.Equal(second.Id, lines[first.Id]["supersededBy"]!.GetValue<string>());
        Assert.Null(lines[first.Id]["supersedes"]);
        Assert.Equal(first.Id, lines[second.Id]["supersedes"]!.GetValue<string>());
        Assert.Equal("the tare was wrong", lines[second.Id]["reason"]!.GetValue<string>());
        Assert.Null(lines[second.Id]["supersededBy"]);
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Supersede_Twice_IsRefused(string path)
    {
        var (_, draft, first) = await PrepareAsync(path);
        draft.With("/supersedes", Farm.Supersedes(first.Id));
        (await service.PostAsync($"/v1/{path}", draft)).Expect(201);

        var again = await service.WithoutTraceAsync(() => service.PostAsync($"/v1/{path}", draft));

        await again.RefusedAsync(422, "#/supersedes/record", "already-superseded");
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Supersede_ManyAtOnce_OneSucceeds(string path)
    {
        var (_, draft, first) = await PrepareAsync(path);
        draft.With("/supersedes", Farm.Supersedes(first.Id));
        var before = service.RowCounts()["history"];

        var replies = await Task.WhenAll(Enumerable.Range(0, 10).Select(_ => service.PostAsync($"/v1/{path}", draft)));

        var winner = Assert.Single(replies, reply => reply.Status == 201);
        foreach (var loser in replies.Where(reply => reply != winner))
            await loser.RefusedAsync(422, "#/supersedes/record", "already-superseded");
        Assert.Equal(before + 1, service.RowCounts()["history"]);
        Assert.Equal(winner.Id, (await service.GetAsync($"/v1/{path}/{first.Id}")).Body.Word("/supersededBy/record"));
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Supersede_TheCorrectionItself_MakesAChain(string path)
    {
        var (_, draft, first) = await PrepareAsync(path);
        var second = (await service.PostAsync($"/v1/{path}", draft.With("/supersedes", Farm.Supersedes(first.Id)))).Expect(201);
        var third = (await service.PostAsync($"/v1/{path}", draft.With("/supersedes", Farm.Supersedes(second.Id, "wrong again")))).Expect(
            201
        );

        Assert.Equal(second.Id, (await service.GetAsync($"/v1/{path}/{first.Id}")).Body.Word("/supersededBy/record"));
        Assert.Equal(third.Id, (await service.GetAsync($"/v1/{path}/{second.Id}")).Body.Word("/supersededBy/record"));
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Supersede_UnknownRecordOneOfAnotherKindOrItself_IsRefused(string path)
    {
        var (farm, draft, _) = await PrepareAsync(path);
        var otherKind = path == "adoptions" ? (await farm.TestAsync()).Id : (await farm.AdoptAsync()).Id;
        var own = Guid.CreateVersion7(service.Clock.Now).ToString();

        foreach (var record in (string[])[Farm.NoRecord, otherKind, own, "7"])
        {
            draft.With("/id", own).With("/supersedes", Farm.Supersedes(record));
            await (await service.WithoutTraceAsync(() => service.PostAsync($"/v1/{path}", draft))).RefusedAsync(
                422,
                "#/supersedes/record",
                "id-unknown"
            );
        }
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Supersede_WithoutAReasonOrARecord_IsRefused(string path)
    {
        var (_, draft, first) = await PrepareAsync(path);

        var noReason = await service.WithoutTraceAsync(() =>
            service.PostAsync($"/v1/{path}", draft.With("/supersedes", new JsonObject { ["record"] = first.Id }))
        );
        var blankReason = await service.WithoutTraceAsync(() =>
            service.PostAsync($"/v1/{path}", draft.With("/supersedes", Farm.Supersedes(first.Id, "  ")))
        );
        var noRecord = await service.WithoutTraceAsync(() =>
            service.PostAsync($"/v1/{path}", draft.With("/supersedes", new JsonObject { ["reason"] = "x" }))
        );

        await noReason.RefusedAsync(422, "#/supersedes/reason", "member-missing");
        await blankReason.RefusedAsync(422, "#/supersedes/reason", "text-wrong");
        await noRecord.RefusedAsync(422, "#/supersedes/record", "member-missing");
    }

    // A sender may use one id for the test and for the adoption made of it: what supersedes one leaves the other standing.
    [Fact]
    public async Task Supersede_RecordThatSharesItsIdWithAnotherKind_LeavesThatStanding()
    {
        var farm = await Farm.CreateAsync(service);
        var id = Guid.CreateVersion7(service.Clock.Now).ToString();
        await farm.TestAsync(test => test.With("/id", id));
        await farm.AdoptAsync(adoption => adoption.With("/id", id).With("/test", id).With("/typedIn", Draft.Quantity(0.363, "kg/rev")));

        await farm.TestAsync(test => test.With("/supersedes", Farm.Supersedes(id)));

        Assert.True((await service.GetAsync($"/v1/catch-tests/{id}")).Body.Has("/supersededBy"));
        Assert.False((await service.GetAsync($"/v1/adoptions/{id}")).Body.Has("/supersededBy"));
        Assert.Equal(id, Assert.Single(await farm.InForceAsync())!["adoption"]!.GetValue<string>());
        var lines = await service.ItemsAsync($"/v1/history?machine={farm.Machine}");
        Assert.Equal(3, lines.Count);
        Assert.Null(lines.Single(line => line["kind"]!.GetValue<string>() == "adoption")["supersededBy"]);
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Change_OfEvidence_IsNoMethod(string path)
    {
        var (_, draft, first) = await PrepareAsync(path);

        foreach (var method in (HttpMethod[])[HttpMethod.Put, HttpMethod.Patch, HttpMethod.Delete])
        {
            using var request = new HttpRequestMessage(method, new Uri($"/v1/{path}/{first.Id}", UriKind.Relative))
            {
                Content = Question.Json(System.Text.Encoding.UTF8.GetBytes(draft.Text)),
            };
            var reply = await service.WithoutTraceAsync(() => service.SendAsync(request));
            await reply.RefusedAsync(405, null, "method-not-allowed");
            Assert.Equal("GET, HEAD", reply.Header("Allow"));
        }
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Get_Evidence_HasATagUntilSomethingIsSaidOfIt(string path)
    {
        var (_, _, first) = await PrepareAsync(path);

        var read = (await service.GetAsync($"/v1/{path}/{first.Id}")).Expect(200);

        Assert.Equal(first.Bytes, read.Bytes);
        Assert.Equal(first.ETag, read.ETag);
        Assert.Empty((await service.GetAsync($"/v1/{path}/{first.Id}", ifNoneMatch: read.ETag)).Expect(304).Bytes);
        Assert.NotEqual(read.ETag, (await service.GetAsync($"/v1/{path}/{first.Id}?units=us")).Expect(200).ETag);
        await (await service.GetAsync($"/v1/{path}/{Farm.NoRecord}")).RefusedAsync(404, null, "not-found");
    }

    private static string Filter(string path, Farm farm) => path == "scale-checks" ? $"scale={farm.Scale}" : $"machine={farm.Machine}";

    private async Task<(Farm Farm, Draft Draft, Reply First)> PrepareAsync(string path)
    {
        var farm = await Farm.CreateAsync(service);
        var draft = StoringKinds.Draft(path, farm);
        return (farm, draft, (await service.PostAsync($"/v1/{path}", draft)).Expect(201));
    }
}
