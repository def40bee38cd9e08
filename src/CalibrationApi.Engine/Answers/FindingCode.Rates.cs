namespace CalibrationApi.Engine.Answers;

// Codes of rates: seed, stands, nutrients, the seed row and new lots.
public static partial class FindingCode
{
    /// <summary>More lies with the seed than a published limit allows, or a limit that was stated.</summary>
    [
        Remedy(
            "Place less with the seed, or put the rest away from the seed row. If the limit is of another region than yours, ask for the one of your own."
        ),
        Severities(Severity.Warning, Severity.Stop)
    ]
    public const string AbovePublishedLimit = "above-published-limit";

    /// <summary>No source that is held has a number for this crop, soil, moisture, opener and region.</summary>
    [Remedy("Ask local guidance, and state its limit under localLimits. No number is not a permission."), Severities(Severity.Warning)]
    public const string NoPublishedLimit = "no-published-limit";

    /// <summary>A part of what lies with the seed is counted by no limit that has a number for this case.</summary>
    [
        Remedy(
            "Ask local guidance about that nutrient, and state its limit under localLimits, or put that product away from the seed row."
        ),
        Severities(Severity.Warning)
    ]
    public const string NutrientWithoutLimit = "nutrient-without-limit";

    /// <summary>Sources print different limits for the same case.</summary>
    [Remedy("Go by the stricter one, unless your own region's guidance says otherwise."), Severities(Severity.Warning)]
    public const string SourcesDisagree = "sources-disagree";

    /// <summary>No region was stated, so limits of several regions are shown.</summary>
    [Remedy("State the region. Say elsewhere if it is not among the words."), Severities(Severity.Warning)]
    public const string RegionNotStated = "region-not-stated";

    /// <summary>The form of nitrogen in a product was not stated, so that it counts as urea.</summary>
    [Remedy("State nitrogenForm for that product; the label names it."), Severities(Severity.Warning)]
    public const string NitrogenFormNotStated = "nitrogen-form-not-stated";

    /// <summary>The opener and its rows lie between, or beyond, those for which the source prints a limit.</summary>
    [Remedy("Nothing to do: the stricter printed limit was taken. The answer names the printed ones."), Severities(Severity.Note)]
    public const string BetweenPublishedLimits = "between-published-limits";

    /// <summary>A limit was reduced as its source states for such a seedbed.</summary>
    [Remedy("Nothing to do: the reduced limit was used."), Severities(Severity.Note)]
    public const string LimitReduced = "limit-reduced";

    /// <summary>The spread is much wider than a source pairs with such an opener.</summary>
    [Remedy("Measure the spread of seed and fertilizer in the field, and check its unit."), Severities(Severity.Note)]
    public const string SpreadUnusual = "spread-unusual";

    /// <summary>None of the products whose rates are open holds a nutrient that is still wanted.</summary>
    [Remedy("Add a product that holds it, or take the target out."), Severities(Severity.Warning)]
    public const string NutrientWithoutSource = "nutrient-without-source";

    /// <summary>What is there already goes over an exact or at-most target.</summary>
    [
        Remedy("Check the credits and the fixed rates. If they are right, nothing more of this nutrient should be applied."),
        Severities(Severity.Warning)
    ]
    public const string CreditsAboveTarget = "credits-above-target";

    /// <summary>A nutrient stays short because products may not be applied at a higher rate.</summary>
    [
        Remedy("Raise the most rate if it may be raised, add another source of the nutrient, or apply the rest apart."),
        Severities(Severity.Warning)
    ]
    public const string MostRateBinds = "most-rate-binds";

    /// <summary>A nutrient goes over its target because products have to be applied at no lower rate.</summary>
    [Remedy("Lower the least rate or leave it out, or raise the target."), Severities(Severity.Warning)]
    public const string LeastRateBinds = "least-rate-binds";

    /// <summary>A target cannot be met together with another one, because products hold both nutrients.</summary>
    [
        Remedy(
            "Add a product that holds the nutrient by itself, or loosen one of the targets that the sentence names, for example from exactly to at-least."
        ),
        Severities(Severity.Warning)
    ]
    public const string TargetsConflict = "targets-conflict";

    /// <summary>Much more of a nutrient is given than was asked for.</summary>
    [
        Remedy("Nothing to do if it does no harm. Otherwise state a most for this nutrient, or add a product that holds less of it."),
        Severities(Severity.Note)
    ]
    public const string LargeSurplus = "large-surplus";

    /// <summary>A product rate is higher than seeding machines usually put down.</summary>
    [Remedy("Check the analysis and the targets, number and unit."), Severities(Severity.Warning)]
    public const string UnusualProductRate = "unusual-product-rate";

