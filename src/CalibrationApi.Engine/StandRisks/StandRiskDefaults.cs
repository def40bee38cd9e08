using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.StandRisks;

/// <summary>Defaults of stand risks with their origins.</summary>
public static class StandRiskDefaults
{
    /// <summary>Seeds that a germination test counts.</summary>
    public const int SeedsTested = 400;

    /// <summary>Where <see cref="SeedsTested"/> comes from.</summary>
    public const string SeedsTestedOrigin = "400 seeds, as the international rules for seed testing count; from memory";

    /// <summary>Probability with which the minimum stand has to be reached.</summary>
    public const double Probability = 0.9;

    /// <summary>Where <see cref="Probability"/> comes from.</summary>
    public const string ProbabilityOrigin = "0.9, nine seasons of ten; judgement, no published source";

    /// <summary>Relative standard uncertainty of a kernel mass.</summary>
    public static DefaultValue KernelMassUncertainty { get; } =
        new(new Ratio(0.02), "judgement, no published source: a thousand kernels counted and weighed twice");
}
