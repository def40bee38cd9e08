using CalibrationApi.Storage.OneWriter;

namespace CalibrationApi.Tests.Plumbing.Keeping;

/// <summary>
/// A request that stores can be repeated: by its key for a day, by its own id for ever. The rules of the key are those of the
/// draft of the IETF for the Idempotency-Key header.
/// </summary>
public sealed class StoringRequestTests(RecordService service) : IClassFixture<RecordService>
{
    public static TheoryData<string> Paths => StoringKinds.Paths;

    public static TheoryData<string> Evidence => StoringKinds.Evidence;

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Key_SameBodyAgain_GetsTheFirstAnswerToTheByte(string path)
    {
        var (_, draft, key) = await PrepareAsync(path);
        var first = (await service.PostAsync($"/v1/{path}", draft, key)).Expect(201);

        var again = (await service.WithoutTraceAsync(() => service.PostAsync($"/v1/{path}", draft, key))).Expect(201);

        Assert.Equal(first.Bytes, again.Bytes);
        Assert.Equal(first.ETag, again.ETag);
        Assert.Equal(first.Header("Location"), again.Header("Location"));
        Assert.Equal(first.ContentType, again.ContentType);
        Assert.Null(first.Header("Idempotent-Replayed"));
        Assert.Equal("true", again.Header("Idempotent-Replayed"));
    }

