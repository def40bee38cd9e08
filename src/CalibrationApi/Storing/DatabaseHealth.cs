using CalibrationApi.Storage;
using Dapper;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace CalibrationApi.Storing;

/// <summary>Ready means that the database answers.</summary>
internal sealed class DatabaseHealth(CalibrationDatabase database) : IHealthCheck
{
    public Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        try
        {
            using var connection = database.Open();
            connection.QuerySingle<long>("select count(*) from secrets");
            return Task.FromResult(HealthCheckResult.Healthy());
        }
        catch (SqliteException failure)
        {
            return Task.FromResult(HealthCheckResult.Unhealthy("The database does not answer.", failure));
        }
    }
}
