using System.Globalization;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Limits;
using CalibrationApi.Plumbing.Observability;
using CalibrationApi.Plumbing.Settings;
using FluentValidation;

namespace CalibrationApi.Hosting.Pipeline;

/// <summary>What every request goes through, whatever the capability.</summary>
internal static class HttpSetup
{
    public static void AddHttpRules(this WebApplicationBuilder builder, CalibrationSettings settings)
    {
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.AddServerHeader = false);
        builder.AddLimits(settings.Limits);
        builder.Services.AddForwardedRequests(settings);
        builder.Services.AddSecurityHeaders();
        builder.Services.AddCompressedAnswers();
        builder.Services.ConfigureHttpJsonOptions(json =>
        {
            JsonSettings.Apply(json.SerializerOptions);
            json.SerializerOptions.MaxDepth = settings.Limits.JsonDepth;
        });
        builder.Services.AddAllowedOrigins(settings);
        builder.Services.AddProblemDetails();
        // Sentences are ours and English; the library's own resources never reach an answer.
        ValidatorOptions.Global.LanguageManager.Culture = CultureInfo.InvariantCulture;
    }

    public static void UseHttpRules(this WebApplication app)
    {
        app.UseRequestLog();
        app.UseSecurityHeaders();
        app.UseAllowedOrigins();
        app.UseHeadAsGet();
        app.UseProblemBodies();
        app.UseForwardedRequests();
        app.UseAddressLimit();
        app.UseAskedHost();
        app.UseHsts();
        app.UseOneAddress();
        app.UseRouting();
        app.UseCompressedAnswers();
        app.UseAccess();
        app.UseLimits();
    }
}
