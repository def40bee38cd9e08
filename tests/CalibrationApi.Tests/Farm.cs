using System.Text.Json.Nodes;

namespace CalibrationApi.Tests;

/// <summary>A machine, a product with a lot, a scale and a container, created over HTTP. Everything in it is invented.</summary>
internal sealed class Farm
{
    private readonly RecordService service;

    private Farm(RecordService service) => this.service = service;

    public required string Machine { get; init; }

    public required string Product { get; init; }

    public required string Lot { get; init; }

    public required string Scale { get; init; }

    public required string Container { get; init; }

    /// <summary>An id that no record has.</summary>
    public static string NoRecord => "01968f00-0000-7000-8000-0000000000ff";

    public static Draft MachineDraft =>
        Draft.Of(
            """
            {
              "name": "seeder", "timeZone": "Europe/Vienna", "workingWidth": { "value": 9, "unit": "m" },
              "tanks": [ { "name": "one", "volume": { "value": 3, "unit": "m3" } } ],
              "meters": [
                {
                  "position": "front", "tank": "one", "coveredWidth": { "value": 9, "unit": "m" }, "counterResolution": { "value": 0.1, "unit": "rev" },
                  "elements": [ { "name": "coarse", "displacementPerRevolution": { "value": 0.6, "unit": "L" } }, { "name": "fine" } ],
                  "speedLimits": { "minimum": { "value": 4, "unit": "rpm" }, "maximum": { "value": 90, "unit": "rpm" } },
                  "controllerEntry": { "form": "mass-per-revolution", "unit": "kg/rev", "decimals": 3 }
                },
                { "position": "rear", "coveredWidth": { "value": 9, "unit": "m" }, "elements": [ { "name": "small seed" } ] }
              ],
              "restorePoints": [ { "name": "side cover" } ]
            }
            """
        );

    public static Draft ProductDraft =>
        Draft.Of(
            """{ "name": "malting barley", "bulkDensity": { "value": 62, "unit": "kg/hL" }, "price": { "value": 420, "currency": "EUR", "per": "t" } }"""
        );

    public static Draft ScaleDraft =>
        Draft.Of(
            """{ "name": "platform", "division": { "value": 0.02, "unit": "kg" }, "accuracyClass": "III", "capacity": { "value": 50, "unit": "kg" } }"""
        );

    public static Draft ContainerDraft =>
        Draft.Of("""{ "name": "bin", "volume": { "value": 30, "unit": "L" }, "tare": { "value": 1.62, "unit": "kg" } }""");

    public static async Task<Farm> CreateAsync(RecordService service, Action<Draft>? machine = null)
    {
        var seeder = MachineDraft;
        machine?.Invoke(seeder);
        var product = await service.CreateAsync("/v1/products", ProductDraft);
        return new Farm(service)
        {
            Machine = await service.CreateAsync("/v1/machines", seeder),
            Product = product,
            Lot = await service.CreateAsync("/v1/lots", LotDraft(product)),
            Scale = await service.CreateAsync("/v1/scales", ScaleDraft),
            Container = await service.CreateAsync("/v1/containers", ContainerDraft),
        };
    }

    public static Draft LotDraft(string product) =>
        new Draft(
            new JsonObject
            {
                ["name"] = "lot A",
                ["product"] = product,
                ["treatment"] = "fungicide",
            }
        ).With("/thousandKernelMass", Draft.Quantity(45, "g/1000"));

    public Draft PlanDraft =>
        new Draft(
            new JsonObject
            {
                ["name"] = "north field",
                ["machine"] = Machine,
                ["scale"] = Scale,
                ["container"] = Container,
                ["groundSpeed"] = Draft.Quantity(9, "km/h"),
                ["area"] = Draft.Quantity(48, "ha"),
                ["meters"] = new JsonArray(
                    new JsonObject
                    {
                        ["meter"] = "front",
                        ["element"] = "coarse",
                        ["product"] = Product,
                        ["lot"] = Lot,
                        ["targetRate"] = Draft.Quantity(90, "kg/ha"),
                    }
                ),
            }
        );

