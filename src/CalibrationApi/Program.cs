using CalibrationApi.CatchPlans;
using CalibrationApi.CatchTests;
using CalibrationApi.Contract;
using CalibrationApi.Demo;
using CalibrationApi.Http;
using CalibrationApi.MeterSpeeds;
using CalibrationApi.Units;

var builder = WebApplication.CreateBuilder(args);
builder.AddHttpRules();
builder.Services.AddContract();
builder.Services.AddCatchTests();
builder.Services.AddCatchPlans();
builder.Services.AddMeterSpeeds();

if (LoopbackOnly.Refusal(builder.Configuration) is { } refusal)
{
    Console.Error.WriteLine(refusal);
    return 1;
}

var app = builder.Build();
app.UseHttpRules();
app.MapContract();
app.MapHealthChecks("/healthz/live").ExcludeFromDescription();
app.MapHealthChecks("/healthz/ready").ExcludeFromDescription();

var v1 = app.MapGroup("/v1").WithRequestChecks();
v1.MapCatchPlans();
v1.MapCatchTests();
v1.MapMeterSpeeds();
v1.MapUnits();

if (args.Contains("--demo"))
    DemoGreeting.PrintOnStart(app);
app.Run();
return 0;
