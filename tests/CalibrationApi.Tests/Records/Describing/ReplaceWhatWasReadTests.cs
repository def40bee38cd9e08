using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Records.Describing;

/// <summary>What was read can be sent back, and what is sent is known again by its meaning.</summary>
public sealed class ReplaceWhatWasReadTests(RecordService service) : IClassFixture<RecordService>
{
    private const string OwnId = "01968f00-0000-7000-8000-00000000000";

    public static TheoryData<string> Kinds => DescribedKinds.Paths;

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Replace_WhatWasRead_IsTakenAsItIs(string path)
    {
        var (_, draft) = await DraftAsync(path);
        var created = (await service.PostAsync($"/v1/{path}", draft)).Expect(201);
        var address = $"/v1/{path}/{created.Id}";
        service.Clock.Now += TimeSpan.FromMinutes(1);

        var replaced = (await service.PutAsync(address, new Draft(created.Json.DeepClone()), created.ETag)).Expect(200);

        foreach (var (name, value) in created.Json.AsObject())
            Assert.Equal(name is not ("revision" or "updatedAt"), JsonNode.DeepEquals(value, replaced.Json[name]));
        Assert.Equal(replaced.Bytes, (await service.GetAsync(address)).Bytes);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Replace_MemberOfTheServiceChanged_IsRefusedByItsName(string path)
    {
        var (_, draft) = await DraftAsync(path);
        var created = (await service.PostAsync($"/v1/{path}", draft)).Expect(201);

        foreach (
            var (name, value) in ((string, JsonNode)[])[("revision", 7), ("createdAt", "2020-01-01T00:00:00.000Z"), ("updatedAt", "x")]
        )
        {
            var body = new Draft(created.Json.DeepClone()).With("/" + name, value);
            await (await service.PutAsync($"/v1/{path}/{created.Id}", body, created.ETag)).RefusedAsync(
                422,
                "#/" + name,
                "records-at-odds"
            );
        }

        Assert.Equal(created.Bytes, (await service.GetAsync($"/v1/{path}/{created.Id}")).Bytes);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Replace_HalfOfASurrogatePair_IsRefusedAndNoFailure(string path)
    {
        var (_, draft) = await DraftAsync(path);
        var created = (await service.PostAsync($"/v1/{path}", draft)).Expect(201);
        var members = draft.Text[1..];

        foreach (var broken in (string[])[@"""\ud800"":1", @"""createdAt"":""\ud800""", @"""revision"":""\udc00"""])
            (await service.PutAsync($"/v1/{path}/{created.Id}", $"{{{broken},{members}", created.ETag)).Expect(400);

        Assert.Equal(created.Bytes, (await service.GetAsync($"/v1/{path}/{created.Id}")).Bytes);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Create_SameOwnIdAndMeaningInOtherWords_AnswersWithTheRecord(string path)
    {
        var (_, draft) = await DraftAsync(path);
        var first = (await service.PostAsync($"/v1/{path}", draft.With("/id", OwnId + "3"))).Expect(201);
        var members = draft.Body.AsObject().Reverse().Select(member => $"  \"{member.Key}\" :\n {member.Value!.ToJsonString()}");

        var again = await service.WithoutTraceAsync(() => service.PostAsync($"/v1/{path}", $"{{ {string.Join(",\n", members)} }}"));

        Assert.Equal(first.Bytes, again.Expect(200).Bytes);
    }

    private async Task<(Farm Farm, Draft Draft)> DraftAsync(string path)
    {
        var farm = await Farm.CreateAsync(service);
        return (farm, DescribedKinds.Draft(path, farm));
    }
}
