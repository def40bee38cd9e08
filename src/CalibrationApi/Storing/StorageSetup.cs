using CalibrationApi.Storage;
using CalibrationApi.Storage.Writing;

namespace CalibrationApi.Storing;

/// <summary>Opens the database of the service.</summary>
internal static class StorageSetup
{
    private const string Setting = "Calibration:Database";
    private const string DefaultFile = ".calibration/calibration.db";
    private const string DemoFile = ".calibration/demo.db";

    public static void AddStorage(this WebApplicationBuilder builder, bool isDemo)
    {
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.AddSingleton(services =>
        {
            var configured = services.GetRequiredService<IConfiguration>()[Setting];
            var root = services.GetRequiredService<IHostEnvironment>().ContentRootPath;
            var database = new CalibrationDatabase(Path.Combine(root, string.IsNullOrWhiteSpace(configured) ? isDemo ? DemoFile : DefaultFile : configured));
            database.Prepare();
            return database;
        });
        builder.Services.AddSingleton<SingleWriter>();
        builder.Services.AddSingleton<KeysInFlight>();
        builder.Services.AddSingleton<Cursors>();
        builder.Services.AddHealthChecks().AddCheck<DatabaseHealth>("database");
    }
}
