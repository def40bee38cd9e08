using CalibrationApi.Plumbing.Settings;
using CalibrationApi.Storage;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace CalibrationApi.Hosting.Health;

/// <summary>There is room beside the database for what will be stored.</summary>
internal sealed class DiskHealth(CalibrationDatabase database, CalibrationSettings settings) : IHealthCheck
{
    private const long MiB = 1024 * 1024;

    public Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        try
        {
            var free = new DriveInfo(Path.GetDirectoryName(database.Path)!).AvailableFreeSpace;
            return Task.FromResult(
                free >= settings.LeastFreeDiskBytes
                    ? HealthCheckResult.Healthy()
                    : HealthCheckResult.Unhealthy(
                        $"{free / MiB} MiB are free beside the database; at least {settings.LeastFreeDiskBytes / MiB} MiB are wanted (Calibration__LeastFreeDiskMiB)."
                    )
            );
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return Task.FromResult(HealthCheckResult.Unhealthy("The free space beside the database cannot be read.", failure));
        }
    }
}
