using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Simulation;
using MathNet.Numerics.Distributions;

namespace CalibrationApi.Benchmarks;

/// <summary>A whole evaluation of five catches against one quantile of Student's distribution from a general-purpose library.</summary>
internal sealed class EngineComparison : IComparison
{
    private const int RoundCount = 21;
    private const int CallsPerRound = 5000;

    // Simulated tests of five catches, each with other masses: a machine that had learnt one by heart would prove nothing.
    private static readonly CatchTest[] Tests = [.. Enumerable.Range(0, 64).Select(trial => Setup.Run(SeededRandom.Of(20260301, trial)).Question)];

    private static CatchTestSetup Setup => new()
    {
        Device = new MeteringDevice { Displacement = new Volume(0.645e-3), BulkDensity = new BulkDensity(620), CatchScatter = 0.01, DayToDay = 0.01 },
        Scale = new SimulatedScale(new Scale { Division = new Mass(0.02), AccuracyClass = AccuracyClass.III }),
        PlannedTurns = [47, 47, 47, 47, 47],
        Asked = test => test with
        {
            Reference = new ReferenceValue(new MassPerRevolution(0.342), ReferenceKind.ValueInForce, null, null),
            ControllerEntry = ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), 3),
            TargetRate = new MassPerArea(90e-4),
            Area = new Area(48e4),
            PricePerKilogram = 0.42,
        },
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

    private static int next;

    private static double Evaluations() => Rounds.SecondsPerCall(CallsPerRound, () => CatchTestEvaluation.Evaluate(Tests[next++ % Tests.Length]));

    private static double Quantiles() => Rounds.SecondsPerCall(CallsPerRound, () => StudentT.InvCDF(0, 1, 9.5, 0.975));
}
