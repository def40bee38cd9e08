using System.Collections.Concurrent;
using System.Diagnostics.Metrics;
using CalibrationApi.Storage.OneWriter;
using Dapper;

namespace CalibrationApi.Storage.Tests.OneWriter;

public sealed class WriterMetricsTests
{
    [Fact]
    public async Task Writer_ThatWrites_TellsItsQueueItsCommitsAndHowLongTheyTook()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);
        using var measured = new Measured(writer);
        var hold = await Hold.StartAsync(writer);
        var requests = Enumerable
            .Range(0, 3)
            .Select(_ => writer.WriteAsync(connection => connection.QuerySingle<int>("select 1")))
            .ToArray();

        Assert.Equal([3], measured.Now("calibration.storage.queue.length"));
        hold.Release();
        await Task.WhenAll(requests);

        Assert.Equal([0], measured.Now("calibration.storage.queue.length"));
        Assert.Equal([1, 3], measured.Of("calibration.storage.commit.size"));
        Assert.Equal(2, measured.Of("calibration.storage.commit.duration").Count);
        // The one that held the writer up has not been seen to end.
        Assert.InRange(measured.Of("calibration.storage.write.duration").Count, 3, 4);
        Assert.All(measured.Of("calibration.storage.write.duration"), seconds => Assert.InRange(seconds, 0, 600));
    }

    /// <summary>Listens to one writer.</summary>
    private sealed class Measured : IDisposable
    {
        private readonly ConcurrentDictionary<string, ConcurrentQueue<double>> values = new();
        private readonly MeterListener listener = new();

        public Measured(SingleWriter writer)
        {
            listener.InstrumentPublished = (instrument, self) =>
            {
                if (ReferenceEquals(instrument.Meter.Scope, writer))
                    self.EnableMeasurementEvents(instrument);
            };
            listener.SetMeasurementEventCallback<int>((instrument, value, _, _) => Keep(instrument, value));
            listener.SetMeasurementEventCallback<double>((instrument, value, _, _) => Keep(instrument, value));
            listener.Start();
        }

        public IReadOnlyList<double> Of(string instrument) => [.. values.GetValueOrDefault(instrument) ?? []];

        public IReadOnlyList<double> Now(string instrument)
        {
            values.TryRemove(instrument, out _);
            listener.RecordObservableInstruments();
            return Of(instrument);
        }

        public void Dispose() => listener.Dispose();

        private void Keep(Instrument instrument, double value) => values.GetOrAdd(instrument.Name, _ => new()).Enqueue(value);
    }
}
