using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>What the container, the scale and the metering element allow of a test, and what its readings say beyond it.</summary>
internal sealed record PhysicalLimits
{
    /// <summary>A container heaped up over its rim holds this many times its volume; judgement, no published source.</summary>
    public const double Heap = 1.2;

    // A display goes dark when the load is further beyond the capacity: OIML R 76-1:2006, 4.2.3 (SOURCES.md, key OIML-R76; from memory).
    private const double IntervalsBeyondCapacity = 9;

    // Standard uncertainties that are allowed for before a reading counts as impossible; judgement.
    private const double Allowed = 2;

    // A value that nobody measured in this test is only in doubt, whatever it needs to be: the test is what corrects it.
    private PhysicalLimits(IReadOnlyList<Finding> impossible, IReadOnlyList<Finding> unusual)
    {
        Impossible = impossible;
        Unusual = unusual;
    }

    /// <summary>What cannot be; each forbids using the test.</summary>
    public IReadOnlyList<Finding> Impossible { get; }

    /// <summary>What seldom is.</summary>
    public IReadOnlyList<Finding> Unusual { get; }

    /// <summary>Compares a test with what is known around it; what is not known limits nothing.</summary>
    /// <param name="test">The test.</param>
    /// <param name="estimate">What it measured.</param>
    /// <remarks>
    /// <para>
    /// A counted catch cannot be when its net mass is above 1.2 rho V (1 + 2 u) of its container, u^2 = u_rho^2 + u_V^2 with the
    /// defaults of a volume check; or when its load, container included, is above the capacity of the scale and nine verification
    /// intervals. The mass per revolution is judged by <see cref="ElementContent.Judge"/>, and by the other products of the element
    /// (<see cref="OtherProductsOfElement"/>).
    /// </para>
    /// <para>Source: the scale, OIML R 76-1 (SOURCES.md, key OIML-R76); the rest is judgement. Accuracy: PhysicalLimitsTests.</para>
    /// </remarks>
    public static PhysicalLimits Of(CatchTestQuestion test, MassPerRevolutionEstimate estimate)
    {
        var (impossible, unusual) = (new List<Finding>(), new List<Finding>());
        for (var i = 0; i < test.Catches.Count; i++)
        {
            if (test.Catches[i].Counts)
                impossible.AddRange(Readings(test, test.Catches[i], i + 1));
        }

        var relative = estimate.Value.StandardUncertainty / estimate.Value.Value;
        var measured = new MassPerRevolution(estimate.Value.Value);
        if (test.Element?.FindingOf("The measured value", measured, relative) is { } finding)
            (finding.Severity == Severity.Stop ? impossible : unusual).Add(finding);
        if (
            test.Reference is { } reference
            && test.Element?.FindingOf(
                reference.Kind == ReferenceKind.ValueInForce ? "The value in force" : "The start value",
                reference.Value,
                reference.StandardUncertainty
            )
                is { } doubt
        )
            unusual.Add(doubt.AsWarning());
        if (
            test.Predicted is { } predicted
            && test.Element?.FindingOf("The value predicted for this lot", predicted.Value, predicted.StandardUncertainty) is { } wrongly
        )
            unusual.Add(wrongly.AsWarning());
        if (test.OtherProducts?.FindingOf(measured, relative) is { } unlike)
            unusual.Add(unlike);
        if (
            test.Reference is { Kind: ReferenceKind.ValueInForce } stated
            && test.OtherProducts?.FindingOf(stated.Value, stated.StandardUncertainty, "the value in force") is { } unlikely
        )
            unusual.Add(unlikely);
        return new PhysicalLimits(impossible, unusual);
    }

    /// <summary>The values that were used and not stated.</summary>
    /// <param name="test">The test.</param>
    /// <param name="startsFromVolume">Its start value comes from the content of the element.</param>
    public static IEnumerable<Assumption> Assumptions(CatchTestQuestion test, bool startsFromVolume)
    {
        if (startsFromVolume)
            yield return new(
                "startValue",
                test.Reference!.Value,
                "the displacement of the element times the bulk density times a usual fill efficiency, because nothing else is known; judgement, no published source"
            );
        else if (test.Reference is { Kind: ReferenceKind.StartValue, MeasuredAt: { } at } measured)
            yield return new(
                "startValue",
                measured.Value,
                $"what the test of {at.Split('T')[0]} measured: nothing has been adopted yet, so that this test is compared with the last one"
            );
        foreach (var assumption in test.Element?.Assumptions() ?? [])
            yield return assumption;
        if (test.Context.ContainerCapacity is not null)
            yield return new(
                "container/heap",
                new Ratio(Heap),
                "a container heaped over its rim holds this much of its volume; judgement, no published source"
            );
    }

    private static IEnumerable<Finding> Readings(CatchTestQuestion test, Catch one, int number)
    {
        var net = one.IndicatedNet.Kilograms;
        if (
            test.Context.ContainerCapacity is { } full
            && Threshold.IsAbove(test.Scale.Corrected(net), Heap * full.Kilograms * (1 + Allowed * UncertaintyOfContent))
        )
            yield return Finding.Stop(
                CatchTestCodes.MoreThanTheContainerHolds,
                $"Catch {number} of {one.IndicatedNet} does not fit into the container: heaped over its rim it holds about {new Mass(Heap * full.Kilograms)}. Check gross, unit, which container it was, its volume and the bulk density."
            );
        var load = net + (one.Tare ?? test.Context.ContainerTare ?? new Mass(0)).Kilograms;
        if (
            test.Scale.Capacity is { } capacity
            && Threshold.IsAbove(
                load,
                capacity.Kilograms + IntervalsBeyondCapacity * (test.Scale.VerificationInterval ?? test.Scale.Division).Kilograms
            )
        )
            yield return Finding.Stop(
                CatchTestCodes.LoadBeyondCapacity,
                $"Catch {number} is a load of {new Mass(load)} on a scale that takes {capacity}. Check gross, unit, which scale it was and its capacity."
            );
    }

    private static double UncertaintyOfContent =>
        Math.Sqrt(Square(ElementDefaults.Density.Value.Canonical) + Square(ElementDefaults.Displacement.Value.Canonical));

    private static double Square(double x) => x * x;
}
