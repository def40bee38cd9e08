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
        builder.Services.AddSingleton(services => Open(services.GetRequiredService<CalibrationSettings>(), services.GetRequiredService<IHostEnvironment>(), isDemo));
        builder.Services.AddSingleton<SingleWriter>();
        builder.Services.AddSingleton<KeysInFlight>();
        builder.Services.AddSingleton<Cursors>();
    }

    /// <summary>The database that the settings name, brought to the newest schema.</summary>
    public static CalibrationDatabase Open(CalibrationSettings settings, IHostEnvironment environment, bool isDemo)
    {
        var database = new CalibrationDatabase(Path.Combine(environment.ContentRootPath, settings.Database ?? (isDemo ? DemoFile : DefaultFile)));
        database.Prepare();
        return database;
    }
}
