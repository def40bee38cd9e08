using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Testing;
using Xunit.Abstractions;

namespace CalibrationApi.Tests.Plumbing.Access;

/// <summary>What belongs to another workspace answers exactly as what does not exist, wherever its id is written.</summary>
public sealed class ForeignWorkspaceTests(TwoFarms farms, ITestOutputHelper output) : IClassFixture<TwoFarms>
{
    private const string Random = "019d0000-0fff-7000-8000-00000000dead";

    // Whoever runs the installation works on workspaces themselves.
    private IEnumerable<string> InWorkspaces =>
        farms.Routes.Keys.Where(operation => farms.ScopeOf(operation) is not (null or Scope.Operator));

    [Fact]
    public async Task Path_WithTheIdOfAnotherWorkspace_AnswersAsARandomOne()
    {
        var tried = 0;
        foreach (var operation in InWorkspaces.Where(operation => farms.Routes[operation].RoutePattern.Parameters.Count > 0))
        {
            var north = await farms.SampleAsync(operation, farms.North);
            // The body is South's own, so that nothing but the path is foreign.
            var south = await farms.SampleAsync(operation, farms.South);

            var foreign = await farms.SendAsync(operation, south with { Path = north.Path }, farms.South.Full.Text);
            var random = await farms.SendAsync(
                operation,
                south with
                {
                    Path = north.Path.Replace(IdIn(north.Path), Random, StringComparison.Ordinal),
                },
                farms.South.Full.Text
            );

            await foreign.RefusedAsync(404, null, "not-found");
            AssertAlike(random, foreign, operation);
            tried++;
        }

        Assert.True(tried >= 20);
        output.WriteLine($"{tried} operations with an id in the path");
    }

    [Fact]
    public async Task Body_WithTheIdOfAnotherWorkspace_AnswersAsARandomOne()
    {
        var tried = new List<string>();
        foreach (var operation in InWorkspaces)
        {
            var sample = await farms.SampleAsync(operation, farms.South);
            var counterpart = await farms.SampleAsync(operation, farms.North);
            foreach (var pointer in References(sample.Body))
            {
                // Known in North: the one that stands at the same place of North's own request.
                var foreign = await farms.SendAsync(
                    operation,
                    Replaced(sample, pointer, new Draft(counterpart.Body!).At(pointer)!.GetValue<string>()),
                    farms.South.Full.Text
                );
                var random = await farms.SendAsync(operation, Replaced(sample, pointer, Random), farms.South.Full.Text);

                var problem = await foreign.ProblemAsync(422);
                Assert.Contains(problem.Faults, fault => fault.Code == "id-unknown" && fault.Pointer == "#" + pointer);
                AssertAlike(random, foreign, $"{operation} {pointer}");
                tried.Add($"{operation} {pointer}");
            }
        }

        Assert.True(tried.Count >= 18, string.Join(", ", tried));
        output.WriteLine($"{tried.Count} members that name a record: {string.Join(", ", tried)}");
    }

    // The contract says of each member that names a record: Id of ...
    [Fact]
    public async Task Samples_NameEveryRecordThatABodyCanName()
    {
        var contract = ContractDocument.Committed;
        foreach (
            var operation in contract.Operations.Where(operation =>
                InWorkspaces.Contains(operation.OperationId) && operation.RequestSchema is not null
            )
        )
        {
            var body = (await farms.SampleAsync(operation.OperationId, farms.North)).Body!;
            Assert.Equal(Named(contract, operation.RequestSchema!, "").Order(), References(body).Order());
        }
    }

    [Fact]
    public async Task OwnId_ThatIsTakenInAnotherWorkspace_IsFree()
    {
        var tried = 0;
        foreach (
            var operation in InWorkspaces.Where(operation =>
                operation.StartsWith("create", StringComparison.Ordinal)
                || operation is "recordCatchTest" or "adoptValue" or "recordScaleCheck"
            )
        )
        {
            var sample = await farms.SampleAsync(operation, farms.South);
            var taken = await TakenAsync(operation);

            var reply = await farms.SendAsync(operation, Replaced(sample, "/id", taken), farms.South.Full.Text);

            Assert.Equal(taken, reply.Expect(201).Id);
            tried++;
        }

        Assert.Equal(10, tried);
    }

