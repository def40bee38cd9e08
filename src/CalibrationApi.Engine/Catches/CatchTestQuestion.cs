using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Catches;

/// <summary>A catch test of one meter with one product: everything its evaluation needs.</summary>
public sealed record CatchTestQuestion
{
    /// <summary>The catches in the order in which they were made, at least one of which counts.</summary>
    public required IReadOnlyList<Catch> Catches { get; init; }

    /// <summary>The scale that weighed them.</summary>
    public required Scale Scale { get; init; }

    /// <summary>How the empty container was taken into account.</summary>
    public TareReading TareReading { get; init; }

    /// <summary>
    /// How the rounding of the tare enters. The same container on the same scale is rounded the same way each time, so that
    /// equal tare readings are worth one, shared by all catches, however often they were taken. Unless the readings differ, the
    /// container was the same; net masses alone do not show that it was not.
    /// </summary>
    public TareReading TareRounding
    {
        get
        {
            if (TareReading != TareReading.Each)
                return TareReading;
            Mass? seen = null;
            var counted = 0;
            foreach (var one in Catches)
            {
                if (!one.Counts)
                    continue;
                if (seen is { } other && one.Tare is { } tare && other != tare)
                    return TareReading.Each;
                seen ??= one.Tare;
                counted++;
            }

            return counted > 1 ? TareReading.Shared : TareReading.Each;
        }
    }

    /// <summary>Where a count of revolutions begins within its smallest step.</summary>
    public CountStart CountStart { get; init; }

    /// <summary>Pockets or flutes that discharge one after the other in one revolution, where known; above 0.</summary>
    public int? PocketsPerRevolution { get; init; }

    /// <summary>Only some points of the meter were caught; null when all were.</summary>
    public CaughtPoints? CaughtPoints { get; init; }

    /// <summary>How the product flows; null when not stated.</summary>
    public ProductMaterial? Material { get; init; }

    /// <summary>What the fitted element can hold of the product; null when it is not known.</summary>
    public ElementContent? Element { get; init; }

    /// <summary>What the fitted element delivers of other products; null when it is not known.</summary>
    public OtherProductsOfElement? OtherProducts { get; init; }

    /// <summary>What the result is compared with; null takes a start value from the content of the element, where that is known.</summary>
    public ReferenceValue? Reference { get; init; }

    /// <summary>
    /// What another lot is expected to give where that is not the reference; null for the same lot or when it is not known.
    /// </summary>
    public PredictedValue? Predicted { get; init; }

    /// <summary>An earlier test of the same kind, set up apart, that may bear this one out; null when there is none.</summary>
    public EarlierTest? Earlier { get; init; }

    /// <summary>The form in which the controller takes a value; null when not stated.</summary>
    public ControllerEntry? ControllerEntry { get; init; }

    /// <summary>The rate to be applied; gives the effect of a wrong value.</summary>
    public MassPerArea? TargetRate { get; init; }

    /// <summary>The area still to be seeded; gives mass and cost.</summary>
    public Area? Area { get; init; }

    /// <summary>Price of the product in money per kilogram, in whatever currency the caller counts.</summary>
    public double? PricePerKilogram { get; init; }

    /// <summary>What makes a mistake more or less likely.</summary>
    public MistakeContext Context { get; init; } = new();

    /// <summary>What had to be assumed when the readings were taken over; repeated in the answer.</summary>
    public IReadOnlyList<Assumption> ReadingAssumptions { get; init; } = [];

    /// <summary>Masses that come from one scale were given in units of more than one system; worth a word in the answer.</summary>
    public bool MixesMassUnits { get; init; }

    /// <summary>Conditions of the test; null when not stated.</summary>
    public TestConditions? Conditions { get; init; }

    /// <summary>Conditions stated for sowing; null when not stated.</summary>
    public TestConditions? SowingConditions { get; init; }

    /// <summary>What the caller set about judging.</summary>
    public CatchTestLimits Limits { get; init; } = new();
}
