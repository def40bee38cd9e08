using CalibrationApi;
using CalibrationApi.Access;
using CalibrationApi.Contract;
using CalibrationApi.Demo;
using CalibrationApi.Http;
using CalibrationApi.Keys;
using CalibrationApi.Storing;
using Microsoft.AspNetCore.Connections;
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
if (LoopbackOnly.Refusal(app.Configuration) is { } refusal && !app.Services.GetRequiredService<LocalMode>().HasLiveAdmin())
{
    Console.Error.WriteLine(refusal);
    return 1;
}

app.UseHttpRules();
app.MapContract();
app.MapHealthChecks("/healthz/live", new HealthCheckOptions { Predicate = _ => false }).ExcludeFromDescription();
app.MapHealthChecks("/healthz/ready").ExcludeFromDescription();
app.MapCapabilities();

try
{
    if (!args.Contains(DemoSeason.Switch))
        await app.RunAsync();
    else if (!await DemoSeason.RunAsync(app))
        return 1;
    return 0;
}
catch (IOException failure) when (failure.InnerException is AddressInUseException)
{
    Console.Error.WriteLine($"Refusing to start: something else listens there already. {failure.Message} Stop it, or choose another port with ASPNETCORE_URLS=http://localhost:5050.");
    return 1;
}
