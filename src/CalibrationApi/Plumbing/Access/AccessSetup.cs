namespace CalibrationApi.Plumbing.Access;

/// <summary>Keys as the framework's authentication, scopes as its policies.</summary>
internal static class AccessSetup
{
    public static void AddAccess(this IServiceCollection services)
    {
        services.AddSingleton<LocalMode>();
        services.AddSingleton<KeyUse>();
        services.AddSingleton<RefusalCounts>();
        // The core alone: the rest brings keys for cookies, which would be written to the disk for nothing.
        services.AddAuthenticationCore(authentication =>
        {
            authentication.DefaultScheme = KeyScheme.Name;
            authentication.AddScheme<KeyScheme>(KeyScheme.Name, null);
        });
        // Made for each request; the framework would look for its constructor each time.
        services.AddTransient<KeyScheme>();
        services.AddWebEncoders();
        var policies = services.AddAuthorizationBuilder();
        foreach (var scope in Scope.All)
            policies.AddPolicy(scope, policy => policy.RequireClaim(Caller.ScopeClaim, scope));
    }

    /// <summary>Comes after routing: the route says which scope it needs.</summary>
    public static void UseAccess(this WebApplication app)
    {
        app.UseAuthentication();
        app.UseAuthorization();
    }
}
