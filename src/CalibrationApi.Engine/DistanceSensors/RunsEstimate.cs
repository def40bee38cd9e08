using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Statistics;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.DistanceSensors;

/// <summary>Counts per metre pooled over runs, with the uncertainty taken apart.</summary>
/// <remarks>
/// <para>Formula: counts over distances, pooled as any ratio is (<see cref="PooledRatio"/>): v_i = (u_n / n_i)^2 + (u_L / L_i)^2, u_n = one
/// count / sqrt(6) because start and stop fall anywhere between two counts, u_L = step / sqrt(6) for two marks. The relative variance of
/// the whole is 1 / sum(w) + u_t^2. The tape is common to all runs and is not averaged: u_t = limit / sqrt(3).</para>
/// <para>Range: counts and distances above 0, steps and limits at least 0.</para>
/// <para>Source: JCGM 100:2008, 4.3.7 and F.2.2.1 (SOURCES.md, key GUM).</para>
/// <para>Accuracy: 1e-6 relative against the formulas by hand; simulated runs: the interval of 95 % holds the truth in 94 to 96.5 of 100
/// (RunsEstimateTests).</para>
/// </remarks>
public sealed record RunsEstimate
{
    private RunsEstimate(ObservedRatios ratios) => Ratios = ratios;

    /// <summary>Counts per metre with the interval.</summary>
    public required MeasuredValue CountsPerMetre { get; init; }

    /// <summary>The pooling behind it.</summary>
    public required PooledRatio Pooled { get; init; }

    /// <summary>Counts per metre of each run, in the order given.</summary>
    public IReadOnlyList<double> Values => Ratios.Values;

    /// <summary>Known random variance of each run, relative.</summary>
    public IReadOnlyList<double> Variances => Ratios.Variances;

    internal ObservedRatios Ratios { get; }

    /// <summary>The tape, relative standard uncertainty.</summary>
    public required double Tape { get; init; }

    /// <summary>Scatter, counting and marking, relative standard uncertainty.</summary>
    public double Runs => Math.Sqrt(Pooled.RelativeVariance);

    /// <summary>Total counts over total distance, counts per metre: can be redone on paper.</summary>
    public required double TotalOverTotal { get; init; }

    /// <summary>Relative uncertainty of the whole.</summary>
    public TwoPartUncertainty Relative =>
        new(Pooled.BetweenShare, Pooled.DegreesOfFreedom, Math.Max(0, Pooled.RelativeVariance - Pooled.BetweenShare) + Tape * Tape);

    /// <summary>Relative uncertainty without the tape, for comparisons in which it cancels.</summary>
    public TwoPartUncertainty RelativeWithoutTape => Relative with { Known = Math.Max(0, Pooled.RelativeVariance - Pooled.BetweenShare) };

    /// <summary>Relative expanded uncertainty.</summary>
    public double RelativeExpanded => CountsPerMetre.ExpandedUncertainty / CountsPerMetre.Value;

    /// <summary>Pools runs.</summary>
    /// <param name="runs">At least one.</param>
    /// <param name="perCount">Counts for each thing counted: 1, or the pulses of a turn.</param>
    /// <param name="countStep">Smallest step of what was counted, &gt;= 0.</param>
    /// <param name="distanceStep">Smallest step of a distance, m, &gt;= 0.</param>
    /// <param name="tapeLimit">Limit of the error of the tape, relative.</param>
    /// <param name="prior">What is believed about the scatter.</param>
    /// <param name="coverage">Coverage probability.</param>
    /// <exception cref="ArgumentException">No runs.</exception>
    public static RunsEstimate From(
        IReadOnlyList<MeasuredRun> runs,
        double perCount,
        double countStep,
        double distanceStep,
        double tapeLimit,
        RepeatabilityPrior prior,
        double coverage
    )
    {
        var uncertaintyOfCount = CatchVariance.OfCount(countStep, CountStart.Free, null);
        var uncertaintyOfMarks = distanceStep / Math.Sqrt(6);
        double[] variances =
        [
            .. runs.Select(run =>
                CatchVariance.Of(
                    (run.DistanceUncertainty?.Metres ?? uncertaintyOfMarks) / run.Distance.Metres,
                    uncertaintyOfCount / run.Count
                )
            ),
        ];
        var ratios = new ObservedRatios(
            [.. runs.Select(run => run.Count * perCount)],
            [.. runs.Select(run => run.Distance.Metres)],
            variances,
            prior.Relative * prior.Relative,
            prior.DegreesOfFreedom
        );
        var pooled = ratios.Pool();
        var value = pooled.Value;
        var estimate = new RunsEstimate(ratios)
        {
            CountsPerMetre = new MeasuredValue(value, 0, double.PositiveInfinity, coverage, 0),
            Pooled = pooled,
            Tape = tapeLimit / Math.Sqrt(3),
            TotalOverTotal = runs.Sum(run => run.Count) * perCount / runs.Sum(run => run.Distance.Metres),
        };
        return estimate with { CountsPerMetre = MeasuredValue.Create(value, estimate.Relative.Times(value), coverage) };
    }
}

