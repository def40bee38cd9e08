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
        builder.Services.AddSingleton(services => Open(services.GetRequiredService<IConfiguration>(), services.GetRequiredService<IHostEnvironment>(), isDemo));
        builder.Services.AddSingleton<SingleWriter>();
        builder.Services.AddSingleton<KeysInFlight>();
        builder.Services.AddSingleton<Cursors>();
        builder.Services.AddHealthChecks().AddCheck<DatabaseHealth>("database");
    }

    /// <summary>The database that the settings name, brought to the newest schema.</summary>
    public static CalibrationDatabase Open(IConfiguration configuration, IHostEnvironment environment, bool isDemo)
    {
        var configured = configuration[Setting];
        var database = new CalibrationDatabase(Path.Combine(environment.ContentRootPath, string.IsNullOrWhiteSpace(configured) ? isDemo ? DemoFile : DefaultFile : configured));
        database.Prepare();
        return database;
    }
}