    /// <summary>A share stated as the element is higher than any usual product holds; it may be that of the oxide.</summary>
    [Remedy("Look on the label whether it says K or K2O, and state that form."), Severities(Severity.Warning)]
    public const string ElementOrOxide = "element-or-oxide";

    /// <summary>A rate comes from dividing by 10 where exact units divide by 10.413, and so reads 4.13 % high.</summary>
    [Remedy("Use the rate of the answer, which is in exact units."), Severities(Severity.Warning)]
    public const string ShortcutReadsHigh = "shortcut-reads-high";

    /// <summary>A rate from elsewhere differs from the one that these numbers give.</summary>
    [
        Remedy(
            "Compare kernel mass, germination, emergence and purity behind the two, and use the rate whose numbers are those of your lot."
        ),
        Severities(Severity.Warning)
    ]
    public const string StatedRateDiffers = "stated-rate-differs";

    /// <summary>Few seeds were counted for a kernel mass.</summary>
    [Remedy("Count 100 seeds several times and give the sum of counts and masses."), Severities(Severity.Note)]
    public const string SmallSample = "small-sample";

    /// <summary>The kernel mass lies outside what is published for the crop.</summary>
    [
        Remedy("Check the count, the mass and the unit. If they are right, use them: your lot goes before any range."),
        Severities(Severity.Note)
    ]
    public const string KernelMassUnusual = "kernel-mass-unusual";

    /// <summary>Germination is below what a seed law asks for.</summary>
    [Remedy("Have the lot tested again, or take another one."), Severities(Severity.Warning)]
    public const string GerminationLow = "germination-low";

    /// <summary>A germination is given that the rate for pure seeds does not depend on.</summary>
    [
        Remedy("If seeds that can germinate are meant, give them as germinableSeedsPerArea. For a stand add the emergence."),
        Severities(Severity.Note)
    ]
    public const string GerminationNotUsed = "germination-not-used";

    /// <summary>Emergence or survival lies outside what is published for the crop.</summary>
    [
        Remedy("Check whether the figure already holds germination. Counts from your own fields go before any range."),
        Severities(Severity.Note)
    ]
    public const string EmergenceUnusual = "emergence-unusual";

    /// <summary>More seeds per area than a publisher sees a gain from.</summary>
    [Remedy("Check the stand wanted and its unit."), Severities(Severity.Note)]
    public const string SeedsAbovePublished = "seeds-above-published";

    /// <summary>The bulk density of a lot is not known, so nothing says what the meter delivers of it.</summary>
    [Remedy("Weigh a known volume of each lot, and ask again; or make a catch test."), Severities(Severity.Warning)]
    public const string DensityUnknown = "density-unknown";

    /// <summary>The new lot has another bulk density than the one behind the value in force.</summary>
    [Remedy("Start the catch plan from the predicted value, and adopt what the catch test finds."), Severities(Severity.Warning)]
    public const string DensityDiffers = "density-differs";

    /// <summary>Two lots of one product have bulk densities that are hard to believe beside each other.</summary>
    [Remedy("Check both numbers and their units; kg/hL, kg/m3 and the bushels differ by factors."), Severities(Severity.Warning)]
    public const string DensitiesFarApart = "densities-far-apart";

    /// <summary>The new lot has another treatment than the one behind the value in force.</summary>
    [
        Remedy("Make a catch test with the treated seed; a coating changes how it flows and what a kernel weighs."),
        Severities(Severity.Warning)
    ]
    public const string TreatmentChanged = "treatment-changed";

    /// <summary>The kernel masses of what is said to be one lot in one treatment differ.</summary>
    [Remedy("Count and weigh a sample of each again, and check whether it is the same lot."), Severities(Severity.Warning)]
    public const string KernelsOfOneLotDiffer = "kernels-of-one-lot-differ";

    /// <summary>Nothing that changes the flow has changed.</summary>
    [Remedy("Nothing to do."), Severities(Severity.Note)]
    public const string NothingChanged = "nothing-changed";

    /// <summary>The new lot germinates otherwise than the one before, so the same seeds bring up another stand.</summary>
    [
        Remedy("Choose between the rate for the same seeds and the rate for the same stand; the answer gives both."),
        Severities(Severity.Note)
    ]
    public const string GerminationChanged = "germination-changed";

    /// <summary>A rate for the new lot takes kernel masses that were not given.</summary>
    [
        Remedy("Count and weigh a sample of each lot, and give their thousand-kernel masses. Fertilizer needs none."),
        Severities(Severity.Note)
    ]
    public const string RateNotRecomputed = "rate-not-recomputed";

    /// <summary>A hoop or frame is not as large as it is called.</summary>
    [
        Remedy("Measure the hoop inside, or the frame, and send its size. Do not multiply by a factor made for another size."),
        Severities(Severity.Note, Severity.Warning)
    ]
    public const string SampleAreaMiscalled = "sample-area-miscalled";

