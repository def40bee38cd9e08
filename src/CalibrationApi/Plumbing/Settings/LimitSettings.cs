namespace CalibrationApi.Plumbing.Settings;

/// <summary>How much anybody may ask of the service: how often, how large, for how long, how many at once.</summary>
internal sealed record LimitSettings
{
    private const string Group = "Limits:";

    private static readonly WholeSetting PerKey = new(
        Group + "RequestsPerMinutePerKey",
        3000,
        1,
        10_000_000,
        "requests of one key in a minute"
    );
    private static readonly WholeSetting PerAddress = new(
        Group + "RequestsPerMinutePerAddress",
        6000,
        1,
        10_000_000,
        "requests from one address in a minute, with or without a key; an IPv6 network of 64 bits counts as one address"
    );
    private static readonly WholeSetting Local = new(
        Group + "RequestsPerMinuteLocal",
        600_000,
        1,
        100_000_000,
        "requests in a minute from the machine itself"
    );
    private static readonly WholeSetting Apart = new(
        Group + "AddressesCounted",
        100_000,
        100,
        10_000_000,
        "addresses (and keys) counted apart; when there are more in one minute, further ones share one count"
    );
    private static readonly WholeSetting AllConnections = new(Group + "Connections", 1000, 1, 100_000, "connections open at once");
    private static readonly WholeSetting Batches = new(Group + "BatchesAtOnce", 16, 1, 10_000, "batches answered at once");
    private static readonly WholeSetting BatchesOfOne = new(
        Group + "BatchesAtOncePerCaller",
        2,
        1,
        10_000,
        "batches answered at once for one key, or for one address without a key"
    );
    private static readonly WholeSetting Waits = new(
        Group + "WaitsAtOnce",
        200,
        1,
        50_000,
        "requests that wait at once for a change to come; never more than half of the connections"
    );
    private static readonly WholeSetting WaitsOfOne = new(
        Group + "WaitsAtOncePerCaller",
        20,
        1,
        50_000,
        "the same for one key, or for one address without a key"
    );
    private static readonly WholeSetting Body = new(
        Group + "BodyKiB",
        1024,
        16,
        65_536,
        "length of a body; batches are limited line by line"
    );
    private static readonly WholeSetting BatchLine = new(
        Group + "LineKiB",
        64,
        1,
        1024,
        "length of a line of a batch, or of a row of a table"
    );
    private static readonly WholeSetting Depth = new(
        Group + "JsonDepth",
        32,
        8,
        32,
        "how deep objects and lists of a JSON body stand inside each other; 8 are enough for every request"
    );
    private static readonly WholeSetting Header = new(Group + "HeadersKiB", 32, 4, 1024, "length of all headers of a request");
    private static readonly WholeSetting HeaderCount = new(Group + "Headers", 100, 10, 1000, "headers of a request");
    private static readonly WholeSetting Line = new(
        Group + "RequestLineKiB",
        8,
        1,
        64,
        "length of a request's first line, which holds its address"
    );
    private static readonly WholeSetting HeaderTime = new(Group + "HeadersSeconds", 10, 1, 600, "time to send the headers of a request");
    private static readonly WholeSetting Rate = new(
        Group + "BodyBytesPerSecond",
        240,
        1,
        1_000_000,
        "least speed at which a body has to arrive, after the first five seconds"
    );
    private static readonly WholeSetting Time = new(
        Group + "RequestSeconds",
        60,
        1,
        3600,
        "time from the headers of a request to the end of its answer"
    );
    private static readonly WholeSetting LongTime = new(Group + "LongRequestSeconds", 900, 1, 86_400, "the same for batches and lists");
    private static readonly WholeSetting Idle = new(
        Group + "IdleSeconds",
        120,
        1,
        3600,
        "time that a connection stays open without a request"
    );

    public static IReadOnlyList<Setting> All { get; } =
    [
        PerKey,
        PerAddress,
        Local,
        Apart,
        AllConnections,
        Batches,
        BatchesOfOne,
        Waits,
        WaitsOfOne,
        Body,
        BatchLine,
        Depth,
        Header,
        HeaderCount,
        Line,
        HeaderTime,
        Rate,
        Time,
        LongTime,
        Idle,
    ];

    public required int RequestsPerMinutePerKey { get; init; }

    public required int RequestsPerMinutePerAddress { get; init; }

    public required int RequestsPerMinuteLocal { get; init; }

    public required int AddressesCounted { get; init; }

    public required int Connections { get; init; }

    public required int BatchesAtOnce { get; init; }

    public required int BatchesAtOncePerCaller { get; init; }

    public required int WaitsAtOnce { get; init; }

    public required int WaitsAtOncePerCaller { get; init; }

    public required int BodyBytes { get; init; }

    public required int LineBytes { get; init; }

    public required int JsonDepth { get; init; }

    public required int HeadersBytes { get; init; }

    public required int Headers { get; init; }

    public required int RequestLineBytes { get; init; }

    public required TimeSpan HeadersTime { get; init; }

    public required int BodyBytesPerSecond { get; init; }

    public required TimeSpan RequestTime { get; init; }

    public required TimeSpan LongRequestTime { get; init; }

    public required TimeSpan IdleTime { get; init; }

    public static LimitSettings Read(IConfiguration section, ICollection<string> faults)
    {
        return new LimitSettings
        {
            RequestsPerMinutePerKey = PerKey.Read(section, faults),
            RequestsPerMinutePerAddress = PerAddress.Read(section, faults),
            RequestsPerMinuteLocal = Local.Read(section, faults),
            AddressesCounted = Apart.Read(section, faults),
            Connections = AllConnections.Read(section, faults),
            BatchesAtOnce = Batches.Read(section, faults),
            BatchesAtOncePerCaller = BatchesOfOne.Read(section, faults),
            WaitsAtOnce = Waits.Read(section, faults),
            WaitsAtOncePerCaller = WaitsOfOne.Read(section, faults),
            BodyBytes = KiB(Body),
            LineBytes = KiB(BatchLine),
            JsonDepth = Depth.Read(section, faults),
            HeadersBytes = KiB(Header),
            Headers = HeaderCount.Read(section, faults),
            RequestLineBytes = KiB(Line),
            HeadersTime = Seconds(HeaderTime),
            BodyBytesPerSecond = Rate.Read(section, faults),
            RequestTime = Seconds(Time),
            LongRequestTime = Seconds(LongTime),
            IdleTime = Seconds(Idle),
        };

        int KiB(WholeSetting setting) => setting.Read(section, faults) * 1024;
        TimeSpan Seconds(WholeSetting setting) => TimeSpan.FromSeconds(setting.Read(section, faults));
    }
}
