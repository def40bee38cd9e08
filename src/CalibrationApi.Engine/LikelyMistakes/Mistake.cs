using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>One kind of mistake: how probable it is beforehand, what it makes of the numbers, and what to look at.</summary>
/// <remarks>A new kind is a type of its own and a line in <see cref="MistakeCatalog"/>.</remarks>
internal abstract class Mistake
{
    /// <summary>Every code it can have.</summary>
    public virtual IEnumerable<MistakeCode> Codes => [Code];

    /// <summary>The mistake can change unequal catches unequally.</summary>
    public virtual bool ReshapesTest => false;

    /// <summary>How much the scatter of the whole test could gain at most if it were taken back; natural logarithm.</summary>
    public virtual double LargestGain(TestLikelihood likelihood) => ReshapesTest ? likelihood.LargestGainOfScatter : 0;

    /// <summary>The catches show it against each other, so that the whole test can be asked without a value to compare with.</summary>
    public virtual bool ShowsWithoutReference => false;

    /// <summary>How probable it is that whoever made it in one test makes it again in a second one, set up anew.</summary>
    public virtual double RepeatChance => MistakeJudgement.Repeat.Slip;

    protected abstract MistakeCode Code { get; }

    /// <summary>How much of its weight lies on the whole test; the rest is shared by the single catches.</summary>
    protected abstract double WholeTestShare { get; }

    /// <summary>No catch of a test is likelier to hold it than another.</summary>
    protected virtual bool IsAlikeInAllCatches => true;

    /// <summary>The code for this test.</summary>
    public virtual MistakeCode CodeFor(TestAtHand test) => Code;

    /// <summary>Relative weight before the masses are looked at; 0 where it cannot have happened.</summary>
    /// <param name="test">The test.</param>
    /// <param name="ofCatches">Receives the weight of each counted catch where they are not alike.</param>
    public virtual MistakeWeight Weigh(TestAtHand test, Span<double> ofCatches)
    {
        // A test of one catch is that catch.
        var ofWhole = ofCatches.Length == 1 ? 1 : WholeTestShare;
        var ofEach = ofCatches.Length == 1 ? 0 : (1 - WholeTestShare) / ofCatches.Length;
        var first = WeightOf(test, 0);
        if (IsAlikeInAllCatches)
            return new(ofWhole * first, ofEach * first);
        var sum = 0.0;
        var everywhere = true;
        for (var i = 0; i < ofCatches.Length; i++)
        {
            var weight = i == 0 ? first : WeightOf(test, i);
            sum += weight;
            everywhere &= weight > 0;
            ofCatches[i] = ofEach * weight;
        }

        // What cannot have happened in one catch has not happened in all of them.
        return new(everywhere ? ofWhole * sum / ofCatches.Length : 0, null);
    }

    /// <summary>
    /// In the whole test: by how much its odds are greater than elsewhere because what was entered contradicts what is on record; 1 where
    /// it does not.
    /// </summary>
    public virtual double RaisedBy(TestAtHand test) => 1;

    /// <summary>What it would make of the numbers; more than one where it has variants, whose shares add up to 1.</summary>
    public abstract Prediction[] Predictions(TestAtHand test, int? at);

    /// <summary>How the sentence ends that begins with what was seen.</summary>
    /// <param name="prediction">The variant that fits best.</param>
    public abstract Sentence Fit(Prediction prediction);

    protected abstract double WeightOf(TestAtHand test, int at);
}

/// <summary>Relative weight of a mistake before the masses are looked at.</summary>
/// <param name="OfWhole">Of the whole test, which is every catch alike.</param>
/// <param name="OfEach">Of each counted catch where all are alike; null where they are not.</param>
internal readonly record struct MistakeWeight(double OfWhole, double? OfEach);
