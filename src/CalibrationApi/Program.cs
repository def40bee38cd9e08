using CalibrationApi;
using CalibrationApi.Access;
using CalibrationApi.Contract;
using CalibrationApi.Demo;
using CalibrationApi.Http;
using CalibrationApi.Keys;
using CalibrationApi.Storing;
using Microsoft.AspNetCore.Diagnostics.HealthChecks;

if (args is [KeysCommand.Word, ..])
    return KeysCommand.Run(args[1..], Console.Out, Console.Error);

var builder = WebApplication.CreateBuilder(DemoSeason.OtherArguments(args));
builder.AddHttpRules();
builder.Services.AddAccess();
builder.Services.AddContract();
builder.AddStorage(isDemo: args.Contains(DemoSeason.Switch));
builder.Services.AddCapabilities();

var app = builder.Build();
if ((AllowedOrigins.Refusal(app.Configuration) ?? LocalMode.StartRefusal(app)) is { } refusal)
{
    Console.Error.WriteLine(refusal);
    return 1;
}

app.UseHttpRules();
app.MapContract();
app.MapHealthChecks("/healthz/live", new HealthCheckOptions { Predicate = _ => false }).ExcludeFromDescription();
app.MapHealthChecks("/healthz/ready").ExcludeFromDescription();
app.MapCapabilities();

return await Serving.RunAsync(app, args.Contains(DemoSeason.Switch) ? DemoSeason.RunAsync : null);
