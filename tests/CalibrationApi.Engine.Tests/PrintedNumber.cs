using System.Globalization;

namespace CalibrationApi.Engine.Tests;

/// <summary>A figure as a publication prints it: its digits say how closely it can be reproduced.</summary>
public readonly record struct PrintedNumber
{
    // Half of the last digit, plus what a decimal text loses on its way to a double.
    private const double Slack = 1e-9;

    public PrintedNumber(string text)
    {
        Text = text;
        Value = double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
        var exponentAt = text.IndexOfAny(['e', 'E']);
        var mantissa = exponentAt < 0 ? text : text[..exponentAt];
        var exponent =
            exponentAt < 0 ? 0 : int.Parse(text.AsSpan(exponentAt + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        var point = mantissa.IndexOf('.', StringComparison.Ordinal);
        var decimals = point < 0 ? 0 : mantissa.Length - point - 1;
        LastDigit = Math.Pow(10, exponent - decimals);
    }

    public string Text { get; }

    public double Value { get; }

    /// <summary>The worth of one unit in the last printed digit.</summary>
    public double LastDigit { get; }

    /// <summary>Fails unless the computed value rounds to the printed figure.</summary>
    /// <param name="computed">What the engine gives.</param>
    /// <param name="lastDigits">
    /// How many units of the last printed digit it may be away: a half for a rounded figure, one for a truncated one,
    /// more only where the source is known to carry rounded intermediate results.
    /// </param>
    /// <param name="what">What is compared, for the message.</param>
    public void AssertReproducedBy(double computed, double lastDigits = 0.5, string what = "value")
    {
        var allowed = lastDigits * LastDigit * (1 + Slack) + Math.Abs(Value) * 1e-15;
        Assert.True(
            Math.Abs(computed - Value) <= allowed,
            string.Create(CultureInfo.InvariantCulture, $"{what}: printed {Text}, computed {computed:R}, allowed difference {allowed:G3}.")
        );
    }

    public override string ToString() => Text;
}
