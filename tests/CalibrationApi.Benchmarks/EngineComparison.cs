using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Simulation;
using MathNet.Numerics.Distributions;

namespace CalibrationApi.Benchmarks;

/// <summary>
/// Whole evaluations of five and of twenty catches against one quantile of Student's distribution from a general-purpose library.
/// </summary>
internal sealed class EngineComparison : IComparison
{
    private const int RoundCount = 21;
    private const int CallsPerRound = 5000;

    // Each with other masses: a machine that had learnt one test by heart would prove nothing.
    private static CatchTestQuestion[] Tests(int catches) =>
        [.. Enumerable.Range(0, 64).Select(trial => Setup(catches).Run(SeededRandom.Of(20260301, trial)).Question)];

    private static CatchTestSetup Setup(int catches) =>
        new()
        {
            Device = new MeteringDevice
            {
                Displacement = new Volume(0.645e-3),
                BulkDensity = new BulkDensity(620),
                CatchScatter = 0.01,
                DayToDay = 0.01,
            },
            Scale = new SimulatedScale(new Scale { Division = new Mass(0.02), AccuracyClass = AccuracyClass.III }),
            PlannedTurns = [.. Enumerable.Repeat(47.0, catches)],
            Asked = test =>
                test with
                {
                    Reference = new ReferenceValue(new MassPerRevolution(0.342), ReferenceKind.ValueInForce, null, null),
                    ControllerEntry = ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), 3),
                    TargetRate = new MassPerArea(90e-4),
                    Area = new Area(48e4),
                    PricePerKilogram = 0.42,
                },
        };

    public string Name => "engine";

    public async Task<IReadOnlyList<MeasuredRatio>> RunAsync() =>
        [await RatioAsync("five", Tests(5), Aim.AtMost(3)), await RatioAsync("twenty", Tests(20), Aim.AtMost(8))];

    private static async Task<MeasuredRatio> RatioAsync(string inWords, CatchTestQuestion[] tests, Aim aim)
    {
        // Until the compiler has done its best with both.
        for (var i = 0; i < 20; i++)
        {
            Evaluations(tests);
            Quantiles();
            await Task.Delay(20);
        }

        var (evaluation, quantile) = await Rounds.MediansAsync(
            RoundCount,
            () => Task.FromResult(Evaluations(tests)),
            () => Task.FromResult(Quantiles())
        );
        return new MeasuredRatio(
            $"evaluation of {inWords} catches / one StudentT.InvCDF of MathNet (9.5 degrees of freedom, p = 0.975)",
            evaluation / quantile,
            aim,
            FormattableString.Invariant($"{evaluation * 1e6:0.0} µs against {quantile * 1e6:0.0} µs")
        );
    }

    private static double Evaluations(CatchTestQuestion[] tests)
    {
        var next = 0;
        return Rounds.SecondsPerCall(CallsPerRound, () => CatchTestEvaluation.Evaluate(tests[next++ % tests.Length]));
    }

    private static double Quantiles() => Rounds.SecondsPerCall(CallsPerRound, () => StudentT.InvCDF(0, 1, 9.5, 0.975));
}
