using CalibrationApi.Storage;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace CalibrationApi.Hosting.Health;

/// <summary>The database has the schema of this version: no other version has migrated it meanwhile.</summary>
internal sealed class SchemaHealth(CalibrationDatabase database) : IHealthCheck
{
    public Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        try
        {
            return Task.FromResult(
                database.IsCurrent()
                    ? HealthCheckResult.Healthy()
                    : HealthCheckResult.Unhealthy(
                        "The database has the schema of another version of this service. Start the version that wrote it."
                    )
            );
        }
        catch (UnusableDatabaseException failure)
        {
            return Task.FromResult(HealthCheckResult.Unhealthy(failure.Message, failure));
        }
        catch (SqliteException failure)
        {
            return Task.FromResult(HealthCheckResult.Unhealthy("The schema of the database cannot be read.", failure));
        }
    }
}
