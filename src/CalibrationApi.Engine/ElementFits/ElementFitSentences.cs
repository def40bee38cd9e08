using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.ElementFits;

/// <summary>What is worth saying about a window of displacements; nothing was tested here.</summary>
internal static class ElementFitSentences
{
    private const string ThenTest = "Use it to choose an element, not to seed: only a catch test shows what it delivers.";

    /// <param name="window">The window.</param>
    /// <param name="waysOut">What would open it; null when it is open.</param>
    /// <param name="elements">The elements, best first.</param>
    /// <param name="ofElements">The headline of their meter speeds; null without any.</param>
    public static Sentence Headline(
        DisplacementWindow window,
        WaysOut? waysOut,
        IReadOnlyList<FittingElement> elements,
        Sentence? ofElements
    )
    {
        if (waysOut is not null)
            return $"No single element serves all of these rates at all of these speeds. {FirstOf(waysOut)}";
        Sentence best = $"about {window.Middle} per revolution; {window.Lower} to {window.Upper} keeps the meter inside its speeds";
        return elements switch
        {
            [] => $"Look for an element of {best}. {ThenTest}",
            [{ Fits: true } nearest, ..] =>
                $"{ofElements} It stays inside its limits with {Chance.Of(nearest.Probability)} probability. Best would be {best}. {ThenTest}",
            _ => $"{ofElements} Look for {best}. {ThenTest}",
        };
    }

    /// <summary>Why no displacement serves and what would help; null when one does.</summary>
    public static Finding? OfEmpty(ElementFitQuestion question, ProductNeed lowest, ProductNeed highest, WaysOut? waysOut) =>
        waysOut is null
            ? null
            : Finding.Warning(
                ElementFitCodes.NoDisplacementServes,
                $"{highest.Rate} at {highest.GroundSpeed} takes {Factor(highest.Flow.KilogramsPerSecond / lowest.Flow.KilogramsPerSecond)} as much product a minute as {lowest.Rate} at {lowest.GroundSpeed}; from {question.SlowestMeter:0.#} to {question.FastestMeter:0.#} the meter has only {Factor(question.FastestMeter.RevolutionsPerSecond / question.SlowestMeter.RevolutionsPerSecond)}. {AllOf(waysOut)}"
            );

    /// <summary>Why the best element, or any where none is at hand or fits, is not sure enough; null when it is.</summary>
    public static Finding? OfDoubt(
        double coverage,
        DisplacementWindow window,
        (Volume Lower, Volume Upper)? inner,
        IReadOnlyList<FittingElement> elements
    )
    {
        var fits = elements is [{ Fits: true }, ..];
        if (window.IsEmpty || (fits ? elements[0].Probability >= coverage : inner is not null))
            return null;
        Sentence best = fits
            ? $"{elements[0].Element.Name} stays inside its limits with {Chance.Of(elements[0].Probability)} probability, less than the {new Ratio(coverage):0.##} wanted. "
            : (Sentence)$"";
        Sentence surely = inner is var (lower, upper)
            ? $"{lower} to {upper} would be sure enough."
            : (Sentence)
                $"No displacement is sure enough: the largest that serves is {Factor(window.Upper.CubicMetres / window.Lower.CubicMetres)} the smallest, and that would have to be {Factor(Math.Exp(2 * StudentT.CoverageFactor(coverage, double.PositiveInfinity) * window.Spread))}.";
        return Finding.Warning(
            ElementFitCodes.FitNotSure,
            $"{best}{surely} Density and fill efficiency together are known to {new Ratio(window.Spread):0.#} only: make a catch test, let a volume check find the fill efficiency, and state it here."
        );
    }

    private static Sentence Factor(double ratio) => $"{ratio:0.##} times";

    // To drive otherwise costs least, then to change elements, then to change what is put down.
    private static Sentence FirstOf(WaysOut ways) => Driving(ways) ?? Sharing(ways) ?? Rating(ways) ?? TooWide;

    private static Sentence AllOf(WaysOut ways)
    {
        Sentence[] all = [.. new[] { Driving(ways), Sharing(ways), Rating(ways) }.OfType<Sentence>()];
        return all switch
        {
            [] => TooWide,
            [var only] => only,
            [var one, var other] => $"One of these is enough. {one} {other}",
            _ => (Sentence)$"One of these is enough. {all[0]} {all[1]} {all[2]}",
        };
    }

    private static Sentence TooWide =>
        $"No change of speeds, rates or elements is enough by itself: drive at one speed, and ask again with that one.";

    private static Sentence? Driving(WaysOut ways) =>
        ways is { HighestGroundSpeed: { } fastest, LowestGroundSpeed: { } slowest }
            ? (Sentence)$"Drive no faster than {fastest}, or no slower than {slowest}."
            : null;

    private static Sentence? Rating(WaysOut ways) =>
        ways is { HighestRate: { } most, LowestRate: { } least }
            ? (Sentence)$"Put down no more than {most}, or no less than {least}."
            : null;

    private static Sentence? Sharing(WaysOut ways)
    {
        if (ways.Shares.Count == 0)
            return null;
        Sentence at = $"{ways.Shares[1].LowestRate}";
        foreach (var share in ways.Shares.Skip(2))
            at = $"{at} and {share.LowestRate}";
        return $"Use {new CountInWords(ways.Shares.Count)} elements and change from one to the next at {at}.";
    }
}
