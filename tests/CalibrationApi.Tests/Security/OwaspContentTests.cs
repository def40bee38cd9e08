using System.Text;
using System.Text.Json.Nodes;
using CalibrationApi.Testing;
using CalibrationApi.Tests.Plumbing.Access;

namespace CalibrationApi.Tests.Security;

/// <summary>
/// What is taken in, and what goes out. Items 3, 4 and 10 of the OWASP API Security Top 10, edition 2023 (owasp.org/API-Security, CC BY-SA
/// 4.0), one concrete test or more for each.
/// </summary>
public sealed class OwaspContentTests(TwoFarms farms) : IClassFixture<TwoFarms>
{
    private const int MostBytes = 1024 * 1024;
    private const string FirstMachine = "/v1/machines";

    // What only the service may say of a record.
    private static readonly string[] OfTheService =
    [
        "createdAt",
        "updatedAt",
        "receivedAt",
        "workspace",
        "workspaceId",
        "etag",
        "revision",
        "engineVersion",
        "result",
        "verdict",
        "fingerprint",
        "isAdmin",
        "secretHash",
    ];

    [Fact]
    public async Task API3_MembersOfTheService_AreRefusedInEveryBodyAndNothingIsStored()
    {
        var tried = 0;
        foreach (var operation in ContractDocument.Committed.Operations.Where(operation => operation.RequestSchema is not null))
        {
            var sample = await farms.SampleAsync(operation.OperationId, farms.North);
            var known = ContractDocument.Committed.Resolve(operation.RequestSchema!)["properties"]!.AsObject();
            var before = farms.Service.RowCounts();
            foreach (var name in OfTheService.Where(name => !known.ContainsKey(name)))
            {
                var body = sample.Body!.DeepClone();
                body[name] = "mine";

                var reply = await farms.SendAsync(operation.OperationId, sample with { Body = body }, farms.North.Full.Text);

                // When replacing, what was read may come along as it is, but never changed.
                if (operation.Method == "PUT" && name is ("revision" or "createdAt" or "updatedAt"))
                    await reply.RefusedAsync(422, $"#/{name}", "records-at-odds");
                else
                    await reply.RefusedAsync(400, $"#/{name}", "member-unknown");
                tried++;
            }

            Assert.Equal(before, farms.Service.RowCounts());
        }

        Assert.True(tried > 200);
    }

    [Fact]
    public async Task API3_Answers_HoldNoMemberThatTheContractDoesNotName()
    {
        var seen = 0;
        foreach (
            var operation in ContractDocument.Committed.Operations.Where(operation =>
                operation.Method == "GET" && operation.AnswerSchema is not null
            )
        )
        {
            var reply = await farms.SendAsync(
                operation.OperationId,
                await farms.SampleAsync(operation.OperationId, farms.North),
                farms.North.Full.Text
            );

            Assert.Empty(Unnamed(operation.AnswerSchema!, reply.Expect(200).Json, operation.OperationId));
            seen++;
        }

        Assert.True(seen > 20);
    }

