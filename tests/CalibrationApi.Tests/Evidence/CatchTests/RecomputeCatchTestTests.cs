namespace CalibrationApi.Tests.Evidence.CatchTests;

/// <summary>A stored question, evaluated again, gives what it gave; where the file says otherwise, it is told where.</summary>
public sealed class RecomputeCatchTestTests(RecordService service) : IClassFixture<RecordService>
{
    [Fact]
    public async Task Recompute_StoredTest_IsEqualAndChangesNothing()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.CheckScaleAsync();
        await farm.AdoptAsync();
        var id = (await farm.TestAsync()).Id;

        var answer = (await service.WithoutTraceAsync(() => RecomputeAsync(id))).Expect(200).Body;

        Assert.True(answer.Flag("/equal"));
        Assert.Empty(answer.List("/differences"));
        Assert.Equal(answer.Word("/engineVersionNow"), answer.Word("/engineVersionThen"));
    }

    // The history goes on and records change; the stored question is complete without them.
    [Fact]
    public async Task Recompute_AfterEverythingAroundItChanged_IsStillEqual()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.CheckScaleAsync();
        await farm.AdoptAsync();
        var id = (await farm.TestAsync()).Id;
        await farm.AdoptAsync(adoption =>
            adoption.With("/typedIn", Draft.Quantity(0.37, "kg/rev")).With("/occurredAt", "2026-04-01T00:00:00Z")
        );
        await farm.CheckScaleAsync(check => check.With("/readings/0", Farm.Reading(20, 19.98)).With("/occurredAt", "2026-04-01T00:00:00Z"));
        await farm.RetireAsync("machines", farm.Machine);
        await farm.RetireAsync("scales", farm.Scale);

        Assert.True((await RecomputeAsync(id)).Expect(200).Body.Flag("/equal"));
    }

    [Theory]
    [InlineData("json_set(answer, '$.massPerRevolution.value', 0.4)", "#/massPerRevolution/value", "0.4", true)]
    [InlineData("json_set(answer, '$.verdict', 'keep')", "#/verdict", "\"keep\"", true)]
    [InlineData("json_set(answer, '$.catches[1].net.value', 99.5)", "#/catches/1/net/value", "99.5", true)]
    [InlineData("json_remove(answer, '$.headline')", "#/headline", null, true)]
    [InlineData("json_set(answer, '$.extra', 1)", "#/extra", "1", false)]
    [InlineData("json_remove(answer, '$.catches[1]')", "#/catches/1", null, true)]
    [InlineData("json_set(answer, '$.agreement.agree', json('false'))", "#/agreement/agree", "false", true)]
    public async Task Recompute_AnswerAlteredInTheFile_SaysWhatDiffers(string alteration, string pointer, string? stored, bool isRecomputed)
    {
        var farm = await Farm.CreateAsync(service);
        var id = (await farm.TestAsync()).Id;
        Assert.Equal(1, service.Execute($"update catch_tests set answer = {alteration} where id = @id", new { id }));

        var answer = (await RecomputeAsync(id)).Expect(200).Body;

        Assert.False(answer.Flag("/equal"));
        var difference = new Answer(Assert.Single(answer.List("/differences"))!);
        Assert.Equal(pointer, difference.Word("/pointer"));
        Assert.Equal(stored, difference.At("/stored")?.GetValue<string>());
        Assert.Equal(isRecomputed, difference.Has("/recomputed"));
    }

    [Fact]
    public async Task Recompute_QuestionAlteredInTheFile_SaysEveryValueThatFollowsFromIt()
    {
        var farm = await Farm.CreateAsync(service);
        var id = (await farm.TestAsync()).Id;
        service.Execute(
            "update catch_tests set resolved = json_set(resolved, '$.catches[0].gross.value', 19.7) where id = @id",
            new { id }
        );

        var pointers = (await RecomputeAsync(id))
            .Expect(200)
            .Body.List("/differences")
            .Select(difference => difference!["pointer"]!.GetValue<string>())
            .ToArray();

        Assert.Contains("#/massPerRevolution/value", pointers);
        Assert.Contains("#/catches/0/net/value", pointers);
        Assert.DoesNotContain("#/catches/1/net/value", pointers);
    }

    [Fact]
    public async Task Recompute_TestOfAnotherEngineVersion_NamesBoth()
    {
        var farm = await Farm.CreateAsync(service);
        var id = (await farm.TestAsync()).Id;
        service.Execute(
            "update catch_tests set engine_version = '0.9.0', answer = json_set(answer, '$.engineVersion', '0.9.0') where id = @id",
            new { id }
        );

        var answer = (await RecomputeAsync(id)).Expect(200).Body;

        Assert.Equal("0.9.0", answer.Word("/engineVersionThen"));
        Assert.NotEqual("0.9.0", answer.Word("/engineVersionNow"));
        Assert.Equal("#/engineVersion", Assert.Single(answer.List("/differences"))!["pointer"]!.GetValue<string>());
    }

    [Fact]
    public async Task Recompute_UnknownTest_IsNotFound() =>
        await (await RecomputeAsync(Farm.NoRecord)).RefusedAsync(404, null, "not-found");

    private async Task<Reply> RecomputeAsync(string id)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri($"/v1/catch-tests/{id}/recomputations", UriKind.Relative));
        return await service.SendAsync(request);
    }
}
