namespace CalibrationApi.Simulation.Mistakes;

/// <summary>The count is a multiple of the turns: two pulses taken for one, or one for two.</summary>
/// <param name="Factor">2 for a doubled count, 0.5 for a halved one.</param>
public sealed record CountMultiplied(double Factor) : Mistake
{
    /// <summary>Every turn counted twice.</summary>
    public static CountMultiplied Doubled { get; } = new(2);

    /// <summary>Every second turn counted.</summary>
    public static CountMultiplied Halved { get; } = new(0.5);

    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => 1 / Factor;

    internal override void OnPaper(OneCatch one) => one.Counted *= Factor;
}

/// <summary>The counter was not set to zero: it goes on from the catch before.</summary>
public sealed record CounterNotReset : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest)
    {
        var shown = honest.Counted;
        for (var before = honest.Before; before is not null; before = OnlyIn is null ? before.Before : null)
            shown += before.Counted;
        return honest.Counted / shown;
    }

    internal override void OnPaper(OneCatch one) => one.Counted += one.Before?.Counted ?? 0;
}
