namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>What a mistake makes of the true numbers.</summary>
/// <param name="Share">Share of the mistake's prior that this variant has.</param>
/// <param name="Name">What the owner calls the other element, product or container; null when there is none.</param>
internal abstract record Prediction(double Share, string? Name = null)
{
    /// <summary>Natural logarithm of the density of the observed logarithms of mass per revolution under it.</summary>
    public abstract double LogLikelihood(TestLikelihood likelihood, int? at);

    /// <summary>
    /// Taken back in the whole test it leaves nothing of the change: never true of a range, which says too little to fit exactly.
    /// </summary>
    public virtual bool Explains(TestLikelihood likelihood) => false;
}

/// <summary>Every mass per revolution is multiplied by one ratio.</summary>
/// <param name="Ratio">The ratio, above 0.</param>
/// <param name="IsUncertain">The ratio itself is only known to <see cref="MistakeJudgement.OtherDeliveryUncertainty"/>.</param>
/// <param name="Share">Share of the mistake's prior that this variant has.</param>
/// <param name="Name">What the owner calls the other element, product or container; null when there is none.</param>
internal sealed record FixedRatio(double Ratio, double Share = 1, bool IsUncertain = false, string? Name = null) : Prediction(Share, Name)
{
    private readonly double shift = Math.Log(Ratio);

    public override double LogLikelihood(TestLikelihood likelihood, int? at) => likelihood.WithRatio(at, shift, IsUncertain);

    public override bool Explains(TestLikelihood likelihood) =>
        likelihood.IsWithin(likelihood.Mean - shift, IsUncertain ? MistakeJudgement.OtherDeliveryUncertainty : 0);
}

/// <summary>A ratio somewhere in a range, equally probable on its logarithm.</summary>
/// <param name="Low">Smallest ratio, above 0.</param>
/// <param name="High">Largest ratio.</param>
/// <param name="Share">Share of the mistake's prior that this variant has.</param>
internal sealed record RatioRange(double Low, double High, double Share = 1) : Prediction(Share)
{
    public RatioRange((double Low, double High) range)
        : this(range.Low, range.High) { }

    private readonly (double Low, double High) logs = (Math.Log(Low), Math.Log(High));

    public override double LogLikelihood(TestLikelihood likelihood, int? at) => likelihood.WithRange(at, logs.Low, logs.High);
}

/// <summary>A ratio somewhere in a range, another one in each catch: what flows badly does not flow evenly.</summary>
/// <param name="Low">Smallest ratio, above 0.</param>
/// <param name="High">Largest ratio.</param>
/// <param name="Scatter">Standard deviation on ln from catch to catch that the mistake adds.</param>
/// <param name="Share">Share of the mistake's prior that this variant has.</param>
internal sealed record UnevenRange(double Low, double High, double Scatter, double Share = 1) : Prediction(Share)
{
    private readonly (double Low, double High) logs = (Math.Log(Low), Math.Log(High));

    public override double LogLikelihood(TestLikelihood likelihood, int? at) =>
        at is null ? likelihood.WithUnevenRange(logs.Low, logs.High, Scatter) : likelihood.WithRange(at, logs.Low, logs.High);
}

/// <summary>Any ratio: a Cauchy distribution on the logarithm, so wide that the ordinary change does not matter beside it.</summary>
/// <param name="HalfWidth">Half of the probability lies within this on ln.</param>
/// <param name="Share">Share of the mistake's prior that this variant has.</param>
internal sealed record AnyRatio(double HalfWidth, double Share = 1) : Prediction(Share)
{
    public override double LogLikelihood(TestLikelihood likelihood, int? at) => likelihood.WithAnyRatio(at, HalfWidth);
}

/// <summary>The true count of turns follows from the one entered. Counts are no random numbers, so that no derivative enters.</summary>
/// <param name="TrueTurns">Revolutions in a counted catch had the mistake not happened; the prediction is impossible where they are not
/// above 0.</param>
/// <param name="Share">Share of the mistake's prior that this variant has.</param>
internal sealed record CorrectedTurns(Func<int, double> TrueTurns, double Share = 1) : Prediction(Share)
{
    public override double LogLikelihood(TestLikelihood likelihood, int? at) => likelihood.WithCorrectedTurns(at, TrueTurns);

    public override bool Explains(TestLikelihood likelihood) => likelihood.IsWithin(likelihood.MeanOfTurns(TrueTurns), 0);
}

/// <summary>The true mass follows from the one entered.</summary>
/// <param name="TrueMass">Mass metered in a counted catch had the mistake not happened, kg; the prediction is impossible where it is not
/// above 0.</param>
/// <param name="Slope">Its derivative by the mass entered.</param>
/// <param name="Share">Share of the mistake's prior that this variant has.</param>
/// <param name="Name">What the owner calls the other element, product or container; null when there is none.</param>
internal sealed record CorrectedMass(Func<int, double> TrueMass, double Slope = 1, double Share = 1, string? Name = null)
    : Prediction(Share, Name)
{
    public override double LogLikelihood(TestLikelihood likelihood, int? at) => likelihood.WithCorrectedMasses(at, TrueMass, Slope);

    public override bool Explains(TestLikelihood likelihood) => likelihood.IsWithin(likelihood.MeanOfMasses(TrueMass), 0);
}