    [Fact]
    public async Task Filters_WithTheIdOfAnotherWorkspace_FindNothing()
    {
        var (north, tried) = (farms.North, 0);
        foreach (
            var (name, id) in new[]
            {
                ("machine", north.Farm.Machine),
                ("product", north.Farm.Product),
                ("lot", north.Farm.Lot),
                ("scale", north.Farm.Scale),
                ("plan", north.Ids["plans"]),
            }
        )
        {
            foreach (
                var list in new[]
                {
                    "history",
                    "catch-tests",
                    name is "scale" ? "scale-checks"
                    : name is "plan" ? "history"
                    : "adoptions",
                }
            )
            {
                Assert.Empty((await GetAsync(farms.South, $"/v1/{list}?{name}={id}")).Expect(200).Body.List("/items"));
                tried++;
            }
        }

        Assert.Empty(
            (await GetAsync(farms.South, $"/v1/machines/{farms.South.Farm.Machine}/values-in-force?product={north.Farm.Product}"))
                .Expect(200)
                .Body.List("/items")
        );
        Assert.Empty((await GetAsync(farms.South, $"/v1/audit?key={north.Full.Id}")).Expect(200).Body.List("/items"));
        output.WriteLine($"{tried + 2} filters");
    }

    [Theory]
    [InlineData("application/json")]
    [InlineData("text/csv")]
    [InlineData("application/x-ndjson")]
    public async Task Lists_InEveryFormat_HoldNothingOfAnotherWorkspace(string media)
    {
        var tried = 0;
        foreach (
            var operation in InWorkspaces.Where(operation =>
                operation.StartsWith("list", StringComparison.Ordinal) && farms.Routes[operation].RoutePattern.Parameters.Count == 0
            )
        )
        {
            var path =
                (await farms.SampleAsync(operation, farms.South)).Path
                + (media.EndsWith("ndjson", StringComparison.Ordinal) ? "?limit=all" : "?limit=1000");

            var reply = (await GetAsync(farms.South, path, media)).Expect(200);

            Assert.NotEmpty(farms.North.AllIds);
            Assert.All(farms.North.AllIds.Append(farms.North.Workspace), id =>
                Assert.DoesNotContain(id, reply.Text, StringComparison.Ordinal)
            );
            tried++;
        }

        Assert.True(tried >= 12);
        output.WriteLine($"{tried} lists as {media}");
    }

    [Fact]
    public async Task Cursor_OfAnotherWorkspace_AnswersAsATamperedOne()
    {
        foreach (var path in new[] { "/v1/machines", "/v1/history", "/v1/keys", "/v1/audit", "/v1/changes" })
        {
            var parameter = path == "/v1/changes" ? "after" : "cursor";
            var site = farms.North;
            farms.Service.Key = null;
            site.Key(Scope.Read);
            site.Key(Scope.Read);
            if (path == "/v1/machines")
                await farms.SendAsync("createMachine", await farms.SampleAsync("createMachine", site), site.Full.Text);
            var next = (await GetAsync(site, $"{path}?limit=1")).Expect(200).Next!;
            var cursor = next[(next.IndexOf($"{parameter}=", StringComparison.Ordinal) + parameter.Length + 1)..];

            var foreign = await GetAsync(farms.South, $"{path}?limit=1&{parameter}={cursor}");
            var tampered = await GetAsync(farms.South, $"{path}?limit=1&{parameter}={cursor[..^4]}AAAA");

            Assert.Equal(200, (await GetAsync(site, $"{path}?limit=1&{parameter}={cursor}")).Status);
            Assert.Equal("cursor-invalid", (await foreign.ProblemAsync(400)).Only().Code);
            AssertAlike(tampered, foreign, path);
        }
    }

