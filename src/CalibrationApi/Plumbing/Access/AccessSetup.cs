namespace CalibrationApi.Plumbing.Access;

/// <summary>Who may do what.</summary>
internal static class AccessSetup
{
    public static void AddAccess(this IServiceCollection services)
    {
        services.AddSingleton<LocalMode>();
        services.AddSingleton<KeyScheme>();
        services.AddSingleton<KeyUse>();
        services.AddSingleton<RefusalCounts>();
    }

    /// <summary>Comes after routing: the route says which scope it needs.</summary>
    public static void UseAccess(this WebApplication app)
    {
        var keys = app.Services.GetRequiredService<KeyScheme>();
        app.Use(keys.CheckAsync);
    }
}
