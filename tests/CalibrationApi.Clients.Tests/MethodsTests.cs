using System.Net;
using System.Reflection;
using System.Text;
using System.Web;

namespace CalibrationApi.Clients.Tests;

/// <summary>The client has a method for every operation of the contract, and its methods take what the operations take.</summary>
public sealed class MethodsTests
{
    private const string Id = "some-id";

    private static readonly DateTimeOffset Then = new(2026, 4, 13, 7, 35, 0, TimeSpan.FromHours(2));

    private static readonly HistoryFilter EverythingSet = new()
    {
        Machine = "m",
        Meter = "front",
        Element = "coarse roller",
        Product = "p",
        Lot = "l",
        Scale = "s",
        Plan = "f",
        Verdict = Verdicts.Keep,
        From = Then,
        Until = Then.AddDays(1),
        OldestFirst = true,
        Units = UnitSystem.Metric,
        PageSize = 50,
    };

    private static readonly ValueInForceFilter EveryValueSet = new()
    {
        Meter = "front",
        Element = "coarse roller",
        Setting = "3",
        Product = "p",
        At = Then,
        PageSize = 50,
    };

    private static readonly ChangeFilter AllOfChanges = new()
    {
        Kind = "plan",
        Machine = "m",
        PageSize = 50,
    };

    private static readonly AuditFilter WholeAudit = new()
    {
        Key = "k",
        Action = "createKey",
        From = Then,
        Until = Then.AddDays(1),
        OldestFirst = true,
        PageSize = 50,
    };

    public static TheoryData<string> Histories => ["/v1/history", "/v1/catch-tests", "/v1/adoptions", "/v1/scale-checks"];

    public static TheoryData<string> Described => ["/v1/machines", "/v1/products", "/v1/lots", "/v1/scales", "/v1/containers", "/v1/plans"];

    public static TheoryData<string> Administered =>
        ["/v1/workspaces", "/v1/keys", "/v1/audit", "/v1/audit/refusals", "/v1/audit/refusals/without-key"];

    [Fact]
    public async Task EveryOperation_OfTheContract_HasAMethod()
    {
        var requests = await CallEverythingAsync();
        var reached = requests
            .Select(request => $"{request.Method} {request.Target.Split('?')[0].Replace(Id, "{id}", StringComparison.Ordinal)}")
            .ToHashSet();
        var operations = ContractSchema.Operations().ToArray();

        Assert.NotEmpty(operations);
        Assert.True(
            operations.All(reached.Contains),
            $"The client has no method for {string.Join(", ", operations.Except(reached))}. Add one to src/Clients/CSharp, and its call to {nameof(CallEverythingAsync)}."
        );
        Assert.Empty(reached.Except(operations));
    }

    [Theory]
    [InlineData("PlanCatchAsync", "PlanCatchesAsync")]
    [InlineData("EvaluateMeterSpeedAsync", "EvaluateMeterSpeedsAsync")]
    [InlineData("EvaluateBulkDensityAsync", "EvaluateBulkDensitiesAsync")]
    [InlineData("EvaluateDriveWheelTurnsAsync", "EvaluateManyDriveWheelTurnsAsync")]
    public void Calculation_WithItsStreamOfQuestions_IsNamedAsItIsRead(string one, string many)
    {
        var names = OfCalculations().Select(method => method.Name).ToArray();

        Assert.Contains(one, names);
        Assert.Contains(many, names);
    }

    [Theory]
    [MemberData(nameof(Histories))]
    public async Task HistoryFilter_WithEverythingSet_SendsEveryParameterOfTheOperation(string path) =>
        await HasEveryParameter(path, ContractSchema.QueryOf(path));

    [Theory]
    [MemberData(nameof(Described))]
    public async Task ListAsync_WithEverythingSet_SendsEveryParameterOfTheOperation(string path) =>
        await HasEveryParameter(path, ContractSchema.QueryOf(path));

