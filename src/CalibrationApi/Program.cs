using CalibrationApi;
using CalibrationApi.Access;
using CalibrationApi.Contract;
using CalibrationApi.Demo;
using CalibrationApi.Health;
using CalibrationApi.Http;
using CalibrationApi.Keys;
using CalibrationApi.Observability;
using CalibrationApi.Settings;
using CalibrationApi.Storing;

if (args is [KeysCommand.Word, ..])
    return KeysCommand.Run(args[1..], Console.Out, Console.Error);

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
