using CalibrationApi.Settings;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Writing;

namespace CalibrationApi.Storing;

/// <summary>Opens the database of the service.</summary>
internal static class StorageSetup
{
    private const string DefaultFile = ".calibration/calibration.db";
    private const string DemoFile = ".calibration/demo.db";

    public static void AddStorage(this WebApplicationBuilder builder, bool isDemo)
    {
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.AddSingleton(services =>
        {
            var configured = services.GetRequiredService<CalibrationSettings>().Database;
            var root = services.GetRequiredService<IHostEnvironment>().ContentRootPath;
            var database = new CalibrationDatabase(Path.Combine(root, configured ?? (isDemo ? DemoFile : DefaultFile)));
            database.Prepare();
            return database;
        });
        builder.Services.AddSingleton<SingleWriter>();
        builder.Services.AddSingleton<KeysInFlight>();
        builder.Services.AddSingleton<Cursors>();
    }
}
