using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;
using MathNet.Numerics.Distributions;

namespace CalibrationApi.Benchmarks;

/// <summary>A whole evaluation of five catches against one quantile of Student's distribution from a general-purpose library.</summary>
internal sealed class EngineComparison : IComparison
{
    private const int RoundCount = 21;
    private const int CallsPerRound = 5000;

    // The invented example of the demo data, with three catches more.
    private static readonly CatchTest Test = new()
    {
        Catches = [One(18.70, 47.0), One(18.56, 46.8), One(18.74, 47.2), One(18.61, 46.9), One(18.68, 47.0)],
        Scale = new Scale { Division = new Mass(0.02), AccuracyClass = AccuracyClass.III },
        Reference = new ReferenceValue(new MassPerRevolution(0.342), ReferenceKind.ValueInForce, null, null),
        ControllerEntry = ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), 3),
        TargetRate = new MassPerArea(90e-4),
        Area = new Area(48e4),
        PricePerKilogram = 0.42,
    };

    public string Name => "engine";

    public async Task<IReadOnlyList<MeasuredRatio>> RunAsync()
    {
        // Until the compiler has done its best with both.
        for (var i = 0; i < 20; i++)
        {
            Evaluations();
            Quantiles();
            await Task.Delay(20);
        }

        var (evaluation, quantile) = await Rounds.MediansAsync(RoundCount, () => Task.FromResult(Evaluations()), () => Task.FromResult(Quantiles()));
        return
        [
            new MeasuredRatio(
                "evaluation of five catches / one StudentT.InvCDF of MathNet (9.5 degrees of freedom, p = 0.975)",
                evaluation / quantile,
                Aim.AtMost(6),
                FormattableString.Invariant($"{evaluation * 1e6:0.0} µs against {quantile * 1e6:0.0} µs")),
        ];
    }

    private static double Evaluations() => Rounds.SecondsPerCall(CallsPerRound, () => CatchTestEvaluation.Evaluate(Test));

    private static double Quantiles() => Rounds.SecondsPerCall(CallsPerRound, () => StudentT.InvCDF(0, 1, 9.5, 0.975));

    private static Catch One(double gross, double revolutions) =>
        Catch.Weighed(new Mass(gross), new Mass(1.62), new CountedRevolutions(revolutions, 0.1), null);
}
