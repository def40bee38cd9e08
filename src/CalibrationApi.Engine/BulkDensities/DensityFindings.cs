using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.BulkDensities;

/// <summary>What is worth saying about a bulk density.</summary>
internal static class DensityFindings
{
    // Single granules and kernels weigh about 1.3 to 2.3 times what a bulk of them does: porosities of 25 to 55 %.
    private const double LeastParticle = 1.3;
    private const double MostParticle = 2.3;

    // A slip is named when it brings the density this near to the published range.
    private const double Fits = 0.05;

    private static readonly double Pound = UnitTable.Get("lb").ToSi.Value;

    public static IEnumerable<Finding> Of(
        DensityEvidence evidence,
        MeasuredValue measured,
        ReferenceComparison? comparison,
        BulkDensity? loose
    )
    {
        var density = measured.Value;
        if (evidence is PublishedDensity)
            yield return Finding.Note(
                BulkDensityCodes.PublishedDensityOnly,
                $"No lot has just the published density. Weigh a known volume: it takes five minutes and narrows everything that follows."
            );
        else if (comparison is not null)
            foreach (var finding in Compare(evidence, measured, comparison))
                yield return finding;
        else if (
            Math.Abs(ReferenceComparison.Outside(density, ReferenceDensities.Extremes.Lightest, ReferenceDensities.Extremes.Densest))
            > BulkDensityDefaults.FarOutside
        )
            yield return Finding.Warning(
                BulkDensityCodes.DensityUnlikeReference,
                $"{new BulkDensity(density)} is {(density > ReferenceDensities.Extremes.Densest.KilogramsPerCubicMetre ? "denser" : "lighter")} than any seed or fertilizer in the list of references ({ReferenceDensities.Extremes.Lightest} to {ReferenceDensities.Extremes.Densest}). Check mass, volume and units."
            );
        else if (evidence is ReadDensity { IsTestWeight: false })
            yield return Finding.Note(
                BulkDensityCodes.DensityNotCompared,
                $"This density was taken as stated: no reference is named to compare it with. Name one, or weigh a known volume."
            );
        foreach (var finding in TestWeight(evidence, loose))
            yield return finding;
    }

    private static IEnumerable<Finding> Compare(DensityEvidence evidence, MeasuredValue measured, ReferenceComparison comparison)
    {
        // A difference inside the interval of the density is none.
        if (Math.Abs(comparison.Beyond) <= Math.Min(BulkDensityDefaults.FarOutside, measured.ExpandedUncertainty / measured.Value))
            yield break;
        var density = measured.Value;
        var name = ReferenceDensities.NameOf(comparison.Material);
        Sentence published =
            comparison.Lightest == comparison.Densest
                ? (Sentence)$"{comparison.Lightest}"
                : $"{comparison.Lightest} to {comparison.Densest}";
        var direction = comparison.Beyond > 0 ? "denser" : "lighter";
        // A number that is right in another unit is a slip also where lots could just be so.
        if (Math.Abs(comparison.Beyond) <= BulkDensityDefaults.FarOutside && !Slips(evidence, density, comparison).Any())
        {
            yield return Finding.Note(
                BulkDensityCodes.DensityUnlikeReference,
                $"{new BulkDensity(density)} is {new Ratio(Math.Abs(comparison.Beyond)):0.#} {direction} than what is published for {name} ({published}). Lots differ; a measured density goes before a published one."
            );
            yield break;
        }

        yield return Finding.Warning(
            BulkDensityCodes.DensityUnlikeReference,
            $"{new BulkDensity(density)} is {new Ratio(Math.Abs(comparison.Beyond)):F0} {direction} than what is published for {name} ({published}). {Reason(evidence, density, comparison)} Weigh a known volume before you rely on it."
        );
    }

    private static Sentence Reason(DensityEvidence evidence, double density, ReferenceComparison comparison)
    {
        var slips = Slips(evidence, density, comparison).ToArray();
        if (slips.Length > 0)
            return $"{slips[0]} would explain it.";
        var ratio = density / comparison.Densest.KilogramsPerCubicMetre;
        return ratio is >= LeastParticle and <= MostParticle
            ? (Sentence)
                $"Single granules or kernels are about that dense, a bulk of them with the air between is not: it may be a particle density."
            : $"Check the product, the mass, the volume and their units.";
    }

    // What may have gone wrong with the numbers themselves, nearest first.
    private static IEnumerable<Sentence> Slips(DensityEvidence evidence, double density, ReferenceComparison comparison)
    {
        if (evidence is ReadDensity read)
        {
            var number = read.Unit.FromCanonical(read.Density.KilogramsPerCubicMetre);
            foreach (
                var unit in UnitTable
                    .Of(Dimension.BulkDensity)
                    .Where(unit => unit != read.Unit && IsNear(unit.Canonical(number), comparison))
            )
                yield return $"The same number in {unit.Symbol} in place of {read.Unit.Symbol}";
        }
        else
        {
            if (IsNear(density * Pound, comparison))
                yield return $"A mass in pounds taken as kilograms";
            if (IsNear(density / Pound, comparison))
                yield return $"A mass in kilograms taken as pounds";
        }

        if (IsNear(density / 10, comparison) || IsNear(density * 10, comparison))
            yield return $"A slip of the decimal point";
    }

    private static bool IsNear(double density, ReferenceComparison comparison) =>
        Math.Abs(ReferenceComparison.Outside(density, comparison.Lightest, comparison.Densest)) <= Fits;

    private static IEnumerable<Finding> TestWeight(DensityEvidence evidence, BulkDensity? loose)
    {
        if (evidence is not ReadDensity { IsTestWeight: true } read)
            yield break;
        if (Other(read.Unit) is { } other)
        {
            var number = read.Unit.FromCanonical(read.Density.KilogramsPerCubicMetre);
            yield return Finding.Note(
                BulkDensityCodes.OtherBushel,
                $"This was taken as {number:0.###} lb in {Bushel(read.Unit)} bushel. If {Bushel(other)} bushel was meant, it is {new BulkDensity(other.Canonical(number))}: the two bushels differ by {new Ratio(UnitTable.Get("bu-imp").ToSi.Value / UnitTable.Get("bu-us").ToSi.Value - 1):0.##}."
            );
        }

        if (loose is { } poured)
            yield return Finding.Note(
                BulkDensityCodes.TestWeightSettled,
                $"If this is an official Canadian test weight, it allows for grain that settles. Poured loosely, the same grain has about {poured}, {new Ratio(1 - poured.KilogramsPerCubicMetre / read.Density.KilogramsPerCubicMetre):0.#} less. A tank that was just filled is nearer to that."
            );
    }

    private static Unit? Other(Unit unit) =>
        unit.Symbol switch
        {
            "lb/bu-us" => UnitTable.Get("lb/bu-imp"),
            "lb/bu-imp" => UnitTable.Get("lb/bu-us"),
            _ => null,
        };

    private static Sentence Bushel(Unit unit) => unit.Symbol == $"lb/bu-us" ? (Sentence)$"a US (Winchester)" : $"an imperial (Avery)";
}
