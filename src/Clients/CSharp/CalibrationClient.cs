using CalibrationApi.Client.Http;
using CalibrationApi.Client.Models;
using Microsoft.Kiota.Abstractions.Authentication;
using Microsoft.Kiota.Http.HttpClientLibrary;
using Microsoft.Kiota.Http.HttpClientLibrary.Middleware;

namespace CalibrationApi.Client;

/// <summary>A client of the Calibration API. Make one and keep it: it is safe to use from many threads.</summary>
/// <remarks>
/// Every method can be cancelled and throws <see cref="CalibrationException"/> when the service refuses, and
/// <see cref="HttpRequestException"/> when it cannot be reached.
/// </remarks>
public sealed class CalibrationClient : IDisposable
{
    private readonly HttpClient http;
    private readonly HttpClientRequestAdapter adapter;
    private readonly Exchange exchange;

    /// <summary>Makes a client.</summary>
    /// <param name="address">Where the service is, for example <c>http://localhost:5000</c>.</param>
    /// <param name="options">How to send requests; the defaults when null.</param>
    public CalibrationClient(Uri address, CalibrationClientOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(address);
        options ??= new CalibrationClientOptions();
        // A connection that lives for ever would never notice that the name of the service has moved.
        var transport = options.Transport ?? new SocketsHttpHandler { PooledConnectionLifetime = TimeSpan.FromMinutes(5) };
        var showing = options.Key is { } key ? new AccessKeyHandler(address, key, transport) : transport;
        var storing = new IdempotencyKeyHandler(new RepetitionHandler(options, showing));
        var sending = new ProblemHandler(options.Clock, new HeadersInspectionHandler { InnerHandler = storing });
        http = new HttpClient(sending, disposeHandler: options.Transport is null) { Timeout = options.Timeout };
        adapter = new HttpClientRequestAdapter(new AnonymousAuthenticationProvider(), httpClient: http)
        {
            BaseUrl = address.AbsoluteUri.TrimEnd('/'),
        };
        exchange = new Exchange(adapter);
        Core = new CalibrationCore(adapter);
        var v1 = Core.V1;

        Calculations = new(exchange, new(http), v1.Calculations);
        Machines = new(exchange, v1);
        Products = new(exchange, DescribedRoutes.Products(v1));
        Lots = new(exchange, DescribedRoutes.Lots(v1));
        Scales = new(exchange, DescribedRoutes.Scales(v1));
        Containers = new(exchange, DescribedRoutes.Containers(v1));
        Plans = new(exchange, v1);
        CatchTests = new(exchange, v1);
        Adoptions = new(exchange, EvidenceRoutes.Adoptions(v1));
        ScaleChecks = new(exchange, EvidenceRoutes.ScaleChecks(v1));
        History = new(exchange, v1);
        Changes = new(exchange, v1, options);
        Workspaces = new(exchange, v1);
        Keys = new(exchange, v1);
        Audit = new(exchange, v1);
    }

    /// <summary>Calculations, which store nothing.</summary>
    public Calculations Calculations { get; }

    /// <summary>Machines with their meters, and the values in force on them.</summary>
    public MachineRecords Machines { get; }

    /// <summary>What is sown or spread.</summary>
    public DescribedRecords<ProductRequest, ProductAnswer> Products { get; }

    /// <summary>Deliveries of a product.</summary>
    public DescribedRecords<LotRequest, LotAnswer> Lots { get; }

    /// <summary>Scales.</summary>
    public DescribedRecords<ScaleRequest, ScaleAnswer> Scales { get; }

    /// <summary>Containers to catch in.</summary>
    public DescribedRecords<ContainerRequest, ContainerAnswer> Containers { get; }

    /// <summary>Plans for fields, and the catch plans that follow from them.</summary>
    public PlanRecords Plans { get; }

    /// <summary>Catch tests as evidence.</summary>
    public CatchTestRecords CatchTests { get; }

    /// <summary>Numbers that were typed into controllers, with who and why.</summary>
    public EvidenceRecords<AdoptionRequest, AdoptionAnswer> Adoptions { get; }

    /// <summary>Checks of scales against known masses.</summary>
    public EvidenceRecords<ScaleCheckRequest, ScaleCheckAnswer> ScaleChecks { get; }

    /// <summary>Everything that happened.</summary>
    public HistoryRecords History { get; }

    /// <summary>Every stored change, in the order of storing, for whoever keeps a copy.</summary>
    public ChangeRecords Changes { get; }

    /// <summary>Workspaces of the installation, for whoever runs it.</summary>
    public WorkspaceRecords Workspaces { get; }

    /// <summary>The keys of the workspace, for its administrators.</summary>
    public KeyRecords Keys { get; }

    /// <summary>What was done with which key, and what was turned away.</summary>
    public AuditRecords Audit { get; }

    /// <summary>
    /// The generated client underneath, for what this one has no method for. Keys of both sorts, repetitions and typed problems
    /// hold there too; take no notice of the exceptions that its comments name.
    /// </summary>
    public CalibrationCore Core { get; }

    /// <summary>Lists every unit with its exact factor.</summary>
    /// <param name="cancellationToken">Cancels it.</param>
    public async Task<IReadOnlyList<UnitAnswer>> GetUnitsAsync(CancellationToken cancellationToken = default)
    {
        var answer = await exchange
            .SendAsync(Core.V1.Units.ToGetRequestInformation(), UnitsAnswer.CreateFromDiscriminatorValue, cancellationToken)
            .ConfigureAwait(false);
        return answer.Units ?? [];
    }

    /// <summary>Lists every code that answers carry, with its cause and what to do.</summary>
    /// <param name="cancellationToken">Cancels it.</param>
    public async Task<IReadOnlyList<CodeAnswer>> GetCodesAsync(CancellationToken cancellationToken = default)
    {
        var answer = await exchange
            .SendAsync(Core.V1.Codes.ToGetRequestInformation(), CodesAnswer.CreateFromDiscriminatorValue, cancellationToken)
            .ConfigureAwait(false);
        return answer.Codes ?? [];
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        adapter.Dispose();
        http.Dispose();
    }
}