    /// <summary>Two catches near 0.363 kg per revolution.</summary>
    public Draft CatchTest =>
        new Draft(
            new JsonObject
            {
                ["machine"] = Machine,
                ["meter"] = "front",
                ["element"] = "coarse",
                ["product"] = Product,
                ["lot"] = Lot,
                ["scale"] = Scale,
                ["occurredAt"] = "2026-04-18T06:40:00+02:00",
                ["recordedBy"] = "A. Operator",
                ["catches"] = new JsonArray(Catch(18.70, 47), Catch(18.56, 46.8)),
            }
        );

    /// <summary>0.342 kg per revolution, stated by hand.</summary>
    public Draft Adoption =>
        new Draft(
            new JsonObject
            {
                ["machine"] = Machine,
                ["meter"] = "front",
                ["element"] = "coarse",
                ["product"] = Product,
                ["lot"] = Lot,
                ["typedIn"] = Draft.Quantity(0.342, "kg/rev"),
                ["reason"] = "from the chart",
                ["occurredAt"] = "2026-03-02T08:00:00+01:00",
                ["recordedBy"] = "A. Operator",
            }
        );

    /// <summary>One reading, 20 g too much at 20 kg: inside the limit.</summary>
    public Draft ScaleCheck =>
        new Draft(
            new JsonObject
            {
                ["scale"] = Scale,
                ["readings"] = new JsonArray(Reading(20, 20.02)),
                ["occurredAt"] = "2026-03-01T08:00:00+01:00",
                ["recordedBy"] = "A. Operator",
            }
        );

    public static JsonObject Catch(double gross, double revolutions, double tare = 1.62) =>
        new()
        {
            ["gross"] = Draft.Quantity(gross, "kg"),
            ["tare"] = Draft.Quantity(tare, "kg"),
            ["revolutions"] = Draft.Quantity(revolutions, "rev"),
        };

    /// <summary>Catches of so many kilograms per revolution, over fifty revolutions each.</summary>
    public static JsonArray Catches(params double[] perRevolution) =>
        [
            .. perRevolution.Select(value =>
                (JsonNode)
                    new JsonObject
                    {
                        ["net"] = Draft.Quantity(Math.Round(value * 50, 6), "kg"),
                        ["revolutions"] = Draft.Quantity(50, "rev"),
                    }
            ),
        ];

    public static JsonObject Reading(double known, double indicated) =>
        new() { ["known"] = Draft.Quantity(known, "kg"), ["indicated"] = Draft.Quantity(indicated, "kg") };

    public static JsonObject Supersedes(string record, string reason = "the tare was wrong") =>
        new() { ["record"] = record, ["reason"] = reason };

    /// <summary>Records a test, changed as wanted, and gives its answer.</summary>
    public async Task<Reply> TestAsync(Action<Draft>? change = null)
    {
        var test = CatchTest;
        change?.Invoke(test);
        return (await service.PostAsync("/v1/catch-tests", test)).Expect(201);
    }

    /// <summary>Adopts a value, changed as wanted, and gives its answer.</summary>
    public async Task<Reply> AdoptAsync(Action<Draft>? change = null)
    {
        var adoption = Adoption;
        change?.Invoke(adoption);
        return (await service.PostAsync("/v1/adoptions", adoption)).Expect(201);
    }

    /// <summary>Checks the scale, changed as wanted, and gives the answer.</summary>
    public async Task<Reply> CheckScaleAsync(Action<Draft>? change = null)
    {
        var check = ScaleCheck;
        change?.Invoke(check);
        return (await service.PostAsync("/v1/scale-checks", check)).Expect(201);
    }

    /// <summary>The values in force on the machine.</summary>
    public async Task<JsonArray> InForceAsync(string query = "") =>
        (await service.GetAsync($"/v1/machines/{Machine}/values-in-force{query}")).Expect(200).Body.List("/items");

    /// <summary>Describes a record as retired.</summary>
    public async Task RetireAsync(string path, string id)
    {
        var record = (await service.GetAsync($"/v1/{path}/{id}")).Expect(200);
        var body = new Draft(record.Json);
        foreach (var name in (string[])["id", "revision", "createdAt", "updatedAt"])
            body.Without("/" + name);
        (await service.PutAsync($"/v1/{path}/{id}", body.With("/retired", true), record.ETag)).Expect(200);
    }
}
