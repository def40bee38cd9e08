using CalibrationApi.Testing;

namespace CalibrationApi.Hostile;

/// <summary>A running service, everything that requests are made of, and a judgement on each answer.</summary>
/// <remarks>Requests go one after the other, so that what changed in the database changed because of the last one.</remarks>
public sealed class HostileRun : IAsyncDisposable
{
    private const int Windows = 50;

    // Limits on how often somebody may ask would hide everything else.
    private const string Unlimited = "10000000";

    private readonly RunningService service = new()
    {
        Settings = new Dictionary<string, string>
        {
            ["Calibration__Limits__RequestsPerMinutePerKey"] = Unlimited,
            ["Calibration__Limits__RequestsPerMinutePerAddress"] = Unlimited,
            ["Calibration__Limits__RequestsPerMinuteLocal"] = Unlimited,
            ["Calibration__RefusedRequestsLoggedPerMinute"] = "0",
        },
    };

    private readonly Uri about = new("http://hostile.invalid");
    private RequestGenerator generator = null!;
    private HttpMessageInvoker client = null!;
    private StoredRows stored = null!;
    private IReadOnlyDictionary<string, string>? counts;
    private long version;

    private HostileRun() { }

    /// <summary>Starts the service and fills it.</summary>
    public static async Task<HostileRun> StartAsync(int seed)
    {
        var run = new HostileRun();
        await run.service.InitializeAsync();
        var address = new Uri(run.service.Address);
        run.generator = new RequestGenerator(ContractDocument.Committed, await World.MakeAsync(run.service), address, seed);
        run.client = new HttpMessageInvoker(new ContractCheckingHandler { InnerHandler = new RawConnection(address) });
        run.stored = new StoredRows(run.service.Database);
        return run;
    }

    /// <summary>Sends requests from number 0 on and judges every answer.</summary>
    /// <param name="count">How many.</param>
    /// <param name="told">Told of every fault, and now and then how far it is.</param>
    public async Task<HostileReport> RunAsync(int count, Action<string>? told = null)
    {
        var report = new HostileReport(count);
        for (var number = 0; number < count; number++)
        {
            var request = generator.Make(number);
            var (status, fault) = await JudgeAsync(request);
            report.Add(request, status, fault);
            if (fault is not null)
                told?.Invoke($"{request}\n=> {fault}\n");
            if (number % Math.Max(1, count / Windows) != 0)
                continue;
            report.Add(service.ResidentMemory);
            told?.Invoke($"{number} of {count}, {report.Faults.Count} faults, {service.ResidentMemory >> 20} MiB");
        }

        report.Add(service.ResidentMemory);
        return report;
    }

    /// <summary>Sends one request of the run.</summary>
    /// <returns>The request and what came of it, to read.</returns>
    public async Task<string> OnlyAsync(int number)
    {
        var request = generator.Make(number);
        using var message = Message(request);
        string answer;
        try
        {
            using var response = await client.SendAsync(message, CancellationToken.None);
            answer = $"{(int)response.StatusCode} {response.Headers}{response.Content.Headers}{await response.Content.ReadAsStringAsync()}";
        }
        catch (Exception failure) when (failure is ContractViolationException or IOException)
        {
            answer = failure.Message;
        }

        return $"{request}\n=> {answer}\n{service.Log}";
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        client?.Dispose();
        stored?.Dispose();
        await service.DisposeAsync();
    }

    private async Task<(int Status, string? Fault)> JudgeAsync(HostileRequest request)
    {
        counts ??= stored.Counts();
        version = stored.Version();
        var (status, fault) = (0, (string?)null);
        using var message = Message(request);
        try
        {
            using var response = await client.SendAsync(message, CancellationToken.None);
            status = (int)response.StatusCode;
            if (status >= 500)
                fault = $"answered {status}: {await response.Content.ReadAsStringAsync()}";
            else if (request.BreaksHttp && status < 400 && request.Tricks.Count == 1)
                fault = $"answered {status} to what is not HTTP";
        }
        catch (Exception failure) when (failure is ContractViolationException or IOException or OperationCanceledException)
        {
            // Where the request leaves HTTP behind, closing the connection is an answer too.
            fault = request.BreaksHttp && failure is IOException ? null : failure.Message;
        }

        // Only a success may leave something behind, and only where the contract stores.
        var isSuccess = status is >= 200 and < 300;
        if (
            isSuccess
            && (message.Method == HttpMethod.Post || message.Method == HttpMethod.Put)
            && !request.Target.Contains("/calculations/", StringComparison.Ordinal)
        )
            counts = null;
        else if (stored.Version() != version)
            fault = Changes(counts, counts = stored.Counts(), isSuccess) is { Length: > 0 } changes
                ? $"{fault} stored something: {changes}"
                : fault;
        return (status, fault);
    }

    private static string Changes(IReadOnlyDictionary<string, string> before, IReadOnlyDictionary<string, string> after, bool isSuccess) =>
        string.Join(
            ", ",
            after
                .Where(table => before[table.Key] != table.Value && !(isSuccess && table.Key == StoredRows.Audit))
                .Select(table => $"{table.Key}: {before[table.Key]} became {table.Value}")
        );

    private HttpRequestMessage Message(HostileRequest request)
    {
        // What the check of answers goes by: the path as any server reads it, without dot segments, and a backslash as itself. What is no
        // HTTP has no operation.
        var target = request.Target.Replace("\\", "%5C", StringComparison.Ordinal);
        var address =
            request.BreaksHttp
            || !Uri.TryCreate(
                target.StartsWith('/') ? about.GetLeftPart(UriPartial.Authority) + target : target,
                UriKind.Absolute,
                out var read
            )
                ? about
                : read;
        var message = new HttpRequestMessage(HttpMethod.Parse(request.Method), address);
        message.Options.Set(RawConnection.Sent, request);
        return message;
    }
}