    [Fact]
    public async Task Key_MethodSpelledOtherwise_GetsTheFirstAnswer()
    {
        var (_, draft, key) = await PrepareAsync("machines");
        var first = (await service.PostAsync("/v1/machines", draft, key)).Expect(201);
        using var request = new HttpRequestMessage(new HttpMethod("Post"), new Uri("/v1/machines", UriKind.Relative))
        {
            Content = new StringContent(draft.Text, System.Text.Encoding.UTF8, "application/json"),
        };
        request.Headers.Add("Idempotency-Key", key);

        var again = await service.WithoutTraceAsync(() => service.SendAsync(request));

        Assert.Equal(first.Bytes, again.Expect(201).Bytes);
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Key_AnotherBody_IsRefused(string path)
    {
        var (_, draft, key) = await PrepareAsync(path);
        (await service.PostAsync($"/v1/{path}", draft, key)).Expect(201);

        var other = await service.WithoutTraceAsync(() =>
            service.PostAsync($"/v1/{path}", draft.With(StoringKinds.TextOf(path), "another"), key)
        );

        await other.RefusedAsync(422, null, "idempotency-key-reused");
    }

    // The answer was given: what happens to the records it refers to afterwards cannot take it back.
    [Theory]
    [MemberData(nameof(Evidence))]
    public async Task Key_RecordsRetiredSince_StillGetsTheFirstAnswer(string path)
    {
        var (farm, draft, key) = await PrepareAsync(path);
        var first = (await service.PostAsync($"/v1/{path}", draft, key)).Expect(201);
        await RetireAllAsync(farm);

        Assert.Equal(first.Bytes, (await service.PostAsync($"/v1/{path}", draft, key)).Expect(201).Bytes);
    }

    [Theory]
    [MemberData(nameof(Evidence))]
    public async Task OwnId_RecordsRetiredSince_StillGetsItsRecord(string path)
    {
        var (farm, draft, _) = await PrepareAsync(path);
        draft.With("/id", NewId());
        var first = (await service.PostAsync($"/v1/{path}", draft)).Expect(201);
        await RetireAllAsync(farm);

        var again = (await service.WithoutTraceAsync(() => service.PostAsync($"/v1/{path}", draft))).Expect(200);

        Assert.Equal(first.Bytes, again.Bytes);
        Assert.Equal("true", again.Header("Idempotent-Replayed"));
    }

    [Fact]
    public async Task Key_TestSupersededSinceItWasAdopted_StillGetsTheFirstAnswer()
    {
        var (farm, draft, key) = await PrepareAsync("adoptions");
        var test = await farm.TestAsync();
        draft.With("/test", test.Id).With("/typedIn", Draft.Quantity(0.363, "kg/rev")).With("/occurredAt", "2026-04-18T08:00:00+02:00");
        var first = (await service.PostAsync("/v1/adoptions", draft, key)).Expect(201);
        await farm.TestAsync(other => other.With("/supersedes", Farm.Supersedes(test.Id)));

        Assert.Equal(first.Bytes, (await service.PostAsync("/v1/adoptions", draft, key)).Expect(201).Bytes);
    }

    [Theory]
    [MemberData(nameof(Evidence))]
    public async Task OwnId_SameBodyAgain_StoresNothing(string path)
    {
        var (_, draft, _) = await PrepareAsync(path);
        draft.With("/id", NewId());
        (await service.PostAsync($"/v1/{path}", draft)).Expect(201);

        var again = (await service.WithoutTraceAsync(() => service.PostAsync($"/v1/{path}", draft))).Expect(200);

        Assert.Equal(draft.Body["id"]!.GetValue<string>(), again.Id);
    }

    [Theory]
    [MemberData(nameof(Evidence))]
    public async Task OwnId_AnotherBody_IsRefused(string path)
    {
        var (_, draft, _) = await PrepareAsync(path);
        draft.With("/id", NewId());
        (await service.PostAsync($"/v1/{path}", draft)).Expect(201);

        var other = await service.WithoutTraceAsync(() =>
            service.PostAsync($"/v1/{path}", draft.With(StoringKinds.TextOf(path), "another"))
        );

        await other.RefusedAsync(422, "#/id", "id-taken");
    }

    [Theory]
    [MemberData(nameof(Evidence))]
    public async Task OwnId_ThatIsNoVersionSevenId_IsRefused(string path)
    {
        var (_, draft, _) = await PrepareAsync(path);

        var reply = await service.WithoutTraceAsync(() => service.PostAsync($"/v1/{path}", draft.With("/id", "test 7")));

        await reply.RefusedAsync(422, "#/id", "text-wrong");
    }

    [Fact]
    public async Task Key_QuotedAndBare_AreTheSameKey()
    {
        var (_, draft, key) = await PrepareAsync("products");
        var first = (await service.PostAsync("/v1/products", draft, key)).Expect(201);

        Assert.Equal(first.Id, (await service.PostAsync("/v1/products", draft, key.Trim('"'))).Expect(201).Id);
    }

    [Fact]
    public async Task Key_OnAnotherPath_IsAnotherKey()
    {
        var (farm, draft, key) = await PrepareAsync("products");
        (await service.PostAsync("/v1/products", draft, key)).Expect(201);

        (await service.PostAsync("/v1/scales", Farm.ScaleDraft, key)).Expect(201);
        (await service.PostAsync("/v1/catch-tests", farm.CatchTest, key)).Expect(201);
    }

    [Fact]
    public async Task Key_AfterARefusal_IsFreeForTheMendedRequest()
    {
        var (_, draft, key) = await PrepareAsync("catch-tests");
        await (
            await service.WithoutTraceAsync(() =>
                service.PostAsync("/v1/catch-tests", new Draft(draft.Body.DeepClone()).With("/element", "no such"), key)
            )
        ).RefusedAsync(422, "#/element", "element-not-in-meter");

        (await service.PostAsync("/v1/catch-tests", draft, key)).Expect(201);
    }

    [Fact]
    public async Task Key_AfterADay_IsForgotten()
    {
        var (_, draft, key) = await PrepareAsync("products");
        var first = (await service.PostAsync("/v1/products", draft, key)).Expect(201);
        var other = new Draft(draft.Body.DeepClone()).With("/name", "another");

        service.Clock.Now += TimeSpan.FromHours(23);
        await (await service.PostAsync("/v1/products", other, key)).RefusedAsync(422, null, "idempotency-key-reused");
        Assert.Equal(first.Id, (await service.PostAsync("/v1/products", draft, key)).Id);
        service.Clock.Now += TimeSpan.FromHours(2);

        Assert.NotEqual(first.Id, (await service.PostAsync("/v1/products", other, key)).Expect(201).Id);
    }

    [Fact]
    public async Task Key_WhileTheFirstRequestIsWorkedOn_IsInFlight()
    {
        var (_, draft, key) = await PrepareAsync("catch-tests");
        using var gate = new ManualResetEventSlim();
        var blocked = service.Service<SingleWriter>().WriteAsync(_ => gate.Wait(TimeSpan.FromSeconds(60)));

        // The writer stands, so that of two equal requests one holds the key and waits, and the other is told so at once.
        var requests = new[] { service.PostAsync("/v1/catch-tests", draft, key), service.PostAsync("/v1/catch-tests", draft, key) };
        var told = await await Task.WhenAny(requests);
        gate.Set();
        Assert.True(await blocked);
        var replies = await Task.WhenAll(requests);

        await told.RefusedAsync(409, null, "idempotency-in-flight");
        Assert.Equal("1", told.Header("Retry-After"));
        var stored = Assert.Single(replies, reply => reply.Status == 201);
        Assert.Equal(stored.Bytes, (await service.PostAsync("/v1/catch-tests", draft, key)).Expect(201).Bytes);
    }

    [Theory]
    [InlineData("products")]
    [InlineData("adoptions")]
    public async Task Key_ManyEqualRequestsAtOnce_StoreOneRecord(string path)
    {
        var (_, draft, key) = await PrepareAsync(path);
        var table = path;
        var before = service.RowCounts()[table];

        var replies = await Task.WhenAll(Enumerable.Range(0, 20).Select(_ => service.PostAsync($"/v1/{path}", draft, key)));

        Assert.Equal(before + 1, service.RowCounts()[table]);
        Assert.All(replies, reply => Assert.Contains(reply.Status, (int[])[201, 409]));
        Assert.Single(replies.Where(reply => reply.Status == 201).Select(reply => reply.Id).Distinct());
    }

    // A client may wait for an answer that never came, and send the request again without the key at hand.
    [Theory]
    [MemberData(nameof(Evidence))]
    public async Task OwnId_ManyEqualRequestsAtOnce_StoreOneRecord(string path)
    {
        var (_, draft, _) = await PrepareAsync(path);
        draft.With("/id", NewId());
        var before = service.RowCounts()["history"];

        var replies = await Task.WhenAll(Enumerable.Range(0, 20).Select(_ => service.PostAsync($"/v1/{path}", draft)));

        Assert.Equal(before + 1, service.RowCounts()["history"]);
        Assert.Single(replies, reply => reply.Status == 201);
        Assert.All(replies, reply => Assert.Contains(reply.Status, (int[])[200, 201]));
    }

    [Theory]
    [InlineData("\"\"")]
    [InlineData("a\tb")]
    public async Task Key_ThatIsNoText_IsUnreadable(string key) => await AssertWrongKeyAsync(key);

    [Fact]
    public async Task Key_TooLongOrGivenTwice_IsUnreadable()
    {
        await AssertWrongKeyAsync(new string('k', 201));
        await AssertWrongKeyAsync("one", "two");
        await AssertWrongKeyAsync("schlüssel");
    }

    [Fact]
    public async Task Key_OfTheGreatestLength_IsTaken() =>
        (await service.PostAsync("/v1/products", Farm.ProductDraft, new string('k', 200))).Expect(201);

    // Key, record and history stand in one transaction: when one cannot be written, none is.
    [Theory]
    [InlineData("catch-tests", "idempotency_keys")]
    [InlineData("catch-tests", "catches")]
    [InlineData("catch-tests", "history")]
    [InlineData("catch-tests", "supersessions")]
    [InlineData("adoptions", "idempotency_keys")]
    [InlineData("adoptions", "history")]
    [InlineData("scale-checks", "history")]
    [InlineData("machines", "idempotency_keys")]
    public async Task Store_OneTableThatCannotBeWritten_LeavesNothingAnywhere(string path, string table)
    {
        var (farm, draft, key) = await PrepareAsync(path);
        if (table == "supersessions")
            draft.With("/supersedes", Farm.Supersedes((await farm.TestAsync()).Id));
        service.Execute($"create trigger broken before insert on {table} begin select raise(abort, 'broken by the test'); end");
        Reply failed;
        try
        {
            failed = await service.WithoutTraceAsync(() => service.PostAsync($"/v1/{path}", draft, key));
        }
        finally
        {
            service.Execute("drop trigger broken");
        }

        await failed.RefusedAsync(500, null, "internal-error");
        // The same request goes through once that is mended.
        (await service.PostAsync($"/v1/{path}", draft, key)).Expect(201);
    }

    // A member that is null says no more than one that is left out; answers leave it out (the contract knows no null).
    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Store_MembersThatAreNull_AreAbsentInAnswers(string path)
    {
        var (_, draft, _) = await PrepareAsync(path);
        string[] optional = path switch
        {
            "catch-tests" => ["note", "setting", "plan", "conditions", "supersedes", "targetRate", "id", "catches/0/net"],
            "adoptions" => ["setting", "test", "meterSpeed", "supersedes", "id"],
            "scale-checks" => ["note", "supersedes", "id", "readings/0/knownUncertainty"],
            "machines" => ["note", "retired", "id", "meters/0/outlets", "meters/0/elements/1/speedLimits"],
            "plans" => ["note", "retired", "id", "meters/0/setting"],
            _ => ["note", "retired", "id"],
        };
        foreach (var name in optional)
            draft.With("/" + name, null);

        var stored = (await service.PostAsync($"/v1/{path}", draft)).Expect(201);

        Assert.DoesNotContain("null", stored.Text, StringComparison.Ordinal);
        Assert.Equal(stored.Bytes, (await service.GetAsync($"/v1/{path}/{stored.Id}")).Expect(200).Bytes);
        Assert.NotEmpty((await service.GetAsync($"/v1/{path}?limit=1000", "text/csv")).Expect(200).Text);
    }

    // The largest number a double holds is 1.797 693 134 862 315 7 E+308 (IEEE 754).
    [Theory]
    [MemberData(nameof(Evidence))]
    public async Task Store_NumberBeyondWhatADoubleHolds_IsRefused(string path)
    {
        var (_, draft, _) = await PrepareAsync(path);
        var (pointer, at) = path switch
        {
            "catch-tests" => ("/catches/0/gross", "/catches/0/gross"),
            "adoptions" => ("/typedIn", "/typedIn/value"),
            _ => ("/readings/0/known", "/readings/0/known"),
        };
        draft.With(pointer, Draft.Json($$"""{ "value": 1e309, "unit": "{{(path == "adoptions" ? "kg/rev" : "kg")}}" }"""));

        var reply = await service.WithoutTraceAsync(() => service.PostAsync($"/v1/{path}", draft));

        await reply.RefusedAsync(422, "#" + at, "number-out-of-range");
    }

    private static string NewId() => Guid.CreateVersion7(new DateTimeOffset(2026, 5, 1, 0, 0, 0, TimeSpan.Zero)).ToString();

    private async Task<(Farm Farm, Draft Draft, string Key)> PrepareAsync(string path)
    {
        var farm = await Farm.CreateAsync(service);
        return (farm, StoringKinds.Draft(path, farm), $"\"{Guid.NewGuid()}\"");
    }

    private static async Task RetireAllAsync(Farm farm)
    {
        foreach (
            var (path, id) in ((string, string)[])
                [("machines", farm.Machine), ("products", farm.Product), ("lots", farm.Lot), ("scales", farm.Scale)]
        )
            await farm.RetireAsync(path, id);
    }

    private async Task AssertWrongKeyAsync(params string[] keys)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri("/v1/products", UriKind.Relative))
        {
            Content = Question.Json(System.Text.Encoding.UTF8.GetBytes(Farm.ProductDraft.Text)),
        };
        foreach (var key in keys)
            Assert.True(request.Headers.TryAddWithoutValidation("Idempotency-Key", key));

        var reply = await service.WithoutTraceAsync(() => service.SendAsync(request));

        await reply.RefusedAsync(400, null, "text-wrong");
        Assert.Equal("Idempotency-Key", reply.Json["errors"]![0]!["header"]!.GetValue<string>());
    }
}