    /// <summary>A stated stand fits plants per m2 divided by 10 and called plants per ft2.</summary>
    [Remedy("Divide by 10.764 instead, or send the number with its own unit."), Severities(Severity.Warning)]
    public const string DivideByTenShortcut = "divide-by-ten-shortcut";

    /// <summary>The share counted lies far from the one believed before.</summary>
    [
        Remedy("Check what was sown and counted. If both are right, find the cause before you learn from this field."),
        Severities(Severity.Warning)
    ]
    public const string CountsAtOddsWithPrior = "counts-at-odds-with-prior";

    /// <summary>A stated stand is not what the counts give.</summary>
    [Remedy("Check the factor it was made with and the size of the samples."), Severities(Severity.Note)]
    public const string StatedStandDiffers = "stated-stand-differs";

    /// <summary>No plant was found at any spot.</summary>
    [Remedy("Check whether the crop is up yet, and whether it was sown there."), Severities(Severity.Warning)]
    public const string NoPlantsFound = "no-plants-found";

    /// <summary>There is one count only, so that nothing shows how the stand differs from spot to spot.</summary>
    [Remedy("Count at four more spots at least, chosen without looking."), Severities(Severity.Warning)]
    public const string SingleCount = "single-count";

    /// <summary>There are fewer counts than extension services ask for.</summary>
    [Remedy("Count at more spots, spread over the field."), Severities(Severity.Note)]
    public const string FewCounts = "few-counts";

    /// <summary>The wanted precision takes more counts.</summary>
    [Remedy("Count at as many spots as the answer says, and send all counts together."), Severities(Severity.Note)]
    public const string MoreCountsNeeded = "more-counts-needed";

    /// <summary>The counts vary much more from spot to spot than chance explains.</summary>
    [Remedy("Look for skips, plugged openers, residue or wet spots, and judge such places by themselves."), Severities(Severity.Warning)]
    public const string StronglyClumped = "strongly-clumped";

    /// <summary>Several counts are from one row, so that they share what its opener does.</summary>
    [Remedy("Count in other rows too."), Severities(Severity.Note)]
    public const string CountsInSameRow = "counts-in-same-row";

    /// <summary>More plants were counted than seeds were sown.</summary>
    [
        Remedy("Check the rate sown, the kernel mass, the germination and the row spacing, and look for volunteers among the plants."),
        Severities(Severity.Warning)
    ]
    public const string MorePlantsThanSeeds = "more-plants-than-seeds";

    /// <summary>A learned share rests more on what was believed before than on the counts.</summary>
    [Remedy("Nothing to do, if the prior is well founded. More counts give the field more say."), Severities(Severity.Note)]
    public const string PriorOutweighsCounts = "prior-outweighs-counts";

    /// <summary>The stand is, or may be, below the stated minimum.</summary>
    [Remedy("Count at more spots before you decide, and ask local advice about reseeding."), Severities(Severity.Note, Severity.Warning)]
    public const string StandBelowMinimum = "stand-below-minimum";

    /// <summary>A rate misses the wanted probability of the minimum stand.</summary>
    [Remedy("Sow the rate that the answer gives, or accept the risk that it tells."), Severities(Severity.Warning)]
    public const string StandAtRisk = "stand-at-risk";

    /// <summary>The rate that would be needed is above the stated maximum.</summary>
    [
        Remedy("Accept a lower probability or a lower minimum stand, or improve what keeps seeds from coming up."),
        Severities(Severity.Warning)
    ]
    public const string RateAboveMaximum = "rate-above-maximum";

    /// <summary>So much survival is in doubt that no sensible rate reaches the wanted probability.</summary>
    [
        Remedy("Ask for a lower probability, or find out why so few seeds may come up: more seed does not make up for it."),
        Severities(Severity.Warning)
    ]
    public const string ProbabilityOutOfReach = "probability-out-of-reach";

    /// <summary>The spread of a share comes from one stand, which says nothing about how seasons differ.</summary>
    [Remedy("Add seasonSpread, from several of your own seasons if you have them."), Severities(Severity.Warning)]
    public const string SeasonSpreadMissing = "season-spread-missing";

    /// <summary>A share of seeds is outside what published surveys report.</summary>
    [Remedy("Check the number. If it is right, nothing is to be done."), Severities(Severity.Note)]
    public const string UnusualShareOfSeeds = "unusual-share-of-seeds";

    /// <summary>A published model lets expect a larger loss of stand from fertilizer with the seed than is accepted.</summary>
    [
        Remedy(
            "Place less with the seed, or put it away from the seed row. The answer tells how much of each product alone the model allows."
        ),
        Severities(Severity.Stop)
    ]
    public const string StandLossAboveAccepted = "stand-loss-above-accepted";
}
