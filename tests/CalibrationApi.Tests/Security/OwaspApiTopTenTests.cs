using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Storage;
using CalibrationApi.Testing;
using CalibrationApi.Tests.Plumbing.Access;
using Microsoft.AspNetCore.Routing;

namespace CalibrationApi.Tests.Security;

/// <summary>
/// One concrete test or more for each item of the OWASP API Security Top 10, edition 2023 (owasp.org/API-Security, CC BY-SA 4.0).
/// The whole of items 1, 2 and 5, every operation with every kind of key, is in <see cref="ForeignWorkspaceTests"/>,
/// <see cref="ScopeMatrixTests"/> and <see cref="KeySchemeTests"/>.
/// </summary>
public sealed partial class OwaspApiTopTenTests(TwoFarms farms) : IClassFixture<TwoFarms>
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

    private static readonly string[] WaysOut =
    [
        "HttpClient",
        "HttpMessageInvoker",
        "SocketsHttpHandler",
        "WebRequest",
        "HttpWebRequest",
        "WebClient",
        "FtpWebRequest",
        "TcpClient",
        "UdpClient",
        "Socket",
        "Dns",
        "Ping",
        "SmtpClient",
        "ClientWebSocket",
        "Process",
    ];

    private const string OfTheDemo = "HttpClient";

    private static readonly string[] WordsForAddresses = ["url", "uri", "href", "callback", "webhook", "endpoint", "proxy", "host"];

    private static readonly string[] OutsideTheContract = ["/healthz/", "/openapi/", "/reference/"];

    [Fact]
    public async Task API1_RecordsOfAnotherWorkspace_AreNotThere()
    {
        var before = farms.Service.RowCounts();
        foreach (var collection in farms.North.Ids.Append(new("machines", farms.North.Farm.Machine)))
        {
            var path = $"/v1/{collection.Key}/{collection.Value}";

            await (await AskAsync(HttpMethod.Get, path, farms.South.Full.Text)).RefusedAsync(404, null, "not-found");
            Assert.Equal(200, (await AskAsync(HttpMethod.Get, path, farms.North.Full.Text)).Status);
        }

        var body = farms.South.Farm.CatchTest.With("/machine", farms.North.Farm.Machine);
        await (await AskAsync(HttpMethod.Post, "/v1/catch-tests", farms.South.Full.Text, body.Text)).RefusedAsync(
            422,
            "#/machine",
            "id-unknown"
        );
        Assert.Equal(before, farms.Service.RowCounts());
    }

    [Fact]
    public async Task API2_GuessedSecret_OpensNothingHoweverMuchOfItIsRight()
    {
        var key = farms.North.Full.Text;
        string[] guesses =
        [
            key[..^1],
            key + "a",
            key[..^1] + (key[^1] == 'a' ? 'b' : 'a'),
            key.ToUpperInvariant(),
            KeyText.Make(farms.North.Full.Id).Text,
            farms.North.Full.Id,
        ];
        foreach (var guess in guesses)
        {
            var reply = await AskAsync(HttpMethod.Get, FirstMachine, guess);

            Assert.Equal(401, reply.Status);
            Assert.StartsWith(
                "Bearer realm=\"calibration\", error=\"invalid_token\"",
                reply.Header("WWW-Authenticate"),
                StringComparison.Ordinal
            );
        }
    }

    [Fact]
    public void API2_DatabaseFile_HoldsNoSecret()
    {
        farms.Service.Execute("pragma wal_checkpoint(truncate)");
        var path = farms.Service.Read<string>("select file from pragma_database_list where name = 'main'");
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using var copy = new MemoryStream();
        file.CopyTo(copy);
        var text = Encoding.Latin1.GetString(copy.ToArray());

        var secret = farms.North.Full.Text[(KeyText.Start(farms.North.Full.Id).Length + 1)..];

        Assert.Contains(farms.North.Full.Id, text, StringComparison.Ordinal);
        Assert.DoesNotContain(secret, text, StringComparison.Ordinal);
        Assert.DoesNotContain(secret[..16], text, StringComparison.Ordinal);
    }

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

        var reply = await AskAsync(HttpMethod.Post, FirstMachine, farms.North.Full.Text, body);

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
            Assert.Contains((await AskAsync(HttpMethod.Get, $"{path}?{query}", farms.North.Full.Text)).Status, (int[])[400, 422]);
        }
    }

    [Fact]
    public async Task API5_MethodThatTheContractDoesNotName_IsNotAllowedAnywhere()
    {
        string[] methods = ["GET", "POST", "PUT", "PATCH", "DELETE", "TRACE"];
        var tried = 0;
        foreach (var path in ContractDocument.Committed.Operations.GroupBy(operation => operation.Path))
        {
            foreach (var method in methods.Except(path.Select(operation => operation.Method)))
            {
                var reply = await AskAsync(
                    HttpMethod.Parse(method),
                    path.Key.Replace("{id}", Farm.NoRecord, StringComparison.Ordinal),
                    farms.North.Full.Text
                );

                await reply.RefusedAsync(405, null, "method-not-allowed");
                Assert.All(path, operation => Assert.Contains(operation.Method, reply.Header("Allow"), StringComparison.Ordinal));
                tried++;
            }
        }

        Assert.True(tried > 100);
    }

    [Fact]
    public async Task API5_AdministratorOfOneWorkspace_RunsNoInstallation()
    {
        var key = farms.North.Key(Scope.Admin).Text;
        var operations = farms.Routes.Keys.Where(operation => farms.ScopeOf(operation) == Scope.Operator).ToArray();

        Assert.NotEmpty(operations);
        foreach (var operation in operations)
            await (await farms.SendAsync(operation, await farms.SampleAsync(operation, farms.North), key)).RefusedAsync(
                403,
                null,
                "scope-missing"
            );
    }

    [Fact]
    public async Task API6_MakingKeys_NeedsTheAdministratorAndIsNotedEachTime()
    {
        JsonObject Wanted(string scope) => new() { ["name"] = "mass", ["scopes"] = new JsonArray(scope) };
        var before = farms.Service.RowCounts();

        foreach (var scope in Scope.All.Except([Scope.Admin]))
            Assert.Equal(
                403,
                (await AskAsync(HttpMethod.Post, "/v1/keys", farms.North.Key(scope).Text, Wanted(Scope.Read).ToJsonString())).Status
            );
        // Nobody gives away what runs the installation.
        var raised = await AskAsync(HttpMethod.Post, "/v1/keys", farms.North.Full.Text, Wanted(Scope.Operator).ToJsonString());
        Assert.Equal(422, raised.Status);
        Assert.Equal(before["audit"], farms.Service.RowCounts()["audit"]);

        for (var made = 1; made <= 5; made++)
        {
            (await AskAsync(HttpMethod.Post, "/v1/keys", farms.North.Full.Text, Wanted(Scope.Read).ToJsonString())).Expect(201);
            Assert.Equal(before["audit"] + made, farms.Service.RowCounts()["audit"]);
        }
    }

    // The service fetches nothing that a caller names: there is no code that could, and no member that could name it.
    [Fact]
    public void API7_Service_HasNoWayToAskAnotherServer()
    {
        foreach (
            var assembly in new[]
            {
                typeof(Program).Assembly,
                typeof(CalibrationDatabase).Assembly,
                typeof(Engine.Answers.Refusal).Assembly,
            }
        )
        {
            using var file = new PEReader(File.OpenRead(assembly.Location));
            var reader = file.GetMetadataReader();
            var used = reader.TypeReferences.Select(handle => reader.GetString(reader.GetTypeReference(handle).Name)).ToHashSet();

            Assert.Contains("Object", used);
            Assert.Empty(used.Intersect(WaysOut).Except([OfTheDemo]));
        }

        // What loads the demonstration at a start with --demo asks the service itself, at its own address; no request gets there.
        var sources = Directory
            .EnumerateFiles(Repository.PathOf("src", "CalibrationApi"), "*.cs", SearchOption.AllDirectories)
            .Where(file =>
                !Path.GetRelativePath(Repository.Root, file).Split(Path.DirectorySeparatorChar).Intersect(["Demo", "obj", "bin"]).Any()
            )
            .ToArray();
        Assert.True(sources.Length > 100);
        Assert.All(sources, file => Assert.DoesNotContain(OfTheDemo, File.ReadAllText(file), StringComparison.Ordinal));
    }

    [Fact]
    public void API7_Contract_TakesNoAddressFromACaller()
    {
        var contract = ContractDocument.Committed;
        var members = contract
            .Operations.SelectMany(operation =>
                (operation.RequestSchema is null ? [] : Members(contract, operation.RequestSchema, "", [])).Concat(
                    (operation.Json["parameters"]?.AsArray() ?? [])
                        .Select(parameter => contract.Resolve(parameter!))
                        .Select(parameter => (Name: parameter["name"]!.GetValue<string>(), Schema: contract.Resolve(parameter["schema"]!)))
                )
            )
            .ToArray();

        Assert.True(members.Length > 200);
        Assert.DoesNotContain(members, member =>
            member.Schema["format"]?.GetValue<string>() is "uri" or "url" or "iri" or "uri-reference" or "hostname" or "ipv4" or "ipv6"
        );
        Assert.DoesNotContain(members, member =>
            Humps().Split(member.Name).Any(word => WordsForAddresses.Contains(word, StringComparer.OrdinalIgnoreCase))
        );
    }

    [Fact]
    public async Task API8_Production_ShowsNothingOfItselfAndOpensNothingToOtherPages()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/v1/units");
        request.Headers.Add("Origin", "https://evil.example");

        var reply = await farms.Service.SendAsync(request);

        Assert.Equal(200, reply.Status);
        Assert.Equal("nosniff", reply.Header("X-Content-Type-Options"));
        Assert.All(
            (string[])["Server", "X-Powered-By", "X-AspNet-Version", "Access-Control-Allow-Origin", "Access-Control-Allow-Credentials"],
            name => Assert.Null(reply.Header(name))
        );
        foreach (
            var path in (string[])
                [
                    "/swagger",
                    "/swagger/v1/swagger.json",
                    "/.git/config",
                    "/appsettings.json",
                    "/calibration.db",
                    "/reference/..%2f..%2fappsettings.json",
                    "/debug",
                    "/metrics",
                ]
        )
            Assert.Equal(404, (await AskAsync(HttpMethod.Get, path, null)).Status);
    }

    [Theory]
    [InlineData("{\"name\":")]
    [InlineData("{\"name\":{\"$type\":\"System.Object\"}}")]
    [InlineData("{\"name\":\"\\ud800\"}")]
    [InlineData("[1]")]
    public async Task API8_RefusedBody_TellsNothingOfTheInside(string body)
    {
        var reply = await AskAsync(HttpMethod.Post, FirstMachine, farms.North.Full.Text, body);

        Assert.Equal(400, reply.Status);
        Assert.DoesNotMatch(
            @"CalibrationApi\.|System\.|Microsoft|SQLite|\.cs\b|   at |Exception",
            reply.Text.Replace("System.Object", "", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void API9_RouteTable_IsTheContractAndNothingElse()
    {
        var routes = farms.Service.Service<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>().ToArray();
        var versioned = routes
            .Where(route => route.RoutePattern.RawText!.StartsWith("/v", StringComparison.Ordinal))
            .SelectMany(route =>
                route
                    .Metadata.GetRequiredMetadata<IHttpMethodMetadata>()
                    .HttpMethods.Select(method => $"{method} {route.RoutePattern.RawText!.TrimEnd('/')}")
            );

        Assert.Equal(
            ContractDocument.Committed.Operations.Select(operation => $"{operation.Method} {operation.Path}").Order(StringComparer.Ordinal),
            versioned.Order(StringComparer.Ordinal)
        );
        var others = routes
            .Select(route => "/" + route.RoutePattern.RawText!.TrimStart('/'))
            .Where(path => path != "/" && !path.StartsWith("/v1/", StringComparison.Ordinal));
        Assert.All(others, path =>
            Assert.Contains(OutsideTheContract, known => path.StartsWith(known.TrimEnd('/'), StringComparison.Ordinal))
        );
    }

    [Theory]
    [InlineData("/v0/units")]
    [InlineData("/v2/units")]
    [InlineData("/units")]
    [InlineData("/api/v1/units")]
    [InlineData("/v1/")]
    [InlineData("/v1/admin")]
    [InlineData("/v1/units/")]
    public async Task API9_AddressThatNobodyPublished_IsNotThere(string path)
    {
        Assert.Equal(404, (await AskAsync(HttpMethod.Get, path, farms.North.Full.Text)).Status);
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
            await AskAsync(HttpMethod.Post, FirstMachine, farms.North.Full.Text, Farm.MachineDraft.With("/name", "=cmd|' /C calc'!A0").Text)
        ).Expect(201);

        var table = (await AskAsync(HttpMethod.Get, $"{FirstMachine}?limit=1000", farms.North.Full.Text, accept: "text/csv"))
            .Expect(200)
            .Text;

        Assert.Contains("'=cmd", table, StringComparison.Ordinal);
        Assert.DoesNotMatch("(?m)(^|,)\"?=cmd", table);
    }

    [GeneratedRegex("(?=[A-Z])|-")]
    private static partial Regex Humps();

    private async Task<Reply> AskAsync(HttpMethod method, string path, string? key, string? body = null, string? accept = null)
    {
        using var request = new HttpRequestMessage(method, new Uri(path, UriKind.Relative));
        if (body is not null)
            request.Content = new ByteArrayContent(Encoding.UTF8.GetBytes(body)) { Headers = { ContentType = new("application/json") } };
        if (key is not null)
            request.Headers.TryAddWithoutValidation("Authorization", $"Bearer {key}");
        if (accept is not null)
            request.Headers.TryAddWithoutValidation("Accept", accept);
        return await farms.Service.SendAsync(request);
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

    private static IEnumerable<(string Name, JsonObject Schema)> Members(
        ContractDocument contract,
        JsonNode schema,
        string name,
        HashSet<JsonObject> seen
    )
    {
        var here = contract.Resolve(schema);
        if (!seen.Add(here))
            return [];
        var below = (here["properties"]?.AsObject() ?? []).SelectMany(member => Members(contract, member.Value!, member.Key, [.. seen]));
        return below.Concat(here["items"] is { } items ? Members(contract, items, name, [.. seen]) : []).Prepend((name, here));
    }
}
