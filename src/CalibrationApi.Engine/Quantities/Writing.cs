using System.Globalization;
using System.Runtime.CompilerServices;

namespace CalibrationApi.Engine.Quantities;

/// <summary>A sentence while it is written in chosen units; the words and values of nested sentences become its own.</summary>
internal ref struct Writing
{
    private readonly DisplayUnits units;
    private readonly List<WrittenValue>? values;

    // They are not used for interpolation: they put texts together in borrowed memory.
    private DefaultInterpolatedStringHandler text;
    private DefaultInterpolatedStringHandler template;

    private Writing(DisplayUnits units, List<WrittenValue>? values)
    {
        this.units = units;
        this.values = values;
        text = new DefaultInterpolatedStringHandler(0, 0, CultureInfo.InvariantCulture);
        template = new DefaultInterpolatedStringHandler(0, 0, CultureInfo.InvariantCulture);
    }

    /// <summary>The sentence.</summary>
    public static string Whole(Sentence sentence, DisplayUnits units)
    {
        var writing = new Writing(units, null);
        writing.Add(sentence);
        return writing.text.ToStringAndClear();
    }

    /// <summary>The sentence, and its words and values apart.</summary>
    public static WrittenSentence Apart(Sentence sentence, DisplayUnits units)
    {
        if (sentence.Count == 0)
            return new WrittenSentence(sentence.Before(0), Escaped(sentence.Before(0)), []);
        var values = new List<WrittenValue>(sentence.Count);
        var writing = new Writing(units, values);
        writing.Add(sentence);
        return new WrittenSentence(writing.text.ToStringAndClear(), writing.template.ToStringAndClear(), values);
    }

    private void Add(Sentence sentence)
    {
        for (var i = 0; i < sentence.Count; i++)
        {
            Say(sentence.Before(i));
            ref readonly var hole = ref sentence[i];
            if (hole.Value is Sentence nested)
                Add(nested);
            else if (hole.IsChoiceOfWords)
                Say((string)hole.Value!);
            else if (units.Written(hole.Value, hole.Format) is { Length: > 0 } written)
                Tell(hole, written);
        }
        Say(sentence.Before(sentence.Count));
    }

    private void Say(string words)
    {
        text.AppendLiteral(words);
        if (values is not null)
            template.AppendLiteral(Escaped(words));
    }

    private static string Escaped(string words) =>
        words.AsSpan().ContainsAny('{', '}') ? words.Replace("{", "{{").Replace("}", "}}") : words;

    private void Tell(in Sentence.Hole hole, string written)
    {
        text.AppendLiteral(written);
        if (values is null)
            return;
        template.AppendLiteral("{");
        template.AppendLiteral(Named(hole, written, values));
        template.AppendLiteral("}");
    }

    // The same name stands for the same value; another value that the code calls alike gets a number behind its name.
    private readonly string Named(in Sentence.Hole hole, string written, List<WrittenValue> values)
    {
        var called = SentenceNames.Of(hole.Expression);
        for (var number = 1; ; number++)
        {
            var name = number == 1 ? called : string.Create(CultureInfo.InvariantCulture, $"{called}{number}");
            var at = values.FindIndex(value => value.Name == name);
            if (at < 0)
            {
                values.Add(Value(name, written, hole.Value));
                return name;
            }
            if (values[at].Text == written)
                return name;
        }
    }

    private readonly WrittenValue Value(string name, string written, object? value) =>
        value switch
        {
            IQuantity quantity => new(name, written, units.Value(quantity), units[quantity.Dimension]),
            CountInWords count => new(name, written, count.Count, null),
            int or long or double => new(name, written, Convert.ToDouble(value, CultureInfo.InvariantCulture), null),
            _ => new(name, written, null, null),
        };
}
