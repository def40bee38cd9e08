using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.SeedingRates;

/// <summary>A seeding rate with what it holds, brings up and costs.</summary>
public sealed record SeedingRateResult
{
    /// <summary>One or two sentences that a tired person understands.</summary>
    public required Sentence Headline { get; init; }

    /// <summary>What it is good for.</summary>
    public Usability Verdict => Judgement.Of(Findings);

    /// <summary>Mass to sow per area.</summary>
    public required MassPerArea Rate { get; init; }

    /// <summary>Pure seeds per area.</summary>
    public required CountPerArea Seeds { get; init; }

    /// <summary>Pure seeds per area that can germinate; null when germination is unknown.</summary>
    public CountPerArea? GerminableSeeds { get; init; }

    /// <summary>Plants expected per area; null when the establishment is unknown.</summary>
    public CountPerArea? Plants { get; init; }

    /// <summary>The stand of that rate with its interval, 1/m2; null when no uncertainty was stated.</summary>
    public MeasuredValue? PlantsWithUncertainty { get; init; }

    /// <summary>Seeds per length of row; null without a row spacing.</summary>
    public CountPerLength? SeedsPerRow { get; init; }

    /// <summary>Plants per length of row; null without a row spacing or an establishment.</summary>
    public CountPerLength? PlantsPerRow { get; init; }

    /// <summary>Mass of a kernel.</summary>
    public required MassPerThousand Kernel { get; init; }

    /// <summary>Seeds per mass of pure seed.</summary>
    public required CountPerMass SeedsPerMass { get; init; }

    /// <summary>Plants per pure seed; null when unknown.</summary>
    public double? Survival { get; init; }

    /// <summary>Share of the bulk mass that is pure and germinates; null when germination is unknown.</summary>
    public double? PureLiveSeed { get; init; }

    /// <summary>Bulk mass that holds one unit of mass of seed that is pure and germinates; null when germination is unknown.</summary>
    /// <remarks>
    /// <para>Formula: 1 / <see cref="PureLiveSeed"/>.</para>
    /// <para>Range: a share above 0, up to 1.</para>
    /// <para>Source: our own derivation.</para>
    /// <para>Accuracy: 1e-12 relative (SeedingRateEvaluationTests).</para>
    /// </remarks>
    public double? MassForOnePureLive => 1 / PureLiveSeed;

    /// <summary>Seed for the area; null without an area.</summary>
    public Mass? MassOverArea { get; init; }

    /// <summary>Packages; null when none is described.</summary>
    public SeedPackages? Packages { get; init; }

    /// <summary>Cost; null without a price.</summary>
    public SeedCost? Cost { get; init; }

    /// <summary>The rate from elsewhere, compared; null when none was stated.</summary>
    public StatedRateComparison? StatedRate { get; init; }

    /// <summary>Where the uncertainty of the stand comes from; empty when none was stated.</summary>
    public required IReadOnlyList<StandUncertaintyPart> UncertaintyParts { get; init; }

    /// <summary>Values used that the asker did not state, with origin.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>What the engine noticed.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>What can hurt a person here.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }
}

/// <summary>Seed in packages.</summary>
/// <param name="Mass">Mass of one package.</param>
/// <param name="AreaPerPackage">Area that one package sows.</param>
/// <param name="Needed">Packages that the area takes, not rounded; null without an area.</param>
/// <param name="Whole">The same rounded up.</param>
/// <param name="LeftOver">What stays in the last package.</param>
public sealed record SeedPackages(Mass Mass, Area AreaPerPackage, double? Needed, double? Whole, Mass? LeftOver)
{
    internal static SeedPackages Of(Mass package, MassPerArea rate, Area? area)
    {
        var perPackage = new Area(package.Kilograms / rate.KilogramsPerSquareMetre);
        if (area is not { } sown)
            return new(package, perPackage, null, null, null);
        var needed = rate.KilogramsPerSquareMetre * sown.SquareMetres / package.Kilograms;
        // A need that is whole but for rounding takes no further package.
        var whole = Threshold.IsAbove(needed, Math.Floor(needed)) ? Math.Ceiling(needed) : Math.Floor(needed);
        return new(package, perPackage, needed, whole, new Mass(Math.Max(0, whole - needed) * package.Kilograms));
    }
}

/// <summary>What the seed costs.</summary>
/// <param name="PerSquareMetre">Money for one square metre.</param>
/// <param name="OverArea">Money for the area; null without an area.</param>
/// <param name="InWholePackages">Money for the packages rounded up; null without an area or a package.</param>
public sealed record SeedCost(double PerSquareMetre, double? OverArea, double? InWholePackages);

/// <summary>A rate from elsewhere beside the one computed here.</summary>
/// <param name="Stated">The rate stated.</param>
/// <param name="Difference">Stated over computed, less 1.</param>
/// <param name="Seeds">Pure seeds per area that it puts down.</param>
/// <param name="Plants">Plants that it brings up; null when the establishment is unknown.</param>
/// <param name="IsShortcut">It was made by dividing by ten, as stated, or as the difference suggests.</param>
public sealed record StatedRateComparison(MassPerArea Stated, double Difference, CountPerArea Seeds, CountPerArea? Plants, bool IsShortcut);

/// <summary>One part of the uncertainty of a stand.</summary>
/// <param name="Source">Where it comes from.</param>
/// <param name="Relative">Standard uncertainty, relative.</param>
public sealed record StandUncertaintyPart(StandUncertaintySource Source, double Relative);

/// <summary>Where the uncertainty of a stand comes from.</summary>
public enum StandUncertaintySource
{
    /// <summary>The mass of a kernel.</summary>
    KernelMass,

    /// <summary>The number of seeds in the germination test.</summary>
    GerminationTest,

    /// <summary>The range of field emergence or survival.</summary>
    Emergence,
}
