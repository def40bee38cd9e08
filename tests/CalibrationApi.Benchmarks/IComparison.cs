namespace CalibrationApi.Benchmarks;

/// <summary>
/// Something of ours measured against something known, in the same run on the same machine: only the ratio means anything elsewhere.
/// </summary>
/// <remarks>Every implementation in this project is found and run; a new one needs nothing but its file.</remarks>
internal interface IComparison
{
    /// <summary>Short name by which it can be chosen on the command line.</summary>
    string Name { get; }

    /// <summary>Measures and returns one or several ratios.</summary>
    Task<IReadOnlyList<MeasuredRatio>> RunAsync();
}

/// <summary>A ratio of medians and what is hoped for.</summary>
/// <param name="What">What is divided by what.</param>
/// <param name="Ratio">The ratio of the medians of all rounds.</param>
/// <param name="Aim">The ratio that is hoped for.</param>
/// <param name="Detail">The two medians in words.</param>
internal sealed record MeasuredRatio(string What, double Ratio, Aim Aim, string Detail);

/// <summary>What a ratio should be.</summary>
/// <param name="Bound">The bound.</param>
/// <param name="IsMost">The ratio should be at most the bound; otherwise at least.</param>
internal sealed record Aim(double Bound, bool IsMost)
{
    public static Aim AtMost(double bound) => new(bound, true);

    public static Aim AtLeast(double bound) => new(bound, false);

    public bool IsMetBy(double ratio) => IsMost ? ratio <= Bound : ratio >= Bound;

    public override string ToString() => FormattableString.Invariant($"{(IsMost ? "at most" : "at least")} {Bound:0.##}");
}
