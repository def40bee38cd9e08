using CalibrationApi.Plumbing.Settings;
using CalibrationApi.Storage;
using CalibrationApi.Storage.OneWriter;

namespace CalibrationApi.Plumbing.Keeping;

/// <summary>Opens the database of the service.</summary>
internal static class StorageSetup
{
    private const string DefaultFile = ".calibration/calibration.db";
    private const string DemoFile = ".calibration/demo.db";

    public static void AddStorage(this WebApplicationBuilder builder, bool isDemo)
    {
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.AddSingleton<DatabaseLog>();
        builder.Services.AddSingleton(services =>
            Open(
                services.GetRequiredService<CalibrationSettings>(),
                services.GetRequiredService<IHostEnvironment>(),
                isDemo,
                services.GetRequiredService<DatabaseLog>().Tell
            )
        );
        builder.Services.AddSingleton<SingleWriter>();
        builder.Services.AddSingleton(services => services.GetRequiredService<SingleWriter>().Changes);
        builder.Services.AddSingleton<KeysInFlight>();
        builder.Services.AddSingleton<Cursors>();
    }

    /// <summary>The database that the settings name, brought to the newest schema.</summary>
    /// <exception cref="UnusableDatabaseException">It cannot be used; the message names it.</exception>
    public static CalibrationDatabase Open(
        CalibrationSettings settings,
        IHostEnvironment environment,
        bool isDemo,
        Action<string?>? tell = null
    )
    {
        var path = Path.Combine(environment.ContentRootPath, settings.Database ?? (isDemo ? DemoFile : DefaultFile));
        var database = new CalibrationDatabase(path) { Tell = tell ?? (_ => { }) };
        try
        {
            database.Prepare();
        }
        catch (UnusableDatabaseException failure)
        {
            database.Dispose();
            throw new UnusableDatabaseException(
                $"The database {database.Path} cannot be used. {failure.Message} Calibration__Database says which file is used.",
                failure
            );
        }

        return database;
    }

    /// <summary>Opens the database and what writes to it; why the service must not start when that fails, null when it may.</summary>
    public static string? StartRefusal(WebApplication app)
    {
        try
        {
            app.Services.GetRequiredService<SingleWriter>();
            return null;
        }
        catch (UnusableDatabaseException failure)
        {
            return $"Refusing to start: {failure.Message}";
        }
    }
}
