using CalibrationApi.Calculations.MeterSpeeds;
using CalibrationApi.Calculations.NewLots;
using CalibrationApi.Calculations.ProductRates;
using CalibrationApi.Calculations.SeedingRates;
using CalibrationApi.Calculations.SeedRowLimits;
using CalibrationApi.Engine.FieldSetUps;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Records.Plans;

/// <summary>
/// Rates and set-up of a field: every calculation that the plan and its records allow, each as its own operation would answer it.
/// </summary>
public sealed class PlanSetUpAnswer
{
    /// <summary>The outcome in a few sentences that can be shown as they are.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>
    /// Whether the field can be begun. <c>ready</c>: every meter has a rate and a mass per revolution, its element serves that rate at the
    /// planned ground speeds, all that lies with the seed has a limit and is within it, the fan suits all products, the nutrients are met,
    /// no lot asks for a test first, and nothing is missing. <c>incomplete</c>: nothing is known to stand in the way, but something is
    /// missing.
    /// <c>blocked</c>: something stands in the way.
    /// </summary>
    [KnownWords(typeof(SetUpVerdict))]
    public required string Verdict { get; init; }

    /// <summary>
    /// What stands against going on, the worst first: a rate that a meter cannot reach, then too much with the seed, then a meter that
    /// turns too slowly, the air, nutrients, a lot to be tested. Empty when nothing is. What is not known yet is under missing.
    /// </summary>
    public required IReadOnlyList<ObstacleOfPlan> Obstacles { get; init; }

    /// <summary>The meters, in the order of the plan.</summary>
    public required IReadOnlyList<MeterSetUpAnswer> Meters { get; init; }

    /// <summary>
    /// How the products supply the nutrients that are wanted; absent when the plan wants none, or a rate or an analysis is missing. Where
    /// several meters share a product, its line is for all of them together, on the whole field.
    /// </summary>
    public ProductRateAnswer? Nutrients { get; init; }

    /// <summary>
    /// What lies with the seed against published limits; absent when nothing is placed with the seed, or something that it needs is
    /// missing.
    /// </summary>
    public SeedRowLimitAnswer? SeedRow { get; init; }

    /// <summary>
    /// Where the fan may stand for all products, and what the air carries; absent when no product states its fan speeds. Compared with the
    /// fan speed of the sowing conditions.
    /// </summary>
    public FanAnswer? Fan { get; init; }

    /// <summary>What could not be computed, and what to add.</summary>
    public required IReadOnlyList<MissingOfPlan> Missing { get; init; }

    /// <summary>What can hurt people or the crop.</summary>
    [SentCodes(typeof(FieldSetUpCodes), nameof(FieldSetUpCodes.Cautions))]
    public required IReadOnlyList<CautionAnswer> Cautions { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string EngineVersion { get; init; }
}

/// <summary>Something that stands against going on.</summary>
public sealed class ObstacleOfPlan
{
    /// <summary>Position of the meter; absent when it is about the field.</summary>
    public string? Meter { get; init; }

    /// <summary>What it is, and what to do.</summary>
    public required string Detail { get; init; }

    /// <summary>What the sentence is made of, for showing it in another language.</summary>
    public SentenceParts? Parts { get; init; }
}

/// <summary>Rates and set-up of one meter.</summary>
public sealed class MeterSetUpAnswer
{
    /// <summary>Position of the meter.</summary>
    public required string Meter { get; init; }

    /// <summary>The element that the plan names.</summary>
    public required string Element { get; init; }

    /// <summary>Name of the product.</summary>
    public required string Product { get; init; }

    /// <summary>Name of the lot; absent when the plan names none.</summary>
    public string? Lot { get; init; }

    /// <summary>Rate to be put down; absent while it cannot be told.</summary>
    public MassPerAreaQuantity? Rate { get; init; }

    /// <summary>Where the rate comes from: the plan's own <c>target-rate</c>, its <c>stand</c>, or its <c>nutrients</c>.</summary>
    [KnownWords(typeof(MeterRateOrigin))]
    public required string RateFrom { get; init; }

    /// <summary>How the rate follows from the stand; absent otherwise.</summary>
    public SeedingRateAnswer? SeedingRate { get; init; }

    /// <summary>The masses per revolution behind meterSpeed, one for each element of which something is known.</summary>
    public required IReadOnlyList<ValueOfElement> Values { get; init; }

    /// <summary>
    /// Meter speeds, windows and the best element; absent without a rate or a mass per revolution, and at a rate of zero.
    /// </summary>
    public MeterSpeedAnswer? MeterSpeed { get; init; }

    /// <summary>
    /// What it means that the lot is another one than when the value in force was adopted; absent when it is the same, when one of the two
    /// is not known, and at a rate of zero.
    /// </summary>
    public NewLotAnswer? NewLot { get; init; }
}

/// <summary>Mass per revolution of an element with the product.</summary>
public sealed class ValueOfElement : MassPerRevolutionQuantity
{
    /// <summary>The element.</summary>
    public required string Element { get; init; }

    /// <summary>
    /// Where it comes from: a <c>value-in-force</c>, the plan's <c>start-value</c>, or the volume that the element displaces
    /// (<c>displacement</c>).
    /// </summary>
    [KnownWords(typeof(ValueOrigin))]
    public required string From { get; init; }
}

/// <summary>Something that keeps a part of the set-up from being computed.</summary>
public sealed class MissingOfPlan
{
    /// <summary>The member of the plan that it is about.</summary>
    public required string Pointer { get; init; }

    /// <summary>
    /// What it is: a <c>missing-value</c> of the plan or of a record that it names, a <c>record-at-odds</c> with the plan by now, a
    /// question that a calculation <c>refused</c>, or something that <c>no-published-number</c> settles, so that somebody has to be asked.
    /// </summary>
    [KnownWords(typeof(OpenKind))]
    public required string Kind { get; init; }

    /// <summary>What is missing or wrong, and what to do.</summary>
    public required string Detail { get; init; }

    /// <summary>What the sentence is made of, for showing it in another language.</summary>
    public SentenceParts? Parts { get; init; }
}
