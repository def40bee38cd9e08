using System.Globalization;
using System.Text;

namespace CalibrationApi.Hostile;

/// <summary>What came of a run.</summary>
/// <param name="planned">How many requests it has.</param>
public sealed class HostileReport(int planned)
{
    private const int FaultsShown = 20;

    private readonly SortedDictionary<int, int> statuses = [];
    private readonly Dictionary<string, (int Taken, int Refused)> operations = [];
    private readonly HashSet<string> tricks = [];
    private readonly List<long> memory = [];
    private readonly List<string> faults = [];

    /// <summary>How many requests had which status; 0 for a connection that was closed without an answer.</summary>
    public IReadOnlyDictionary<int, int> Statuses => statuses;

    /// <summary>By operation, how many of the requests that began as it were taken and how many refused.</summary>
    public IReadOnlyDictionary<string, (int Taken, int Refused)> Operations => operations;

    /// <summary>What was done to requests.</summary>
    public IReadOnlyCollection<string> Tricks => tricks;

    /// <summary>Requests that were not answered as they have to be.</summary>
    public IReadOnlyList<string> Faults => faults;

    /// <summary>
    /// How much more memory the service holds at the end than halfway, bytes: the middle of the last readings against that of those around
    /// the half.
    /// </summary>
    public long GrowthOverSecondHalf => Middle(memory[^5..]) - Middle(memory.GetRange((memory.Count / 2) - 2, 5));

    /// <inheritdoc/>
    public override string ToString()
    {
        var text = new StringBuilder(
            $"{planned} requests to {operations.Count} operations, {tricks.Count} tricks; faults: {faults.Count}\n"
        );
        foreach (var kind in statuses.GroupBy(status => status.Key / 100))
            text.Append(
                CultureInfo.InvariantCulture,
                $"  {kind.Key}xx {kind.Sum(status => status.Value)} ({string.Join(", ", kind.Select(status => $"{status.Key}: {status.Value}"))})\n"
            );
        text.Append(
            CultureInfo.InvariantCulture,
            $"  resident memory: start {memory[0] >> 20}, half {memory[memory.Count / 2] >> 20}, end {memory[^1] >> 20} MiB; growth over the second half {GrowthOverSecondHalf / 1048576.0:0.0} MiB\n"
        );
        foreach (var fault in faults.Take(FaultsShown))
            text.Append(fault).Append('\n');
        return text.ToString();
    }

    internal void Add(HostileRequest request, int status, string? fault)
    {
        statuses[status] = statuses.GetValueOrDefault(status) + 1;
        var (taken, refused) = operations.GetValueOrDefault(request.Operation);
        operations[request.Operation] = status is >= 200 and < 400 ? (taken + 1, refused) : (taken, refused + 1);
        tricks.UnionWith(request.Tricks);
        if (fault is not null)
            faults.Add($"{request}\n=> {fault}");
    }

    internal void Add(long residentMemory) => memory.Add(residentMemory);

    private static long Middle(List<long> readings) => readings.Order().ElementAt(readings.Count / 2);
}
