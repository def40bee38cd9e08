using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Adoptions;

/// <summary>A typed number against its test, the value before and the element. Our own rules, invented numbers.</summary>
public sealed class TypedValueCheckTests
{
    private static readonly TestBehindValue Test = new(new(0.824), 0.024, Enter: new(0.824));

    [Theory]
    [InlineData(0.824)]
    // U on either side, and half of the last digit.
    [InlineData(0.8485)]
    [InlineData(0.7995)]
    public void ObjectionsTo_NumberThatItsTestExplains_AreNone(double typed) =>
        Assert.Empty(TypedValueCheck.ObjectionsTo(Typed(typed) with { Test = Test, Before = new(0.781), Step = 0.001 }));

    [Theory]
    [InlineData(8.24, "typed-decimal-slip")]
    [InlineData(0.0824, "typed-decimal-slip")]
    [InlineData(824, "typed-decimal-slip")]
    [InlineData(1.648, "typed-twice-or-half")]
    [InlineData(0.412, "typed-twice-or-half")]
    [InlineData(0.824 / 0.45359237, "typed-in-other-unit")]
    [InlineData(0.824 * 0.45359237, "typed-in-other-unit")]
    [InlineData(0.842 + 0.024, "typed-off-test")]
    [InlineData(0.8486, "typed-off-test")]
    [InlineData(0.7994, "typed-off-test")]
    // The value before, beside a test that found another.
    [InlineData(0.781, "typed-off-test")]
    public void ObjectionsTo_NumberThatItsTestDoesNotExplain_SayWhatItLooksLike(double typed, string code) =>
        Assert.Equal([code], Codes(Typed(typed) with { Test = Test, Before = new(0.781), Step = 0.001 }));

    // 8.24, 0.0824 and 824 lb/rev after 0.781 lb/rev: 10.55, 0.1055 and 1055 times.
    [Theory]
    [InlineData(8.24)]
    [InlineData(0.0824)]
    [InlineData(824)]
    [InlineData(0.8591)]
    [InlineData(0.7029)]
    public void ObjectionsTo_NumberByHandFarFromTheValueBefore_IsThatNoTestStandsBehindIt(double typed) =>
        Assert.Equal([TypedValueCodes.TypedOffValueInForce.Word], Codes(Typed(typed) with { Before = new(0.781) }));

    [Theory]
    [InlineData(7.81, "typed-decimal-slip")]
    [InlineData(0.3905, "typed-twice-or-half")]
    [InlineData(0.781 * 2.2046, "typed-in-other-unit")]
    public void ObjectionsTo_NumberByHandAFactorFromTheValueBefore_NameTheFactor(double typed, string code) =>
        Assert.Equal([code], Codes(Typed(typed) with { Before = new(0.781) }));

    // 10 % is reached, whatever binary fractions make of it.
    [Theory]
    [InlineData(0.858, false)]
    [InlineData(0.704, false)]
    [InlineData(0.8591, true)]
    public void ObjectionsTo_NumberByHandNearTheValueBefore_BeginAtTenPerCent(double typed, bool objects) =>
        Assert.Equal(objects, TypedValueCheck.ObjectionsTo(Typed(typed) with { Before = new(0.781) }).Count > 0);

    [Fact]
    public void ObjectionsTo_FirstNumberOfAMeter_AreNone() => Assert.Empty(TypedValueCheck.ObjectionsTo(Typed(0.824)));

    // Shrunk towards the old number: anywhere between the two is what the test says.
    [Theory]
    [InlineData(0.70, true)]
    [InlineData(0.75, true)]
    [InlineData(0.80, true)]
    [InlineData(0.6949, false)]
    [InlineData(0.8051, false)]
    public void ObjectionsTo_NumberBetweenMeasuredAndGiven_AreNone(double typed, bool accepted) =>
        Assert.Equal(
            accepted,
            TypedValueCheck.ObjectionsTo(Typed(typed) with { Test = new(new(0.80), 0.005, Enter: new(0.70)) }).Count == 0
        );

    // 5 % within tolerance: the test said to keep it, so that it may be recorded as kept.
    [Theory]
    [InlineData(0.38, true)]
    [InlineData(0.3804, true)]
    [InlineData(0.3806, false)]
    public void ObjectionsTo_ValueThatTheTestSaidToKeep_AreNone(double typed, bool accepted) =>
        Assert.Equal(
            accepted,
            TypedValueCheck.ObjectionsTo(Typed(typed) with { Test = new(new(0.37), 0.005, Kept: new(0.38)), Step = 0.001 }).Count == 0
        );

    [Fact]
    public void ObjectionsTo_MoreThanTheElementHolds_StandBesideTheOthers()
    {
        var content = new ElementContent(new(new Volume(0.6e-3)), new(new BulkDensity(620)), ElementKind.ClosedPockets, "coarse");

        Assert.Equal(
            [TypedValueCodes.TypedMoreThanElementHolds.Word, TypedValueCodes.TypedDecimalSlip.Word],
            Codes(Typed(3.6) with { Test = new(new(0.36), 0.01), Content = content })
        );
        var alone = Assert.Single(TypedValueCheck.ObjectionsTo(Typed(0.72) with { Content = content }));
        Assert.Equal(
            "0.72 kg/rev is more than the element coarse can deliver: full it holds 0.372 kg/rev and this would fill it to 194 %. Check the number and its unit, the count of the revolutions, which element is fitted, its displacement and the bulk density. Look at the controller and type the number again. If it is right, say why in 'despite' with the code typed-more-than-element-holds.",
            alone.Detail.InMetric()
        );
    }

    [Fact]
    public void ObjectionsTo_DecimalSlip_SayWhatWasTypedAndWhatTheTestGave() =>
        Assert.StartsWith(
            "8.24 kg/rev is 10 times 0.824 kg/rev, what its test gave. The decimal point may have slipped. Look at the controller and type the number again.",
            TypedValueCheck.ObjectionsTo(Typed(8.24) with { Test = Test })[0].Detail.InMetric(),
            StringComparison.Ordinal
        );

    [Fact]
    public void Despite_EachCode_SaysWhatSpokeAgainstItAndTheReason()
    {
        var sentences = TypedValueCheck.Codes.Select(code => TypedValueCheck.Despite(code, "new roller")).ToArray();

        Assert.Distinct(sentences.Select(sentence => sentence.Detail.InMetric()));
        Assert.All(sentences, sentence =>
            Assert.EndsWith("The reason given: new roller", sentence.Detail.InMetric(), StringComparison.Ordinal)
        );
        Assert.Equal(Severity.Stop, TypedValueCheck.Despite(TypedValueCodes.TypedMoreThanElementHolds, "measured").Severity);
        Assert.Equal(Severity.Warning, TypedValueCheck.Despite(TypedValueCodes.TypedOffTest, "measured").Severity);
        Assert.Throws<KeyNotFoundException>(() => TypedValueCheck.Despite(SharedCodes.SettingsAtOdds, "measured"));
    }

    private static TypedValue Typed(double value) => new() { Value = new(value), InWords = FormattableString.Invariant($"{value} kg/rev") };

    private static IEnumerable<string> Codes(TypedValue typed) =>
        TypedValueCheck.ObjectionsTo(typed).Select(objection => objection.Code.Word);
}