    public static TheoryData<string, int[]> TooMuch =>
        new()
        {
            { new string(' ', MostBytes + 1), [413] },
            { new string('[', 50_000), [400] },
            { string.Concat(Enumerable.Repeat("{\"a\":", 5000)), [400] },
            { "{\"name\":1e400}", [400] },
            { $"{{\"name\":\"air seeder\",\"workingWidth\":{{\"value\":{new string('9', 400)},\"unit\":\"m\"}}}}", [422] },
            { $"{{\"name\":\"air seeder\",\"tanks\":[{string.Join(',', Enumerable.Repeat("{\"name\":\"t\"}", 50_000))}]}}", [422] },
            { $"{{\"name\":\"{new string('a', 500_000)}\"}}", [422] },
        };

    [Theory]
    [MemberData(nameof(TooMuch))]
    public async Task API4_MoreThanAnyMachineNeeds_IsRefusedAndNothingIsStored(string body, int[] statuses)
    {
        var before = farms.Service.RowCounts();

        var reply = await farms.AskAsync(HttpMethod.Post, FirstMachine, farms.North.Full.Text, body);

        Assert.Contains(reply.Status, statuses);
        Assert.Equal(before, farms.Service.RowCounts());
        // An answer repeats no more of a request than it takes to find the fault.
        Assert.InRange(reply.Bytes.Length, 1, 32 * 1024);
    }

    [Theory]
    [InlineData("limit=1000000")]
    [InlineData("limit=-1")]
    [InlineData("limit=1e9")]
    public async Task API4_PageLargerThanAllowed_IsRefused(string query)
    {
        foreach (var list in ContractDocument.Committed.Operations.Where(operation => operation.Takes("limit")))
        {
            var path = list.Path.Replace("{id}", farms.North.Farm.Machine, StringComparison.Ordinal);
            Assert.Contains((await farms.AskAsync(HttpMethod.Get, $"{path}?{query}", farms.North.Full.Text)).Status, (int[])[400, 422]);
        }
    }

    // Nothing is fetched from others; what is taken from them are the lines of a batch and texts that end in a table.
    [Fact]
    public async Task API10_LinesOfABatch_AreEachHeldToTheRulesOfASingleRequest()
    {
        var sample = await farms.SampleAsync("evaluateMeterSpeedBatch", farms.North);
        var good = sample.Body!.ToJsonString();
        string[] lines =
        [
            good,
            "{",
            "{\"$ref\":\"file:///etc/passwd\"}",
            new string('[', 5000),
            good.Insert(1, "\"result\":1,"),
            "\"" + new string('x', 200_000) + "\"",
            good,
        ];
        using var request = new HttpRequestMessage(HttpMethod.Post, sample.Path)
        {
            Content = new StringContent(string.Join('\n', lines), Encoding.UTF8, sample.Media),
        };
        request.Content.Headers.ContentType!.CharSet = null;
        request.Headers.Authorization = new("Bearer", farms.North.Full.Text);

        var answers = (await farms.Service.SendAsync(request))
            .Expect(200)
            .Text.TrimEnd('\n')
            .Split('\n')
            .Select(line => JsonNode.Parse(line)!)
            .ToArray();

        Assert.Equal(lines.Length, answers.Length);
        Assert.All(answers[1..^1], answer => Assert.InRange(answer["problem"]!["status"]!.GetValue<int>(), 400, 422));
        Assert.All((JsonNode[])[answers[0], answers[^1]], answer => Assert.Null(answer["problem"]));
    }

    [Fact]
    public async Task API10_TextThatASpreadsheetWouldRun_LeavesAsText()
    {
        (
            await farms.AskAsync(
                HttpMethod.Post,
                FirstMachine,
                farms.North.Full.Text,
                Farm.MachineDraft.With("/name", "=cmd|' /C calc'!A0").Text
            )
        ).Expect(201);

        var table = (await farms.AskAsync(HttpMethod.Get, $"{FirstMachine}?limit=1000", farms.North.Full.Text, accept: "text/csv"))
            .Expect(200)
            .Text;

        Assert.Contains("'=cmd", table, StringComparison.Ordinal);
        Assert.DoesNotMatch("(?m)(^|,)\"?=cmd", table);
    }

    private static IEnumerable<string> Unnamed(JsonNode schema, JsonNode? value, string where)
    {
        var here = ContractDocument.Committed.Resolve(schema);
        return value switch
        {
            JsonObject members when here["properties"] is JsonObject known => members.SelectMany(member =>
                known[member.Key] is { } own ? Unnamed(own, member.Value, $"{where}/{member.Key}") : [$"{where}/{member.Key}"]
            ),
            JsonArray items when here["items"] is { } item => items.SelectMany(one => Unnamed(item, one, where)),
            _ => [],
        };
    }
}
