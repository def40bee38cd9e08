using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Records.Plans;

/// <summary>Where the fan may stand for the products of a plan.</summary>
public sealed class SetUpFanTests(RecordService service) : IClassFixture<RecordService>
{
    [Theory]
    [InlineData(3400, 3000, 3800, true, "Keep the fan at 3000 rpm to 3800 rpm.")]
    [InlineData(3900, 3000, 3800, false, "")]
    [InlineData(3400, 4300, 4500, false, "")]
    public async Task SetUp_ProductsThatStateFanSpeeds_TellsWhereTheFanMayStand(
        double planned,
        double least,
        double most,
        bool isClear,
        string headline
    )
    {
        var farm = await Farm.CreateAsync(service);
        var light = await service.CreateAsync(
            "/v1/products",
            Draft
                .Of("""{ "name": "small seed", "bulkDensity": { "value": 75, "unit": "kg/hL" } }""")
                .With(
                    "/fanSpeedLimits",
                    new JsonObject { ["minimum"] = Draft.Quantity(least, "rpm"), ["maximum"] = Draft.Quantity(most, "rpm") }
                )
        );
        var heavy = await service.CreateAsync(
            "/v1/products",
            Draft.Of(
                """{ "name": "granules", "bulkDensity": { "value": 95, "unit": "kg/hL" }, "fanSpeedLimits": { "minimum": { "value": 2900, "unit": "rpm" }, "maximum": { "value": 4200, "unit": "rpm" } } }"""
            )
        );
        var draft = farm
            .PlanDraft.With("/meters/0/product", light)
            .Without("/meters/0/lot")
            .Add(
                "/meters",
                new JsonObject
                {
                    ["meter"] = "rear",
                    ["element"] = "small seed",
                    ["product"] = heavy,
                    ["startValue"] = Draft.Quantity(0.9, "kg/rev"),
                    ["targetRate"] = Draft.Quantity(60, "kg/ha"),
                }
            )
            .With("/sowingConditions", new JsonObject { ["fanSpeed"] = Draft.Quantity(planned, "rpm") });

        var setUp = await SetUpAsync(await service.CreateAsync("/v1/plans", draft));

        Assert.Equal(isClear ? "ready" : "blocked", setUp.Word("/verdict"));
        Assert.Equal(setUp.Word("/fan/headline"), isClear ? headline : setUp.Word("/obstacles/0/detail"));
        Assert.NotEmpty(setUp.List("/fan/loads"));
    }

    [Fact]
    public async Task SetUp_NoProductStatesAFanSpeed_SaysNothingOfTheFan()
    {
        var farm = await Farm.CreateAsync(service);

        Assert.False((await SetUpAsync(await service.CreateAsync("/v1/plans", farm.PlanDraft))).Has("/fan"));
    }

    private async Task<Answer> SetUpAsync(string plan) => (await service.GetAsync($"/v1/plans/{plan}/set-up")).Expect(200).Body;
}
