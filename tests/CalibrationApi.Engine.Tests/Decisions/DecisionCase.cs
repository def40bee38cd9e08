using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;
using Rule = CalibrationApi.Engine.CatchTests.CatchTestVerdict.Rule;

namespace CalibrationApi.Engine.Tests.Decisions;

/// <summary>A test, and the verdict that the table of decisions has for it.</summary>
internal sealed record DecisionCase(string Name, CatchTestQuestion Test, string Verdict, Rule? Rule, string Why)
{
    public const string Refused = "refused";
    public const double Pound = 0.45359237;

    public static readonly Catch[] Two = [Given.Net(17.08, 47), Given.Net(16.94, 46.8)];

    public static readonly Catch Canola = Given.Net(0.132 * 0.45359237 * 150, 150);

    public static readonly Scale FailedScale = Given.Platform with
    {
        KnownError = new KnownScaleError(0.021, 0.0005) { CheckFailed = true },
    };

    public static ElementContent Roller(double cubicMetres, double density, ElementKind? kind = null) =>
        new(new(new Volume(cubicMetres)), new(new BulkDensity(density)), kind, "roller");
}
