using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.MeterSpeeds;

/// <summary>The air stream from the contract to the engine and back; nothing is computed here.</summary>
internal static class FanMapping
{
    public static FanQuestion ToEngine(FanOfMachine fan, MeterSpeedRequest request) =>
        new()
        {
            FanSpeed = RotationQuantity.Read(fan.FanSpeed),
            AirFlow = VolumePerTimeQuantity.Read(fan.AirFlow),
            Products =
            [
                .. fan.Products!.Select(product => new CarriedProduct(
                    product!.Name!,
                    (product.CoveredWidth ?? request.CoveredWidth)!.Read(),
                    [.. (product.Rates ?? request.Rates)!.Select(rate => rate!.Read())],
                    new(RotationQuantity.Read(product.FanSpeedLimits?.Minimum), RotationQuantity.Read(product.FanSpeedLimits?.Maximum)),
                    new(
                        VolumePerTimeQuantity.Read(product.AirFlowLimits?.Minimum),
                        VolumePerTimeQuantity.Read(product.AirFlowLimits?.Maximum)
                    )
                )),
            ],
        };

    public static FanAnswer ToAnswer(FanResult fan, AnswerUnits units) =>
        new()
        {
            Headline = units.Text(fan.Headline),
            HeadlineParts = units.Parts(fan.Headline),
            Verdict = Words.Of(fan.Verdict),
            FanSpeeds = fan.FanSpeeds is { } speeds
                ? new FanSpeedWindow
                {
                    Exists = speeds.Exists,
                    Minimum = speeds.Minimum is { } slowest ? units.Rotation(slowest) : null,
                    MinimumOf = speeds.MinimumOf,
                    Maximum = speeds.Maximum is { } fastest ? units.Rotation(fastest) : null,
                    MaximumOf = speeds.MaximumOf,
                }
                : null,
            AirFlows = fan.AirFlows is { } flows
                ? new AirFlowWindow
                {
                    Exists = flows.Exists,
                    Minimum = flows.Minimum is { } least ? units.VolumeFlow(least) : null,
                    MinimumOf = flows.MinimumOf,
                    Maximum = flows.Maximum is { } most ? units.VolumeFlow(most) : null,
                    MaximumOf = flows.MaximumOf,
                }
                : null,
            Loads = [.. fan.Loads.Select(load => ToAnswer(load, units))],
        };

    private static AirLoadAnswer ToAnswer(AirLoad load, AnswerUnits units) =>
        new()
        {
            GroundSpeed = units.Speed(load.GroundSpeed),
            Rates = load.HighestRates ? "highest" : "lowest",
            MassFlow = units.MassFlow(load.Total.Flow),
            MassPerAir = PerAir(load.Total.PerAir, units),
            Products =
            [
                .. load.Products.Select(product => new ProductLoadAnswer
                {
                    Name = product.Name,
                    MassFlow = units.MassFlow(product.Carried.Flow),
                    MassPerAir = PerAir(product.Carried.PerAir, units),
                }),
            ],
        };

    private static BulkDensityQuantity? PerAir(BulkDensity? carried, AnswerUnits units) =>
        carried is { } known ? units.BulkDensity(known) : null;
}