/// <summary>Whether runs agree.</summary>
/// <remarks>
/// <para>Formula: Q = sum((K_i / K - 1)^2 / (s0^2 + v_i)) against chi-squared with c - 1 degrees of freedom; the ratio there over back less
/// 1 against its standard uncertainty, by Student's t with the degrees of freedom of the prior. The tests that apply share a family-wise
/// error of 5 % (<see cref="CatchAgreement.FamilyError"/>).</para>
/// <para>Range: at least one run; one has nothing to disagree with. Directions are compared only where both were driven.</para>
/// <para>Source: our own derivation; 5 % in all is common practice, no published source.</para>
/// <para>Accuracy: Q and spread within 1e-6 of sums by hand, the difference of directions within 1e-3 (RunAgreementTests).</para>
/// </remarks>
public sealed record RunAgreement
{
    /// <summary>Standard deviation of the runs, relative; 0 for one run.</summary>
    public required double Spread { get; init; }

    /// <summary>Sum of squared deviations over their known variances s0^2 + v_i.</summary>
    public required double Q { get; init; }

    /// <summary>How often chance alone gives at least this Q; 1 for one run.</summary>
    public required double QProbability { get; init; }

    /// <summary>Error allowed for each test.</summary>
    public required double ErrorEach { get; init; }

    /// <summary>Counts per metre there over those back, less 1; null unless both ways were driven.</summary>
    public double? DirectionDifference { get; init; }

    /// <summary>How often chance alone gives a difference that large.</summary>
    public double DirectionProbability { get; init; } = 1;

    /// <summary>The runs scatter more than expected.</summary>
    public bool ScatterTooMuch => QProbability < ErrorEach;

    /// <summary>The two ways differ.</summary>
    public bool DirectionsDiffer => DirectionProbability < ErrorEach;

    /// <summary>No test speaks against the runs.</summary>
    public bool Agree => !(ScatterTooMuch || DirectionsDiffer);

    /// <summary>Judges runs.</summary>
    /// <param name="runs">The runs.</param>
    /// <param name="estimate">Their pooling.</param>
    /// <param name="prior">What was believed about the scatter.</param>
    public static RunAgreement Of(IReadOnlyList<MeasuredRun> runs, RunsEstimate estimate, RepeatabilityPrior prior)
    {
        var count = runs.Count;
        if (count == 1)
            return new RunAgreement
            {
                Spread = 0,
                Q = 0,
                QProbability = 1,
                ErrorEach = CatchAgreement.FamilyError,
            };
        var (q, spread) = estimate.Ratios.Scatter();
        var bothWays = runs.Any(run => run.Direction == RunDirection.There) && runs.Any(run => run.Direction == RunDirection.Back);
        var agreement = new RunAgreement
        {
            Spread = spread,
            Q = q,
            QProbability = ChiSquared.UpperTail(q, count - 1),
            ErrorEach = CatchAgreement.FamilyError / (bothWays ? 2 : 1),
        };
        if (!bothWays)
            return agreement;
        var (there, ofThere) = Mean(estimate.Ratios, i => runs[i].Direction == RunDirection.There);
        var (back, ofBack) = Mean(estimate.Ratios, i => runs[i].Direction == RunDirection.Back);
        var difference = there / back - 1;
        // Against the scatter believed beforehand: that of the runs at hand holds the difference itself.
        return agreement with
        {
            DirectionDifference = difference,
            DirectionProbability = StudentT.TwoSided(difference / Math.Sqrt(ofThere + ofBack), prior.DegreesOfFreedom),
        };
    }

    private static (double Mean, double Variance) Mean(ObservedRatios ratios, Func<int, bool> counts)
    {
        double sum = 0,
            weights = 0;
        for (var i = 0; i < ratios.Values.Length; i++)
        {
            if (!counts(i))
                continue;
            var weight = 1 / (ratios.Believed[i] + ratios.Variances[i]);
            sum += weight * ratios.Values[i];
            weights += weight;
        }

        return (sum / weights, 1 / weights);
    }
}
