using System.Text.Json.Nodes;
using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Evidence.Adoptions;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Records.Plans;
using CalibrationApi.Testing;
using FluentValidation;
using Microsoft.AspNetCore.Http;

namespace CalibrationApi.Tests.Records.Plans;

/// <summary>
/// What is computed from stored records costs little for the largest machine, too: set-up and catch plan of its plan, its values in force.
/// </summary>
/// <remarks>What a thread allocates is counted, as in LongListTests. The time is measured by the benchmark "limits".</remarks>
public sealed class LargestPlanTests(RecordService service) : IClassFixture<RecordService>
{
    private const long MostAllocated = 50 * 1024 * 1024;

    [Theory]
    [InlineData(false, "displacement")]
    [InlineData(true, "value-in-force")]
    public async Task Answers_AboutTheLargestMachine_CostLittle(bool isAdopted, string origin)
    {
        var farm = await Farm.CreateAsync(service);
        var machine = await service.CreateAsync("/v1/machines", new Draft(LargestMachine.Machine()));
        var plan = await service.CreateAsync("/v1/plans", new Draft(LargestMachine.Plan(machine, farm.Product, farm.Lot, farm.Scale)));
        if (isAdopted)
            await AdoptAsync(farm, machine);

        foreach (var units in (string?[])[null, "us"])
        {
            var setUp = Cheap(() => SetUpOfPlan.Handle(plan, service.Database, Workspace.Local, units));
            var catchPlan = Cheap(() =>
                PlanCatchOfPlan.Handle(plan, service.Database, Workspace.Local, service.Service<IValidator<CatchPlanRequest>>(), units)
            );
            var inForce = Cheap(context =>
                ReadAdoptions.InForce(
                    machine,
                    new ValuesInForceQuery { Limit = "1000", Units = units },
                    context,
                    service.Database,
                    Workspace.Local,
                    service.Service<Cursors>()
                )
            );

            Assert.Equal(LargestMachine.Meters, setUp.List("/meters").Count);
            Assert.All(setUp.List("/meters"), meter =>
                Assert.Equal(LargestMachine.Elements, meter!["meterSpeed"]!["elements"]!.AsArray().Count)
            );
            Assert.Equal(origin, setUp.Word("/meters/63/values/19/from"));
            Assert.Equal(LargestMachine.Meters, catchPlan.List("/meters").Count);
            Assert.Equal(isAdopted ? ReadAdoptions.LongestPage : 0, inForce.List("/items").Count);
            Assert.Equal(isAdopted, inForce.Has("/next"));
        }
    }

    private async Task AdoptAsync(Farm farm, string machine)
    {
        var test = (await farm.TestAsync()).Id;
        await farm.AdoptAsync(adoption => adoption.With("/test", test).With("/typedIn", Draft.Quantity(0.363, "kg/rev")));
        foreach (var statement in LargestMachine.ValueForEachElement)
            service.Execute(statement, new { machine });
    }

    private Answer Cheap(Func<IResult> ask) => Cheap(_ => ask());

    private Answer Cheap(Func<HttpContext, IResult> ask)
    {
        // A buffer of its own would count; this one is there before.
        using var body = new MemoryStream(8 * 1024 * 1024);
        var context = new DefaultHttpContext { RequestServices = service.Service<IServiceProvider>(), Response = { Body = body } };
        var before = GC.GetAllocatedBytesForCurrentThread();
        var answering = ask(context).ExecuteAsync(context);
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;

        Assert.True(answering.IsCompletedSuccessfully, "What was allocated elsewhere was not counted.");
        Assert.InRange(allocated, 1, MostAllocated);
        return new Answer(JsonNode.Parse(body.ToArray())!);
    }
}
