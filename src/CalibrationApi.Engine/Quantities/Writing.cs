using System.Globalization;
using System.Text;

namespace CalibrationApi.Engine.Quantities;

/// <summary>A sentence while it is written in chosen units; the words and values of nested sentences become its own.</summary>
internal sealed class Writing
{
    private readonly DisplayUnits units;
    private readonly StringBuilder text = new();
    private readonly List<Piece>? pieces;

    private Writing(DisplayUnits units, bool apart) => (this.units, pieces) = (units, apart ? [] : null);

    /// <summary>The sentence.</summary>
    public static string Whole(Sentence sentence, DisplayUnits units)
    {
        var writing = new Writing(units, apart: false);
        writing.Add(sentence);
        return writing.text.ToString();
    }

    /// <summary>The sentence, and its words and values apart.</summary>
    public static WrittenSentence Apart(Sentence sentence, DisplayUnits units)
    {
        var writing = new Writing(units, apart: true);
        writing.Add(sentence);
        return writing.Parts();
    }

    private WrittenSentence Parts()
    {
        var template = new StringBuilder();
        var values = new List<WrittenValue>();
        foreach (var (words, hole, written) in pieces!)
        {
            template.Append(words.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal));
            if (written is not null)
                template.Append('{').Append(Named(hole, written, values)).Append('}');
        }
        return new WrittenSentence(text.ToString(), template.ToString(), values);
    }

    private void Add(Sentence sentence)
    {
        for (var i = 0; i < sentence.Count; i++)
        {
            Say(sentence.Before(i));
            ref readonly var hole = ref sentence[i];
            if (hole.Value is Sentence nested)
            {
                Add(nested);
                continue;
            }
            var written = units.Written(hole.Value, hole.Format);
            if (written.Length == 0)
                continue;
            if (hole.IsChoiceOfWords)
            {
                Say(written);
                continue;
            }
            text.Append(written);
            pieces?.Add(new Piece("", hole, written));
        }
        Say(sentence.Before(sentence.Count));
    }

    private void Say(string words)
    {
        if (words.Length == 0)
            return;
        text.Append(words);
        pieces?.Add(new Piece(words, default, null));
    }

    // The same name stands for the same value; another value that the code calls alike gets a number behind its name.
    private string Named(in Sentence.Hole hole, string written, List<WrittenValue> values)
    {
        var called = SentenceNames.Of(hole.Expression);
        for (var number = 1; ; number++)
        {
            var name = number == 1 ? called : $"{called}{number}";
            var at = values.FindIndex(value => value.Name == name);
            if (at < 0)
            {
                var quantity = hole.Value as IQuantity;
                double? exact =
                    quantity is not null ? units.Value(quantity)
                    : hole.Value is CountInWords count ? count.Count
                    : hole.Value is int or long or double ? Convert.ToDouble(hole.Value, CultureInfo.InvariantCulture)
                    : null;
                values.Add(new WrittenValue(name, written, exact, quantity is null ? null : units[quantity.Dimension]));
                return name;
            }
            if (values[at].Text == written)
                return name;
        }
    }

    private readonly record struct Piece(string Words, Sentence.Hole Hole, string? Written);
}