    [Fact]
    public async Task IdempotencyKey_OfAnotherWorkspace_IsFree()
    {
        var tried = 0;
        foreach (
            var operation in InWorkspaces.Where(operation =>
                farms.MethodOf(operation) == "POST"
                && farms.ScopeOf(operation) is Scope.Write or Scope.Admin
                && farms.MethodOf(operation) == "POST"
            )
        )
        {
            void WithKey(HttpRequestMessage request) => request.Headers.Add("Idempotency-Key", $"shared-{operation}");
            var first = await farms.SendAsync(operation, await farms.SampleAsync(operation, farms.North), farms.North.Full.Text, WithKey);
            var other = await farms.SendAsync(operation, await farms.SampleAsync(operation, farms.South), farms.South.Full.Text, WithKey);

            Assert.True(first.Status is 200 or 201 && other.Status is 200 or 201, $"{operation}: {first.Text} {other.Text}");
            Assert.NotEqual(first.Id, other.Id);
            Assert.Null(other.Header("Idempotent-Replayed"));
            tried++;
        }

        Assert.Equal(12, tried);
    }

    [Fact]
    public async Task ETag_OfAnotherWorkspace_OpensNothing()
    {
        var path = $"/v1/machines/{farms.North.Farm.Machine}";
        var own = (await GetAsync(farms.North, path)).Expect(200);
        var sample = await farms.SampleAsync("getMachine", farms.North);

        var reply = await farms.SendAsync("getMachine", sample, farms.South.Full.Text, request =>
            request.Headers.TryAddWithoutValidation("If-None-Match", own.ETag)
        );

        Assert.Equal(404, reply.Status);
    }

    // Refusals differ only in the identifier under which the operator finds them.
    private static void AssertAlike(Reply expected, Reply actual, string what)
    {
        Assert.Equal(expected.Status, actual.Status);
        Assert.Equal(WithoutTrace(expected).Replace(Random, "", StringComparison.Ordinal), WithoutTrace(actual));
        Assert.True(expected.Header("Retry-After") == actual.Header("Retry-After"), what);
    }

    private static string WithoutTrace(Reply reply)
    {
        var body = reply.Json.AsObject();
        Assert.True(body.Remove("traceId"));
        return body.ToJsonString();
    }

    private async Task<Reply> GetAsync(Site site, string path, string? accept = null)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(path, UriKind.RelativeOrAbsolute));
        request.Headers.TryAddWithoutValidation("Authorization", $"Bearer {site.Full.Text}");
        if (accept is not null)
            request.Headers.TryAddWithoutValidation("Accept", accept);
        return await farms.Service.SendAsync(request);
    }

    // An id that a record of the kind has in North.
    private async Task<string> TakenAsync(string operation) =>
        (await farms.SendAsync(operation, await farms.SampleAsync(operation, farms.North), farms.North.Full.Text)).Expect(201).Id;

    private static Sample Replaced(Sample sample, string pointer, string id) =>
        sample with
        {
            Body = new Draft(sample.Body!.DeepClone()).With(pointer, id).Body,
        };

    private static string IdIn(string path) => path.Split('/')[3];

    // Places of a body with a text that is an id; its own id is none.
    private static List<string> References(JsonNode? body)
    {
        var found = new List<string>();
        void Walk(JsonNode? node, string pointer)
        {
            switch (node)
            {
                case JsonObject members:
                    foreach (var (name, member) in members)
                        Walk(member, $"{pointer}/{name}");
                    break;
                case JsonArray items:
                    for (var i = 0; i < items.Count; i++)
                        Walk(items[i], $"{pointer}/{i}");
                    break;
                case JsonValue value when value.TryGetValue<string>(out var text) && Guid.TryParse(text, out _):
                    found.Add(pointer);
                    break;
            }
        }

        Walk(body, "");
        return found;
    }

    private static IEnumerable<string> Named(ContractDocument contract, JsonNode schema, string pointer)
    {
        var here = contract.Resolve(schema);
        if (here["items"] is { } items)
            return Named(contract, items, pointer + "/0");
        return (here["properties"]?.AsObject() ?? []).SelectMany(member =>
            member.Value!["description"]?.GetValue<string>().StartsWith("Id of ", StringComparison.Ordinal) == true
                ? [$"{pointer}/{member.Key}"]
                : Named(contract, member.Value!, $"{pointer}/{member.Key}")
        );
    }
}