    [Theory]
    [MemberData(nameof(Administered))]
    public async Task ListAsync_OfWhatAdministratorsSeeWithEverythingSet_SendsEveryParameterOfTheOperation(string path) =>
        await HasEveryParameter(path, ContractSchema.QueryOf(path));

    [Fact]
    public async Task ListValuesInForceAsync_WithEverythingSet_SendsEveryParameterOfTheOperation() =>
        await HasEveryParameter($"/v1/machines/{Id}/values-in-force", ContractSchema.QueryOf("/v1/machines/{id}/values-in-force"));

    // How long to wait is the business of the client: ChangeFeedTests.
    [Fact]
    public async Task ListAsync_OfChangesWithEverythingSet_SendsEveryParameterButTheTimeToWait() =>
        await HasEveryParameter("/v1/changes", ContractSchema.QueryOf("/v1/changes").Where(name => name != "wait"));

    [Fact]
    public async Task Times_InTheQuery_KeepTheirOffset()
    {
        var request = (await CallEverythingAsync()).Single(one => one.Target.StartsWith("/v1/history?", StringComparison.Ordinal));

        var query = HttpUtility.ParseQueryString(request.Target.Split('?')[1]);

        Assert.Equal("2026-04-13T07:35:00.0000000+02:00", query["from"]);
    }

    [Fact]
    public async Task Id_WithASlash_StaysInsideItsPath()
    {
        var wire = new Wire { InnerHandler = new AnswersAnything() };
        using var client = new CalibrationClient(new Uri("http://service.invalid/calibration/"), new() { Transport = wire });

        await client.Scales.GetAsync("../machines");

        Assert.Equal("/calibration/v1/scales/..%2Fmachines", Assert.Single(wire.Requests).Target);
    }

    private static async Task HasEveryParameter(string path, IEnumerable<string> names)
    {
        var request = (await CallEverythingAsync()).Single(one => one.Method == "GET" && one.Target.Split('?')[0] == path);
        var sent = HttpUtility.ParseQueryString(request.Target.Split('?')[1]).AllKeys;

        // Pages are followed by the client, and it reads no tables.
        Assert.Equal(names.Except(["cursor", "separator", "bom"]).Order(StringComparer.Ordinal), sent.Order(StringComparer.Ordinal));
    }

    /// <summary>Calls every method once and gives what it sent.</summary>
    private static async Task<IReadOnlyList<Wire.Sent>> CallEverythingAsync()
    {
        var wire = new Wire { InnerHandler = new AnswersAnything() };
        using var client = new CalibrationClient(new Uri("http://service.invalid"), new() { Transport = wire });

        await client.GetUnitsAsync();
        await client.GetCodesAsync();

        await CallAsync(client.Calculations);

        await CallAsync(client.Machines, new());
        await CallAsync(client.Products, new());
        await CallAsync(client.Lots, new());
        await CallAsync(client.Scales, new());
        await CallAsync(client.Containers, new());
        await CallAsync(client.Plans, new());
        await client.Machines.ListValuesInForceAsync(Id, EveryValueSet, UnitSystem.Us).ToListAsync();
        await client.Plans.PlanCatchAsync(Id);
        await client.Plans.SetUpAsync(Id);

        await CallAsync(client.CatchTests, new());
        await CallAsync(client.Adoptions, new());
        await CallAsync(client.ScaleChecks, new());
        await client.CatchTests.RecomputeAsync(Id);
        await client.History.ListAsync(EverythingSet).ToListAsync();
        await client.Changes.ListAsync(AllOfChanges, after: "c").ToListAsync();

        await CallAsync(client.Workspaces, new());
        await client.Workspaces.ListAsync(includeRetired: true, pageSize: 10).ToListAsync();
        await client.Workspaces.CreateKeyAsync(Id, new());
        await client.Keys.CreateAsync(new());
        await client.Keys.GetAsync(Id);
        await client.Keys.ListAsync(pageSize: 10).ToListAsync();
        await client.Keys.RotateAsync(Id, new());
        await client.Keys.RevokeAsync(Id, new());
        await client.Audit.ListAsync(WholeAudit).ToListAsync();
        await client.Audit.ListRefusalsAsync(pageSize: 10).ToListAsync();
        await client.Audit.ListRefusalsWithoutKeyAsync(pageSize: 10).ToListAsync();
        return wire.Requests;
    }

