using CalibrationApi.Adoptions;
using CalibrationApi.CatchPlans;
using CalibrationApi.CatchTests;
using CalibrationApi.Codes;
using CalibrationApi.Containers;
using CalibrationApi.Contract;
using CalibrationApi.Demo;
using CalibrationApi.Health;
using CalibrationApi.History;
using CalibrationApi.Http;
using CalibrationApi.Lots;
using CalibrationApi.Machines;
using CalibrationApi.MeterSpeeds;
using CalibrationApi.Observability;
using CalibrationApi.Plans;
using CalibrationApi.Products;
using CalibrationApi.ScaleChecks;
using CalibrationApi.Scales;
using CalibrationApi.Settings;
using CalibrationApi.Storing;
using CalibrationApi.Units;

var isDemo = args.Contains(DemoSeason.Switch);
var builder = WebApplication.CreateBuilder(DemoSeason.OtherArguments(args));
if (!builder.TryAddSettings(isDemo, out var settings))
    return 1;
builder.AddObservability(settings);
builder.AddHttpRules(settings);
builder.Services.AddContract();
builder.Services.AddCatchTests();
builder.Services.AddCatchPlans();
builder.Services.AddMeterSpeeds();
builder.AddStorage(isDemo);
builder.Services.AddHealth();
builder.Services.AddMachines();
builder.Services.AddProducts();
builder.Services.AddLots();
builder.Services.AddScales();
builder.Services.AddContainers();
builder.Services.AddPlans();
builder.Services.AddScaleChecks();
builder.Services.AddAdoptions();

var app = builder.Build();
app.UseHttpRules();
app.MapContract();
app.MapHealth();

var v1 = app.MapGroup("/v1").WithRequestChecks();
v1.MapCatchPlans();
v1.MapCatchTests();
v1.MapMeterSpeeds();
v1.MapUnits();
v1.MapCodes();
v1.MapMachines();
v1.MapProducts();
v1.MapLots();
v1.MapScales();
v1.MapContainers();
v1.MapPlans();
v1.MapScaleChecks();
v1.MapAdoptions();
v1.MapHistory();

return await TakenAddress.ToldAsync(async () =>
{
    if (isDemo)
        return await DemoSeason.RunAsync(app);
    await app.RunAsync();
    return true;
}) ? 0 : 1;
