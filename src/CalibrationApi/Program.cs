using CalibrationApi;
using CalibrationApi.Hosting.Demo;
using CalibrationApi.Hosting.Health;
using CalibrationApi.Hosting.OpenApi;
using CalibrationApi.Hosting.Pipeline;
using CalibrationApi.Hosting.Starting;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Observability;
using CalibrationApi.Plumbing.Settings;

if (args is [KeysCommand.Word, ..])
    return KeysCommand.Run(args[1..], Console.Out, Console.Error);
if (StartArguments.Answer(args, Console.Out, Console.Error) is { } exitCode)
    return exitCode;

var isDemo = args.Contains(DemoSeason.Switch);
var builder = WebApplication.CreateBuilder(DemoSeason.OtherArguments(args));
if (!builder.TryAddSettings(isDemo, out var settings))
    return 1;
builder.AddObservability(settings);
builder.AddHttpRules(settings);
builder.Services.AddAccess();
builder.Services.AddContract();
builder.AddStorage(isDemo);
builder.Services.AddHealth();
builder.Services.AddCapabilities();

var app = builder.Build();
if ((StorageSetup.StartRefusal(app) ?? LocalMode.StartRefusal(app)) is { } refusal)
{
    Console.Error.WriteLine(refusal);
    return 1;
}

app.UseLoadedAhead();
app.UseHttpRules();
app.MapContract();
app.MapHealth();
app.MapCapabilities();

return await Serving.RunAsync(app, isDemo ? DemoSeason.RunAsync : null);
