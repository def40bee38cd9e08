using CalibrationApi.Storage;
using CalibrationApi.Storage.OneWriter;
using Dapper;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace CalibrationApi.Hosting.Health;

/// <summary>The database can be written: the writer takes its turn and gets the lock that a record would need.</summary>
internal sealed class StorageHealth(SingleWriter writer) : IHealthCheck
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    public async Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken);
        patience.CancelAfter(Patience);
        try
        {
            // A check that has waited too long leaves the queue; one whose turn has come may hang with the disk.
            await writer
                .WriteAsync(connection => connection.QuerySingle<long>("select count(*) from secrets"), timeIsUp: patience.Token)
                .WaitAsync(Patience, cancellationToken);
            return HealthCheckResult.Healthy();
        }
        catch (Exception failure)
            when (failure is TimeoutException || (failure is OperationCanceledException && !cancellationToken.IsCancellationRequested))
        {
            return HealthCheckResult.Unhealthy("The database is too busy to be written within five seconds.");
        }
        catch (UnusableDatabaseException failure)
        {
            return HealthCheckResult.Unhealthy(failure.Message, failure);
        }
        catch (Exception failure) when (failure is not OperationCanceledException)
        {
            return HealthCheckResult.Unhealthy("The database cannot be written.", failure);
        }
    }
}
