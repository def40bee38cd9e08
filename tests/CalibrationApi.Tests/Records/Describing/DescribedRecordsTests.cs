using System.Globalization;
using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Records.Describing;

/// <summary>What machines, products, lots, scales, containers and plans have in common: create, read, describe anew, retire.</summary>
public sealed class DescribedRecordsTests(RecordService service) : IClassFixture<RecordService>
{
    private const string OwnId = "01968f00-0000-7000-8000-00000000000";

    public static TheoryData<string> Kinds => DescribedKinds.Paths;

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Create_Description_ReadsBackAsEntered(string path)
    {
        var (_, draft) = await DraftAsync(path);

        var created = (await service.PostAsync($"/v1/{path}", draft.With("/note", "bought used"))).Expect(201);
        var read = (await service.GetAsync(created.Header("Location")!)).Expect(200);

        Assert.Equal($"/v1/{path}/{created.Id}", created.Header("Location"));
        Assert.Equal(created.Bytes, read.Bytes);
        Assert.Equal("\"r1\"", created.ETag);
        Assert.Equal(created.ETag, read.ETag);
        Assert.Equal(1, read.Body.Number("/revision"));
        Assert.False(read.Body.Flag("/retired"));
        Assert.Equal("2026-05-04T10:00:00.000Z", read.Body.Word("/createdAt"));
        foreach (var (name, entered) in draft.Body.AsObject())
            Assert.True(JsonNode.DeepEquals(entered, read.Json[name]), $"{name}: {read.Json[name]}");
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Create_WithoutAnId_GetsAVersionSevenIdOfTheMoment(string path)
    {
        var (_, draft) = await DraftAsync(path);

        var id = Guid.Parse(await service.CreateAsync($"/v1/{path}", draft));

        // RFC 9562, 5.7: the first 48 bits are milliseconds of Unix time.
        Assert.Equal(7, id.Version);
        Assert.Equal(
            service.Clock.Now.ToUnixTimeMilliseconds(),
            long.Parse(id.ToString("N")[..12], NumberStyles.HexNumber, CultureInfo.InvariantCulture)
        );
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Create_SameOwnIdAndBodyAgain_AnswersWithTheRecordAndStoresNothing(string path)
    {
        var (_, draft) = await DraftAsync(path);
        draft.With("/id", OwnId + "1");
        (await service.PostAsync($"/v1/{path}", draft)).Expect(201);

        // Lasting: long after any key would be forgotten.
        service.Clock.Now += TimeSpan.FromDays(400);
        var again = await service.WithoutTraceAsync(() => service.PostAsync($"/v1/{path}", draft));
        service.Clock.Now -= TimeSpan.FromDays(400);

        Assert.Equal(OwnId + "1", again.Expect(200).Id);
        Assert.Equal("true", again.Header("Idempotent-Replayed"));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Create_OwnIdOfAnotherBody_IsRefused(string path)
    {
        var (_, draft) = await DraftAsync(path);
        draft.With("/id", OwnId + "2");
        (await service.PostAsync($"/v1/{path}", draft)).Expect(201);

        var other = await service.WithoutTraceAsync(() => service.PostAsync($"/v1/{path}", draft.With("/name", "another")));

        await other.RefusedAsync(422, "#/id", "id-taken");
    }

    [Theory]
    [InlineData("\"7\"")]
    [InlineData("\"01968F00-0000-7000-8000-00000000000A\"")]
    [InlineData("\"01968f00-0000-4000-8000-00000000000a\"")]
    [InlineData("\"01968f00-0000-7000-0000-00000000000a\"")]
    [InlineData("\"{01968f00-0000-7000-8000-00000000000a}\"")]
    [InlineData("\"01968f000000700080000000000000a0\"")]
    [InlineData("\"\"")]
    public async Task Create_OwnIdThatIsNoLowerCaseVersionSevenId_IsRefused(string id)
    {
        var reply = await service.WithoutTraceAsync(() => service.PostAsync("/v1/products", Farm.ProductDraft.With("/id", Draft.Json(id))));

        await reply.RefusedAsync(422, "#/id", "text-wrong");
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Create_WithoutAName_IsRefused(string path)
    {
        var (_, draft) = await DraftAsync(path);

        var missing = await service.WithoutTraceAsync(() => service.PostAsync($"/v1/{path}", draft.Without("/name")));
        var blank = await service.WithoutTraceAsync(() => service.PostAsync($"/v1/{path}", draft.With("/name", " \t")));
        var tooLong = await service.WithoutTraceAsync(() => service.PostAsync($"/v1/{path}", draft.With("/name", new string('n', 101))));

        await missing.RefusedAsync(422, "#/name", "member-missing");
        await blank.RefusedAsync(422, "#/name", "text-wrong");
        await tooLong.RefusedAsync(422, "#/name", "text-too-long");
    }

    [Theory]
    [InlineData("Süd-Acker, 3. Fuhre")]
    [InlineData("Сеялка № 2")]
    [InlineData("播种机 \"一号\"")]
    [InlineData("🚜🌾")]
    [InlineData("line\nbreak and \\ and \u0001")]
    public async Task Create_TextInAnyScript_ReadsBackAsEntered(string name)
    {
        var id = await service.CreateAsync("/v1/products", Farm.ProductDraft.With("/name", name));

        Assert.Equal(name, (await service.GetAsync($"/v1/products/{id}")).Body.Word("/name"));
    }

    [Fact]
    public async Task Create_NameOfAHundredEmoji_IsCountedByCharactersAndNotByTheirBytes()
    {
        var name = string.Concat(Enumerable.Repeat("🌾", 100));

        var id = await service.CreateAsync("/v1/products", Farm.ProductDraft.With("/name", name));

        Assert.Equal(name, (await service.GetAsync($"/v1/products/{id}")).Body.Word("/name"));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Create_UnknownMember_IsUnreadable(string path)
    {
        var (_, draft) = await DraftAsync(path);

        foreach (var name in (string[])["revision", "createdAt", "workspace", "nmae"])
        {
            var reply = await service.WithoutTraceAsync(() =>
                service.PostAsync($"/v1/{path}", new Draft(draft.Body.DeepClone()).With("/" + name, 1))
            );
            await reply.RefusedAsync(400, "#/" + name, "member-unknown");
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Get_UnknownId_IsNotFound(string path)
    {
        foreach (var id in (string[])[Farm.NoRecord, "7", "%27%20or%201=1"])
            await (await service.GetAsync($"/v1/{path}/{id}")).RefusedAsync(404, null, "not-found");
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Get_WithTheTagItHas_IsNotSentAgain(string path)
    {
        var (_, draft) = await DraftAsync(path);
        var created = (await service.PostAsync($"/v1/{path}", draft)).Expect(201);

        foreach (var tag in (string[])[created.ETag, "W/" + created.ETag, "\"x\", " + created.ETag, "*"])
        {
            var unchanged = (await service.GetAsync($"/v1/{path}/{created.Id}", ifNoneMatch: tag)).Expect(304);
            Assert.Empty(unchanged.Bytes);
            Assert.Equal(created.ETag, unchanged.ETag);
        }

        Assert.NotEmpty((await service.GetAsync($"/v1/{path}/{created.Id}", ifNoneMatch: "\"r2\"")).Expect(200).Bytes);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Replace_WithTheTagItHas_TakesThePlaceOfTheWholeDescription(string path)
    {
        var (_, draft) = await DraftAsync(path);
        var created = (await service.PostAsync($"/v1/{path}", draft.With("/note", "gone after this"))).Expect(201);
        service.Clock.Now += TimeSpan.FromMinutes(1);

        var replaced = (
            await service.PutAsync(
                $"/v1/{path}/{created.Id}",
                draft.Without("/note").With("/name", "renamed").With("/id", created.Id),
                created.ETag
            )
        ).Expect(200);

        Assert.Equal("\"r2\"", replaced.ETag);
        Assert.Equal(2, replaced.Body.Number("/revision"));
        Assert.Equal("renamed", replaced.Body.Word("/name"));
        Assert.False(replaced.Body.Has("/note"));
        Assert.Equal(created.Body.Word("/createdAt"), replaced.Body.Word("/createdAt"));
        Assert.NotEqual(created.Body.Word("/updatedAt"), replaced.Body.Word("/updatedAt"));
        Assert.Equal(replaced.Bytes, (await service.GetAsync($"/v1/{path}/{created.Id}")).Bytes);
        Assert.Equal(200, (await service.GetAsync($"/v1/{path}/{created.Id}", ifNoneMatch: created.ETag)).Status);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Replace_WithoutOrWithAnOldTag_ChangesNothing(string path)
    {
        var (_, draft) = await DraftAsync(path);
        var created = (await service.PostAsync($"/v1/{path}", draft)).Expect(201);
        var address = $"/v1/{path}/{created.Id}";
        var current = (await service.PutAsync(address, draft.With("/name", "first"), created.ETag)).Expect(200);

        var without = await service.PutAsync(address, draft.With("/name", "second"), null);
        var old = await service.PutAsync(address, draft, created.ETag);
        // If-Match compares strongly (RFC 9110, 13.1.1): a weak tag never matches.
        var weak = await service.PutAsync(address, draft, "W/" + current.ETag);

        await without.RefusedAsync(428, null, "precondition-required");
        await old.RefusedAsync(412, null, "precondition-failed");
        await weak.RefusedAsync(412, null, "precondition-failed");
        Assert.Equal(current.Bytes, (await service.GetAsync(address)).Bytes);
    }

    [Theory]
    [InlineData("*")]
    [InlineData("\"r7\", \"r1\"")]
    public async Task Replace_WithAnyTagOrOneOfSeveral_IsDone(string ifMatch)
    {
        var id = await service.CreateAsync("/v1/products", Farm.ProductDraft);

        Assert.Equal("\"r2\"", (await service.PutAsync($"/v1/products/{id}", Farm.ProductDraft, ifMatch)).Expect(200).ETag);
    }

    [Fact]
    public async Task Replace_TwiceAtOnceWithTheSameTag_IsDoneOnce()
    {
        for (var round = 0; round < 5; round++)
        {
            var created = (await service.PostAsync("/v1/products", Farm.ProductDraft)).Expect(201);

            var replies = await Task.WhenAll(
                Enumerable
                    .Range(0, 8)
                    .Select(i => service.PutAsync($"/v1/products/{created.Id}", Farm.ProductDraft.With("/name", $"name {i}"), created.ETag))
            );

            var winner = Assert.Single(replies, reply => reply.Status == 200);
            Assert.All(replies.Where(reply => reply != winner), reply => Assert.Equal(412, reply.Status));
            Assert.Equal(winner.Bytes, (await service.GetAsync($"/v1/products/{created.Id}")).Bytes);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Replace_AnotherIdInTheBody_IsRefused(string path)
    {
        var (_, draft) = await DraftAsync(path);
        var created = (await service.PostAsync($"/v1/{path}", draft)).Expect(201);

        var reply = await service.PutAsync($"/v1/{path}/{created.Id}", draft.With("/id", Farm.NoRecord), created.ETag);

        await reply.RefusedAsync(422, "#/id", "records-at-odds");
        Assert.Equal(created.Bytes, (await service.GetAsync($"/v1/{path}/{created.Id}")).Bytes);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Replace_UnknownId_IsNotFoundWhateverTheTag(string path)
    {
        var (_, draft) = await DraftAsync(path);

        foreach (var tag in (string?[])[null, "*", "\"r1\""])
        {
            var reply = await service.WithoutTraceAsync(() => service.PutAsync($"/v1/{path}/{Farm.NoRecord}", draft, tag));
            await reply.RefusedAsync(404, null, "not-found");
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Replace_BrokenDescription_ChangesNothing(string path)
    {
        var (_, draft) = await DraftAsync(path);
        var created = (await service.PostAsync($"/v1/{path}", draft)).Expect(201);

        var reply = await service.PutAsync($"/v1/{path}/{created.Id}", draft.Without("/name"), created.ETag);

        await reply.RefusedAsync(422, "#/name", "member-missing");
        Assert.Equal(created.Bytes, (await service.GetAsync($"/v1/{path}/{created.Id}")).Bytes);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task List_RetiredRecord_IsLeftOutUnlessAskedFor(string path)
    {
        var (farm, draft) = await DraftAsync(path);
        var id = await service.CreateAsync($"/v1/{path}", draft);
        await farm.RetireAsync(path, id);

        Assert.DoesNotContain(id, await IdsAsync($"/v1/{path}?limit=1000"));
        Assert.DoesNotContain(id, await IdsAsync($"/v1/{path}?limit=1000&includeRetired=false"));
        Assert.Contains(id, await IdsAsync($"/v1/{path}?limit=1000&includeRetired=true"));
        Assert.True((await service.GetAsync($"/v1/{path}/{id}")).Body.Flag("/retired"));
    }

    [Fact]
    public async Task Replace_RetiredRecordWithoutRetired_BringsItBack()
    {
        var created = (await service.PostAsync("/v1/products", Farm.ProductDraft.With("/retired", true))).Expect(201);
        Assert.DoesNotContain(created.Id, await IdsAsync("/v1/products?limit=1000"));

        (await service.PutAsync($"/v1/products/{created.Id}", Farm.ProductDraft, created.ETag)).Expect(200);

        Assert.Contains(created.Id, await IdsAsync("/v1/products?limit=1000"));
    }

    [Fact]
    public async Task Get_InOtherUnits_ConvertsQuantitiesAndHasATagOfItsOwn()
    {
        var farm = await Farm.CreateAsync(service);
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft.With("/meters/0/targetRate", Draft.Quantity(200, "lb/ac")));

        var entered = (await service.GetAsync($"/v1/plans/{plan}")).Expect(200);
        var metric = (await service.GetAsync($"/v1/plans/{plan}?units=metric")).Expect(200);
        var us = (await service.GetAsync($"/v1/plans/{plan}?units=us")).Expect(200);
        var asAsked = (await service.GetAsync($"/v1/plans/{plan}?units=as-asked")).Expect(200);

        // 1 lb/ac is 0.45359237 kg over 0.40468564224 ha (NIST SP 811, B.8).
        Assert.Equal((200, "lb/ac"), entered.Body.Quantity("/meters/0/targetRate"));
        Assert.Equal(200 * 0.45359237 / 0.40468564224, metric.Body.Number("/meters/0/targetRate/value"), 1e-9);
        Assert.Equal((200, "lb/ac"), us.Body.Quantity("/meters/0/targetRate"));
        Assert.Equal(9 / 1.609344, us.Body.Number("/groundSpeed/value"), 1e-9);
        Assert.Equal(entered.Bytes, asAsked.Bytes);
        Assert.Equal(3, new[] { entered.ETag, metric.ETag, us.ETag }.Distinct().Count());
        Assert.Equal(304, (await service.GetAsync($"/v1/plans/{plan}?units=us", ifNoneMatch: us.ETag)).Status);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Get_WrongUnitsWord_IsRefused(string path)
    {
        var fault = (await (await service.GetAsync($"/v1/{path}/{Farm.NoRecord}?units=imperial")).ProblemAsync(422)).Only();

        Assert.Equal(("units", "word-unknown"), (fault.Parameter, fault.Code));
    }

    [Fact]
    public async Task Requests_WithoutABodyOrWithAnotherMethod_AreProblemsToo()
    {
        using var delete = new HttpRequestMessage(HttpMethod.Delete, new Uri("/v1/products/" + Farm.NoRecord, UriKind.Relative));
        using var patch = new HttpRequestMessage(HttpMethod.Patch, new Uri("/v1/products", UriKind.Relative));

        await (await service.PostAsync("/v1/products", "")).RefusedAsync(400, null, "json-broken");
        await (await service.SendAsync(delete)).RefusedAsync(405, null, "method-not-allowed");
        await (await service.SendAsync(patch)).RefusedAsync(405, null, "method-not-allowed");
    }

    private async Task<(Farm Farm, Draft Draft)> DraftAsync(string path)
    {
        var farm = await Farm.CreateAsync(service);
        return (farm, DescribedKinds.Draft(path, farm));
    }

    private async Task<IEnumerable<string>> IdsAsync(string path) =>
        (await service.ItemsAsync(path)).Select(item => item["id"]!.GetValue<string>());
}
