using System.Globalization;
using CalibrationApi.Access;
using FluentValidation;
using Microsoft.Extensions.Configuration.Memory;

namespace CalibrationApi.Http;

/// <summary>What every request goes through, whatever the capability.</summary>
internal static class HttpSetup
{
    public static void AddHttpRules(this WebApplicationBuilder builder)
    {
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = JsonBody.MostBytes;
            kestrel.Limits.MaxRequestHeadersTotalSize = 32 * 1024;
            kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(10);
        });
        // Several lines for every request fill a log that nobody reads; settings can bring them back.
        builder.Configuration.Sources.Insert(0, new MemoryConfigurationSource
        {
            InitialData =
            [
                new("Logging:LogLevel:Microsoft.AspNetCore", nameof(LogLevel.Warning)),
                // Refused requests are counted; a line for each would let anybody fill the log.
                new($"Logging:LogLevel:{typeof(KeyScheme).FullName}", nameof(LogLevel.Warning)),
                // Whoever starts the service is told why it does not start in one sentence, or by the exception itself.
                new("Logging:LogLevel:Microsoft.Extensions.Hosting.Internal.Host", nameof(LogLevel.None)),
            ],
        });
        builder.Services.ConfigureHttpJsonOptions(json => JsonSettings.Apply(json.SerializerOptions));
        builder.AddAllowedOrigins();
        builder.Services.AddProblemDetails();
        builder.Services.AddHealthChecks();
        // Sentences are ours and English; the library's own resources never reach an answer.
        ValidatorOptions.Global.LanguageManager.Culture = CultureInfo.InvariantCulture;
    }

    public static void UseHttpRules(this WebApplication app)
    {
        app.UseAllowedOrigins();
        app.UseHeadAsGet();
        app.UseProblemBodies();
        app.Use((context, next) =>
        {
            context.Response.Headers.XContentTypeOptions = "nosniff";
            return next(context);
        });
        app.UseOneAddress();
        app.UseRouting();
        app.UseAccess();
    }
}
