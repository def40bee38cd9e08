namespace CalibrationApi.Tests.Records.Referring;

/// <summary>Evidence about records that are unknown, retired or do not belong together is refused, and leaves nothing behind.</summary>
public sealed class ReferredRecordsTests(RecordService service) : IClassFixture<RecordService>
{
    [Theory]
    [InlineData("/machine", "id-unknown")]
    [InlineData("/product", "id-unknown")]
    [InlineData("/lot", "id-unknown")]
    [InlineData("/scale", "id-unknown")]
    [InlineData("/container", "id-unknown")]
    [InlineData("/plan", "id-unknown")]
    [InlineData("/meter", "meter-not-on-machine")]
    [InlineData("/element", "element-not-in-meter")]
    public async Task Test_OfSomethingUnknown_IsRefusedAtItsMember(string member, string code)
    {
        var farm = await Farm.CreateAsync(service);

        foreach (var wrong in (string[])[Farm.NoRecord, "7", "' or 1=1 --"])
        {
            var draft = farm.CatchTest.With(member, wrong);
            // A lot of an unknown product is told by the product alone.
            if (member == "/product")
                draft.Without("/lot");
            await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/catch-tests", draft))).RefusedAsync(
                422,
                "#" + member,
                code
            );
        }
    }

    [Theory]
    [InlineData("/machine", "id-unknown")]
    [InlineData("/product", "id-unknown")]
    [InlineData("/lot", "id-unknown")]
    [InlineData("/test", "id-unknown")]
    [InlineData("/meter", "meter-not-on-machine")]
    [InlineData("/element", "element-not-in-meter")]
    public async Task Adoption_OfSomethingUnknown_IsRefusedAtItsMember(string member, string code)
    {
        var farm = await Farm.CreateAsync(service);
        var draft = farm.Adoption.With(member, Farm.NoRecord);
        if (member == "/product")
            draft.Without("/lot");

        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/adoptions", draft))).RefusedAsync(422, "#" + member, code);
    }

    [Fact]
    public async Task ScaleCheck_OfAnUnknownScale_IsRefused()
    {
        var farm = await Farm.CreateAsync(service);

        await (
            await service.WithoutTraceAsync(() => service.PostAsync("/v1/scale-checks", farm.ScaleCheck.With("/scale", Farm.NoRecord)))
        ).RefusedAsync(422, "#/scale", "id-unknown");
    }

    [Theory]
    [InlineData("machines", "/machine")]
    [InlineData("products", "/product")]
    [InlineData("lots", "/lot")]
    [InlineData("scales", "/scale")]
    [InlineData("plans", "/plan")]
    public async Task Test_OfARetiredRecord_IsRefused(string path, string member)
    {
        var farm = await Farm.CreateAsync(service);
        var draft = farm.CatchTest.With("/plan", await service.CreateAsync("/v1/plans", farm.PlanDraft));
        await farm.RetireAsync(path, draft.Body[member[1..]]!.GetValue<string>());

        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/catch-tests", draft))).RefusedAsync(
            422,
            "#" + member,
            "record-retired"
        );
    }

    [Theory]
    [InlineData("machines", "/machine")]
    [InlineData("products", "/product")]
    [InlineData("lots", "/lot")]
    public async Task Adoption_OfARetiredRecord_IsRefused(string path, string member)
    {
        var farm = await Farm.CreateAsync(service);
        await farm.RetireAsync(path, farm.Adoption.Body[member[1..]]!.GetValue<string>());

        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/adoptions", farm.Adoption))).RefusedAsync(
            422,
            "#" + member,
            "record-retired"
        );
    }

    [Fact]
    public async Task ScaleCheck_OfARetiredScale_IsRefused()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.RetireAsync("scales", farm.Scale);

        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/scale-checks", farm.ScaleCheck))).RefusedAsync(
            422,
            "#/scale",
            "record-retired"
        );
    }

    [Theory]
    [InlineData("catch-tests")]
    [InlineData("adoptions")]
    public async Task Evidence_LotOfAnotherProduct_IsRefused(string path)
    {
        var (farm, other) = (await Farm.CreateAsync(service), await Farm.CreateAsync(service));
        var draft = path == "adoptions" ? farm.Adoption : farm.CatchTest;

        await (await service.WithoutTraceAsync(() => service.PostAsync($"/v1/{path}", draft.With("/lot", other.Lot)))).RefusedAsync(
            422,
            "#/lot",
            "records-at-odds"
        );
    }

    [Fact]
    public async Task Test_PlanOfAnotherMachine_IsRefused()
    {
        var (farm, other) = (await Farm.CreateAsync(service), await Farm.CreateAsync(service));
        var plan = await service.CreateAsync("/v1/plans", other.PlanDraft);

        await (
            await service.WithoutTraceAsync(() => service.PostAsync("/v1/catch-tests", farm.CatchTest.With("/plan", plan)))
        ).RefusedAsync(422, "#/plan", "records-at-odds");
    }

    // The element exists on the machine, but in another meter.
    [Fact]
    public async Task Test_ElementOfAnotherMeter_IsRefusedAndToldWhichThereAre()
    {
        var farm = await Farm.CreateAsync(service);

        var fault = await (
            await service.WithoutTraceAsync(() => service.PostAsync("/v1/catch-tests", farm.CatchTest.With("/element", "small seed")))
        ).RefusedAsync(422, "#/element", "element-not-in-meter");

        Assert.Contains("coarse, fine", fault.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Test_SeveralThingsWrong_AreToldAtOnce()
    {
        var farm = await Farm.CreateAsync(service);
        var draft = farm
            .CatchTest.With("/product", Farm.NoRecord)
            .With("/scale", Farm.NoRecord)
            .With("/lot", Farm.NoRecord)
            .With("/element", "no such");

        var problem = await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/catch-tests", draft))).ProblemAsync(422);

        Assert.Equal(
            ["#/element", "#/lot", "#/product", "#/scale"],
            problem.Faults.Select(fault => fault.Pointer).Order(StringComparer.Ordinal)
        );
    }

    // An id of one kind is no id of another.
    [Fact]
    public async Task Test_IdOfAnotherKind_IsUnknown()
    {
        var farm = await Farm.CreateAsync(service);

        await (await service.PostAsync("/v1/catch-tests", farm.CatchTest.With("/scale", farm.Machine))).RefusedAsync(
            422,
            "#/scale",
            "id-unknown"
        );
    }
}
