using System.Diagnostics;
using System.Diagnostics.Metrics;

namespace CalibrationApi.Storage.OneWriter;

/// <summary>What the writer of a database is busy with.</summary>
public sealed class WriterMetrics : IDisposable
{
    /// <summary>Name of the meter.</summary>
    public const string Meter = "CalibrationApi.Storage";

    private const string Seconds = "s";

    // A commit is one fsync and takes from a tenth of a millisecond to some hundred.
    private static readonly InstrumentAdvice<double> Times = new()
    {
        HistogramBucketBoundaries = [0.0001, 0.00025, 0.0005, 0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5],
    };

    private readonly Meter meter;
    private readonly Histogram<int> commitSize;
    private readonly Histogram<double> commitTime;
    private readonly Histogram<double> writeTime;

    internal WriterMetrics(SingleWriter writer, Func<int> queued)
    {
        meter = new Meter(new MeterOptions(Meter) { Scope = writer });
        meter.CreateObservableUpDownCounter("calibration.storage.queue.length", queued, "{request}", "Requests that wait to be written.");
        commitSize = meter.CreateHistogram(
            "calibration.storage.commit.size",
            "{request}",
            "Requests that share a commit.",
            advice: new InstrumentAdvice<int> { HistogramBucketBoundaries = [1, 2, 4, 8, 16, 32, 64, 128, 256] }
        );
        commitTime = meter.CreateHistogram(
            "calibration.storage.commit.duration",
            Seconds,
            "Time of a transaction, from its begin until it is durable.",
            advice: Times
        );
        writeTime = meter.CreateHistogram(
            "calibration.storage.write.duration",
            Seconds,
            "Time from the queueing of a request until what it wrote is durable.",
            advice: Times
        );
    }

    /// <inheritdoc/>
    public void Dispose() => meter.Dispose();

    internal void Committed(int requests, long start)
    {
        commitSize.Record(requests);
        commitTime.Record(Stopwatch.GetElapsedTime(start).TotalSeconds);
    }

    internal void Written(long start) => writeTime.Record(Stopwatch.GetElapsedTime(start).TotalSeconds);
}
