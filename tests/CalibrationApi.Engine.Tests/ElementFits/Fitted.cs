using CalibrationApi.Engine.ElementFits;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.ElementFits;

/// <summary>A question of small seed with three rollers at hand.</summary>
internal static class Fitted
{
    public static ElementFitQuestion Clover() =>
        new()
        {
            CoveredWidth = new Length(9),
            Rates = [Rate(10), Rate(6), Rate(0)],
            GroundSpeeds = [Kmh(7), Kmh(9), Kmh(11)],
            SlowestMeter = Planned.Rpm(4),
            FastestMeter = Planned.Rpm(90),
            Density = new(new BulkDensity(780)),
            Elements =
            [
                new("coarse roller", new(new Volume(0.61e-3)), ElementKind.OpenFlutes),
                new("small-seed roller", new(new Volume(0.05e-3)), ElementKind.OpenFlutes),
                new("spare roller", new(new Volume(0.19e-3))),
            ],
        };

    public static MassPerArea Rate(double kilogramsPerHectare) => new(kilogramsPerHectare / 10_000);

    public static Speed Kmh(double speed) => new(speed / 3.6);
}
