using CalibrationApi.Access;
using CalibrationApi.Adoptions;
using CalibrationApi.Audit;
using CalibrationApi.CatchPlans;
using CalibrationApi.CatchTests;
using CalibrationApi.Containers;
using CalibrationApi.Contract;
using CalibrationApi.Demo;
using CalibrationApi.History;
using CalibrationApi.Http;
using CalibrationApi.Keys;
using CalibrationApi.Lots;
using CalibrationApi.Machines;
using CalibrationApi.MeterSpeeds;
using CalibrationApi.Plans;
using CalibrationApi.Products;
using CalibrationApi.ScaleChecks;
using CalibrationApi.Scales;
using CalibrationApi.Storing;
using CalibrationApi.Units;
using CalibrationApi.Workspaces;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Diagnostics.HealthChecks;

if (args is [KeysCommand.Word, ..])
    return KeysCommand.Run(args[1..], Console.Out, Console.Error);

var builder = WebApplication.CreateBuilder(DemoSeason.OtherArguments(args));
builder.AddHttpRules();
builder.Services.AddAccess();
builder.Services.AddContract();
builder.Services.AddCatchTests();
builder.Services.AddCatchPlans();
builder.Services.AddMeterSpeeds();
builder.AddStorage(isDemo: args.Contains(DemoSeason.Switch));
builder.Services.AddMachines();
builder.Services.AddProducts();
builder.Services.AddLots();
builder.Services.AddScales();
builder.Services.AddContainers();
builder.Services.AddPlans();
builder.Services.AddScaleChecks();
builder.Services.AddAdoptions();
builder.Services.AddWorkspaces();
builder.Services.AddKeys();
builder.Services.AddAudit();

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

var v1 = app.MapGroup("/v1").WithRequestChecks().WithScopeForEveryRoute().WithExportsNoted();
v1.MapCatchPlans();
v1.MapCatchTests();
v1.MapMeterSpeeds();
v1.MapUnits();
v1.MapMachines();
v1.MapProducts();
v1.MapLots();
v1.MapScales();
v1.MapContainers();
v1.MapPlans();
v1.MapScaleChecks();
v1.MapAdoptions();
v1.MapHistory();
v1.MapWorkspaces();
v1.MapKeys();
v1.MapAudit();

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
