using System.Net.Http.Headers;
using System.Text;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Storage.Access;
using Microsoft.AspNetCore.Routing;

namespace CalibrationApi.Tests.Plumbing.Access;

/// <summary>One service with two workspaces that hold the same kinds of records and know nothing of each other.</summary>
public sealed class TwoFarms : IAsyncLifetime, IDisposable
{
    internal const string Version = "/v1/";

    internal RecordService Service { get; } = new();

    internal Site North { get; private set; } = null!;

    internal Site South { get; private set; } = null!;

    /// <summary>Every route of the contract's version, by the name of its operation.</summary>
    internal IReadOnlyDictionary<string, RouteEndpoint> Routes { get; private set; } = null!;

    public async Task InitializeAsync()
    {
        Routes = Service
            .Service<EndpointDataSource>()
            .Endpoints.OfType<RouteEndpoint>()
            .Where(route => route.RoutePattern.RawText!.StartsWith(Version, StringComparison.Ordinal))
            .ToDictionary(route => route.Metadata.GetMetadata<IEndpointNameMetadata>()!.EndpointName);
        North = await Site.CreateAsync(Service, "019d0000-00aa-7000-8000-000000000001");
        South = await Site.CreateAsync(Service, "019d0000-00aa-7000-8000-000000000002");
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => Service.Dispose();

    /// <summary>The scope that an operation needs; null for a public one.</summary>
    internal string? ScopeOf(string operation) => Routes[operation].Metadata.GetMetadata<NeededScope>()?.Scope;

    internal string MethodOf(string operation) =>
        Routes[operation].Metadata.GetRequiredMetadata<IHttpMethodMetadata>().HttpMethods.Single();

    /// <summary>The request of an operation.</summary>
    internal async Task<Sample> SampleAsync(string operation, Site site) =>
        await Sample.OfAsync(operation, Routes[operation].RoutePattern.RawText!.TrimEnd('/'), site)
        ?? throw new Xunit.Sdk.XunitException($"{operation} has no row in {nameof(Sample)}; add a request that it answers with success.");

    /// <summary>Sends the request of a sample.</summary>
    internal async Task<Reply> SendAsync(string operation, Sample sample, string? key, Action<HttpRequestMessage>? change = null)
    {
        using var request = new HttpRequestMessage(HttpMethod.Parse(MethodOf(operation)), new Uri(sample.Path, UriKind.Relative));
        if (sample.Body is not null)
            request.Content = new ByteArrayContent(Encoding.UTF8.GetBytes(sample.Body.ToJsonString()))
            {
                Headers = { ContentType = new MediaTypeHeaderValue(sample.Media) },
            };
        if (key is not null)
            request.Headers.TryAddWithoutValidation("Authorization", $"Bearer {key}");
        if (request.Method == HttpMethod.Put)
            request.Headers.TryAddWithoutValidation("If-Match", "*");
        change?.Invoke(request);
        return await Service.SendAsync(request);
    }

    /// <summary>Sends a request that no sample has.</summary>
    internal async Task<Reply> AskAsync(HttpMethod method, string path, string? key, string? body = null, string? accept = null)
    {
        using var request = new HttpRequestMessage(method, new Uri(path, UriKind.Relative));
        if (body is not null)
            request.Content = new ByteArrayContent(Encoding.UTF8.GetBytes(body)) { Headers = { ContentType = new("application/json") } };
        if (key is not null)
            request.Headers.TryAddWithoutValidation("Authorization", $"Bearer {key}");
        if (accept is not null)
            request.Headers.TryAddWithoutValidation("Accept", accept);
        return await Service.SendAsync(request);
    }
}

/// <summary>A workspace with a farm, a record of each kind, and keys.</summary>
internal sealed class Site
{
    private readonly RecordService service;

    private Site(RecordService service, string workspace) => (this.service, Workspace) = (service, workspace);

    public string Workspace { get; }

    public Farm Farm { get; private set; } = null!;

    /// <summary>Ids of the evidence and the plan.</summary>
    public IReadOnlyDictionary<string, string> Ids { get; private set; } = null!;

    /// <summary>A key with every scope.</summary>
    public MadeKey Full { get; private set; } = null!;

    public Draft Plan => Farm.PlanDraft.With("/meters/0/startValue", Draft.Quantity(0.36, "kg/rev"));

    /// <summary>Every id that a record of this workspace has.</summary>
    public IReadOnlyList<string> AllIds => [.. Ids.Values, Farm.Machine, Farm.Product, Farm.Lot, Farm.Scale, Farm.Container, Full.Id];

    public static async Task<Site> CreateAsync(RecordService service, string workspace)
    {
        var site = new Site(service, workspace);
        using (var connection = service.Database.Open())
            WorkspaceStore.Insert(
                connection,
                workspace,
                new WorkspaceRecord(workspace, 1, workspace, false, "", service.Clock.Now, service.Clock.Now)
            );
        site.Full = MadeKey.In(service, workspace, [.. Scope.All]);
        service.Key = site.Full.Text;
        site.Farm = await Farm.CreateAsync(service);
        var plan = await service.CreateAsync("/v1/plans", site.Plan);
        var check = (await service.PostAsync("/v1/scale-checks", site.Farm.ScaleCheck)).Expect(201).Id;
        var adoption = (await site.Farm.AdoptAsync()).Id;
        var test = (await site.Farm.TestAsync(body => body.With("/plan", plan))).Id;
        service.Key = null;
        site.Ids = new Dictionary<string, string>
        {
            ["plans"] = plan,
            ["scale-checks"] = check,
            ["adoptions"] = adoption,
            ["catch-tests"] = test,
        };
        return site;
    }

    /// <summary>A key with one scope.</summary>
    public MadeKey Key(string scope) => MadeKey.In(service, Workspace, scope);

    public Task<string> TestAsync() => Recorded("/v1/catch-tests", Farm.CatchTest);

    public Task<string> AdoptionAsync() => Recorded("/v1/adoptions", Farm.Adoption);

    public Task<string> ScaleCheckAsync() => Recorded("/v1/scale-checks", Farm.ScaleCheck);

    private async Task<string> Recorded(string path, Draft body)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri(path, UriKind.Relative))
        {
            Content = new StringContent(body.Text, Encoding.UTF8, "application/json"),
        };
        request.Headers.Authorization = new AuthenticationHeaderValue("Bearer", Full.Text);
        return (await service.SendAsync(request)).Expect(201).Id;
    }
}