    private static async Task CallAsync(Client.Calculations calculations)
    {
        foreach (var method in OfCalculations())
        {
            var question = method.GetParameters()[0].ParameterType;
            await (
                method.ReturnType.IsAssignableTo(typeof(Task))
                    ? (Task)method.Invoke(calculations, [Activator.CreateInstance(question), UnitSystem.AsAsked, CancellationToken.None])!
                    : (Task)
                        typeof(MethodsTests)
                            .GetMethod(nameof(CallManyAsync), BindingFlags.NonPublic | BindingFlags.Static)!
                            .MakeGenericMethod(method.ReturnType.GenericTypeArguments[0].GenericTypeArguments)
                            .Invoke(null, [calculations, method])!
            );
        }
    }

    private static async Task CallManyAsync<TQuestion, TAnswer>(Client.Calculations calculations, MethodInfo method)
        where TQuestion : new()
        where TAnswer : class =>
        await (
            (IAsyncEnumerable<BatchLine<TQuestion, TAnswer>>)
                method.Invoke(calculations, [One(new TQuestion()), UnitSystem.AsAsked, CancellationToken.None])!
        ).ToListAsync();

    private static MethodInfo[] OfCalculations() =>
        typeof(Client.Calculations).GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly);

    private static async Task CallAsync<TDraft, TAnswer>(DescribedRecords<TDraft, TAnswer> records, TDraft draft)
        where TDraft : Microsoft.Kiota.Abstractions.Serialization.IParsable
        where TAnswer : Microsoft.Kiota.Abstractions.Serialization.IParsable
    {
        await CallAsync((ChangeableRecords<TDraft, TAnswer>)records, draft);
        await records.ListAsync(includeRetired: true, UnitSystem.Us, pageSize: 10).ToListAsync();
    }

    private static async Task CallAsync<TDraft, TAnswer>(ChangeableRecords<TDraft, TAnswer> records, TDraft draft)
        where TDraft : Microsoft.Kiota.Abstractions.Serialization.IParsable
        where TAnswer : Microsoft.Kiota.Abstractions.Serialization.IParsable
    {
        await records.CreateAsync(draft);
        await records.SaveAsync(await records.GetAsync(Id));
    }

    private static async Task CallAsync<TRequest, TAnswer>(EvidenceRecords<TRequest, TAnswer> records, TRequest request)
        where TAnswer : Microsoft.Kiota.Abstractions.Serialization.IParsable
    {
        await records.RecordAsync(request);
        await records.GetAsync(Id, UnitSystem.Us);
        await records.ListAsync(EverythingSet).ToListAsync();
    }

    private static IAsyncEnumerable<T> One<T>(T question) => Enumerable.Repeat(question, 1).ToAsyncEnumerable();

    /// <summary>Answers whatever is asked, with next to nothing.</summary>
    private sealed class AnswersAnything : HttpMessageHandler
    {
        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken) =>
            Task.FromResult(
                new HttpResponseMessage(HttpStatusCode.OK)
                {
                    Headers = { ETag = new("\"r1\"") },
                    Content = request.RequestUri!.AbsolutePath.EndsWith("/batch", StringComparison.Ordinal)
                        ? new StringContent("""{ "line": 1, "result": {} }""" + "\n", Encoding.UTF8, "application/x-ndjson")
                        : new StringContent($$"""{ "id": "{{Id}}", "after": "c" }""", Encoding.UTF8, "application/json"),
                }
            );
    }
}
